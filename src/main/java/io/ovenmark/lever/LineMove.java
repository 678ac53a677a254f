package io.ovenmark.lever;

import io.ovenmark.measure.Amount;
import java.util.OptionalDouble;

/**
 * A line that moves.
 *
 * @param line its id
 * @param name its name for people
 * @param entered what was entered
 * @param fromGrams its mass
 * @param toGrams the mass that it comes to, exactly; never negative
 * @param weigh what to weigh, as fine as the scale shows
 */
public record LineMove(
    String line, String name, Amount entered, double fromGrams, double toGrams, Amount weigh) {

  /**
   * How much more or less it is.
   *
   * @return percent of what it was; empty when that was nothing
   */
  public OptionalDouble percent() {
    return fromGrams == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of((toGrams / fromGrams - 1) * 100);
  }
}
