package io.ovenmark.pantry;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.json.Problem;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.LabelFood.Figure;
import io.ovenmark.pantry.LabelFood.Panel;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Trans fat, added sugars and vitamin D, which a label of the United States states. */
class LabelNutrientsTest {
  private static final List<Nutrient> NEW =
      List.of(Nutrient.TRANS_FAT, Nutrient.ADDED_SUGARS, Nutrient.VITAMIN_D);

  private static final String OLD =
      """
      {
        "name": "lupin flour",
        "kind": "dry",
        "source": {
          "kind": "own"
        },
        "per_100_g": {
          "fat_g": 9,
          "saturated_fat_g": 1,
          "carbohydrate_g": 40,
          "sugars_g": 2,
          "iron_mg": 3
        }
      }
      """;

  private static Food read(String text) {
    return FoodCodec.read("pantry/lupin-flour.json", "lupin-flour", text.getBytes(UTF_8));
  }

  @Test
  void aFileWithoutThemStaysByteForByteAndTheyAreUnknown() {
    Food food = read(OLD);

    assertThat(new String(FoodCodec.write(food), UTF_8)).isEqualTo(OLD);
    for (Nutrient nutrient : NEW) {
      assertThat(food.per100g().get(nutrient)).isEqualTo(Quantity.UNKNOWN);
    }
  }

  @Test
  void aFileWithThemKeepsThemBesideWhatTheyArePartOf() {
    Food food = read(OLD);
    food = FoodEdit.of(food, "trans_fat", "0.2 g");
    food = FoodEdit.of(food, "added-sugars", "1");
    food = FoodEdit.of(food, "vitamin_d_ug", "2,5 µg");

    assertThat(new String(FoodCodec.write(food), UTF_8))
        .contains("\"saturated_fat_g\": 1,\n    \"trans_fat_g\": 0.2,\n    \"carbohydrate_g\"")
        .contains("\"sugars_g\": 2,\n    \"added_sugars_g\": 1,\n    \"iron_mg\": 3,\n")
        .contains("    \"vitamin_d_ug\": 2.5\n");
    assertThat(read(new String(FoodCodec.write(food), UTF_8))).isEqualTo(food);
  }

