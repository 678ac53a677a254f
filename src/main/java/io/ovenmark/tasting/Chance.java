package io.ovenmark.tasting;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/** The levels that all results use, and exact probabilities of counts. */
final class Chance {
  /** How often chance alone may pass for a difference. */
  static final double ALPHA = 0.05;

  /** How often a difference that is there shall be seen before a panel is called able to see it. */
  static final double POWER = 0.8;

  private Chance() {}

  /** The probability of at least so many successes. */
  static double atLeast(int successes, int trials, double share) {
    return successes <= 0
        ? 1
        : BinomialDistribution.of(trials, share).survivalProbability(successes - 1);
  }

  /**
   * The share of successes at which at least so many come with a probability: the binomial tail is
   * a beta distribution in its share.
   */
  static double shareForAtLeast(int successes, int trials, double probability) {
    return BetaDistribution.of(successes, trials - successes + 1.0)
        .inverseCumulativeProbability(probability);
  }

  /** The lower bound of a share, exact after Clopper and Pearson (Biometrika 26, 1934). */
  static double lowerBound(int successes, int trials, double alpha) {
    return successes == 0 ? 0 : shareForAtLeast(successes, trials, alpha);
  }

  /** The upper bound of a share, exact after Clopper and Pearson. */
  static double upperBound(int successes, int trials, double alpha) {
    return successes == trials ? 1 : shareForAtLeast(successes + 1, trials, 1 - alpha);
  }
}
