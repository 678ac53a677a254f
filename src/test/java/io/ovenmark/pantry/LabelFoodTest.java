package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.LabelFood.Figure;
import io.ovenmark.pantry.LabelFood.Panel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The labels are invented for the tests. */
class LabelFoodTest {
  private static LabelFood us(double grams) {
    return LabelFood.perServing("seed meal", FoodKind.DRY, Panel.UNITED_STATES, grams);
  }

  private static LabelFood eu() {
    return LabelFood.per100Grams("seed meal", FoodKind.DRY, Panel.EUROPEAN_UNION);
  }

  private static double figure(Food food, Nutrient nutrient) {
    return food.per100g().get(nutrient).value().orElseThrow();
  }

  @Test
  void figuresPerServingBecomeFiguresPerHundredGrams() {
    Food food =
        us(30)
            .with(Figure.ENERGY_KCAL, 120)
            .with(Figure.PROTEIN, 12)
            .with(Figure.FAT, 3)
            .with(Figure.CARBOHYDRATE, 12)
            .with(Figure.FIBRE, 9)
            .with(Figure.SODIUM, 15)
            .food("my-seed-meal");
    assertThat(figure(food, Nutrient.ENERGY)).isEqualTo(400);
    assertThat(figure(food, Nutrient.PROTEIN)).isEqualTo(40);
    assertThat(figure(food, Nutrient.CARBOHYDRATE)).isEqualTo(40);
    assertThat(figure(food, Nutrient.FIBRE)).isEqualTo(30);
    assertThat(figure(food, Nutrient.SODIUM)).isEqualTo(50);
    assertThat(food.per100g().get(Nutrient.SUGARS)).isEqualTo(Quantity.UNKNOWN);
    assertThat(food.allergens()).isEmpty();
    assertThat(food.source().kind()).isEqualTo(Source.Kind.LABEL);
    assertThat(food.source().note().orElseThrow()).contains("30 g").contains("rounded");
    assertThat(food.resolve(Amount.parse("2 servings")).grams()).isEqualTo(Quantity.known(60));
    assertThat(FoodCodec.read("f", "my-seed-meal", FoodCodec.write(food))).isEqualTo(food);
  }

  /**
   * Regulation (EU) No 1169/2011, Annex I: carbohydrate is without fibre, salt is sodium times 2.5.
   * 1 kcal = 4.184 kJ.
   */
  @Test
  void anEuropeanLabelIsBroughtToCarbohydrateWithFibreAndToSodium() {
    Food food =
        eu()
            .with(Figure.ENERGY_KJ, 1464.4)
            .with(Figure.PROTEIN, 40)
            .with(Figure.FAT, 10)
            .with(Figure.CARBOHYDRATE, 12)
            .with(Figure.FIBRE, 28)
            .with(Figure.SALT, 0.5)
            .food("my-seed-meal");
    assertThat(figure(food, Nutrient.ENERGY)).isCloseTo(350, within(1e-9));
    assertThat(figure(food, Nutrient.CARBOHYDRATE)).isEqualTo(40);
    assertThat(figure(food, Nutrient.SODIUM)).isEqualTo(200);
    assertThat(food.household()).isEmpty();
  }

  @Test
  void withoutFibreTheCarbohydrateOfAnEuropeanLabelStaysUnknownButIsNotLost() {
    Food food = eu().with(Figure.CARBOHYDRATE, 12).with(Figure.PROTEIN, 20).food("meal");
    assertThat(food.per100g().get(Nutrient.CARBOHYDRATE)).isEqualTo(Quantity.UNKNOWN);
    assertThat(food.source().note().orElseThrow()).contains("12 g carbohydrate without fibre");
  }

