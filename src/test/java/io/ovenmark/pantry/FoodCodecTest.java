package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Quantity;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FoodCodecTest {
  private static final String FILE = "pantry/seed-meal.json";

  private static Food read(String json) {
    return FoodCodec.read(FILE, "seed-meal", json.getBytes(StandardCharsets.UTF_8));
  }

  private static List<Problem> problems(String json) {
    return catchThrowableOfType(UnreadableException.class, () -> read(json)).problems();
  }

  static List<Food> foods() {
    return BuiltInPantry.all();
  }

  @ParameterizedTest
  @MethodSource("foods")
  void everyBuiltInFoodSurvivesWritingAndReading(Food food) {
    byte[] written = FoodCodec.write(food);
    Food again = FoodCodec.read("pantry/" + food.slug() + ".json", food.slug(), written);
    assertThat(again).isEqualTo(food);
    assertThat(FoodCodec.write(again)).isEqualTo(written);
  }

  @Test
  void unknownFieldsSurviveAtEveryLevel() {
    String json =
        """
        {
          "name": "seed meal",
          "kind": "dry",
          "source": {
            "kind": "label",
            "shelf": 3
          },
          "per_100_g": {
            "protein_g": 12.5,
            "selenium_mg": 0.01
          },
          "household": [
            {
              "measure": "tbsp",
              "grams": 7,
              "measured_by": "two people"
            }
          ],
          "price": {
            "amount": 3.2,
            "currency": "EUR",
            "grams": 500,
            "shop": "mill"
          },
          "colour": [
            1,
            {
              "deep": null
            }
          ]
        }
        """;
    Food food = read(json);
    assertThat(food.per100g().get(Nutrient.PROTEIN)).isEqualTo(Quantity.known(12.5));
    assertThat(new String(FoodCodec.write(food), StandardCharsets.UTF_8)).isEqualTo(json);
  }

  @Test
  void whatIsMissingOrNullIsUnknownAndNotZero() {
    Food food =
        read(
            """
            {"name": "seed meal", "kind": "dry", "per_100_g": {"fibre_g": null, "fat_g": 0}}
            """);
    assertThat(food.per100g().get(Nutrient.FIBRE)).isEqualTo(Quantity.UNKNOWN);
    assertThat(food.per100g().get(Nutrient.PROTEIN)).isEqualTo(Quantity.UNKNOWN);
    assertThat(food.per100g().get(Nutrient.FAT)).isEqualTo(Quantity.ZERO);
    assertThat(food.allergens()).isEmpty();
    assertThat(food.densityGramsPerMillilitre()).isEmpty();
    assertThat(food.price()).isEmpty();
    assertThat(food.source().kind()).isEqualTo(Source.Kind.OWN);
  }

  @Test
  void anEmptyListOfAllergensMeansNoneAndIsKept() {
    Food none = read("{\"name\": \"a\", \"kind\": \"dry\", \"allergens\": []}");
    assertThat(none.allergens()).contains(Set.of());
    assertThat(new String(FoodCodec.write(none), StandardCharsets.UTF_8))
        .contains("\"allergens\": []");
    Food some = read("{\"name\": \"a\", \"kind\": \"dry\", \"allergens\": [\"Milk\", \"eggs\"]}");
    assertThat(some.allergens()).contains(Set.of(Allergen.EGGS, Allergen.MILK));
  }

  @Test
  void everyFaultIsNamedWithLineColumnAndField() {
    List<Problem> problems =
        problems(
            """
            {
              "kind": "powder",
              "per_100_g": { "protein_g": 120, "fat_g": "12", "energy_kcal": -1 },
              "household": [ { "measure": " ", "grams": 0 }, 7 ],
              "density_g_per_ml": 90,
              "allergens": [ "shrimp" ],
              "price": { "amount": -2, "currency": "euro", "grams": 100 }
            }
            """);
    assertThat(problems)
        .extracting(Problem::field)
        .contains(
            "name",
            "kind",
            "per_100_g.protein_g",
            "per_100_g.fat_g",
            "per_100_g.energy_kcal",
            "household[0].measure",
            "household[0].grams",
            "household[1]",
            "density_g_per_ml",
            "allergens",
            "price");
    assertThat(problems)
        .allSatisfy(
            problem -> {
              assertThat(problem.where()).startsWith(FILE + ":");
              assertThat(problem.message()).endsWith(".");
              assertThat(problem.hint()).endsWith(".");
            });
    assertThat(problems)
        .extracting(Problem::toString)
        .contains(
            FILE
                + ":2:11, field kind: \"powder\" is not a kind of food."
                + " Use one of dry, liquid, fat, dairy solid, produce.");
  }

  @Test
  void aTruncatedFileAndAWrongOutermostValueAreRefusedInOneSentence() {
    assertThat(problems("{\n  \"name\": \"seed")).hasSize(1);
    assertThat(problems("[]")).hasSize(1);
    assertThat(problems("")).hasSize(1);
    assertThat(problems("{\"name\": \"a\", \"name\": \"b\"}")).hasSize(1);
  }

  @Test
  void aFileNameThatIsNoShortNameIsReported() {
    byte[] json = "{\"name\": \"a\", \"kind\": \"dry\"}".getBytes(StandardCharsets.UTF_8);
    assertThatThrownBy(() -> FoodCodec.read("pantry/Seed Meal.json", "Seed Meal", json))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("cannot be a short name");
  }

  @Test
  void namesInAnyScriptAndMarkupAreKeptAsTheyAre() {
    Food food = read("{\"name\": \"<script>λούπινο</script>\", \"kind\": \"dry\"}");
    assertThat(read(new String(FoodCodec.write(food), StandardCharsets.UTF_8))).isEqualTo(food);
  }
}
