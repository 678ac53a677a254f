package io.ovenmark.window;

import java.util.ArrayList;
import java.util.List;

/**
 * What the map shows and what may be baked next.
 *
 * @param fromCelsius coolest oven, °C
 * @param toCelsius hottest oven, °C
 * @param from least time in minutes (or least dose)
 * @param to most
 * @param settings oven temperatures that can be set, °C, rising
 */
public record OvenRange(
    double fromCelsius, double toCelsius, double from, double to, List<Double> settings) {
  private static final double TEN_FAHRENHEIT = 10 / 1.8;

  /** Checks and copies. */
  public OvenRange {
    if (!(fromCelsius < toCelsius && from > 0 && from < to)) {
      throw new IllegalArgumentException(
          "The range of the oven is empty.\nWrite it as in 180 to 220 °C and 14 to 30 min.");
    }
    settings = List.copyOf(settings);
  }

  /**
   * A range whose oven is set in steps of 5 °C or 10 °F.
   *
   * @param fromCelsius coolest
   * @param toCelsius hottest
   * @param from least time
   * @param to most
   * @param fahrenheit whether the oven is set in °F
   * @return the range
   */
  public static OvenRange of(
      double fromCelsius, double toCelsius, double from, double to, boolean fahrenheit) {
    List<Double> settings = new ArrayList<>();
    double step = fahrenheit ? TEN_FAHRENHEIT : 5;
    double zero = fahrenheit ? -32 / 1.8 : 0;
    long first = (long) Math.ceil((fromCelsius - zero) / step - 1e-9);
    for (long i = first; zero + i * step <= toCelsius + 1e-9; i++) {
      settings.add(zero + i * step);
    }
    if (settings.isEmpty()) {
      settings.add((fromCelsius + toCelsius) / 2);
    }
    return new OvenRange(fromCelsius, toCelsius, from, to, settings);
  }

  /** Times that can be set: whole minutes, in larger steps when there are many. */
  List<Double> times() {
    double span = to - from;
    double step = span <= 4 ? 0.5 : span <= 60 ? 1 : span <= 240 ? 5 : 15;
    List<Double> times = new ArrayList<>();
    for (double time = Math.ceil(from / step) * step; time <= to + 1e-9; time += step) {
      times.add(time);
    }
    if (times.isEmpty()) {
      times.add(Math.sqrt(from * to));
    }
    return times;
  }
}
