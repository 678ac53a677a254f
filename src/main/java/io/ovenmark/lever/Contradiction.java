package io.ovenmark.lever;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Why wishes cannot be granted.
 *
 * @param because conditions in words that contradict each other, none of which could be left out:
 *     without any one of them the others can be kept together
 * @param nearest for each wish how near one can come
 */
public record Contradiction(List<String> because, List<Nearest> nearest) {
  /**
   * How near one can come to a wish.
   *
   * @param wish the wish
   * @param alone the nearest value within the limits when the other wishes are given up; empty when
   *     the limits already contradict each other
   * @param together the nearest value with all other wishes granted; empty when those cannot be
   */
  public record Nearest(Wish wish, OptionalDouble alone, OptionalDouble together) {}

  /** Copies the lists. */
  public Contradiction {
    because = List.copyOf(because);
    nearest = List.copyOf(nearest);
  }
}
