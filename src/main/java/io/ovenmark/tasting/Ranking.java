package io.ovenmark.tasting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * What a ranking shows.
 *
 * @param answered how many ranked
 * @param rankSums for each sample the sum of its ranks; 1 is the best, so the least sum is
 * @param friedman the test of all samples together; empty without answers
 * @param leastDifference least significant difference of two rank sums at α 0.05 (normal
 *     approximation, 1.96 √(n k (k + 1) / 6)); only to be used when the test of all shows a
 *     difference
 * @param pairs every two samples, the better first
 * @param agreement Kendall's W: 0 when the tasters do not agree at all, 1 when all rank alike
 * @param bestP the least probability that this many tasters could give, were all of one mind
 */
public record Ranking(
    int answered,
    List<Integer> rankSums,
    Optional<Friedman> friedman,
    double leastDifference,
    List<Pair> pairs,
    double agreement,
    double bestP) {
  /**
   * Two samples.
   *
   * @param better place of the one with the smaller rank sum, from 1
   * @param other place of the other
   * @param difference of their rank sums, 0 or more
   * @param apart whether all together differ and these two by at least the least difference
   */
  public record Pair(int better, int other, int difference, boolean apart) {}

  /** Copies. */
  public Ranking {
    rankSums = List.copyOf(rankSums);
    pairs = List.copyOf(pairs);
  }

  /**
   * Works it out.
   *
   * @param ranks for each taster the rank of each sample, 1 for the best, all different
   * @param samples how many samples there are
   * @return the result
   */
  public static Ranking of(List<List<Integer>> ranks, int samples) {
    int tasters = ranks.size();
    List<Integer> sums = new ArrayList<>();
    for (int j = 0; j < samples; j++) {
      int sum = 0;
      for (List<Integer> row : ranks) {
        sum += row.get(j);
      }
      sums.add(sum);
    }
    Optional<Friedman> friedman =
        ranks.isEmpty()
            ? Optional.empty()
            : Optional.of(
                Friedman.of(
                    ranks.stream()
                        .map(row -> row.stream().map(Integer::doubleValue).toList())
                        .toList()));
    double z = NormalDistribution.of(0, 1).inverseSurvivalProbability(Chance.ALPHA / 2);
    double least = z * Math.sqrt(tasters * samples * (samples + 1) / 6.0);
    double agreement =
        friedman.map(test -> test.statistic() / (tasters * (samples - 1.0))).orElse(0.0);
    boolean differ = friedman.filter(test -> test.p() <= Chance.ALPHA).isPresent();
    return new Ranking(
        tasters,
        sums,
        friedman,
        least,
        pairs(sums, differ, least),
        agreement,
        Math.pow(1 / factorial(samples), tasters - 1.0));
  }

  private static List<Pair> pairs(List<Integer> sums, boolean differ, double least) {
    List<Pair> pairs = new ArrayList<>();
    for (int a = 0; a < sums.size(); a++) {
      for (int b = a + 1; b < sums.size(); b++) {
        int difference = sums.get(b) - sums.get(a);
        boolean apart = differ && Math.abs(difference) >= least;
        pairs.add(
            difference >= 0
                ? new Pair(a + 1, b + 1, difference, apart)
                : new Pair(b + 1, a + 1, -difference, apart));
      }
    }
    return pairs;
  }

  private static double factorial(int number) {
    double product = 1;
    for (int i = 2; i <= number; i++) {
      product *= i;
    }
    return product;
  }
}
