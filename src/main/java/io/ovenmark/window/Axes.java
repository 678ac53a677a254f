package io.ovenmark.window;

import java.util.List;

/**
 * Where a setting lies: the row (1, time, oven) of the fit, with time on a logarithmic scale in
 * steps of a fifth more, and the oven in steps of 10 °C, both about the middle of the pieces. On
 * these axes settings that bake alike lie on straight lines, for heating follows nearly an
 * exponential of the oven's temperature and a power of time within the range of one formula's
 * bakes.
 *
 * @param centreLog middle of the logarithm of time (or dose)
 * @param centreCelsius middle of the oven temperatures
 */
record Axes(double centreLog, double centreCelsius) {
  /** A fifth more time is one step. */
  static final double LOG_STEP = Math.log(1.2);

  /** So many °C are one step. */
  static final double CELSIUS_STEP = 10;

  static final int COEFFICIENTS = 3;

  static Axes about(List<Point> points) {
    return new Axes(
        points.stream().mapToDouble(point -> Math.log(point.along())).average().orElse(0),
        points.stream().mapToDouble(Point::ovenCelsius).average().orElse(0));
  }

  /** A piece at its place on the map. */
  record Point(BakedPiece piece, double ovenCelsius, double along) {}

  double[] row(double ovenCelsius, double along) {
    return new double[] {
      1, (Math.log(along) - centreLog) / LOG_STEP, (ovenCelsius - centreCelsius) / CELSIUS_STEP
    };
  }

  double[] row(Point point) {
    return row(point.ovenCelsius(), point.along());
  }
}
