package io.ovenmark.lever;

import static java.util.Objects.requireNonNull;

/**
 * A linear condition on unknowns: a weighted sum of them lies between two bounds.
 *
 * @param coefficients one for each unknown
 * @param low lower bound, may be negative infinity
 * @param high upper bound, may be infinity; the same as the lower for an equation
 */
record Row(double[] coefficients, double low, double high) {
  Row {
    requireNonNull(coefficients, "coefficients");
    coefficients = coefficients.clone();
  }

  /** An unknown between two bounds. */
  static Row bounds(int unknowns, int which, double low, double high) {
    double[] coefficients = new double[unknowns];
    coefficients[which] = 1;
    return new Row(coefficients, low, high);
  }

  /** The weighted sum at a point. */
  double at(double[] point) {
    double sum = 0;
    for (int i = 0; i < coefficients.length; i++) {
      sum += coefficients[i] * point[i];
    }
    return sum;
  }

  /** The greatest coefficient without its sign. */
  double scale() {
    double most = 0;
    for (double coefficient : coefficients) {
      most = Math.max(most, Math.abs(coefficient));
    }
    return most;
  }

  /** How far a point is outside, in units of the greatest coefficient; 0 inside. */
  double violation(double[] point) {
    double sum = at(point);
    double outside = Math.max(0, Math.max(low - sum, sum - high));
    double scale = scale();
    return scale == 0 ? outside : outside / scale;
  }

  /** Which unknown it bounds when it has no other; −1 when there are several or none. */
  int onlyUnknown() {
    int found = -1;
    for (int i = 0; i < coefficients.length; i++) {
      if (coefficients[i] != 0) {
        if (found >= 0) {
          return -1;
        }
        found = i;
      }
    }
    return found;
  }
}
