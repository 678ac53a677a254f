package io.ovenmark.publish.label;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Decimal numbers at the edges of rules. A figure is taken as the shortest decimal that names it,
 * with twelve digits: what binary fractions add to or take from a sum (4.749999999999999 for 4.75)
 * never decides on which side of an edge it falls.
 */
final class Exact {
  private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_UP);

  private Exact() {}

  static BigDecimal of(double value) {
    return new BigDecimal(Double.toString(value)).round(DIGITS);
  }

  /** The multiple of a step that is nearest; half way goes up. */
  static BigDecimal nearest(BigDecimal value, String step) {
    BigDecimal size = new BigDecimal(step);
    return value.divide(size, 0, RoundingMode.HALF_UP).multiply(size);
  }

  static boolean below(BigDecimal value, String edge) {
    return value.compareTo(new BigDecimal(edge)) < 0;
  }

  static boolean atMost(BigDecimal value, String edge) {
    return value.compareTo(new BigDecimal(edge)) <= 0;
  }
}
