package io.ovenmark.lever;

/**
 * A figure as a quotient of two sums over the unknowns of a {@link Dough}. A wish on it becomes
 * linear when both sides are multiplied by the divisor, which is above 0.
 *
 * @param top coefficients of the dividend
 * @param bottom coefficients of the divisor
 * @param constant what is added to the divisor
 */
record Fraction(double[] top, double[] bottom, double constant) {

  /** The value at a point. */
  double at(double[] point) {
    double dividend = 0;
    double divisor = constant;
    for (int i = 0; i < top.length; i++) {
      dividend += top[i] * point[i];
      divisor += bottom[i] * point[i];
    }
    return dividend / divisor;
  }

  /** The condition that the value is no less than a bound. */
  Row atLeast(double bound) {
    return new Row(less(bound), bound * constant, Double.POSITIVE_INFINITY);
  }

  /** The condition that the value is no more than a bound. */
  Row atMost(double bound) {
    return new Row(less(bound), Double.NEGATIVE_INFINITY, bound * constant);
  }

  /** The condition that it is a value. */
  Row equal(double value) {
    return new Row(less(value), value * constant, value * constant);
  }

  private double[] less(double bound) {
    double[] coefficients = top.clone();
    for (int i = 0; i < coefficients.length; i++) {
      coefficients[i] -= bound * bottom[i];
    }
    return coefficients;
  }
}
