package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A formula as a person writes it, in ounces, pounds, spoons and cups, against the figures
 * published for one piece. Source: Baking Powder Biscuits, USDA Recipe for Child Care Centers,
 * Institute of Child Nutrition, public domain: 25 pieces. The source states the dry milk twice and
 * differently (5 oz; 1/2 cup 2 tbsp, which is 42.5 g) and so the baking powder (3/4 oz; 7 tsp,
 * which is 32.2 g): its figures fit the volumes, which are used here. Tolerances: energy 2 %, grams
 * 0.5, sodium 3 %.
 */
class BiscuitsTest {
  private static final Formula BISCUITS =
      PublishedData.formula(
          Yield.ofPieces(25),
          List.of(
              new String[] {"20080", "31 oz"},
              new String[] {"01092", "42.5 g"},
              new String[] {"18370", "32.2 g"},
              new String[] {"02047", "3/4 tsp"},
              new String[] {"01055", "1 lb"},
              new String[] {"14411", "1 3/4 cup"}));

  private final Worksheet sheet = PublishedData.sheet(BISCUITS, BakedYield.UNMEASURED);

  /** Values: the published figures of one piece. */
  @ParameterizedTest
  @CsvSource({
    "energy_kcal, 153, 3.06",
    "fat_g, 3, 0.5",
    "carbohydrate_g, 27, 0.5",
    "fibre_g, 4, 0.5",
    "protein_g, 6, 0.5",
    "sodium_mg, 201, 6.03",
  })
  void onePieceHasThePublishedFigures(String figure, double published, double tolerance) {
    Quantity value = sheet.figure(Figure.withKey(figure).orElseThrow(), Basis.PIECE);
    assertThat(value.value().orElseThrow()).isCloseTo(published, within(tolerance));
  }

  @Test
  void spoonsAndCupsAreResolvedByHouseholdWeightAndMarkedApproximate() {
    assertThat(sheet.lines().get(3).grams().value().orElseThrow()).isCloseTo(4.5, within(1e-9));
    // 1 fl oz = 29.6 g (SR28, NDB No. 14411); a cup is 8 fl oz (NIST Handbook 44, Appendix C)
    assertThat(sheet.lines().get(5).grams().value().orElseThrow())
        .isCloseTo(1.75 * 8 * 29.6, within(1e-9));
    assertThat(sheet.lines()).extracting(line -> line.resolved().approximate())
        .containsExactly(false, false, false, true, false, true);
  }

  @Test
  void whatTheSourceOfAFoodDoesNotReportStaysALowerBound() {
    Quantity saturated = sheet.figure(Figure.SATURATED_FAT, Basis.PIECE);
    assertThat(saturated.isKnown()).isFalse();
    assertThat(saturated.toString()).startsWith("at least ");
  }
}
