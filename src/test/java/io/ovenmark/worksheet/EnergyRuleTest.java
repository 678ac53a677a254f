package io.ovenmark.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrient;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Bounds of energy by factors; the factors themselves are held in the published checks. */
class EnergyRuleTest {
  private static final Food SWEETENER = sweetener("erythritol");

  @ParameterizedTest
  @EnumSource(EnergyRule.class)
  void isFoundByItsKey(EnergyRule rule) {
    assertThat(EnergyRule.withKey(rule.key())).contains(rule);
  }

  @Test
  void anotherKeyIsNoRule() {
    assertThat(EnergyRule.withKey("factors")).isEmpty();
  }

  @Test
  void theFoodsOwnEnergyIsTakenAsItStands() {
    Food food = Bench.food("seeds", FoodKind.DRY, 20, 50, 20, 10, 10, 550);
    assertThat(EnergyRule.FOODS.energyPer100g(food)).isEqualTo(Quantity.known(550));
    assertThat(
            EnergyRule.FOODS.energyPer100g(Bench.with(food, Nutrient.ENERGY, Quantity.UNKNOWN)))
        .isEqualTo(Quantity.UNKNOWN);
  }

  @ParameterizedTest(name = "{0}: polyol \"{1}\" gives {2} to {3}")
  @CsvSource({
    "US_FACTORS, erythritol, 0, 0",
    "US_FACTORS, ' Erythritol ', 0, 0",
    "US_FACTORS, erythritol and xylitol, 0, 300",
    "US_FACTORS, , 0, 300",
    "EU_FACTORS, erythritol, 0, 0",
    "EU_FACTORS, maltitol, 240, 240",
    "EU_FACTORS, erythritol and xylitol, 0, 240",
    "EU_FACTORS, , 0, 240",
  })
  void polyolsOfAnUnknownKindLieBetweenTheFactors(
      EnergyRule rule, String polyol, double low, double high) {
    assertBetween(rule.energyPer100g(sweetener(polyol)), low, high);
  }

  @Test
  void theKindDoesNotMatterWhereThereAreNoPolyols() {
    Food flour = Bench.food("flour", FoodKind.DRY, 10, 0, 80, 0, 10, 0);
    assertThat(EnergyRule.US_FACTORS.energyPer100g(flour)).isEqualTo(Quantity.known(360));
    assertThat(EnergyRule.EU_FACTORS.energyPer100g(flour)).isEqualTo(Quantity.known(360));
  }

  @ParameterizedTest(name = "{0} without {1}: {2} to {3}")
  @CsvSource({
    // 10 g protein, 10 g fat, 40 g carbohydrate with 20 g insoluble fibre, 40 g water
    "US_FACTORS, SOLUBLE_FIBRE, 210, 250",
    "US_FACTORS, FIBRE, 130, 290",
    "US_FACTORS, POLYOLS, 130, 210",
    "US_FACTORS, ALLULOSE, 130, 210",
    "US_FACTORS, ALCOHOL, 210, 210",
    "US_FACTORS, WATER, 210, 210",
    "EU_FACTORS, FIBRE, 210, 290",
    "EU_FACTORS, POLYOLS, 130, 250",
    "EU_FACTORS, SOLUBLE_FIBRE, 250, 250",
    "EU_FACTORS, ALLULOSE, 250, 250",
  })
  void anUnknownPartLeavesBounds(EnergyRule rule, Nutrient forgotten, double low, double high) {
    Food food = Bench.food("part", FoodKind.DRY, 10, 10, 40, 20, 40, 0);
    assertBetween(
        rule.energyPer100g(Bench.with(food, forgotten, Quantity.UNKNOWN)), low, high);
  }

  @Test
  void unknownAlcoholIsNoMoreThanWhatTheOtherPartsLeave() {
    Food food = Bench.food("drink", FoodKind.LIQUID, 0, 0, 10, 0, 80, 0);
    assertBetween(
        EnergyRule.EU_FACTORS.energyPer100g(
            Bench.with(food, Nutrient.ALCOHOL, Quantity.UNKNOWN)),
        40,
        110);
  }

  @Test
  void unknownProteinOrFatLeavesALowerBound() {
    Food food =
        Bench.with(
            Bench.food("part", FoodKind.DRY, 10, 10, 40, 0, 40, 0),
            Nutrient.PROTEIN,
            Quantity.UNKNOWN);
    assertThat(EnergyRule.US_FACTORS.energyPer100g(food)).isEqualTo(Quantity.atLeast(250));
  }

  @Test
  void ofAFoodWithoutAnyFigureNothingIsKnown() {
    Food food = SWEETENER;
    for (Nutrient nutrient : Nutrient.values()) {
      food = Bench.with(food, nutrient, Quantity.UNKNOWN);
    }
    for (EnergyRule rule : EnergyRule.values()) {
      assertThat(rule.energyPer100g(food).isUnknown()).isTrue();
    }
  }

  private static Food sweetener(String polyol) {
    Food food =
        Bench.with(
            Bench.food("sweetener", FoodKind.DRY, 0, 0, 100, 0, 0, 0),
            Nutrient.POLYOLS,
            Quantity.known(100));
    return polyol == null ? food : Bench.withPolyol(food, polyol);
  }

  private static void assertBetween(Quantity quantity, double low, double high) {
    assertThat(quantity.low()).isCloseTo(low, within(1e-9));
    assertThat(quantity.high()).isCloseTo(high, within(1e-9));
  }
}
