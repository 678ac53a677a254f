package io.ovenmark.formula;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a batch gives: either a number of pieces or the dough mass of a piece, from which the other
 * follows.
 *
 * @param pieces number of pieces, at least 1; empty when the dough mass a piece is stated, or neither
 * @param doughPerPieceGrams dough mass of a piece in grams, above 0; empty when pieces are stated
 * @param handlingLossPercent share of the batch mass that stays in the bowl and on hands, from 0 to
 *     below 100; empty when not stated, which counts as no loss
 */
public record Yield(
    Optional<Integer> pieces,
    OptionalDouble doughPerPieceGrams,
    OptionalDouble handlingLossPercent) {
  /** Nothing stated. */
  public static final Yield UNSTATED =
      new Yield(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());

  /** Checks that nothing is null and that not both forms are stated. */
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
