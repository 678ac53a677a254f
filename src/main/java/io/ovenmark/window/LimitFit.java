package io.ovenmark.window;

import java.util.OptionalDouble;

/**
 * What was fitted for a limit.
 *
 * @param limit the limit
 * @param known of how many pieces it is known whether they keep it
 * @param kept how many of those do
 * @param perFifthMoreTime what a fifth more time does to the figure (a cooking value: to its
 *     natural logarithm), or to the natural log odds of the finding
 * @param perTenDegrees what 10 °C more in the oven do to the same
 * @param noise scatter of the figure between like pieces; empty for a finding
 */
public record LimitFit(
    WindowLimit limit,
    int known,
    int kept,
    Effect perFifthMoreTime,
    Effect perTenDegrees,
    OptionalDouble noise) {

  /**
   * A slope.
   *
   * @param value the most likely one
   * @param deviation its standard deviation
   */
  public record Effect(double value, double deviation) {}

  static LimitFit of(Response response) {
    return new LimitFit(
        response.limit(),
        response.known(),
        response.kept(),
        response.effect(1),
        response.effect(2),
        response instanceof Response.OfMeasure measure
            ? OptionalDouble.of(measure.noise())
            : OptionalDouble.empty());
  }
}
