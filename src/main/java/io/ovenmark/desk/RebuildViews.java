package io.ovenmark.desk;

import java.util.List;

/** The records of a conventional formula beside its rebuild; see {@link Views} for the manner. */
public final class RebuildViews {
  private RebuildViews() {}

  /**
   * A conventional formula and its rebuild, line by line and piece by piece.
   *
   * @param reference the conventional formula
   * @param rebuild the formula that was rebuilt from it
   * @param summary how they differ, in a sentence or two
   * @param parts the lines side by side, by the part that they play
   * @param pieces the figures of a piece side by side
   * @param hundred the figures of 100 g of dough side by side
   * @param batch the figures of the formula side by side
   * @param goal the rebuild's goal held against both sides, or null without goal
   * @param allergensGained allergens that only the rebuild contains
   * @param allergensLost allergens that only the reference contains
   * @param allergensUnknownIn foods of the rebuild whose allergens are unknown
   * @param cost what a batch and a piece of each cost
   * @param structure what the rebuild changes in the work of the dough that figures do not show
   * @param remarks what else a person should know
   * @param cautions what to mind with the rebuild
   */
  public record RebuildSheet(
      SideView reference,
      SideView rebuild,
      String summary,
      List<PartView> parts,
      List<FigureView> pieces,
      List<FigureView> hundred,
      List<FigureView> batch,
      GoalView goal,
      List<String> allergensGained,
      List<String> allergensLost,
      List<String> allergensUnknownIn,
      CostViews.CostDifference cost,
      List<String> structure,
      List<String> remarks,
      List<String> cautions) {}

  /**
   * One of the two.
   *
   * @param address its state
   * @param formula short name
   * @param variant name of the variant, or null
   * @param name name for people
   * @param pieces number of pieces of a batch, or null
   * @param doughPerPieceG dough mass of a piece, or null
   */
  public record SideView(
      String address,
      String formula,
      String variant,
      String name,
      Double pieces,
      Double doughPerPieceG) {}

  /**
   * Lines that play one part.
   *
   * @param part its name in words
   * @param from all of them in the reference
   * @param to all of them in the rebuild
   * @param lines side by side
   */
  public record PartView(String part, ShareView from, ShareView to, List<RowView> lines) {}

  /**
   * A line on both sides, or on the one that has it.
   *
   * @param id the line's id
   * @param change {@code added}, {@code removed}, {@code changed}, {@code rewritten}, {@code
   *     replaced} or {@code same}
   * @param from the reference's line, or null
   * @param to the rebuild's line, or null
   */
  public record RowView(String id, String change, ShareView from, ShareView to) {}

  /**
   * What a line, or several, bring.
   *
   * @param name the food's name, or null for several lines
   * @param entered what was entered, or null likewise
   * @param figures mass and share of the batch, and what it brings to a piece
   */
  public record ShareView(String name, String entered, FigureSet figures) {}

  /**
   * A figure on both sides.
   *
   * @param figure name of the figure
   * @param label for people
   * @param unit its unit, empty for none
   * @param from in the reference, or null when not exactly known
   * @param to in the rebuild, or null likewise
   * @param delta the difference, or null likewise
   * @param fromText in the reference, in words
   * @param toText in the rebuild, in words
   * @param changeText both in words
   * @param deltaText the difference in words; empty when it is not known
   */
  public record FigureView(
      String figure,
      String label,
      String unit,
      Double from,
      Double to,
      Double delta,
      String fromText,
      String toText,
      String changeText,
      String deltaText) {}

  /**
   * The rebuild's goal, held against both sides.
   *
   * @param goal short name
   * @param name for people
   * @param from whether the reference meets it, or null when not known
   * @param to whether the rebuild meets it, or null when not known
   * @param rules rule by rule
   */
  public record GoalView(
      String goal, String name, Boolean from, Boolean to, List<RuleView> rules) {}

  /**
   * A rule of the goal on both sides.
   *
   * @param rule in words
   * @param from whether the reference keeps it, or null when not known
   * @param to whether the rebuild keeps it, or null when not known
   * @param fromText the reference's figure or the foods that decide, in words; empty for none
   * @param toText the same of the rebuild
   */
  public record RuleView(
      String rule, Boolean from, Boolean to, String fromText, String toText) {}
}