  /** The US label's serving is rounded: 4 g of a sweetener that is all carbohydrate prints 4 g. */
  @Test
  void roundingIsAllowedFor() {
    Food food =
        us(3.7)
            .with(Figure.CARBOHYDRATE, 4)
            .with(Figure.POLYOLS, 4)
            .with(Figure.PROTEIN, 0)
            .with(Figure.FAT, 0)
            .with(Figure.ENERGY_KCAL, 0)
            .food("sweet");
    assertThat(figure(food, Nutrient.POLYOLS)).isEqualTo(100);
    assertThat(eu().with(Figure.PROTEIN, 2).with(Figure.FAT, 0.6).with(Figure.CARBOHYDRATE, 2)
            .with(Figure.ENERGY_KCAL, 196).problems())
        .as("a husk whose label does not state its fibre")
        .isEmpty();
    assertThat(us(4).with(Figure.SALT, 4).problems()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0, protein_g, 1, serving_g, cannot be",
    "-5, protein_g, 1, serving_g, cannot be",
    "NaN, protein_g, 1, serving_g, cannot be",
    "9000, protein_g, 1, serving_g, cannot be",
    "30, protein_g, -1, protein_g, is not a number of 0 or more",
    "30, protein_g, Infinity, protein_g, is not a number of 0 or more",
    "30, protein_g, 40, protein_g, There is more of it",
    "30, sodium_mg, 40000, sodium_mg, There is more of it"
  })
  void aFigureThatCannotBeIsNamed(
      double serving, String key, double value, String field, String message) {
    assertThat(us(serving).with(Figure.withKey(key).orElseThrow(), value).problems())
        .anySatisfy(
            problem -> {
              assertThat(problem.field()).isEqualTo(field);
              assertThat(problem.message()).contains(message);
              assertThat(problem.hint()).isNotBlank();
            });
  }

  @Test
  void macrosOverTheMassOfTheFoodAreRefused() {
    LabelFood label =
        eu().with(Figure.PROTEIN, 40).with(Figure.FAT, 30).with(Figure.CARBOHYDRATE, 45);
    assertThat(label.problems())
        .extracting(Problem::message)
        .containsExactly(
            "Protein, fat and carbohydrate add up to 115 g in 100 g of food.");
    assertThatThrownBy(() -> label.food("meal")).isInstanceOf(UnreadableException.class);
  }

  @Test
  void aPartGreaterThanItsWholeIsRefused() {
    assertThat(us(30).with(Figure.CARBOHYDRATE, 3).with(Figure.FIBRE, 9).problems())
        .extracting(Problem::field)
        .containsExactly("fibre_g");
    assertThat(us(30).with(Figure.FAT, 3).with(Figure.SATURATED_FAT, 5).problems())
        .extracting(Problem::field)
        .containsExactly("saturated_fat_g");
    assertThat(eu().with(Figure.CARBOHYDRATE, 3).with(Figure.FIBRE, 40).problems()).isEmpty();
  }

  @Test
  void kilojoulesEnteredAsKilocaloriesAreNoticed() {
    LabelFood label =
        eu()
            .with(Figure.PROTEIN, 40)
            .with(Figure.FAT, 10)
            .with(Figure.CARBOHYDRATE, 12)
            .with(Figure.FIBRE, 28);
    assertThat(label.with(Figure.ENERGY_KCAL, 354).problems()).isEmpty();
    assertThat(label.with(Figure.ENERGY_KCAL, 1480).problems())
        .extracting(Problem::hint)
        .singleElement()
        .asString()
        .contains("kilojoules");
    assertThat(label.with(Figure.ENERGY_KCAL, 35).problems()).hasSize(1);
    assertThat(
            label.with(Figure.ENERGY_KCAL, 354).with(Figure.ENERGY_KJ, 354).problems())
        .extracting(Problem::field)
        .containsExactly("energy_kj");
  }

  @Test
  void saltAndSodiumMustAgree() {
    assertThat(eu().with(Figure.SALT, 1).with(Figure.SODIUM, 400).problems()).isEmpty();
    assertThat(eu().with(Figure.SALT, 1).with(Figure.SODIUM, 1000).problems())
        .extracting(Problem::field)
        .containsExactly("salt_g");
  }

  /** Labels made from SR28 figures, rounded to whole grams per 100 g, must pass. */
  @Test
  void theLabelOfEveryBuiltInFoodIsPossible() {
    for (Food food : BuiltInPantry.all()) {
      LabelFood label =
          LabelFood.per100Grams(food.name(), food.kind(), Panel.UNITED_STATES);
      for (Figure figure : Figure.values()) {
        Quantity known =
            Nutrient.withKey(figure.key()).map(food.per100g()::get).orElse(Quantity.UNKNOWN);
        if (known.isKnown()) {
          label = label.with(figure, Math.rint(known.low()));
        }
      }
      if (food.source().kind() == Source.Kind.SR28 && !food.slug().startsWith("vinegar")) {
        assertThat(label.problems()).as(food.slug()).isEmpty();
      }
    }
  }
}
