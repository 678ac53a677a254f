package io.ovenmark.desk;

import java.util.List;

/**
 * A question about scaling as it is typed or sent. Every part may be null or empty.
 *
 * @param pieces number of pieces, or of tins
 * @param doughPerPiece dough mass of a piece, such as {@code 95 g}
 * @param bakedPerPiece baked mass of a piece, such as {@code 80 g}
 * @param tin the tin that a piece shall fill, such as {@code round:20cmx5cm}
 * @param fromTin the tin that a piece of the formula fills now
 * @param density density of the dough in grams a millilitre, such as {@code 1.1 g/ml}
 * @param fill how much of the tin the dough fills, such as {@code 60 %}
 * @param have what is at hand, such as {@code psyllium-husk=40 g}
 * @param handlingLoss share that stays in the bowl and on hands, such as {@code 3 %}
 * @param bakingLoss share of the dough that leaves in the oven, such as {@code 12 %}
 * @param readable what the scale can show, such as {@code 1 g} or {@code exact}; null for 0.1 g
 */
public record ScaleOrder(
    String pieces,
    String doughPerPiece,
    String bakedPerPiece,
    String tin,
    String fromTin,
    String density,
    String fill,
    List<String> have,
    String handlingLoss,
    String bakingLoss,
    String readable) {
  /** Copies the list; null becomes empty. */
  public ScaleOrder {
    have = have == null ? List.of() : List.copyOf(have);
  }

  /**
   * A question for a number of pieces.
   *
   * @param count the number
   * @return the question
   */
  public static ScaleOrder ofPieces(String count) {
    return new ScaleOrder(
        count, null, null, null, null, null, null, null, null, null, null);
  }
}
