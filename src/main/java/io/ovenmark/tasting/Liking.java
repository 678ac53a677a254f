package io.ovenmark.tasting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * What scores of liking show.
 *
 * @param samples each sample by itself
 * @param blocks the samples against each other, over the tasters that scored all of them; empty
 *     with one sample or fewer than two such tasters
 */
public record Liking(List<One> samples, Optional<Blocks> blocks) {
  /**
   * One sample.
   *
   * @param scored how many scored it
   * @param mean mean liking; empty without scores
   * @param deviation standard deviation between tasters; empty with fewer than two
   * @param lowest lower end of the 95 % t interval of the mean, cut at 1; empty with fewer than two
   * @param highest upper end, cut at 9
   * @param counts how many gave 1, 2 … 9; halves count upwards
   */
  public record One(
      int scored,
      OptionalDouble mean,
      OptionalDouble deviation,
      OptionalDouble lowest,
      OptionalDouble highest,
      List<Integer> counts) {
    /** Copies. */
    public One {
      counts = List.copyOf(counts);
    }
  }

  /** Copies. */
  public Liking {
    samples = List.copyOf(samples);
  }

  /**
   * Works it out.
   *
   * @param scores for each taster the score of each sample; empty where it was not given
   * @param samples how many samples there are
   * @return the result
   */
  public static Liking of(List<List<OptionalDouble>> scores, int samples) {
    List<One> ones = new ArrayList<>();
    for (int j = 0; j < samples; j++) {
      int sample = j;
      ones.add(
          one(
              scores.stream()
                  .map(row -> row.get(sample))
                  .filter(OptionalDouble::isPresent)
                  .map(OptionalDouble::getAsDouble)
                  .toList()));
    }
    List<List<Double>> complete =
        scores.stream()
            .filter(row -> row.stream().allMatch(OptionalDouble::isPresent))
            .map(row -> row.stream().map(OptionalDouble::getAsDouble).toList())
            .toList();
    return new Liking(
        ones,
        samples >= 2 && complete.size() >= 2
            ? Optional.of(Blocks.of(complete))
            : Optional.empty());
  }

  private static One one(List<Double> scores) {
    int n = scores.size();
    List<Integer> counts = new ArrayList<>();
    for (int value = (int) Score.LIKING.least(); value <= Score.LIKING.most(); value++) {
      int wanted = value;
      counts.add((int) scores.stream().filter(score -> Math.round(score) == wanted).count());
    }
    OptionalDouble none = OptionalDouble.empty();
    if (n == 0) {
      return new One(0, none, none, none, none, counts);
    }
    double mean = mean(scores);
    if (n == 1) {
      return new One(1, OptionalDouble.of(mean), none, none, none, counts);
    }
    double squares = scores.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
    double deviation = Math.sqrt(squares / (n - 1));
    double half =
        TDistribution.of(n - 1).inverseSurvivalProbability(Chance.ALPHA / 2)
            * deviation
            / Math.sqrt(n);
    return new One(
        n,
        OptionalDouble.of(mean),
        OptionalDouble.of(deviation),
        OptionalDouble.of(Math.max(Score.LIKING.least(), mean - half)),
        OptionalDouble.of(Math.min(Score.LIKING.most(), mean + half)),
        counts);
  }

  static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
