package io.ovenmark.desk;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * The records of answers about bakes, goals, foods and the check of a notebook; see {@link Views} for
 * the manner of all of them.
 */
public final class KitchenViews {
  private KitchenViews() {}

  /**
   * The bakes of a formula.
   *
   * @param formula short name
   * @param name name for people
   * @param bakes oldest first, of all lines of history
   * @param problems what is wrong with bakes that cannot be read; mostly empty
   */
  public record BakeList(
      String formula,
      String name,
      List<Views.BakeView> bakes,
      List<Views.ProblemView> problems) {}

  /**
   * A bake that was committed.
   *
   * @param bake the bake as it is now
   * @param line the line of history that keeps it: a formula or a variant
   * @param photosAdded paths of pictures that were added
   * @param remarks what else a person should know
   */
  public record BakeWritten(
      Views.BakeView bake, String line, List<String> photosAdded, List<String> remarks) {}

  /**
   * The goals of a notebook.
   *
   * @param goals by short name
   */
  public record GoalList(List<GoalEntry> goals) {}

  /**
   * One goal in the list.
   *
   * @param goal short name
   * @param name name for people; the short name when the file cannot be read
   * @param note its note, or null
   * @param rules its rules in words
   * @param usedBy lines of history whose newest revision states it
   * @param problems what is wrong with the file; empty when it can be read
   */
  public record GoalEntry(
      String goal,
      String name,
      String note,
      List<String> rules,
      List<String> usedBy,
      List<Views.ProblemView> problems) {}

  /**
   * A goal and how the formulas stand to it.
   *
   * @param goal short name
   * @param name name for people
   * @param note its note, or null
   * @param rules its rules in words
   * @param limits its limits
   * @param withoutAllergens allergens it must be free of
   * @param withoutFoods short names of foods it must not contain
   * @param netCarbohydrateRule how net carbohydrate is worked out for it, or null for the notebook's
   *     rule
   * @param formulas the newest revision of every line of history that states it
   */
  public record GoalSheet(
      String goal,
      String name,
      String note,
      List<String> rules,
      List<GoalLimit> limits,
      List<String> withoutAllergens,
      List<String> withoutFoods,
      String netCarbohydrateRule,
      List<GoalStanding> formulas) {}

  /**
   * A limit of a goal.
   *
   * @param figure key of the figure
   * @param per basis key, or null for a figure that is not stated for a basis
   * @param limit the bounds
   */
  public record GoalLimit(String figure, String per, Views.LimitView limit) {}

  /**
   * How a formula stands to a goal, with the foods that its line of history has now.
   *
   * @param address its newest revision
   * @param formula short name
   * @param variant name of the variant, or null
   * @param name name for people
   * @param standing rule by rule, or null when it cannot be worked out
   * @param problems why it cannot be worked out; empty when it can
   */
  public record GoalStanding(
      String address,
      String formula,
      String variant,
      String name,
      Views.GoalView standing,
      List<Views.ProblemView> problems) {}

  /**
   * Foods.
   *
   * @param foods those of the pantry by short name, or those found, best first
   */
  public record FoodList(List<FoodEntry> foods) {}

  /**
   * One food in a list.
   *
   * @param food short name
   * @param name name for people; the short name when the file cannot be read
   * @param inPantry whether the notebook has it; false for one of the built-in table
   * @param kind its kind, or null when the file cannot be read
   * @param source where its figures come from, or null
   * @param sourceId the source's number, or null
   * @param per100G figures per 100 g by name; null where unknown
   * @param allergens what it contains, or null when that is not known
   * @param usedBy lines of history whose newest revision has it
   * @param problems what is wrong with the file; empty when it can be read
   * @param keptIn the variant that alone keeps it, or null
   * @param price what it costs, or null
   * @param netCarbohydrate net carbohydrate per 100 g by the notebook's rule, or null when the file
   *     cannot be read
   */
  public record FoodEntry(
      String food,
      String name,
      boolean inPantry,
      String kind,
      String source,
      String sourceId,
      @JsonProperty("per_100_g") Map<String, Double> per100G,
      List<String> allergens,
      List<String> usedBy,
      List<Views.ProblemView> problems,
      String keptIn,
      PriceView price,
      FigureSet netCarbohydrate) {}

  /**
   * A food with everything that is known of it.
   *
   * @param food short name
   * @param name name for people
   * @param inPantry whether the notebook has it; false for one of the built-in table
   * @param kind its kind
   * @param source where its figures come from
   * @param sourceId the source's number, or null
   * @param sourceNote what to know about the source, or null
   * @param per100G figures per 100 g by name; null where unknown
   * @param household what its household measures weigh
   * @param densityGPerMl density, or null when not known
   * @param allergens what it contains, or null when that is not known
   * @param polyol which sugar alcohol its polyols are, or null
   * @param price what it costs, or null
   * @param usedBy lines of history whose newest revision has it
   * @param remarks what else a person should know
   */
  public record FoodView(
      String food,
      String name,
      boolean inPantry,
      String kind,
      String source,
      String sourceId,
      String sourceNote,
      @JsonProperty("per_100_g") Map<String, Double> per100G,
      List<HouseholdView> household,
      @JsonProperty("density_g_per_ml") Double densityGPerMl,
      List<String> allergens,
      String polyol,
      PriceView price,
      List<String> usedBy,
      List<String> remarks) {}

  /**
   * What a household measure weighs.
   *
   * @param measure its name
   * @param grams mass of one
   */
  public record HouseholdView(String measure, double grams) {}

  /**
   * What a food costs.
   *
   * @param amount money for the package
   * @param currency three-letter code
   * @param grams content of the package
   * @param perKilogram money for a kilogram
   * @param date the day on which it cost that, or null
   */
  public record PriceView(
      BigDecimal amount, String currency, double grams, double perKilogram, String date) {}

  /**
   * Foods read from a food table.
   *
   * @param table which table: {@code SR28} or {@code FoodData Central}
   * @param foods what was found
   * @param added how many were added to the pantry
   * @param more whether further foods fit but were over the limit
   * @param faultyRows how many rows were faulty and left out
   * @param problems the first of them
   */
  public record ImportView(
      String table,
      List<ImportedFood> foods,
      int added,
      boolean more,
      long faultyRows,
      List<Views.ProblemView> problems) {}

  /**
   * A food read from a food table.
   *
   * @param food short name
   * @param name name for people
   * @param kind its kind
   * @param kindGuessed whether the kind was guessed and wants checking
   * @param sourceId the table's number
   * @param per100G figures per 100 g by name; null where unknown
   * @param state {@code found}, {@code added} or {@code in the pantry already}
   */
  public record ImportedFood(
      String food,
      String name,
      String kind,
      boolean kindGuessed,
      String sourceId,
      @JsonProperty("per_100_g") Map<String, Double> per100G,
      String state) {}

  /**
   * A notebook that was checked.
   *
   * @param ok whether nothing is wrong; notices do not count
   * @param wrong how many things are wrong
   * @param notices how many things are worth knowing
   * @param files how many files were read
   * @param photos how many pictures were decoded
   * @param objects how many Git objects were read
   * @param results what was found, what is wrong first
   */
  public record CheckView(
      boolean ok,
      int wrong,
      int notices,
      int files,
      int photos,
      long objects,
      List<CheckResult> results) {}

  /**
   * Something that the check found.
   *
   * @param level {@code wrong} or {@code notice}
   * @param where file with line, column and field, Git object or branch
   * @param line the variant's address when it is only in a variant, or null
   * @param message one sentence
   * @param hint what to do
   */
  public record CheckResult(
      String level, String where, String line, String message, String hint) {}
}
