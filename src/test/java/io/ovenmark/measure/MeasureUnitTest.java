package io.ovenmark.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureUnitTest {
  /**
   * NIST Handbook 44, Appendix C, "General Tables of Units of Measurement": the avoirdupois pound
   * is exactly 453.59237 g, the ounce its 16th part; the gallon is 231 cubic inches, exactly
   * 3785.411784 mL, the quart its 4th, the pint its 8th, the cup its 16th, the fluid ounce its
   * 128th, the tablespoon its 256th, the teaspoon its 768th part. Metric units by the prefixes of
   * the SI.
   */
  @ParameterizedTest
  @CsvSource({
    "GRAM, 1",
    "KILOGRAM, 1000",
    "MILLIGRAM, 0.001",
    "OUNCE, 28.349523125",
    "POUND, 453.59237",
    "MILLILITRE, 1",
    "CENTILITRE, 10",
    "DECILITRE, 100",
    "LITRE, 1000",
    "TEASPOON, 4.92892159375",
    "TABLESPOON, 14.78676478125",
    "FLUID_OUNCE, 29.5735295625",
    "CUP, 236.5882365",
    "PINT, 473.176473",
    "QUART, 946.352946"
  })
  void agreesWithHandbook44(MeasureUnit unit, double expected) {
    assertThat(unit.base()).isCloseTo(expected, Offset.offset(expected * 1e-12));
  }

  @Test
  void theTableAboveFollowsFromItsTwoDefinitions() {
    double gallon = 231 * Math.pow(2.54, 3);
    assertThat(gallon).isCloseTo(3785.411784, Offset.offset(1e-9));
    assertThat(MeasureUnit.CUP.base()).isCloseTo(gallon / 16, Offset.offset(1e-9));
    assertThat(MeasureUnit.TEASPOON.base()).isCloseTo(gallon / 768, Offset.offset(1e-9));
    assertThat(MeasureUnit.POUND.base())
        .isCloseTo(16 * MeasureUnit.OUNCE.base(), Offset.offset(1e-9));
  }

  @ParameterizedTest
  @EnumSource(MeasureUnit.class)
  void findsEveryUnitByItsSymbolInAnyCase(MeasureUnit unit) {
    assertThat(MeasureUnit.named(unit.symbol())).contains(unit);
    assertThat(MeasureUnit.named(" " + unit.symbol().toUpperCase(java.util.Locale.ROOT) + ". "))
        .contains(unit);
  }

  @ParameterizedTest
  @CsvSource({
    "grams, GRAM", "Kilos, KILOGRAM", "lbs, POUND", "ounces, OUNCE", "milliliters, MILLILITRE",
    "litre, LITRE", "liters, LITRE", "teaspoons, TEASPOON", "Tbsp., TABLESPOON", "T, TABLESPOON",
    "fl. oz., FLUID_OUNCE", "fluid ounces, FLUID_OUNCE", "cups, CUP", "pt, PINT", "qt, QUART"
  })
  void findsUnitsByTheirOtherNames(String name, MeasureUnit unit) {
    assertThat(MeasureUnit.named(name)).contains(unit);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ".", "large", "slice", "t", "cup, sifted", "g g", "stick"})
  void leavesHouseholdMeasuresAlone(String name) {
    assertThat(MeasureUnit.named(name)).isEmpty();
  }

  @Test
  void noTwoUnitsShareASymbol() {
    Set<String> symbols = new HashSet<>();
    for (MeasureUnit unit : MeasureUnit.values()) {
      assertThat(symbols.add(unit.symbol())).as(unit.symbol()).isTrue();
    }
  }
}
