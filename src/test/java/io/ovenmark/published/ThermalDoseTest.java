package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.bake.CorePoint;
import io.ovenmark.measure.Temperature;
import io.ovenmark.window.ThermalDose;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The cooking value C = ∫ 10^((T − 100)/33) dt (Mansfield 1962, from memory). At a constant
 * temperature it is the product of minutes and rate; along a straight ramp the integral has the
 * closed form z/(s ln 10) (10^((T₂−Tref)/z) − 10^((T₁−Tref)/z)), s the slope.
 */
class ThermalDoseTest {
  private static List<CorePoint> log(double... minutesAndCelsius) {
    List<CorePoint> log = new ArrayList<>();
    for (int i = 0; i < minutesAndCelsius.length; i += 2) {
      log.add(
          new CorePoint(minutesAndCelsius[i], Temperature.celsius(minutesAndCelsius[i + 1])));
    }
    return log;
  }

  /** The products, worked out apart from the program. */
  @ParameterizedTest
  @CsvSource({
    "20, 100, 20",
    "20, 90, 9.95405",
    "10, 98, 8.69749",
    "3, 121.1, 13.0772",
    "1, 67, 0.1",
    "1, 133, 10"
  })
  void isMinutesTimesRateAtOneTemperature(double minutes, double celsius, double expected) {
    assertThat(ThermalDose.COOKING.of(log(0, celsius, minutes, celsius)).getAsDouble())
        .isCloseTo(expected, within(expected * 1e-5));
  }

  @Test
  void aRampComesToTheIntegralAsPointsGrowDense() {
    List<CorePoint> dense = new ArrayList<>();
    for (int i = 0; i <= 480; i++) {
      dense.add(new CorePoint(i / 16.0, Temperature.celsius(70 + 28 * i / 480.0)));
    }
    double slope = 28.0 / 30;
    double closed =
        33 / (slope * Math.log(10)) * (Math.pow(10, -2.0 / 33) - Math.pow(10, -30.0 / 33));

    assertThat(closed).isCloseTo(11.46227, within(1e-5));
    assertThat(ThermalDose.COOKING.of(dense).getAsDouble()).isCloseTo(closed, within(1e-4));
  }

  /** Trapezoids over 20, 35, … 95 °C every five minutes, worked out apart from the program. */
  @Test
  void fewPointsAreSummedByTrapezoidsOnTheRate() {
    List<CorePoint> log = log(0, 20, 5, 35, 10, 50, 15, 65, 20, 80, 25, 95);

    assertThat(ThermalDose.COOKING.of(log).getAsDouble()).isCloseTo(3.65283, within(1e-5));
  }

  /** F₀ of canning: Tref 121.1 °C, z 10 °C; from memory. */
  @Test
  void anotherReferenceGivesAnotherDose() {
    ThermalDose canning = new ThermalDose(121.1, 10);

    assertThat(canning.of(log(0, 121.1, 3, 121.1)).getAsDouble()).isCloseTo(3, within(1e-12));
    assertThat(canning.of(log(0, 131.1, 1, 131.1)).getAsDouble()).isCloseTo(10, within(1e-9));
  }
}
