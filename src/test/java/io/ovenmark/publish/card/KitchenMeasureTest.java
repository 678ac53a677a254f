package io.ovenmark.publish.card;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.worksheet.Bench;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KitchenMeasureTest {
  private static Food builtIn(String slug) {
    return BuiltInPantry.find(slug).orElseThrow(() -> new AssertionError(slug));
  }

  private static String nearest(String slug, double grams, String words) {
    return KitchenMeasure.nearest(builtIn(slug), grams, words)
        .map(KitchenMeasure::text)
        .orElse("none");
  }

  /**
   * Household weights of USDA SR28: butter cup 227 g, tbsp 14.2 g (01145); water cup 237 g (14429);
   * salt tsp 6 g (02047); egg large 50 g (01123).
   */
  @ParameterizedTest
  @CsvSource({
    "butter-unsalted, 227, 1 cup",
    "butter-unsalted, 14.2, 1 tbsp",
    "butter-unsalted, 56.75, 1/4 cup",
    "water, 237, 1 cup",
    "water, 79, 1/3 cup",
    "water, 355.5, 1 1/2 cups",
    "salt, 6, 1 tsp",
    "salt, 0.75, 1/8 tsp",
    "egg-whole, 50, 1 large",
    "egg-whole, 150, 3 large",
  })
  void aPublishedHouseholdWeightIsThatMeasure(String food, double grams, String measure) {
    Optional<KitchenMeasure> found = KitchenMeasure.nearest(builtIn(food), grams, "");

    assertThat(found.orElseThrow().text()).isEqualTo(measure);
    assertThat(found.orElseThrow().isRough()).isFalse();
  }

  /** By hand: 20 g of butter is 14.2 + 4.73 = 18.9 g in 1 tbsp + 1 tsp, 5.3 % too little. */
  @Test
  void whatIsMoreThanFivePercentOffIsRough() {
    KitchenMeasure found =
        KitchenMeasure.nearest(builtIn("butter-unsalted"), 20, "").orElseThrow();

    assertThat(found.text()).isEqualTo("1 tbsp + 1 tsp");
    assertThat(found.errorPercent()).isBetween(-5.5, -5.1);
    assertThat(found.isRough()).isTrue();
  }

  @Test
  void aFoodWithoutWeightOrDensityHasNoMeasure() {
    Food dust = Bench.food("dust", FoodKind.DRY, 0, 0, 0, 0, 0, 0);

    assertThat(KitchenMeasure.nearest(dust, 100, "")).isEmpty();
  }

  /** USDA SR28, 12220: flaxseed cup, whole 168 g; tbsp, ground 7 g. */
  @Test
  void theMannerOfFillingDecidesAndIsSaid() {
    assertThat(nearest("flaxseed", 168, "whole")).isEqualTo("1 cup, whole");
    assertThat(nearest("flaxseed", 7, "ground fresh")).isEqualTo("1 tbsp, ground");
    assertThat(nearest("flaxseed", 7, "")).as("open which").isEqualTo("none");
  }

  @ParameterizedTest
  @ValueSource(strings = {"butter-unsalted", "water", "salt", "egg-whole"})
  void noMeasureIsFurtherOffThanItsOwnErrorSays(String slug) {
    Food food = builtIn(slug);
    for (double grams = 1; grams < 2000; grams *= 1.07) {
      double mass = grams;
      KitchenMeasure.nearest(food, mass, "")
          .ifPresent(
              found ->
                  assertThat(found.grams())
                      .isCloseTo(
                          mass * (1 + found.errorPercent() / 100),
                          org.assertj.core.api.Assertions.within(1e-6 * mass)));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -3})
  void nothingHasNoMeasure(double grams) {
    assertThat(KitchenMeasure.nearest(builtIn("water"), grams, "")).isEmpty();
  }
}
