package io.ovenmark.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The point nearest to another within linear conditions, found by trying every set of conditions
 * that may hold with equality and solving its normal equations: slow, and independent of any
 * solver.
 */
final class ActiveSets {
  private static final double SMALL = 1e-9;

  private ActiveSets() {}

  /** A one-sided condition or an equation: coefficients times point ≥ bound, or =. */
  private record Half(double[] coefficients, double bound, boolean equation) {}

  static Optional<double[]> nearest(double[] target, List<Row> rows) {
    List<Half> halves = new ArrayList<>();
    for (Row row : rows) {
      if (row.low() == row.high()) {
        halves.add(new Half(row.coefficients(), row.low(), true));
        continue;
      }
      if (Double.isFinite(row.low())) {
        halves.add(new Half(row.coefficients(), row.low(), false));
      }
      if (Double.isFinite(row.high())) {
        halves.add(new Half(negated(row.coefficients()), -row.high(), false));
      }
    }
    double[] best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int set = 0; set < 1 << halves.size(); set++) {
      List<Half> active = new ArrayList<>();
      boolean all = true;
      for (int i = 0; i < halves.size(); i++) {
        boolean chosen = (set >> i & 1) == 1;
        all &= chosen || !halves.get(i).equation();
        if (chosen) {
          active.add(halves.get(i));
        }
      }
      if (!all || active.size() > target.length) {
        continue;
      }
      double[] point = projected(target, active);
      if (point != null && isInside(point, halves)) {
        double distance = 0;
        for (int i = 0; i < point.length; i++) {
          distance += (point[i] - target[i]) * (point[i] - target[i]);
        }
        if (distance < least) {
          least = distance;
          best = point;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean isInside(double[] point, List<Half> halves) {
    for (Half half : halves) {
      double sum = dot(half.coefficients, point) - half.bound;
      if (half.equation ? Math.abs(sum) > SMALL : sum < -SMALL) {
        return false;
      }
    }
    return true;
  }

  /** The nearest point on the planes; null when they are not independent. */
  private static double[] projected(double[] target, List<Half> active) {
    int n = active.size();
    double[][] normal = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        normal[i][j] = dot(active.get(i).coefficients, active.get(j).coefficients);
      }
      normal[i][n] = active.get(i).bound - dot(active.get(i).coefficients, target);
    }
    double[] multipliers = eliminated(normal);
    if (multipliers == null) {
      return null;
    }
    double[] point = target.clone();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < point.length; j++) {
        point[j] += multipliers[i] * active.get(i).coefficients[j];
      }
    }
    return point;
  }

  private static double[] eliminated(double[][] m) {
    int n = m.length;
    for (int i = 0; i < n; i++) {
      int pivot = i;
      for (int k = i + 1; k < n; k++) {
        pivot = Math.abs(m[k][i]) > Math.abs(m[pivot][i]) ? k : pivot;
      }
      double[] row = m[pivot];
      m[pivot] = m[i];
      m[i] = row;
      if (Math.abs(m[i][i]) < 1e-10) {
        return null;
      }
      for (int k = 0; k < n; k++) {
        if (k != i) {
          double factor = m[k][i] / m[i][i];
          for (int j = i; j <= n; j++) {
            m[k][j] -= factor * m[i][j];
          }
        }
      }
    }
    double[] solution = new double[n];
    for (int i = 0; i < n; i++) {
      solution[i] = m[i][n] / m[i][i];
    }
    return solution;
  }

  private static double[] negated(double[] coefficients) {
    double[] negated = coefficients.clone();
    for (int i = 0; i < negated.length; i++) {
      negated[i] = -negated[i];
    }
    return negated;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