  /** 40 international units of vitamin D are 1 µg: 21 CFR 101.9(c)(8)(iv), from memory. */
  @ParameterizedTest
  @CsvSource({"2, 2", "2 µg, 2", "2 μg, 2", "2 mcg, 2", "2ug, 2", "0.002 mg, 2", "80 IU, 2"})
  void vitaminDIsReadInTheUnitsOfLabels(String written, double micrograms) {
    Food food = FoodEdit.of(read(OLD), "vitamin_d", written);

    assertThat(food.per100g().get(Nutrient.VITAMIN_D)).isEqualTo(Quantity.known(micrograms));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2 kcal", "2 g", "two", "< 2 µg"})
  void otherUnitsAndWordsAreRefused(String written) {
    assertThatThrownBy(() -> FoodEdit.of(read(OLD), "vitamin_d", written))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\n");
  }

  @Test
  void otherFiguresAreNotReadInUnitsOfVitaminD() {
    assertThatThrownBy(() -> FoodEdit.of(read(OLD), "trans_fat", "80 IU"))
        .hasMessageContaining("kept in g, not in iu");
  }

  @ParameterizedTest
  @CsvSource({
    "trans_fat_g, added_sugars_g, vitamin_d_ug",
    "Trans fat (g), Added sugars (g), Vitamin D (µg)",
    "trans, added sugar, vitamin_d_mcg",
    "Trans fatty acids, Sugars added, Vit. D",
    "trans-fat, Includes added sugars, Vitamin D (D2 + D3)",
  })
  void aTablesColumnsAreKnownByTheirUsualNames(String trans, String added, String vitamin) {
    FoodTable.Result read =
        FoodTable.read(
            "mill.csv",
            "name;fat_g;" + trans + ";" + added + ";" + vitamin + "\nSpread;80;1,5;3;7,5\n");

    assertThat(read.unknownColumns()).isEmpty();
    assertThat(read.problems()).isEmpty();
    Nutrients figures = read.foods().get(0).food().per100g();
    assertThat(figures.get(Nutrient.TRANS_FAT)).isEqualTo(Quantity.known(1.5));
    assertThat(figures.get(Nutrient.ADDED_SUGARS)).isEqualTo(Quantity.known(3));
    assertThat(figures.get(Nutrient.VITAMIN_D)).isEqualTo(Quantity.known(7.5));
  }

  @Test
  void aColumnInAnotherUnitIsLeftOutAndNeverTakenForMicrograms() {
    FoodTable.Result read =
        FoodTable.read("mill.csv", "name;fat_g;Vitamin D (IU)\nSpread;80;300\n");

    assertThat(read.unknownColumns()).containsExactly("Vitamin D (IU)");
    assertThat(read.foods().get(0).food().per100g().get(Nutrient.VITAMIN_D).isUnknown()).isTrue();
  }

  private static LabelFood spread() {
    return LabelFood.perServing("spread", FoodKind.FAT, Panel.UNITED_STATES, 14)
        .with(Figure.ENERGY_KCAL, 100)
        .with(Figure.FAT, 11)
        .with(Figure.SATURATED_FAT, 2)
        .with(Figure.CARBOHYDRATE, 2)
        .with(Figure.SUGARS, 1)
        .with(Figure.PROTEIN, 0);
  }

  @Test
  void aLabelOfAServingBecomesFiguresOfAHundredGrams() {
    Food food =
        spread()
            .with(Figure.TRANS_FAT, 1.4)
            .with(Figure.ADDED_SUGARS, 0.7)
            .with(Figure.VITAMIN_D, 2.1)
            .food("spread");

    assertThat(food.per100g().get(Nutrient.TRANS_FAT)).isEqualTo(Quantity.known(10));
    assertThat(food.per100g().get(Nutrient.ADDED_SUGARS)).isEqualTo(Quantity.known(5));
    assertThat(food.per100g().get(Nutrient.VITAMIN_D)).isEqualTo(Quantity.known(15));
  }

  @ParameterizedTest
  @CsvSource({
    "TRANS_FAT, 13, trans_fat_g, It is more than the fat_g",
    "TRANS_FAT, 10.6, trans_fat_g, Saturated and trans fat are 12.6 g of 11 g fat.",
    "ADDED_SUGARS, 2.5, added_sugars_g, It is more than the sugars_g",
  })
  void aPartThatIsMoreThanItsWholeIsToldByItsName(
      Figure figure, double value, String field, String words) {
    assertThat(spread().with(figure, value).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.field()).isEqualTo(field);
              assertThat(problem.message()).startsWith(words);
            });
  }

  @Test
  void whatRoundingAllowsIsNoProblem() {
    assertThat(spread().with(Figure.TRANS_FAT, 10).with(Figure.ADDED_SUGARS, 2).problems())
        .extracting(Problem::field)
        .isEmpty();
  }

  /** What they are follows from what the food is: 21 CFR 101.9(c)(6)(iii). */
  @Test
  void builtInFoodsStateThemOnlyWhereTheyFollowWithCertainty() {
    for (String none : List.of("water", "salt", "baking-soda", "erythritol")) {
      Nutrients figures = BuiltInPantry.find(none).orElseThrow().per100g();
      for (Nutrient nutrient : NEW) {
        assertThat(figures.get(nutrient)).as(none).isEqualTo(Quantity.ZERO);
      }
    }
    for (String added : List.of("sugar-granulated", "sugar-brown", "honey", "molasses")) {
      Nutrients figures = BuiltInPantry.find(added).orElseThrow().per100g();
      assertThat(figures.get(Nutrient.ADDED_SUGARS))
          .as(added)
          .isEqualTo(figures.get(Nutrient.SUGARS));
    }
    assertThat(BuiltInPantry.all()).hasSizeGreaterThan(150);
    for (Food food : BuiltInPantry.all()) {
      Nutrients figures = food.per100g();
      assertThat(figures.get(Nutrient.ADDED_SUGARS).low())
          .as(food.slug())
          .isLessThanOrEqualTo(figures.get(Nutrient.SUGARS).high());
      if (figures.get(Nutrient.TRANS_FAT).isKnown()) {
        assertThat(figures.get(Nutrient.FAT)).as(food.slug()).isEqualTo(Quantity.ZERO);
      }
    }
    for (String open : List.of("milk-whole", "butter-unsalted", "shortening", "egg-whole")) {
      Nutrients figures = BuiltInPantry.find(open).orElseThrow().per100g();
      assertThat(figures.get(Nutrient.TRANS_FAT).isUnknown()).as(open).isTrue();
      assertThat(figures.get(Nutrient.VITAMIN_D).isUnknown()).as(open).isTrue();
    }
  }
}
