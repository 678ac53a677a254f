package io.ovenmark.desk;

import java.util.List;
import java.util.Map;

/** The records of answers about labels; see {@link Views} for the manner of all of them. */
public final class LabelViews {
  private LabelViews() {}

  /**
   * A formula's figures as they would stand on a label.
   *
   * @param aid that it is an aid and no approval
   * @param address the state that was worked out
   * @param formula short name
   * @param variant name of the variant, or null
   * @param revision its number; for a file edited by hand the number that it would get
   * @param foodsChangedSince whether the figures are those of today's foods, which are not those of
   *     the revision's own commit
   * @param name name for people
   * @param piece mass of a piece as dough and as baked
   * @param loss what the oven takes
   * @param reference the reference amount chosen, or null
   * @param references the reference amounts that can be chosen
   * @param regions one for each region asked for
   * @param remarks what else a person should know
   * @param cautions what to mind
   */
  public record LabelSheet(
      String aid,
      String address,
      String formula,
      String variant,
      int revision,
      boolean foodsChangedSince,
      String name,
      FigureSet piece,
      LossView loss,
      ReferenceView reference,
      List<ReferenceView> references,
      List<RegionView> regions,
      List<String> remarks,
      List<String> cautions) {}

  /**
   * The loss on baking.
   *
   * @param kind {@code measured}, {@code entered} or {@code unknown}
   * @param percent percent of the dough, or null when it is unknown
   * @param measuredPercent what was weighed, or null
   * @param pieces on how many weighed pieces that rests
   * @param words the same in a sentence
   */
  public record LossView(
      String kind, Double percent, Double measuredPercent, int pieces, String words) {}

  /**
   * A reference amount of the United States.
   *
   * @param key short name
   * @param words what it is for
   * @param g the amount
   */
  public record ReferenceView(String key, String words, double g) {}

  /**
   * What a region's law makes of the figures.
   *
   * @param region {@code us} or {@code eu}
   * @param name for people
   * @param energyRule the rule by which energy was worked out
   * @param energy that rule in a sentence, with its source
   * @param rows the table
   * @param dailyValues where the Daily Values come from and how they are rounded, or null
   * @param allergens the allergens that the foods bring
   * @param allergenSource the law that names them
   * @param allergensUnknownIn the foods whose allergens are unknown
   * @param allergenNotes what else the law wants
   * @param claims the claims that figures can judge
   * @param unjudged what figures cannot judge, or what has no definition
   * @param notes what else a reader of the table should know
   */
  public record RegionView(
      String region,
      String name,
      String energyRule,
      String energy,
      List<RowView> rows,
      String dailyValues,
      List<AllergenView> allergens,
      SourceView allergenSource,
      List<String> allergensUnknownIn,
      List<String> allergenNotes,
      List<ClaimView> claims,
      List<UnjudgedView> unjudged,
      List<String> notes) {}

  /**
   * One line of the table.
   *
   * @param key name with the unit
   * @param label name for people
   * @param part whether it is a part of the line above
   * @param unit the unit of its amounts
   * @param amounts for {@code per_piece}, {@code per_100_g_dough} and {@code per_100_g_baked}
   * @param rule the rule of rounding
   * @param source where the rule comes from
   * @param dailyValue the Daily Value, or null
   * @param missing what could not be known
   * @param note what else to know, or null
   */
  public record RowView(
      String key,
      String label,
      boolean part,
      String unit,
      Map<String, AmountView> amounts,
      String rule,
      SourceView source,
      Double dailyValue,
      List<String> missing,
      String note) {}

  /**
   * An amount, unrounded and as declared.
   *
   * @param value the unrounded amount, or null when it is not exactly known
   * @param atLeast its lower bound where only that is known, or null
   * @param atMost its upper bound likewise, or null
   * @param text the unrounded amount for people, in as many figures as show how it is rounded
   * @param declared as a label would state it, or null: a bound is never declared
   * @param dailyValuePercent the unrounded share of the Daily Value, or null
   * @param dailyValueDeclared the same as a label would state it, or null
   */
  public record AmountView(
      Double value,
      Double atLeast,
      Double atMost,
      String text,
      String declared,
      Double dailyValuePercent,
      String dailyValueDeclared) {}

  /**
   * Where something comes from.
   *
   * @param law such as {@code 21 CFR 101.9(c)(1)}
   * @param standing {@code read}, {@code second hand} or {@code from memory}
   */
  public record SourceView(String law, String standing) {}

  /**
   * An allergen.
   *
   * @param allergen name in the pantry
   * @param name as the region's law names it
   * @param foods the foods that bring it
   */
  public record AllergenView(String allergen, String name, List<String> foods) {}

  /**
   * A claim.
   *
   * @param claim its words
   * @param verdict {@code would meet}, {@code would miss} or {@code cannot be told}
   * @param because the figures that were judged
   * @param condition the published condition
   * @param source where that comes from
   * @param further what else the law wants, or null
   */
  public record ClaimView(
      String claim,
      String verdict,
      String because,
      String condition,
      SourceView source,
      String further) {}

  /**
   * What is said of food and cannot be judged by figures.
   *
   * @param claim its words
   * @param why why nothing is told
   * @param source where that comes from
   */
  public record UnjudgedView(String claim, String why, SourceView source) {}
}
