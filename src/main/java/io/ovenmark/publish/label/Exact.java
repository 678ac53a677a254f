package io.ovenmark.publish.label;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.Predicate;

/**
 * Decimal numbers at the edges of rules. A figure is taken as the shortest decimal that names it,
 * with twelve digits: what binary fractions add to or take from a sum (4.749999999999999 for 4.75)
 * never decides on which side of an edge it falls.
 */
final class Exact {
  private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_UP);

  private static final int FIGURES = 3;

  private Exact() {}

  static BigDecimal of(double value) {
    return new BigDecimal(Double.toString(value)).round(DIGITS);
  }

  /**
   * A number in three figures, or in as many more as it takes until what is shown is judged like
   * the number itself: 11.47, which is declared as 11, is not shown as 11.5.
   */
  static String shown(double value, Predicate<Double> judgedAlike) {
    BigDecimal exact = of(value);
    int whole = exact.precision() - exact.scale();
    for (int figures = Math.max(FIGURES, whole); figures < DIGITS.getPrecision(); figures++) {
      BigDecimal shown = exact.round(new MathContext(figures, RoundingMode.HALF_UP));
      if (judgedAlike.test(shown.doubleValue())) {
        return plain(shown);
      }
    }
    return plain(exact);
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
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
