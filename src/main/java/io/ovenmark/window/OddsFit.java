package io.ovenmark.window;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Bayesian logistic regression of a yes or no: normal priors, the posterior taken as normal about
 * its greatest density (Laplace). The chance at a row averages over what is not sure by MacKay's
 * formula, logistic(η ÷ √(1 + πv/8)) (D. MacKay, The evidence framework applied to classification
 * networks, 1992; from memory). The greatest density is found by Newton's method, each step a
 * weighted least-squares problem, halved while it would lead down. Also when all answers are alike,
 * or when a line divides them, the prior keeps it finite.
 */
final class OddsFit {
  private static final int STEPS = 60;
  private static final double SETTLED = 1e-10;
  private static final double LEAST_WEIGHT = 1e-9;

  private final Posterior posterior;

  private OddsFit(Posterior posterior) {
    this.posterior = posterior;
  }

  /**
   * Fits.
   *
   * @param rows a row for each point
   * @param yes whether it was found there
   * @param deviations the prior standard deviation of each coefficient, about 0
   */
  static OddsFit of(List<double[]> rows, List<Boolean> yes, double[] deviations) {
    double[] at = new double[deviations.length];
    double height = height(rows, yes, deviations, at);
    for (int step = 0; step < STEPS; step++) {
      double[] next = newton(rows, yes, deviations, at).mean();
      double higher = height(rows, yes, deviations, next);
      while (higher < height && distance(at, next) > SETTLED) {
        for (int i = 0; i < next.length; i++) {
          next[i] = (next[i] + at[i]) / 2;
        }
        higher = height(rows, yes, deviations, next);
      }
      double moved = distance(at, next);
      if (higher >= height) {
        at = next;
        height = higher;
      }
      if (moved <= SETTLED) {
        break;
      }
    }
    return new OddsFit(newton(rows, yes, deviations, at));
  }

  private static double distance(double[] one, double[] other) {
    double most = 0;
    for (int i = 0; i < one.length; i++) {
      most = Math.max(most, Math.abs(one[i] - other[i]));
    }
    return most;
  }

  private static double height(
      List<double[]> rows, List<Boolean> yes, double[] deviations, double[] at) {
    double sum = 0;
    for (int i = 0; i < rows.size(); i++) {
      double odds = Posterior.product(rows.get(i), at);
      double signed = yes.get(i) ? odds : -odds;
      sum -= signed > 0 ? Math.log1p(Math.exp(-signed)) : Math.log1p(Math.exp(signed)) - signed;
    }
    for (int i = 0; i < at.length; i++) {
      sum -= at[i] * at[i] / (2 * deviations[i] * deviations[i]);
    }
    return sum;
  }

  private static Posterior newton(
      List<double[]> rows, List<Boolean> yes, double[] deviations, double[] at) {
    List<double[]> all = new ArrayList<>();
    double[] right = new double[rows.size() + at.length];
    for (int i = 0; i < rows.size(); i++) {
      double odds = Posterior.product(rows.get(i), at);
      double chance = logistic(odds);
      double weight = Math.max(LEAST_WEIGHT, chance * (1 - chance));
      double root = Math.sqrt(weight);
      all.add(Arrays.stream(rows.get(i)).map(member -> member * root).toArray());
      right[i] = root * (odds + ((yes.get(i) ? 1 : 0) - chance) / weight);
    }
    for (int i = 0; i < at.length; i++) {
      double[] row = new double[at.length];
      row[i] = 1 / deviations[i];
      all.add(row);
    }
    return Posterior.solve(all, right);
  }

  static double logistic(double odds) {
    return odds >= 0 ? 1 / (1 + Math.exp(-odds)) : Math.exp(odds) / (1 + Math.exp(odds));
  }

  /** The chance of yes at a row. */
  double chance(double[] row) {
    return logistic(
        posterior.at(row) / Math.sqrt(1 + Math.PI * posterior.variance(row) / 8));
  }

  Posterior posterior() {
    return posterior;
  }
}
