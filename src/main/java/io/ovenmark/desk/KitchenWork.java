package io.ovenmark.desk;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;

/**
 * The records of answers about foods, goals and settings that are being worked on: what a form
 * needs, which figures would move, what was saved or why not. See {@link Views} for the manner of
 * all of them.
 */
public final class KitchenWork {
  private KitchenWork() {}

  /**
   * What is wrong with a field of a form.
   *
   * @param field its name; empty when it is about several
   * @param message one sentence
   * @param hint what to do
   */
  public record FieldProblem(String field, String message, String hint) {}

  /**
   * A fact that two people changed to something different.
   *
   * @param fact its name
   * @param label its name for people
   * @param base as it was before both; empty for nothing
   * @param mine as I typed it; empty for nothing
   * @param theirs as the other one saved it; empty for nothing
   */
  public record Clash(String fact, String label, String base, String mine, String theirs) {
    /** The same with a name for people. */
    Clash labelled(String words) {
      return new Clash(fact, words, base, mine, theirs);
    }
  }

  /**
   * Which figures would move if what is typed were saved. Figures are those of the newest formula
   * of each line of history with the foods, goal and settings of today; numbered revisions never
   * move.
   *
   * @param formulas the lines of history whose figures, goal or allergens would move, main lines by
   *     short name, each followed by its variants
   * @param same lines of history that rest on it and of which nothing would move
   * @param apart variants that keep a copy of their own, which would stay as it is
   */
  public record Moves(List<LineMoves> formulas, List<String> same, List<String> apart) {}

  /**
   * What would move in one line of history.
   *
   * @param line its address without revision
   * @param formula short name
   * @param variant name of the variant, or null
   * @param name name for people
   * @param figures the figures that would move, those that matter most first
   * @param goal how its goal would stand, or null when it has none
   * @param allergensGained allergens that it would contain newly
   * @param allergensLost allergens that it would contain no more
   * @param nowUnknownIn foods whose allergens would no longer be known
   * @param nowKnownIn foods whose allergens would be known newly
   * @param problems why nothing can be worked out; empty when it can
   */
  public record LineMoves(
      String line,
      String formula,
      String variant,
      String name,
      List<FigureMove> figures,
      GoalMove goal,
      List<String> allergensGained,
      List<String> allergensLost,
      List<String> nowUnknownIn,
      List<String> nowKnownIn,
      List<Views.ProblemView> problems) {}

  /**
   * A figure before and after.
   *
   * @param figure its key
   * @param label its name for people
   * @param unit its unit; empty for a ratio or count
   * @param per what it is stated for, such as {@code a piece}; empty for a figure of the formula
   * @param key whether it is one of those that matter most
   * @param from before, or null when not exactly known
   * @param to after, or null when not exactly known
   * @param text both in words
   * @param deltaText the difference in words
   * @param limit the goal's limit on it, or null
   */
  public record FigureMove(
      String figure,
      String label,
      String unit,
      String per,
      boolean key,
      Double from,
      Double to,
      String text,
      String deltaText,
      Views.LimitView limit) {}

  /**
   * A goal before and after.
   *
   * @param goal short name
   * @param name name for people
   * @param from whether it is met before; null when not known, or when there was no such goal
   * @param to whether it is met after; null when not known
   * @param change {@code newly met}, {@code newly missed}, {@code no longer known} or {@code same};
   *     {@code met}, {@code missed} or {@code not known} when there was no such goal
   * @param rules those that stand otherwise than before
   */
  public record GoalMove(
      String goal, String name, Boolean from, Boolean to, String change, List<RuleMove> rules) {}

  /**
   * A rule of a goal before and after.
   *
   * @param rule in words
   * @param from whether it is kept before; null when not known, or when there was no such rule
   * @param to whether it is kept after; null when not known, or when the rule is gone
   * @param isNew whether there was no such rule before
   * @param gone whether there is no such rule after
   * @param valueText the figure after, in words, or null
   * @param because the foods that break it or leave it open
   */
  public record RuleMove(
      String rule,
      Boolean from,
      Boolean to,
      @JsonProperty("new") boolean isNew,
      boolean gone,
      String valueText,
      List<String> because) {}

  /**
   * A food for its page and form.
   *
   * @param food everything that is known of it
   * @param seen the commit that it was read at; empty when the notebook does not keep it yet
   * @param line the variant that alone keeps it or whose copy it is, or null for the main line
   * @param facts its facts in the words that a form shows and gives back, by name
   * @param names what else it is called
   * @param netCarbohydrate net carbohydrate per 100 g by the notebook's rule
   * @param netCarbohydrateRule that rule
   * @param uses who uses it, line by line
   * @param copies the variants that keep a copy of their own
   * @param cautions what to mind
   */
  public record FoodPage(
      KitchenViews.FoodView food,
      String seen,
      String line,
      Map<String, String> facts,
      List<String> names,
      FigureSet netCarbohydrate,
      String netCarbohydrateRule,
      List<FoodUse> uses,
      List<FoodCopy> copies,
      List<String> cautions) {}

  /**
   * A line of history that uses a food.
   *
   * @param line its address without revision
   * @param formula short name
   * @param variant name of the variant, or null
   * @param name name for people
   * @param lines the ingredients that are this food
   */
  public record FoodUse(
      String line, String formula, String variant, String name, List<UsedLine> lines) {}

