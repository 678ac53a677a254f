package io.ovenmark.tasting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.TDistribution;
import org.apache.commons.statistics.inference.DataDispersion;
import org.apache.commons.statistics.inference.TTest;

/**
 * One attribute of one sample on the just-about-right scale, with its penalty analysis: how much
 * less those like the sample who find too little, or too much, than those who find it right. A side
 * counts from a fifth of the tasters on (common practice, no source).
 *
 * @param sample which sample, from 1
 * @param attribute the attribute
 * @param counts how many scored −2, −1, 0, 1, 2
 * @param right share of tasters who find it just about right, 0 to 1; empty without scores
 * @param tooLittle those who want more
 * @param tooMuch those who want less
 * @param directionP exact two-sided probability of so uneven a division between too little and too
 *     much by chance; empty when nobody wants a change
 */
public record JustAboutRight(
    int sample,
    String attribute,
    List<Integer> counts,
    OptionalDouble right,
    Side tooLittle,
    Side tooMuch,
    OptionalDouble directionP) {
  /** The share of tasters from which a side counts. */
  public static final double LEAST_SHARE = 0.2;

  /**
   * Those who want a change in one direction.
   *
   * @param tasters how many
   * @param share of all who scored the attribute, 0 to 1; empty without scores
   * @param drop mean liking of those who find it right less that of these; empty when either group
   *     scored no liking
   * @param lowest lower end of the drop's 95 % interval (Welch); empty when a group has fewer than
   *     two, or both are of one mind
   * @param highest upper end
   * @param weighted the drop times the share; empty when the drop is
   * @param counts whether the share is large enough to act on
   */
  public record Side(
      int tasters,
      OptionalDouble share,
      OptionalDouble drop,
      OptionalDouble lowest,
      OptionalDouble highest,
      OptionalDouble weighted,
      boolean counts) {}

  /** Copies. */
  public JustAboutRight {
    counts = List.copyOf(counts);
  }

  /**
   * What one taster said.
   *
   * @param score from −2 to 2
   * @param liking of the same sample; empty when not said
   */
  public record Said(int score, OptionalDouble liking) {}

  /**
   * Works it out.
   *
   * @param sample which sample, from 1
   * @param attribute the attribute
   * @param said what the tasters said who scored it
   * @return the result
   */
  public static JustAboutRight of(int sample, String attribute, List<Said> said) {
    List<Integer> counts = new ArrayList<>();
    for (int score = -Score.Attribute.MOST; score <= Score.Attribute.MOST; score++) {
      int wanted = score;
      counts.add((int) said.stream().filter(each -> each.score() == wanted).count());
    }
    int right = counts.get(Score.Attribute.MOST);
    int less = counts.get(0) + counts.get(1);
    int more = said.size() - right - less;
    return new JustAboutRight(
        sample,
        attribute,
        counts,
        share(right, said.size()),
        side(said, -1, less),
        side(said, 1, more),
        Preference.of(less, more, right).p());
  }

  private static OptionalDouble share(int part, int all) {
    return all == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) part / all);
  }

  private static Side side(List<Said> said, int sign, int tasters) {
    OptionalDouble share = share(tasters, said.size());
    double[] right = likings(said, 0);
    double[] there = likings(said, sign);
    OptionalDouble none = OptionalDouble.empty();
    boolean counts = share.isPresent() && share.getAsDouble() >= LEAST_SHARE;
    if (right.length == 0 || there.length == 0) {
      return new Side(tasters, share, none, none, none, none, counts);
    }
    double drop =
        Arrays.stream(right).average().orElseThrow() - Arrays.stream(there).average().orElseThrow();
    OptionalDouble half = half(right, there);
    return new Side(
        tasters,
        share,
        OptionalDouble.of(drop),
        half.isPresent() ? OptionalDouble.of(drop - half.getAsDouble()) : none,
        half.isPresent() ? OptionalDouble.of(drop + half.getAsDouble()) : none,
        OptionalDouble.of(drop * share.orElse(0)),
        counts);
  }

  private static double[] likings(List<Said> said, int sign) {
    return said.stream()
        .filter(each -> Integer.signum(each.score()) == sign && each.liking().isPresent())
        .mapToDouble(each -> each.liking().getAsDouble())
        .toArray();
  }

  /** Half the width of the interval of a difference of means with unequal variances. */
  private static OptionalDouble half(double[] right, double[] there) {
    if (right.length < 2 || there.length < 2) {
      return OptionalDouble.empty();
    }
    double standard = Math.sqrt(variance(right) / right.length + variance(there) / there.length);
    if (standard == 0) {
      return OptionalDouble.empty();
    }
    double freedom =
        TTest.withDefaults()
            .with(DataDispersion.HETEROSCEDASTIC)
            .test(right, there)
            .getDegreesOfFreedom();
    return OptionalDouble.of(
        standard * TDistribution.of(freedom).inverseSurvivalProbability(Chance.ALPHA / 2));
  }

  private static double variance(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    return Arrays.stream(values).map(x -> (x - mean) * (x - mean)).sum() / (values.length - 1);
  }
}
