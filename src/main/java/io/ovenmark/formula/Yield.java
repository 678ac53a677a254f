package io.ovenmark.formula;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.Range;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a batch gives: either a number of pieces or the dough mass of a piece, from which the other
 * follows.
 *
 * @param pieces number of pieces, 1 to 100 000; empty when the dough mass a piece is stated, or
 *     neither
 * @param doughPerPieceGrams dough mass of a piece in grams, 0.01 to 1 000 000; empty when pieces
 *     are stated
 * @param handlingLossPercent share of the batch mass that stays in the bowl and on hands, from 0 to
 *     99.9; empty when not stated, which counts as no loss
 */
public record Yield(
    Optional<Integer> pieces,
    OptionalDouble doughPerPieceGrams,
    OptionalDouble handlingLossPercent) {
  /** Most pieces of a batch; the least is 1. */
  static final int MOST_PIECES = 100_000;

  /** Dough mass of a piece in grams, up to a tonne. */
  static final Range DOUGH_GRAMS = new Range(0.01, 1_000_000);

  /** Share of a batch that may be lost; something must be left. */
  static final Range LOSS_PERCENT = new Range(0, 99.9);

  /** Nothing stated. */
  public static final Yield UNSTATED =
      new Yield(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());

  /** Checks that nothing is null, that the figures are possible and not both forms stated. */
  public Yield {
    requireNonNull(pieces, "pieces");
    requireNonNull(doughPerPieceGrams, "doughPerPieceGrams");
    requireNonNull(handlingLossPercent, "handlingLossPercent");
    if (pieces.isPresent() && doughPerPieceGrams.isPresent()) {
      throw new IllegalArgumentException(
          "The yield states both pieces and the dough mass of a piece.\n"
              + "Keep one; the other follows from the batch mass.");
    }
    if (pieces.filter(count -> count < 1).isPresent()) {
      throw new IllegalArgumentException(
          "A batch of fewer than 1 piece yields nothing.\nWrite 1 or more pieces.");
    }
    if (pieces.filter(count -> count > MOST_PIECES).isPresent()) {
      throw new IllegalArgumentException(
          "A batch of more than " + MOST_PIECES + " pieces is absurd.\nCheck the number.");
    }
    DOUGH_GRAMS.check("The dough mass of a piece", doughPerPieceGrams);
    LOSS_PERCENT.check("The handling loss", handlingLossPercent);
  }

  /**
   * So many pieces, without loss.
   *
   * @param count at least 1
   * @return the yield
   */
  public static Yield ofPieces(int count) {
    return new Yield(Optional.of(count), OptionalDouble.empty(), OptionalDouble.empty());
  }
}
