package io.ovenmark.desk;

import java.util.List;
import java.util.Map;

/** The records of a comparison's answer; see {@link Views} for the manner of all of them. */
public final class ComparisonViews {
  private ComparisonViews() {}

  /**
   * Two revisions compared.
   *
   * @param from the earlier side
   * @param to the later side
   * @param summary in plain words
   * @param identical whether nothing that is weighed, done or baked differs
   * @param lines the ingredients of both sides, in the order of the later side
   * @param foodData foods whose own figures differ under the same name
   * @param yield what differs in the yield
   * @param ratios liquid ratio, dough moisture, and the masses, by name
   * @param macros for each basis each macro by name
   * @param goal how the goal's rules stand on both sides, or null when neither side has one
   * @param process what differs in the oven settings
   * @param method the steps, word by word; empty when the method is the same
   * @param texts what differs in name, description, goal, reference, storage and unknown fields
   * @param outcomes what was baked on both sides
   * @param confounded the things that differ between the bakes; fewer than two means that nothing
   *     is confounded
   * @param credit what may be credited to what, in words, or null when there is nothing to say
   * @param cost what both sides cost
   */
  public record ComparisonView(
      SideView from,
      SideView to,
      String summary,
      boolean identical,
      List<LineDifference> lines,
      List<FoodDifference> foodData,
      List<FieldDifference> yield,
      Map<String, FigureDifference> ratios,
      Map<String, Map<String, FigureDifference>> macros,
      GoalDifference goal,
      List<FieldDifference> process,
      List<StepDifference> method,
      List<FieldDifference> texts,
      OutcomeView outcomes,
      List<String> confounded,
      String credit,
      CostViews.CostDifference cost) {}

  /**
   * One side.
   *
   * @param address its address
   * @param formula short name
   * @param variant name of the variant, or null
   * @param revision its number
   * @param commit commit id, or null for a file edited by hand
   * @param time when, or null
   * @param author who, or null
   * @param note its note, or null
   * @param name name of the formula for people
   */
  public record SideView(
      String address,
      String formula,
      String variant,
      int revision,
      String commit,
      String time,
      String author,
      String note,
      String name) {}

  /**
   * A line on both sides.
   *
   * @param id its id
   * @param name name of the food, of the later side unless removed
   * @param otherName name of the earlier food when it was replaced, or null
   * @param change {@code added}, {@code removed}, {@code changed}, {@code replaced}, {@code
   *     rewritten} (written differently, weighs the same) or {@code same}
   * @param fromEntered amount as entered before, or null
   * @param toEntered amount as entered now, or null
   * @param fromG grams before; 0 when the line was not there, null when unresolved
   * @param toG grams now; 0 when the line is not there, null when unresolved
   * @param deltaG the difference, or null
   * @param percentChange in percent of before, or null
   * @param fromBakersPercent before, or null
   * @param toBakersPercent now, or null
   * @param moved whether it was put at another place
   * @param flour whether it counts as flour now: true, false; null when the mark did not change
   * @param fromNote its note before when that changed, else null
   * @param toNote its note now when that changed, else null
   */
  public record LineDifference(
      String id,
      String name,
      String otherName,
      String change,
      String fromEntered,
      String toEntered,
      Double fromG,
      Double toG,
      Double deltaG,
      Double percentChange,
      Double fromBakersPercent,
      Double toBakersPercent,
      boolean moved,
      Boolean flour,
      String fromNote,
      String toNote) {}

  /**
   * A food whose own data differ.
   *
   * @param food slug
   * @param name name
   * @param figures what differs
   */
  public record FoodDifference(String food, String name, List<FieldDifference> figures) {}

  /**
   * A field that differs.
   *
   * @param field its name for people
   * @param from before, or null when not stated
   * @param to now, or null when not stated
   */
  public record FieldDifference(String field, String from, String to) {}

  /**
   * A figure on both sides.
   *
   * @param label name for people
   * @param unit unit, may be empty
   * @param from before, or null when not exactly known
   * @param to now, or null when not exactly known
   * @param delta the difference, or null
   * @param fromText before in words, such as {@code at least 3.1 g}
   * @param toText now in words
   * @param deltaText the difference in words, with its sign
   * @param contributions what moved it; add up to the delta; empty unless both sides are exactly
   *     known
   */
  public record FigureDifference(
      String label,
      String unit,
      Double from,
      Double to,
      Double delta,
      String fromText,
      String toText,
      String deltaText,
      List<ContributionView> contributions) {}

  /**
   * A cause and its share in a difference.
   *
   * @param cause in words, such as {@code water −22 g}
   * @param line id of the line, or null for other causes
   * @param delta its share
   */
  public record ContributionView(String cause, String line, double delta) {}

  /**
   * How the rules of the goals stand on both sides.
   *
   * @param fromGoal name of the earlier side's goal, or null
   * @param toGoal name of the later side's goal, or null
   * @param rules each rule of either goal
   */
  public record GoalDifference(String fromGoal, String toGoal, List<GoalRuleDifference> rules) {}

  /**
   * A rule on both sides.
   *
   * @param rule in words
   * @param figure name of the figure, or null
   * @param per basis key, or null
   * @param limit its bounds, or null
   * @param fromMet before: true, false, or null for not known or no such rule
   * @param toMet now: true, false, or null
   * @param change {@code newly met}, {@code newly broken}, {@code newly unknown}, {@code still
   *     met}, {@code still broken}, {@code still unknown}, {@code only before} or {@code only now}
   */
  public record GoalRuleDifference(
      String rule,
      String figure,
      String per,
      Views.LimitView limit,
      Boolean fromMet,
      Boolean toMet,
      String change) {}

  /**
   * A step of the method on both sides.
   *
   * @param change {@code same}, {@code added}, {@code removed} or {@code changed}
   * @param fromNumber its number before, or null
   * @param toNumber its number now, or null
   * @param runs its text in runs
   */
  public record StepDifference(
      String change, Integer fromNumber, Integer toNumber, List<RunView> runs) {}

  /**
   * A run of words.
   *
   * @param change {@code same}, {@code added} or {@code removed}
   * @param text the words
   */
  public record RunView(String change, String text) {}

  /**
   * What was baked on both sides.
   *
   * @param from bakes of the earlier side
   * @param to bakes of the later side
   * @param figures best height, mean liking, loss and others, where measured on a side
   * @param findings the findings of both sides
   * @param comparablePieces pieces of both sides that had the same oven temperature and time, in
   *     words
   */
  public record OutcomeView(
      List<Views.BakeView> from,
      List<Views.BakeView> to,
      List<OutcomeFigure> figures,
      List<FindingDifference> findings,
      List<String> comparablePieces) {}

  /**
   * A measured outcome on both sides.
   *
   * @param label name for people
   * @param unit unit, may be empty
   * @param from before, or null when not measured
   * @param to now, or null when not measured
   * @param delta the difference, or null
   * @param fromCount on how many measurements the earlier rests
   * @param toCount on how many measurements the later rests
   */
  public record OutcomeFigure(
      String label,
      String unit,
      Double from,
      Double to,
      Double delta,
      int fromCount,
      int toCount) {}

  /**
   * A finding on both sides.
   *
   * @param word the word
   * @param merit true for a merit, false for a fault, null for free words
   * @param fromPieces on how many pieces it was found before
   * @param toPieces on how many pieces it is found now
   * @param change {@code appeared}, {@code gone}, {@code stayed} or {@code not
   *     comparable} when one side was not baked
   */
  public record FindingDifference(
      String word, Boolean merit, int fromPieces, int toPieces, String change) {}
}
