package io.ovenmark.desk;

import java.util.List;

/** The records of answers about scaling; see {@link Views} for the manner of all of them. */
public final class ScaleViews {
  private ScaleViews() {}

  /**
   * A formula scaled.
   *
   * @param address the state that was scaled
   * @param formula short name
   * @param variant name of the variant, or null
   * @param revision its number; for a file edited by hand the number that it would get
   * @param name name for people
   * @param summary what was made of it, in a sentence
   * @param factor by which every line is multiplied
   * @param readableG what the scale can show; 0 for exact masses
   * @param yield pieces, batch, dough, dough a piece and baked mass a piece, with exact masses
   * @param handlingLossPercent loss on handling, or null when none is stated
   * @param bakingLossPercent loss on baking, or null when it is not known
   * @param lines what to measure
   * @param rounding what measuring moves: from the exact figure to the one as measured
   * @param tin what a tin takes, or null
   * @param atHand what was said to be at hand
   * @param cost what a batch and a piece of it cost
   * @param remarks what else a person should know
   * @param cautions what to mind
   */
  public record ScaleSheet(
      String address,
      String formula,
      String variant,
      int revision,
      String name,
      String summary,
      double factor,
      double readableG,
      FigureSet yield,
      Double handlingLossPercent,
      Double bakingLossPercent,
      List<LineView> lines,
      List<LeverViews.MoveView> rounding,
      TinView tin,
      List<HandView> atHand,
      CostViews.CostView cost,
      List<String> remarks,
      List<String> cautions) {}

  /**
   * A line to measure.
   *
   * @param line its id
   * @param name its name for people
   * @param entered what the formula states
   * @param fromG its mass there, or null when it is not known
   * @param exactG its scaled mass, or null likewise
   * @param measure what to measure
   * @param measuredG the mass of that, or null when it is not known
   * @param errorPercent what measuring makes it more or less, or null
   * @param how {@code weighed}, {@code spoons}, {@code counted} or {@code as written}
   */
  public record LineView(
      String line,
      String name,
      String entered,
      Double fromG,
      Double exactG,
      String measure,
      Double measuredG,
      Double errorPercent,
      String how) {}

  /**
   * What a tin takes.
   *
   * @param tin the tin in words
   * @param volumeMl its volume up to the rim
   * @param doughG dough for one tin
   * @param gPerMl dough for a millilitre of the tin
   * @param because where that comes from
   */
  public record TinView(
      String tin, double volumeMl, double doughG, double gPerMl, String because) {}

  /**
   * Something at hand.
   *
   * @param food its name
   * @param haveG what is at hand
   * @param usedG what the scaled formula takes
   * @param leftG what is left
   * @param scarcest whether it decides
   */
  public record HandView(
      String food, double haveG, double usedG, double leftG, boolean scarcest) {}
}
