package io.ovenmark.worksheet;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.measure.Quantity;
import java.util.List;

/**
 * How much of the dough mass is left after the oven, from weighed pieces.
 *
 * @param share baked mass divided by dough mass over all pieces of which both were weighed; unknown
 *     when there is none
 * @param pieces how many pieces that rests on
 */
public record BakedYield(Quantity share, int pieces) {
  /** Checks that the share is given. */
  public BakedYield {
    requireNonNull(share, "share");
  }

  /** Nothing was weighed. */
  public static final BakedYield UNMEASURED = new BakedYield(Quantity.UNKNOWN, 0);

  /**
   * From the bakes of one formula blob.
   *
   * @param bakes the bakes
   * @return total baked mass by total dough mass
   */
  public static BakedYield measured(List<Bake> bakes) {
    return measuredOf(bakes.stream().flatMap(bake -> bake.pieces().stream()).toList());
  }

  /**
   * From pieces of one formula blob.
   *
   * @param pieces the pieces
   * @return total baked mass by total dough mass
   */
  public static BakedYield measuredOf(List<Piece> pieces) {
    double dough = 0;
    double baked = 0;
    int count = 0;
    for (Piece piece : pieces) {
      if (piece.doughGrams().orElse(0) > 0 && piece.bakedGrams().isPresent()) {
        dough += piece.doughGrams().getAsDouble();
        baked += piece.bakedGrams().getAsDouble();
        count++;
      }
    }
    return count == 0 ? UNMEASURED : new BakedYield(Quantity.known(baked / dough), count);
  }
}
