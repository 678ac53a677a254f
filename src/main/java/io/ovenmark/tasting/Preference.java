package io.ovenmark.tasting;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a paired preference shows. Whoever prefers neither is left out of the test (the sign test's
 * rule), and told beside it. The test is exact, binomial with p = 1/2, two-sided.
 *
 * @param first how many prefer the first sample
 * @param second how many prefer the second sample
 * @param neither how many prefer neither
 * @param p probability of so uneven a division, either way, without a preference; empty when nobody
 *     prefers either
 * @param leastMajority the majority needed among those who prefer one at α 0.05; empty when even
 *     all would not do
 * @param lowest lower bound of the share that prefers the first among those who prefer one, 95 %
 *     two-sided, exact; empty when nobody prefers either
 * @param highest upper bound of that share
 * @param visible the share preferring one sample that this many show at α 0.05 four times in five;
 *     empty when no share is large enough
 */
public record Preference(
    int first,
    int second,
    int neither,
    OptionalDouble p,
    OptionalInt leastMajority,
    OptionalDouble lowest,
    OptionalDouble highest,
    OptionalDouble visible) {
  /**
   * Works it out.
   *
   * @param first how many prefer the first sample
   * @param second how many prefer the second sample
   * @param neither how many prefer neither
   * @return the result
   */
  public static Preference of(int first, int second, int neither) {
    int deciding = first + second;
    OptionalInt needed = leastMajority(deciding);
    if (deciding == 0) {
      OptionalDouble unknown = OptionalDouble.empty();
      return new Preference(0, 0, neither, unknown, needed, unknown, unknown, unknown);
    }
    double tail = Chance.atLeast(Math.max(first, second), deciding, 0.5);
    OptionalDouble visible =
        needed.isPresent()
            ? OptionalDouble.of(
                Chance.shareForAtLeast(needed.getAsInt(), deciding, Chance.POWER))
            : OptionalDouble.empty();
    return new Preference(
        first,
        second,
        neither,
        OptionalDouble.of(Math.min(1, 2 * tail)),
        needed,
        OptionalDouble.of(Chance.lowerBound(first, deciding, Chance.ALPHA / 2)),
        OptionalDouble.of(Chance.upperBound(first, deciding, Chance.ALPHA / 2)),
        visible);
  }

  /**
   * The least majority that shows a preference at α 0.05, two-sided.
   *
   * @param deciding how many prefer one
   * @return the number; empty when even all would not do
   */
  public static OptionalInt leastMajority(int deciding) {
    for (int majority = deciding / 2 + 1; majority <= deciding; majority++) {
      if (2 * Chance.atLeast(majority, deciding, 0.5) <= Chance.ALPHA) {
        return OptionalInt.of(majority);
      }
    }
    return OptionalInt.empty();
  }
}
