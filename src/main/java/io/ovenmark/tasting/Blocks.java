package io.ovenmark.tasting;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Samples compared within tasters: the analysis of variance of randomised complete blocks, each
 * taster a block; with two samples it is the paired t-test (F = t²). Pairs are compared with
 * Fisher's least significant difference, to be used only when all together differ.
 *
 * @param tasters how many scored all samples
 * @param f the ratio of variances; empty when the tasters differ in nothing but their level, so
 *     that there is no error to compare with
 * @param samplesFreedom samples less one
 * @param errorFreedom (samples less one) × (tasters less one)
 * @param p probability of such differences by chance
 * @param leastDifference least significant difference of two means at α 0.05
 * @param visible difference of two means that this many see at α 0.05 four times in five
 *     (approximately: the sum of two t quantiles times the standard error)
 * @param pairs every two samples, the better first
 */
public record Blocks(
    int tasters,
    OptionalDouble f,
    int samplesFreedom,
    int errorFreedom,
    double p,
    double leastDifference,
    double visible,
    List<Pair> pairs) {
  private static final double NOTHING = 1e-12;

  /**
   * Two samples.
   *
   * @param better place of the one with the greater mean, from 1
   * @param other place of the other
   * @param difference of their means over these tasters, 0 or more
   * @param lowest lower end of its 95 % interval
   * @param highest upper end
   * @param apart whether all together differ and these two by at least the least difference
   */
  public record Pair(
      int better, int other, double difference, double lowest, double highest, boolean apart) {}

  /** Copies. */
  public Blocks {
    pairs = List.copyOf(pairs);
  }

  /**
   * Works it out.
   *
   * @param scores for each taster the score of each sample, at least two of either
   * @return the analysis
   */
  public static Blocks of(List<List<Double>> scores) {
    int tasters = scores.size();
    int samples = scores.get(0).size();
    double grand = Liking.mean(scores.stream().flatMap(List::stream).toList());
    List<Double> means = new ArrayList<>();
    for (int j = 0; j < samples; j++) {
      int sample = j;
      means.add(Liking.mean(scores.stream().map(row -> row.get(sample)).toList()));
    }
    double between = 0;
    for (double mean : means) {
      between += tasters * (mean - grand) * (mean - grand);
    }
    double error = 0;
    for (List<Double> row : scores) {
      double level = Liking.mean(row);
      for (int j = 0; j < samples; j++) {
        double rest = row.get(j) - level - means.get(j) + grand;
        error += rest * rest;
      }
    }
    int samplesFreedom = samples - 1;
    int errorFreedom = (samples - 1) * (tasters - 1);
    double meanSquare = error / errorFreedom;
    boolean exactAlike = meanSquare < NOTHING;
    double p;
    OptionalDouble f = OptionalDouble.empty();
    if (exactAlike) {
      p = between < NOTHING ? 1 : 0;
    } else {
      f = OptionalDouble.of(between / samplesFreedom / meanSquare);
      p = FDistribution.of(samplesFreedom, errorFreedom).survivalProbability(f.getAsDouble());
    }
    TDistribution t = TDistribution.of(errorFreedom);
    double standard = Math.sqrt(2 * meanSquare / tasters);
    double half = t.inverseSurvivalProbability(Chance.ALPHA / 2);
    double least = half * standard;
    double visible = (half + t.inverseCumulativeProbability(Chance.POWER)) * standard;
    return new Blocks(
        tasters,
        f,
        samplesFreedom,
        errorFreedom,
        p,
        least,
        visible,
        pairs(means, p <= Chance.ALPHA, least));
  }

  private static List<Pair> pairs(List<Double> means, boolean differ, double least) {
    List<Pair> pairs = new ArrayList<>();
    for (int a = 0; a < means.size(); a++) {
      for (int b = a + 1; b < means.size(); b++) {
        boolean first = means.get(a) >= means.get(b);
        double difference = Math.abs(means.get(a) - means.get(b));
        pairs.add(
            new Pair(
                (first ? a : b) + 1,
                (first ? b : a) + 1,
                difference,
                difference - least,
                difference + least,
                differ && difference >= least && difference > NOTHING));
      }
    }
    return pairs;
  }
}
