package io.ovenmark.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownUnitsTest {
  private static final ShownUnits OUNCES = ShownUnits.of(Optional.of("oz"), Optional.of("F"));
  private static final ShownUnits GRAMS = ShownUnits.of(Optional.of("g"), Optional.of("C"));

  /** The avoirdupois ounce is exactly 28.349 523 125 g (NIST SP 811, appendix B.8). */
  @Test
  void massesThatAreWorkedOutStandInTheWantedUnit() {
    assertThat(OUNCES.mass(Quantity.known(28.349523125))).isEqualTo("1 oz");
    assertThat(OUNCES.mass(Quantity.known(94.6))).isEqualTo("3.34 oz");
    assertThat(GRAMS.mass(Quantity.known(94.6))).isEqualTo("94.6 g");
    assertThat(ShownUnits.AS_WRITTEN.mass(Quantity.known(94.6))).isEqualTo("94.6 g");
    assertThat(OUNCES.massDifference(Quantity.known(-22))).isEqualTo("−0.776 oz");
    assertThat(OUNCES.massChange(Quantity.known(95), Quantity.known(90)))
        .isEqualTo("3.35 → 3.17 oz");
    assertThat(OUNCES.grams("95")).isEqualTo("3.35 oz");
    assertThat(GRAMS.grams("95.125")).isEqualTo("95.125 g");
  }

  @Test
  void whatIsUnknownStaysUnknownAndBoundsStayBounds() {
    assertThat(OUNCES.mass(Quantity.UNKNOWN)).isEqualTo("unknown");
    assertThat(OUNCES.mass(Quantity.atLeast(100))).isEqualTo("at least 3.52 oz");
    assertThat(OUNCES.mass(Quantity.atMost(100))).isEqualTo("at most 3.53 oz");
    assertThat(OUNCES.mass(Quantity.ZERO)).isEqualTo("0 oz");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "180 g | 180 g | 6.35 oz | 180 g",
        "0.5 kg | 0.5 kg | 17.6 oz | 0.5 kg",
        "6 oz | 170 g | 6 oz | 6 oz",
        "1 1/2 lb | 680 g | 1 1/2 lb | 1 1/2 lb",
        "½ tsp | ½ tsp | ½ tsp | ½ tsp",
        "2 fl oz | 2 fl oz | 2 fl oz | 2 fl oz",
        "3 large | 3 large | 3 large | 3 large",
      })
  void anAmountIsRewrittenOnlyWhenItIsAMassOfTheOtherSystem(
      String written, String grams, String ounces, String unchanged) {
    Amount amount = Amount.parse(written);
    assertThat(GRAMS.amount(amount)).isEqualTo(grams);
    assertThat(OUNCES.amount(amount)).isEqualTo(ounces);
    assertThat(ShownUnits.AS_WRITTEN.amount(amount)).isEqualTo(unchanged);
  }

  /** 71 °C and 160 °F, 190 °C and 375 °F stand beside each other on thermometers and ovens. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "190 °C | 190 °C | 374 °F",
        "375 °F | 191 °C | 375 °F",
        "71 °C | 71 °C | 160 °F",
        "-18 °C | −18 °C | −0.4 °F",
        "−40 °F | −40 °C | −40 °F",
        "37.5 °C | 37.5 °C | 99.5 °F",
      })
  void temperaturesFollowTheScale(String written, String celsius, String fahrenheit) {
    assertThat(GRAMS.heat(written)).isEqualTo(celsius);
    assertThat(OUNCES.heat(written)).isEqualTo(fahrenheit);
    assertThat(ShownUnits.AS_WRITTEN.heat(written)).isEqualTo(written.replace('-', '−'));
  }

  @Test
  void otherUnitsAreRefused() {
    assertThatThrownBy(() -> ShownUnits.of(Optional.of("stone"), Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("g or oz");
    assertThatThrownBy(() -> ShownUnits.of(Optional.empty(), Optional.of("K")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("C or F");
  }

  @Test
  void equalWishesAreEqual() {
    assertThat(ShownUnits.of(Optional.of("oz"), Optional.of("F")))
        .isEqualTo(OUNCES)
        .hasSameHashCodeAs(OUNCES)
        .isNotEqualTo(GRAMS);
    assertThat(ShownUnits.of(Optional.empty(), Optional.empty())).isEqualTo(ShownUnits.AS_WRITTEN);
  }
}
