package io.ovenmark.measure;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RangeTest {
  private static final Range GRAMS = new Range(0.01, 1_000_000);

  @Test
  void bothLimitsBelongToIt() {
    assertThatCode(
            () -> {
              GRAMS.check("The mass", 0.01);
              GRAMS.check("The mass", 1_000_000);
              GRAMS.check("The mass", OptionalDouble.empty());
            })
        .doesNotThrowAnyException();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-3, -3",
    "1000000.5, 1000000.5",
    "1e308, 1E+308",
    "NaN, that was given",
    "Infinity, that was given"
  })
  void namesTheFigureAndTheLimits(double value, String shown) {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> GRAMS.check("The mass", OptionalDouble.of(value)))
        .withMessage("The mass " + shown + " is out of range.\nUse a number from 0.01 to 1000000.");
  }

  @Test
  void refusesLimitsThatAreNone() {
    assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> new Range(2, 1));
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> new Range(0, Double.POSITIVE_INFINITY));
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> new Range(Double.NaN, 1));
  }
}
