package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.pantry.Nutrients;
import io.ovenmark.pantry.Source;
import io.ovenmark.worksheet.EnergyRule;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Energy by factors. Sources: United States, 21 CFR 101.9(c)(1)(i)(B), (C) and (F) (the factors of
 * the sugar alcohols from memory) and, for allulose, FDA guidance of October 2020; European Union,
 * Regulation (EU) No 1169/2011, Annex XIV. The worked sums are computed from those factors by hand.
 */
class EnergyFactorsTest {
  private static final List<Nutrient> COLUMNS =
      List.of(
          Nutrient.PROTEIN,
          Nutrient.FAT,
          Nutrient.CARBOHYDRATE,
          Nutrient.FIBRE,
          Nutrient.SOLUBLE_FIBRE,
          Nutrient.POLYOLS,
          Nutrient.ALLULOSE,
          Nutrient.ALCOHOL);

  /** Figures: protein, fat, carbohydrate, fibre, soluble fibre, polyols, allulose, alcohol. */
  @ParameterizedTest(name = "{0}: {1} {2} is {3} kcal")
  @CsvSource({
    "US factors, 15 35 40 8 2 20 0 0, erythritol, 427",
    "US factors, 15 35 40 0 0 0 0 0, , 535",
    "EU factors, 15 35 40 8 2 20 0 0, erythritol, 439",
    "US factors, 10 20 55 5 4 25 0 0, maltitol, 380.5",
    "EU factors, 10 20 55 5 4 25 0 0, maltitol, 390",
    "US factors, 6 18 50 3 1 0 20 0, , 304",
    "US factors, 6 18 50 3 1 0 0 0, , 376",
  })
  void workedSumsAreMet(String rule, String figures, String polyol, double kcal) {
    assertKcal(rule, food(figures, polyol), kcal);
  }

  /** Annex XIV in kilojoules: a sum of its own, 1818 kJ beside 439 kcal, 1625 beside 390. */
  @ParameterizedTest
  @CsvSource({
    "15 35 40 8 2 20 0 0, erythritol, 1818",
    "10 20 55 5 4 25 0 0, maltitol, 1625",
    "0 0 0 0 0 0 0 10, , 290",
  })
  void kilojoulesAreASumOfTheirOwn(String figures, String polyol, double kilojoules) {
    Quantity value = EnergyRule.EU_FACTORS.kilojoulesPer100g(food(figures, polyol));
    assertThat(value.value().orElseThrow()).isCloseTo(kilojoules, within(1e-9));
  }

  /** 21 CFR 101.9(c)(1)(i)(F), from memory. */
  @ParameterizedTest
  @CsvSource({
    "isomalt, 2.0",
    "lactitol, 2.0",
    "xylitol, 2.4",
    "maltitol, 2.1",
    "sorbitol, 2.6",
    "hydrogenated starch hydrolysates, 3.0",
    "mannitol, 1.6",
    "erythritol, 0",
    "Erythritol, 0",
  })
  void sugarAlcoholsHaveTheirUnitedStatesFactor(String polyol, double factor) {
    assertKcal("US factors", food("0 0 100 0 0 100 0 0", polyol), 100 * factor);
  }

  /** 21 CFR 101.9(c)(1)(i)(B) and (C); FDA guidance, October 2020, for allulose. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "protein, 100 0 0 0 0 0 0 0, 400",
    "fat, 0 100 0 0 0 0 0 0, 900",
    "carbohydrate, 0 0 100 0 0 0 0 0, 400",
    "insoluble fibre, 0 0 100 100 0 0 0 0, 0",
    "soluble fibre, 0 0 100 100 100 0 0 0, 200",
    "allulose, 0 0 100 0 0 0 100 0, 40",
  })
  void theOtherUnitedStatesFactors(String what, String figures, double kcal) {
    assertKcal("US factors", food(figures, null), kcal);
  }

  /** Regulation (EU) No 1169/2011, Annex XIV. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "protein, 100 0 0 0 0 0 0 0, , 400",
    "fat, 0 100 0 0 0 0 0 0, , 900",
    "carbohydrate, 0 0 100 0 0 0 0 0, , 400",
    "fibre, 0 0 100 100 0 0 0 0, , 200",
    "polyols, 0 0 100 0 0 100 0 0, xylitol, 240",
    "erythritol, 0 0 100 0 0 100 0 0, erythritol, 0",
    "alcohol, 0 0 0 0 0 0 0 100, , 700",
  })
  void theEuropeanFactors(String what, String figures, String polyol, double kcal) {
    assertKcal("EU factors", food(figures, polyol), kcal);
  }

  private static void assertKcal(String rule, Food food, double kcal) {
    Quantity energy = EnergyRule.withKey(rule).orElseThrow().energyPer100g(food);
    assertThat(energy.value().orElseThrow()).isCloseTo(kcal, within(1e-9));
  }

  private static Food food(String figures, String polyol) {
    String[] numbers = figures.split(" ");
    Map<Nutrient, Quantity> known = new EnumMap<>(Nutrient.class);
    for (int i = 0; i < numbers.length; i++) {
      known.put(COLUMNS.get(i), Quantity.known(Double.parseDouble(numbers[i])));
    }
    return new Food(
        "worked",
        "worked",
        FoodKind.DRY,
        new Source(Source.Kind.OWN, Optional.empty(), Optional.empty()),
        Nutrients.of(known),
        List.of(),
        OptionalDouble.empty(),
        Optional.of(Set.of()),
        Optional.ofNullable(polyol),
        Optional.empty(),
        Extras.NONE);
  }
}
