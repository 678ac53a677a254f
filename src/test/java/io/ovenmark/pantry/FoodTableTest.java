package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FoodTableTest {
  private static FoodTable.Result read(String... lines) {
    return FoodTable.read("mill.csv", String.join("\n", lines) + "\n");
  }

  private static double figure(Food food, Nutrient nutrient) {
    return food.per100g().get(nutrient).low();
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void oneFoodARowWhateverStandsBetween(String sign) {
    FoodTable.Result read =
        FoodTable.read(
            "mill.csv",
            "\uFEFFName;Kind;Protein (g);fat_g;Fiber;weight.cup;allergens;price\r\n"
                    .replace(";", sign)
                + "Lupin flour;dry;37.2;9.6;28;112 g;lupin;5.10 EUR for 1 kg on 2026-09-01\r\n"
                    .replace(";", sign));

    Food food = read.foods().get(0).food();
    assertThat(read.problems()).isEmpty();
    assertThat(food.slug()).isEqualTo("lupin-flour");
    assertThat(figure(food, Nutrient.PROTEIN)).isEqualTo(37.2);
    assertThat(figure(food, Nutrient.FIBRE)).isEqualTo(28);
    assertThat(food.per100g().get(Nutrient.WATER).isUnknown()).isTrue();
    assertThat(food.household()).containsExactly(new HouseholdMeasure("cup", 112));
    assertThat(food.allergens().orElseThrow()).containsExactly(Allergen.LUPIN);
    assertThat(food.price().orElseThrow().grams()).isEqualTo(1000);
    assertThat(food.source().note().orElseThrow()).contains("mill.csv, row 2");
    assertThat(read.foods().get(0).kindGuessed()).isFalse();
  }

  /** Regulation (EU) No 1169/2011, Annex I: salt = sodium × 2.5; 1 kcal = 4.184 kJ. */
  @Test
  void europeanColumnsAreConverted() {
    FoodTable.Result read =
        read(
            "name;kJ;carbohydrate_without_fibre_g;fibre_g;salt",
            "Lupin flour;1468,6;13,4;28;0,05");

    Food food = read.foods().get(0).food();
    assertThat(figure(food, Nutrient.ENERGY)).isCloseTo(351, within(0.01));
    assertThat(figure(food, Nutrient.CARBOHYDRATE)).isCloseTo(41.4, within(1e-9));
    assertThat(figure(food, Nutrient.SODIUM)).isCloseTo(20, within(1e-9));
  }

  @Test
  void withoutFibreTheCarbohydrateStaysUnknown() {
    FoodTable.Result read = read("name,carbohydrate_without_fibre_g,fat_g", "Flour,13,1");

    assertThat(read.foods().get(0).food().per100g().get(Nutrient.CARBOHYDRATE).isUnknown())
        .isTrue();
    assertThat(read.problems().get(0).hint()).contains("fibre_g");
  }

  @Test
  void faultsAreToldWithTheirRowAndEverythingElseIsRead() {
    FoodTable.Result read =
        read(
            "name;kind;protein_g;fat_g;colour",
            "Good;dry;10;1;red",
            ";dry;10;1;",
            "Odd;wet;1,500;120;",
            "Long;dry;1;1;red;too much");

    assertThat(read.foods()).extracting(found -> found.food().name()).containsExactly("Good", "Odd");
    assertThat(read.unknownColumns()).containsExactly("colour");
    assertThat(read.problems())
        .extracting(Problem::where)
        .containsExactly(
            "mill.csv:3:1, field name",
            "mill.csv:4:5, field kind",
            "mill.csv:4:9, field protein_g",
            "mill.csv:4:15, field fat_g",
            "mill.csv:5:1");
    assertThat(read.foods().get(1).kindGuessed()).isTrue();
  }

  @Test
  void namesThatAreTheSameGetShortNamesOfTheirOwn() {
    FoodTable.Result read = read("name,protein_g", "Flour,10", "Flour,11", "Μέλι,0");

    assertThat(read.foods())
        .extracting(found -> found.food().slug())
        .containsExactly("flour", "flour-2", "food-4");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "protein_g,fat_g\n1,2\n", "name\nFlour\n", "PK\u0003\u0004"})
  void whatIsNoTableIsRefused(String text) {
    assertThatThrownBy(() -> FoodTable.read("mill.csv", text))
        .isInstanceOf(UnreadableException.class);
  }

  @Test
  void everyColumnThatIsOfferedIsUnderstood() {
    String head = String.join(",", FoodTable.columnNames());

    assertThat(read(head, "Flour").unknownColumns()).isEmpty();
  }
}