  /**
   * An ingredient that is a food.
   *
   * @param id id of the line
   * @param entered the amount as entered
   * @param grams its mass, or null when unresolved
   * @param approximate whether the mass comes from a volume or a household measure
   * @param percentOfBatch share of the batch, or null
   */
  public record UsedLine(
      String id, String entered, Double grams, boolean approximate, Double percentOfBatch) {}

  /**
   * A variant's own copy of a food.
   *
   * @param line address of the variant
   * @param same whether it says the same as this one
   */
  public record FoodCopy(String line, boolean same) {}

  /**
   * What a typed food would be, and which figures would move.
   *
   * @param food the food with what could be read of the form
   * @param netCarbohydrate net carbohydrate per 100 g
   * @param changed the facts that differ from before, by name for people
   * @param problems field by field; what is wrong was left as it was before
   * @param moves what would move
   * @param cautions what to mind
   */
  public record FoodTried(
      KitchenViews.FoodView food,
      FigureSet netCarbohydrate,
      List<String> changed,
      List<FieldProblem> problems,
      Moves moves,
      List<String> cautions) {}

  /**
   * What became of an order to save a food, a goal or settings.
   *
   * @param outcome {@code saved}, {@code unchanged} (it says all of that already), {@code conflict}
   *     (somebody changed the same meanwhile: nothing was saved, a person must choose) or {@code
   *     invalid} (fields are faulty: nothing was saved)
   * @param name its short name
   * @param clashes what both sides changed
   * @param answered the commit of the other side, to be sent along with the picks
   * @param taken names for people of facts that somebody else changed meanwhile and that were kept
   * @param alsoIn variants whose copies were changed too
   * @param problems field by field
   * @param remarks what else a person should know
   */
  public record Saved(
      String outcome,
      String name,
      List<Clash> clashes,
      String answered,
      List<String> taken,
      List<String> alsoIn,
      List<FieldProblem> problems,
      List<String> remarks) {
    /** Copies the lists. */
    public Saved {
      clashes = List.copyOf(clashes);
      taken = List.copyOf(taken);
      alsoIn = List.copyOf(alsoIn);
      problems = List.copyOf(problems);
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * A goal for its page and form.
   *
   * @param goal the goal, and how the formulas that state it stand
   * @param seen the commit that it was read at
   * @param subtract what its own rule takes from carbohydrate, as shares by name; null when it
   *     follows the notebook
   * @param facts its facts in words, by name
   * @param cautions what to mind
   */
  public record GoalPage(
      KitchenViews.GoalSheet goal,
      String seen,
      Map<String, Double> subtract,
      Map<String, String> facts,
      List<String> cautions) {}

  /**
   * How lines of history that do not state a goal would stand to it.
   *
   * @param formulas their newest revisions
   */
  public record Standings(List<KitchenViews.GoalStanding> formulas) {}

  /**
   * What a typed goal would be, and who would stand otherwise.
   *
   * @param rules its rules in words
   * @param netCarbohydrateRule its own rule in words, or null
   * @param changed the facts that differ from before, in words
   * @param problems field by field
   * @param moves the lines of history that state it; for a new goal all
   * @param cautions what to mind
   */
  public record GoalTried(
      List<String> rules,
      String netCarbohydrateRule,
      List<String> changed,
      List<FieldProblem> problems,
      Moves moves,
      List<String> cautions) {}

  /**
   * The notebook's own settings.
   *
   * @param title its title
   * @param folder where it is
   * @param seen the commit that they were read at
   * @param temperatureUnit {@code °C} or {@code °F}
   * @param massUnit {@code g} or {@code oz}
   * @param energyRule how energy is worked out
   * @param subtract what net carbohydrate takes from carbohydrate, as shares by name
   * @param netCarbohydrateRule the same in words
   * @param formulas how many formulas there are
   * @param variants how many variants
   * @param foods how many foods the main line's pantry has
   * @param goals how many goals
   * @param apart variants whose settings differ
   */
  public record NotebookPage(
      String title,
      String folder,
      String seen,
      String temperatureUnit,
      String massUnit,
      String energyRule,
      Map<String, Double> subtract,
      String netCarbohydrateRule,
      int formulas,
      int variants,
      int foods,
      int goals,
      List<String> apart) {}

  /**
   * What typed settings would be, and which figures would move.
   *
   * @param netCarbohydrateRule the rule in words
   * @param changed the settings that differ from before, in words
   * @param problems field by field
   * @param moves what would move
   */
  public record SettingsTried(
      String netCarbohydrateRule,
      List<String> changed,
      List<FieldProblem> problems,
      Moves moves) {}

  /**
   * A table of foods that was read, before or after foods were taken from it.
   *
   * @param file its name
   * @param foods the foods, row by row
   * @param columns the columns that were understood
   * @param unknownColumns the columns that were left out
   * @param added how many foods were added to the pantry
   * @param problems what is wrong, row by row
   */
  public record TableRead(
      String file,
      List<TableFood> foods,
      List<String> columns,
      List<String> unknownColumns,
      int added,
      List<Views.ProblemView> problems) {}

  /**
   * A food of a table.
   *
   * @param row line of the file
   * @param food short name
   * @param name name for people
   * @param kind its kind
   * @param kindGuessed whether the kind was guessed and wants checking
   * @param per100G figures per 100 g by name; null where unknown
   * @param allergens what it contains, or null when that is not known
   * @param state {@code new}, {@code added} or {@code in the pantry already}
   */
  public record TableFood(
      int row,
      String food,
      String name,
      String kind,
      boolean kindGuessed,
      @JsonProperty("per_100_g") Map<String, Double> per100G,
      List<String> allergens,
      String state) {}
}
