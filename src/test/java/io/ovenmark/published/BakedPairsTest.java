package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the oven takes is water, so everything else grows by the inverse of the share that is left.
 * Method: Greenfield and Southgate, Food composition data, 2nd ed., FAO 2003, "Calculation of the
 * composition of dishes prepared from recipes". Values: USDA National Nutrient Database for
 * Standard Reference, Release 28 (SR28), the same food before and after the oven: pie crust 18402
 * and 18336, whole-wheat bread 18077 and 18078, rye bread 18060 and 18061. The share left follows
 * from the published water contents, (100 − before) / (100 − after); the prediction is within 0.9 %
 * of every other published figure, which is the rounding of its last digit.
 */
class BakedPairsTest {
  private static final double GREATEST_DIFFERENCE = 0.009;

  @ParameterizedTest(name = "{0} baked: {3} {4}")
  @CsvSource({
    "18402, 19.7, 9.8, energy_kcal, 527",
    "18402, 19.7, 9.8, protein_g, 6.4",
    "18402, 19.7, 9.8, fat_g, 34.6",
    "18402, 19.7, 9.8, carbohydrate_g, 47.5",
    "18402, 19.7, 9.8, sodium_mg, 542",
    "18402, 19.7, 9.8, water_g, 9.8",
    "18077, 32.7, 26, energy_kcal, 305",
    "18077, 32.7, 26, protein_g, 9.2",
    "18077, 32.7, 26, fat_g, 5.9",
    "18077, 32.7, 26, carbohydrate_g, 56.4",
    "18077, 32.7, 26, sodium_mg, 381",
    "18077, 32.7, 26, water_g, 26",
    "18060, 37.3, 31, energy_kcal, 284",
    "18060, 37.3, 31, protein_g, 9.4",
    "18060, 37.3, 31, fat_g, 3.6",
    "18060, 37.3, 31, carbohydrate_g, 53.1",
    "18060, 37.3, 31, sodium_mg, 664",
    "18060, 37.3, 31, water_g, 31",
  })
  void lossInTheOvenIsWater(
      String ndb, double waterBefore, double waterAfter, String figure, double published) {
    double share = (100 - waterBefore) / (100 - waterAfter);
    List<String[]> lines = List.<String[]>of(new String[] {ndb, "100 g"});
    Worksheet sheet =
        PublishedData.sheet(
            PublishedData.formula(Yield.ofPieces(1), lines), PublishedData.share(share));

    Quantity baked = sheet.figure(Figure.withKey(figure).orElseThrow(), Basis.BAKED_100_G);

    assertThat(baked.value().orElseThrow())
        .isCloseTo(published, within(published * GREATEST_DIFFERENCE));
    assertThat(sheet.bakedPerPieceGrams().value().orElseThrow())
        .isCloseTo(100 * share, within(1e-9));
  }
}
