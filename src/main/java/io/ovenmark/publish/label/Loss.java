package io.ovenmark.publish.label;

import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Worksheet;
import java.util.OptionalDouble;

/**
 * What the oven takes from the dough, and how that is known. The loss is water (Greenfield and
 * Southgate, <i>Food composition data</i>, 2nd ed., FAO 2003). Where nobody weighed or entered it,
 * it lies between nothing and all the water of the dough.
 *
 * @param kind how it is known
 * @param percent the loss in percent of the dough
 * @param measuredPercent what was weighed, also where another was entered; empty when nothing was
 * @param pieces on how many weighed pieces that rests
 */
public record Loss(Kind kind, Quantity percent, OptionalDouble measuredPercent, int pieces) {
  /** How a loss is known. */
  public enum Kind {
    /** Weighed in bakes of this revision. */
    MEASURED("measured"),
    /** An allowance that somebody entered. */
    ENTERED("entered"),
    /** Not known. */
    UNKNOWN("unknown");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    /**
     * The name in JSON.
     *
     * @return such as {@code measured}
     */
    public String key() {
      return key;
    }
  }

  private static final double ALL = 100;

  /** The loss that a label of a worksheet rests on: what was entered, else what was weighed. */
  static Loss of(Worksheet sheet, OptionalDouble entered) {
    BakedYield yield = sheet.bakedYield();
    Quantity measured = Quantity.known(ALL).minus(yield.share().times(ALL));
    OptionalDouble weighed = yield.share().isKnown() ? measured.value() : OptionalDouble.empty();
    if (entered.isPresent()) {
      return new Loss(
          Kind.ENTERED, Quantity.known(entered.getAsDouble()), weighed, yield.pieces());
    }
    if (weighed.isPresent()) {
      return new Loss(Kind.MEASURED, measured, weighed, yield.pieces());
    }
    double most = Math.min(ALL, sheet.doughMoisturePercent().high());
    return new Loss(Kind.UNKNOWN, Quantity.between(0, most), weighed, 0);
  }

  /** The share of the dough that is left. */
  BakedYield yield() {
    return new BakedYield(
        Quantity.known(1).minus(percent.dividedBy(ALL)).notNegative(), pieces);
  }
}
