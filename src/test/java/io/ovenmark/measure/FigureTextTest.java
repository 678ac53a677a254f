package io.ovenmark.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureTextTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "3, 3",
    "3.4142, 3.41",
    "3.415, 3.42",
    "0.9231, 0.923",
    "0.92, 0.92",
    "0.00012345, 0.000123",
    "46, 46",
    "99.96, 100",
    "123.5, 124",
    "1234.4, 1234",
    "1234567.2, 1234567",
    "-22, −22",
    "-0.0555, −0.0555",
    "1e-9, 0",
    "-1e-9, 0",
    "0.1, 0.1"
  })
  void aNumberHasThreeSignificantFiguresAndKeepsItsWholeDigits(double value, String text) {
    assertThat(FigureText.number(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"14, +14", "-22, −22", "0, 0", "1e-12, 0", "0.4567, +0.457"})
  void aDifferenceShowsItsSign(double value, String text) {
    assertThat(FigureText.signed(value)).isEqualTo(text);
  }

  @Test
  void aBoundIsWordedAndRoundedSoThatItStaysTrue() {
    assertThat(FigureText.of(Quantity.atLeast(3.149), "g")).isEqualTo("at least 3.14 g");
    assertThat(FigureText.of(Quantity.atMost(3.141), "g")).isEqualTo("at most 3.15 g");
    assertThat(FigureText.of(Quantity.between(3, 4.001), "g")).isEqualTo("between 3 and 4.01 g");
    assertThat(FigureText.of(Quantity.atMost(1.3 * 3), "g")).isEqualTo("at most 3.9 g");
  }

  @Test
  void whatIsUnknownStandsWithoutUnit() {
    assertThat(FigureText.of(Quantity.UNKNOWN, "g")).isEqualTo("unknown");
    assertThat(FigureText.of(Quantity.ANYTHING, "g")).isEqualTo("unknown");
  }

  @Test
  void aChangeWritesTheUnitOnce() {
    assertThat(FigureText.change(Quantity.known(3.9), Quantity.known(3.4), "g"))
        .isEqualTo("3.9 → 3.4 g");
    assertThat(FigureText.change(Quantity.known(1.19), Quantity.known(0.92), ""))
        .isEqualTo("1.19 → 0.92");
    assertThat(FigureText.change(Quantity.UNKNOWN, Quantity.known(3.4), "g"))
        .isEqualTo("unknown → 3.4 g");
    assertThat(FigureText.change(Quantity.known(3.4), Quantity.UNKNOWN, "g"))
        .isEqualTo("3.4 g → unknown");
    assertThat(FigureText.change(Quantity.UNKNOWN, Quantity.UNKNOWN, "g")).isEqualTo("unknown");
  }

  @Test
  void aChangeThatWouldBeHiddenByRoundingGetsMoreFigures() {
    assertThat(FigureText.change(Quantity.known(3.901), Quantity.known(3.904), "g"))
        .isEqualTo("3.901 → 3.904 g");
    assertThat(FigureText.change(Quantity.known(3.9), Quantity.known(3.9000000001), "g"))
        .isEqualTo("3.9 g");
  }

  @Test
  void aDifferenceKnownInPartIsWorded() {
    assertThat(FigureText.signed(Quantity.known(-3))).isEqualTo("−3");
    assertThat(FigureText.signed(Quantity.ANYTHING)).isEqualTo("unknown");
    assertThat(FigureText.signed(Quantity.atLeast(2))).isEqualTo("at least +2");
    assertThat(FigureText.signed(Quantity.between(Double.NEGATIVE_INFINITY, -3)))
        .isEqualTo("at most −3");
    assertThat(FigureText.signed(Quantity.between(-2, 5))).isEqualTo("between −2 and +5");
  }

  @Test
  void theShownNumberIsWithinHalfAPercentOfTheTrueOne() {
    Random random = new Random(31);
    for (int i = 0; i < 5000; i++) {
      double value = (random.nextBoolean() ? 1 : -1) * Math.pow(10, random.nextDouble() * 12 - 5);
      double shown = Double.parseDouble(FigureText.number(value).replace('−', '-'));
      assertThat(Math.abs(shown - value)).isLessThanOrEqualTo(Math.abs(value) * 0.00501);
      Quantity low = Quantity.atLeast(Math.abs(value));
      double bound = Double.parseDouble(FigureText.of(low).replace("at least ", ""));
      assertThat(bound).isLessThanOrEqualTo(low.low() * (1 + 1e-11));
    }
  }

  @Test
  void theDefaultLocaleHasNoSay() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(FigureText.number(1234.5)).isEqualTo("1235");
      assertThat(FigureText.number(0.25)).isEqualTo("0.25");
    } finally {
      Locale.setDefault(before);
    }
  }
}
