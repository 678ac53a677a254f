package io.ovenmark.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemperatureTest {
  /**
   * NIST SP 811 (2008), Appendix B: t(°C) = (t(°F) − 32) ÷ 1.8. The fixed points 32 °F = 0 °C and
   * 212 °F = 100 °C and the crossing at −40 follow from it; the rest is rounded to the last digit
   * shown.
   */
  @ParameterizedTest
  @CsvSource({
    "32, 0, 1e-12",
    "212, 100, 1e-12",
    "-40, -40, 1e-12",
    "160, 71.11, 0.005",
    "165, 73.89, 0.005",
    "325, 162.8, 0.05",
    "350, 176.67, 0.005",
    "375, 190.6, 0.05",
    "400, 204.44, 0.005",
    "401, 205, 1e-12"
  })
  void agreesWithNistSp811(String fahrenheit, double celsius, double tolerance) {
    Temperature read = Temperature.parse(fahrenheit + " °F");
    assertThat(read.celsius()).isCloseTo(celsius, Offset.offset(tolerance));
    assertThat(Temperature.celsius(read.celsius()).fahrenheit())
        .isCloseTo(Double.parseDouble(fahrenheit), Offset.offset(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "205 °C|205 °C",
        "205C|205 °C",
        "205 c|205 °C",
        "205º C|205 °C",
        "205\u00a0°C|205 °C",
        "205.0 °C|205 °C",
        "400°F|400 °F",
        "400 deg F|400 °F",
        "400 degrees f|400 °F",
        "37.5 °C|37.5 °C",
        "-18 °C|-18 °C",
        "−18 °C|-18 °C",
        "-0 °C|0 °C",
        "190 ℃|190 °C",
        "375℉|375 °F",
        "600 °C|600 °C",
        "-60 °C|-60 °C",
        "0100 °C|100 °C"
      })
  void readsWhatPeopleWrite(String text, String shown) {
    assertThat(Temperature.parse(text)).hasToString(shown);
    assertThat(Temperature.parse(shown)).isEqualTo(Temperature.parse(text));
    assertThat(Temperature.parse(shown)).hasSameHashCodeAs(Temperature.parse(text));
  }

  @Test
  void isEqualOnlyOnTheSameScale() {
    assertThat(Temperature.parse("401 °F")).isNotEqualTo(Temperature.parse("205 °C"));
    assertThat(Temperature.celsius(205)).isEqualTo(Temperature.parse("205 °C"));
    assertThat(Temperature.celsius(205)).hasToString("205 °C");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "205", "hot", "205 K", "205 °", "°C", "1e2 °C", "NaN °C", "2 05 °C"})
  void refusesWhatIsNoTemperature(String text) {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> Temperature.parse(text))
        .withMessage(
            "The temperature \""
                + text
                + "\" is not understood.\n"
                + "Write a number and the scale, such as \"205 °C\" or \"400 °F\".");
  }

  @Test
  void hintsAtTheDecimalPoint() {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> Temperature.parse("37,5 °C"))
        .withMessage(
            "The temperature \"37,5 °C\" is not understood.\n"
                + "Write decimals with a point, such as \"37.5 °C\".");
  }

  @ParameterizedTest
  @CsvSource({
    "601 °C, 601 °C",
    "-61 °C, -61 °C",
    "1200 F, 1200 °F",
    "99999999999 C, 99999999999 °C"
  })
  void refusesWhatNoOvenOrFreezerReaches(String text, String shown) {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> Temperature.parse(text))
        .withMessage(
            "The temperature \"" + shown + "\" is out of range.\nUse one from -60 to 600 °C.");
  }

  @Test
  void refusesLongTextsAtOnce() {
    for (String text : new String[] {"9".repeat(1_000_000) + "C", "1" + " x".repeat(500_000)}) {
      assertThatExceptionOfType(IllegalArgumentException.class)
          .isThrownBy(() -> Temperature.parse(text))
          .withMessageContaining("…\" is not understood.");
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 601, -61})
  void makesOnlyWhatCanBeReadAgain(double degrees) {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> Temperature.celsius(degrees))
        .withMessageEndingWith("\nUse one from -60 to 600 °C.");
  }
}
