package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.lever.Kept;
import io.ovenmark.lever.Readings;
import io.ovenmark.lever.Replacements;
import io.ovenmark.lever.StandIn;
import io.ovenmark.measure.Amount;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Amounts that keep a figure, checked with a pencil. The figures of 100 g are those printed in
 * U.S. Department of Agriculture, National Nutrient Database for Standard Reference, Release 28:
 * bread flour 20083, chickpea flour 16157, defatted soy flour 16117, whole egg 01123, whole milk
 * 01211, butter without salt 01145, olive oil 04053, granulated sugar 19335, honey 19296.
 */
class ReplacedFoodsTest {
  private static double grams(String food, String amount, Kept kept, String with) {
    Formula formula =
        Formula.named("published")
            .withLines(List.of(Line.of(food, food, Amount.parse(amount))))
            .withYield(Yield.ofPieces(6));
    Worksheet sheet =
        Worksheet.of(formula, BuiltInPantry::find, Policy.USUAL, BakedYield.UNMEASURED);
    StandIn standIn = new StandIn(BuiltInPantry.find(with).orElseThrow(), false);
    return Replacements.of(
            sheet, food, kept, Optional.empty(), List.of(standIn), Readings.FINE)
        .answer(with)
        .orElseThrow()
        .grams();
  }

  /** Amount × the figure in 100 g of one ÷ the figure in 100 g of the other. */
  @ParameterizedTest
  @CsvSource({
    "wheat-flour-bread, 300 g, PROTEIN, chickpea-flour, 300, 11.98, 22.39",
    "wheat-flour-bread, 300 g, PROTEIN, soy-flour-defatted, 300, 11.98, 51.46",
    "wheat-flour-bread, 300 g, DRY_MASS, chickpea-flour, 300, 86.64, 89.72",
    "egg-whole, 1 large, WATER, milk-whole, 50, 76.15, 88.13",
    "egg-whole, 1 large, PROTEIN, milk-whole, 50, 12.56, 3.15",
    "butter-unsalted, 20 g, FAT, oil-olive, 20, 81.11, 100",
    "sugar-granulated, 100 g, DRY_MASS, honey, 100, 99.98, 82.9"
  })
  void theAmountFollowsFromThePrintedFigures(
      String food,
      String amount,
      Kept kept,
      String with,
      double grams,
      double one,
      double other) {
    assertThat(grams(food, amount, kept, with)).isCloseTo(grams * one / other, within(1e-9));
  }

  /** Four fifths of the butter as oil: common practice, no source; the fat of butter says 0.811. */
  @Test
  void oilForButterComesNearTheTradesFourFifths() {
    assertThat(grams("butter-unsalted", "100 g", Kept.FAT, "oil-olive")).isCloseTo(80, within(2.0));
  }
}
