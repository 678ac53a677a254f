package io.ovenmark.lever;

import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import java.util.OptionalDouble;

/**
 * A line of a scaled formula.
 *
 * @param line its id
 * @param name its name for people
 * @param entered what the formula states
 * @param from its mass there
 * @param exact its mass times the factor
 * @param amount what to measure
 * @param measured the mass of that
 * @param how by what it is measured: {@code weighed}, {@code spoons}, {@code counted} or {@code as
 *     written}
 */
public record ScaledLine(
    String line,
    String name,
    Amount entered,
    Quantity from,
    Quantity exact,
    Amount amount,
    Quantity measured,
    String how) {

  /**
   * What measuring makes it more or less.
   *
   * @return percent of the exact mass; empty when that is not known or nothing
   */
  public OptionalDouble errorPercent() {
    return exact.isKnown() && exact.low() > 0 && measured.isKnown()
        ? OptionalDouble.of((measured.low() / exact.low() - 1) * 100)
        : OptionalDouble.empty();
  }
}
