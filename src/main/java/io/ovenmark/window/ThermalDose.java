package io.ovenmark.window;

import io.ovenmark.bake.CorePoint;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The thermal dose of a core, in minutes at the reference temperature: C = ∫ 10^((T − Tref)/z) dt.
 * With Tref 100 °C and z 33 °C it is the cooking value (Mansfield 1962, from memory; his z was 33.1
 * °C). It sums the minutes between the first and the last logged point by the trapezoid rule on the
 * rate; what was not logged is not counted. It says nothing about safety.
 *
 * @param referenceCelsius Tref, °C
 * @param zCelsius the rise that makes the rate tenfold, above 0
 */
public record ThermalDose(double referenceCelsius, double zCelsius) {
  /** The cooking value: Tref 100 °C, z 33 °C. */
  public static final ThermalDose COOKING = new ThermalDose(100, 33);

  /** Checks. */
  public ThermalDose {
    if (!(referenceCelsius >= 0 && referenceCelsius <= 200)) {
      throw new IllegalArgumentException(
          "The reference temperature of the dose is out of range.\nUse one from 0 to 200 °C.");
    }
    if (!(zCelsius >= 1 && zCelsius <= 100)) {
      throw new IllegalArgumentException(
          "z of the dose is out of range.\nUse one from 1 to 100 °C.");
    }
  }

  /**
   * How fast the dose grows.
   *
   * @param celsius the temperature
   * @return 1 at the reference temperature
   */
  public double rate(double celsius) {
    return Math.pow(10, (celsius - referenceCelsius) / zCelsius);
  }

  /**
   * The dose of a log.
   *
   * @param log points in the order of time
   * @return minutes; empty for fewer than two points, which is unknown
   */
  public OptionalDouble of(List<CorePoint> log) {
    if (log.size() < 2) {
      return OptionalDouble.empty();
    }
    double sum = 0;
    for (int i = 1; i < log.size(); i++) {
      CorePoint from = log.get(i - 1);
      CorePoint to = log.get(i);
      sum +=
          (to.minutes() - from.minutes())
              * (rate(from.temperature().celsius()) + rate(to.temperature().celsius()))
              / 2;
    }
    return OptionalDouble.of(sum);
  }
}
