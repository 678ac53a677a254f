package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FoodResolveTest {
  private static Resolved resolve(String slug, String amount) {
    return BuiltInPantry.find(slug).orElseThrow().resolve(Amount.parse(amount));
  }

  private static Food oil(OptionalDouble density, HouseholdMeasure... household) {
    return new Food(
        "oil",
        "seed oil",
        FoodKind.FAT,
        new Source(Source.Kind.OWN, Optional.empty(), Optional.empty()),
        Nutrients.UNKNOWN,
        List.of(household),
        density,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  /**
   * Household weights: SR28. Units: NIST Handbook 44, Appendix C (ounce 28.349523125 g, cup
   * 236.5882365 mL and its parts), so 1 tbsp is 1/16 cup and 1 ml is 1/236.5882365 cup.
   */
  @ParameterizedTest
  @CsvSource({
    "egg-whole, 150 g, 150, false",
    "egg-whole, 2 oz, 56.69904625, false",
    "egg-whole, 3 large, 150, true",
    "egg-whole, 3 large eggs, 150, true",
    "egg-whole, 1 extra large egg, 56, true",
    "egg-whole, 1/2 cup, 121.5, true",
    "wheat-flour-whole, 2 cups, 240, true",
    "wheat-flour-whole, 2 cups flour, 240, true",
    "wheat-flour-whole, 1 tbsp, 7.5, true",
    "wheat-flour-whole, 1 tsp, 2.5, true",
    "wheat-flour-whole, 100 ml, 50.721034, true",
    "almonds, '2 cups, ground', 190, true",
    "almonds, 2 cups ground, 190, true",
    "almonds, 2 cups ground almonds, 190, true",
    "almonds, 10 almonds, 12, true",
    "flaxseed, '2 tbsp, ground', 14, true",
    "cream-heavy, '1 cup, fluid', 238, true",
    "cream-heavy, 2 tbsp, 30, true",
    "garlic, 2 cloves, 6, true",
    "garlic, 2 cloves garlic, 6, true",
    "blueberries, 20 berries, 27.2, true",
    "cauliflower, 1 large head, 840, true",
    "mozzarella-whole, 3 slices, 85, true",
    "butter-unsalted, 2 pats, 10, true",
    "raisins, 1 cup, 145, true",
    "sunflower-seeds, 1 tbsp, 8.75, true",
    "water, 250 ml, 250, true",
    "milk-whole, 1 pint, 488, true"
  })
  void anAmountBecomesMass(String slug, String amount, double grams, boolean approximate) {
    Resolved resolved = resolve(slug, amount);
    assertThat(resolved.isResolved()).as(resolved.how()).isTrue();
    assertThat(resolved.grams().low()).isCloseTo(grams, within(1e-3));
    assertThat(resolved.approximate()).isEqualTo(approximate);
  }

  @ParameterizedTest
  @CsvSource({
    "almonds, 1 cup, 'may be \"cup, whole\" or \"cup, sliced\"'",
    "cream-heavy, 1 cup, 'may be \"cup, whipped\" or \"cup, fluid\"'",
    "sugar-brown, 1 dl, 'a volume of brown sugar may be measured as'",
    "flaxseed, 50 ml, 'a volume of flaxseed may be measured as'",
    "egg-whole, 2 eggs, 'has no known weight; known are \"large\"'",
    "almond-flour, 1 cup, neither a household weight nor a density",
    "almond-flour, 2 handfuls, has no known weight",
    "salt, 1 pinch, has no known weight",
    "'wheat-flour-whole', '1 cup, sifted', has no known weight"
  })
  void whatCannotBeToldIsUnresolvedAndSaysWhy(String slug, String amount, String why) {
    Resolved resolved = resolve(slug, amount);
    assertThat(resolved.grams()).isEqualTo(Quantity.UNKNOWN);
    assertThat(resolved.how()).contains(why);
  }

  /** 21 CFR 101.9(b)(5)(viii) labels a cup as 240 mL and an ounce as 28 g; amounts are exact. */
  @Test
  void unitsAreExactNotThoseOfLabels() {
    assertThat(resolve("water", "1 cup").grams().low()).isCloseTo(236.588, within(0.3));
    assertThat(resolve("water", "1 oz").grams()).isEqualTo(Quantity.known(28.349523125));
  }

  @Test
  void aDensityServesVolumesAndAWeightOfTheSameMeasureGoesFirst() {
    Food food = oil(OptionalDouble.of(0.92), new HouseholdMeasure("tbsp", 13.5));
    assertThat(food.resolve(Amount.parse("100 ml")).grams().low()).isCloseTo(92, within(1e-9));
    assertThat(food.resolve(Amount.parse("100 ml")).how()).isEqualTo("density 0.92 g/ml");
    assertThat(food.resolve(Amount.parse("2 Tbsp.")).grams()).isEqualTo(Quantity.known(27));
    assertThat(food.resolve(Amount.parse("2 Tbsp.")).how()).isEqualTo("1 tbsp = 13.5 g");
    assertThat(food.resolve(Amount.parse("1 cup oil")).grams().low())
        .isCloseTo(0.92 * 236.5882365, within(1e-9));
  }

  @Test
  void theLargestOfSeveralPlainVolumesGivesTheDensity() {
    Food food =
        oil(
            OptionalDouble.empty(),
            new HouseholdMeasure("tsp", 4.5),
            new HouseholdMeasure("cup", 218),
            new HouseholdMeasure("tbsp", 13.6));
    assertThat(food.resolve(Amount.parse("1 quart")).grams().low()).isCloseTo(872, within(1e-9));
  }

  @Test
  void mannersOfTheSameDensityAreNoDoubt() {
    Food food =
        oil(
            OptionalDouble.empty(),
            new HouseholdMeasure("tbsp, ground", 5.8),
            new HouseholdMeasure("tsp, ground", 2));
    assertThat(food.resolve(Amount.parse("1 cup")).grams().low()).isCloseTo(92.8, within(1e-9));
  }

  @Test
  void massIsProportionalToTheAmountOverManyRandomAmounts() {
    Random random = new Random(7);
    for (Food food : BuiltInPantry.all()) {
      for (String unit : List.of("g", "cup", "tbsp", "large", "ml")) {
        int times = 2 + random.nextInt(50);
        Resolved one = food.resolve(Amount.parse("1 " + unit));
        Resolved many = food.resolve(Amount.parse(times + " " + unit));
        assertThat(many.isResolved()).isEqualTo(one.isResolved());
        assertThat(many.how()).isEqualTo(one.how());
        assertThat(many.grams().low()).isCloseTo(times * one.grams().low(), within(1e-6));
      }
    }
  }

  @Test
  void nothingWeighsNothing() {
    assertThat(resolve("egg-whole", "0 large").grams()).isEqualTo(Quantity.ZERO);
  }
}
