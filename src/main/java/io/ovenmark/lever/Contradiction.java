package io.ovenmark.lever;

import io.ovenmark.goal.Limit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Why wishes cannot be granted.
 *
 * @param because conditions in words that contradict each other, none of which could be left out:
 *     without any one of them the others can be kept together
 * @param nearest for each wish how near one can come
 */
public record Contradiction(List<String> because, List<Nearest> nearest) {
  private static final int FIGURES = 3;

  /** What a solver leaves in the last digits is no figure. */
  private static final MathContext EXACT_ENOUGH = new MathContext(9, RoundingMode.HALF_EVEN);

  /**
   * How near one can come to a wish.
   *
   * @param wish the wish
   * @param alone the nearest value within the limits when the other wishes are given up; empty when
   *     the limits already contradict each other
   * @param together the nearest value with all other wishes granted; empty when those cannot be
   */
  public record Nearest(Wish wish, OptionalDouble alone, OptionalDouble together) {
    /**
     * What can be wished instead: the nearest value with all other wishes granted, rounded away
     * from what was wished so that it can be reached.
     *
     * @return a wish of the same figure; empty when this one is granted at the value, or when
     *     nothing that is asked of its figure helps
     */
    public Optional<Wish> instead() {
      if (together.isEmpty()) {
        return Optional.empty();
      }
      double value = together.getAsDouble();
      double slack = Wish.TOLERANCE * Math.max(1, Math.abs(value));
      if (value > wish.most() + slack) {
        return Optional.of(bounded(value, RoundingMode.UP));
      }
      return value < wish.least() - slack
          ? Optional.of(bounded(value, RoundingMode.DOWN))
          : Optional.empty();
    }

    private Wish bounded(double value, RoundingMode away) {
      BigDecimal exact = new BigDecimal(value, EXACT_ENOUGH);
      int figures = Math.max(FIGURES, exact.precision() - exact.scale());
      double bound = exact.round(new MathContext(figures, away)).doubleValue();
      Limit limit = wish.limit();
      boolean oneValue = wish.isValue();
      return new Wish(
          new Limit(
              limit.figure(),
              limit.basis(),
              oneValue || away == RoundingMode.DOWN ? OptionalDouble.of(bound) : limit.atLeast(),
              oneValue || away == RoundingMode.UP ? OptionalDouble.of(bound) : limit.atMost(),
              limit.extras()));
    }
  }

  /** Copies the lists. */
  public Contradiction {
    because = List.copyOf(because);
    nearest = List.copyOf(nearest);
  }
}
