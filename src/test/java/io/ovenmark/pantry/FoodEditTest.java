package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.measure.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FoodEditTest {
  private final Food start = BuiltInPantry.find("egg-whole").orElseThrow();

  private Food edit(String... texts) {
    return FoodEdit.of(start, List.of(texts));
  }

  @Test
  void factsOfTheFoodAreReplaced() {
    Food food =
        edit(
            "name=Egg of the bench", "kind=liquid", "density=1.03 kg/l", "allergens=eggs",
            "price=4.50 eur for 600 g", "polyol=");

    assertThat(food.name()).isEqualTo("Egg of the bench");
    assertThat(food.densityGramsPerMillilitre()).hasValue(1.03);
    assertThat(food.allergens()).contains(Set.of(Allergen.EGGS));
    assertThat(food.price().orElseThrow().currency()).isEqualTo("EUR");
    assertThat(food.price().orElseThrow().grams()).isEqualTo(600);
    assertThat(food.per100g()).isEqualTo(start.per100g());
    assertThat(food.source()).isEqualTo(start.source());
  }

  @Test
  void nothingAfterTheSignMakesAFactUnknown() {
    Food known = edit("density=1.03", "price=3 EUR for 1 kg", "allergens=eggs");

    Food food = FoodEdit.of(known, List.of("density=", "price=", "allergens=", "protein="));

    assertThat(food.densityGramsPerMillilitre()).isEqualTo(OptionalDouble.empty());
    assertThat(food.price()).isEmpty();
    assertThat(food.allergens()).isEmpty();
    assertThat(food.per100g().get(Nutrient.PROTEIN)).isEqualTo(Quantity.UNKNOWN);
  }

  @Test
  void noneIsNotUnknown() {
    assertThat(edit("allergens=none").allergens()).contains(Set.of());
    assertThat(edit("allergens=unknown").allergens()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"eggs, EGGS", "egg, EGGS", "Tree-nuts, TREE_NUTS", "tree nut, TREE_NUTS"})
  void allergensAreFoundHoweverTheyAreWritten(String text, Allergen allergen) {
    assertThat(FoodText.allergens(text)).contains(Set.of(allergen));
  }

  @Test
  void householdWeightsAreAddedReplacedAndTakenAway() {
    Food food = edit("weight.tbsp=15 g", "weight.small ladle=2 oz");
    assertThat(food.household())
        .contains(
            new HouseholdMeasure("tbsp", 15), new HouseholdMeasure("small ladle", 56.69904625));

    Food changed = FoodEdit.of(food, List.of("weight.tbsp=16g", "weight.small ladle="));

    assertThat(changed.household())
        .contains(new HouseholdMeasure("tbsp", 16))
        .noneMatch(measure -> measure.measure().equals("small ladle"));
  }

  @Test
  void aFigureChangedByHandIsNoLongerThatOfTheTable() {
    Food food = edit("protein=12.9");

    assertThat(food.per100g().get(Nutrient.PROTEIN)).isEqualTo(Quantity.known(12.9));
    assertThat(food.per100g().get(Nutrient.FAT)).isEqualTo(start.per100g().get(Nutrient.FAT));
    assertThat(food.source().kind()).isEqualTo(Source.Kind.OWN);
    assertThat(food.source().note().orElseThrow())
        .contains("SR28 " + start.source().id().orElseThrow());
  }

  @Test
  void theSameFigureAgainChangesNothing() {
    double protein = start.per100g().get(Nutrient.PROTEIN).low();

    assertThat(edit("protein_g=" + protein)).isEqualTo(start);
  }

  @Test
  void milligramsMayBeWrittenInGrams() {
    assertThat(edit("sodium=0.14 g").per100g().get(Nutrient.SODIUM))
        .isEqualTo(Quantity.known(140));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3.20 EUR for 1000 g | 1000",
        "3.20 EUR/kg | 1000",
        "3.20EUR per 1 kg | 1000",
        "4 USD / 2 lb | 907.18474"
      })
  void aPriceSaysWhatItBuys(String text, double grams) {
    assertThat(FoodText.price(text).grams()).isEqualTo(grams);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "protein",
        "=12",
        "protein=much",
        "protein=-3",
        "protein=120",
        "protein=3 kcal",
        "taste=good",
        "kind=wet",
        "density=heavy",
        "density=0",
        "density=30 g/ml",
        "price=cheap",
        "price=3 EUR",
        "price=3 EUR for 0 g",
        "price=3 EUR for a bag",
        "price=3 EURO for 1 kg",
        "allergens=gluten",
        "allergens=eggs,dust",
        "weight.tbsp=lots",
        "weight.tbsp=0 g",
        "weight.pinch=",
        "name="
      })
  void aSlipIsToldInOneSentenceWithTheRemedy(String text) {
    assertThatThrownBy(() -> edit(text))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .matches("[^\n]+\\.\n[^\n]+");
  }

  @ParameterizedTest
  @CsvSource({
    "protein, 12, PROTEIN, 12",
    "protein_g, 12 g, PROTEIN, 12",
    "fiber, 8, FIBRE, 8",
    "energy, 120 kcal, ENERGY_KCAL, 120",
    "energy, 120, ENERGY_KCAL, 120",
    "energy, 500 kJ, ENERGY_KJ, 500",
    "energy_kj, 500, ENERGY_KJ, 500",
    "salt, 0.3, SALT, 0.3",
    "sodium, 120 mg, SODIUM, 120",
    "sodium, 0.12 g, SODIUM, 120",
    "saturated-fat, 2, SATURATED_FAT, 2"
  })
  void figuresOfALabelAreFoundByTheirNames(
      String name, String value, LabelFood.Figure figure, double expected) {
    assertThat(FoodText.label(name, value))
        .isEqualTo(Optional.of(new FoodText.LabelValue(figure, expected)));
  }

  @Test
  void whatNoLabelStatesIsToldApart() {
    assertThat(FoodText.labelFact("price=3 EUR for 500 g")).isEmpty();
    assertThatThrownBy(() -> FoodText.labelFact("water=3"))
        .hasMessageContaining("A label does not state");
  }
}
