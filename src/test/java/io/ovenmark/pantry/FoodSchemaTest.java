package io.ovenmark.pantry;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.ovenmark.json.SchemaCheck;
import io.ovenmark.json.UnreadableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FoodSchemaTest {
  private static final String FOOD =
      """
      {
        "name": "Lupin flour",
        "kind": "dry",
        "source": {"kind": "label", "id": "7", "note": "front shelf", "own": 1},
        "per_100_g": {"energy_kcal": 330.5, "protein_g": 40, "fat_g": null, "own_g": 1},
        "household": [{"measure": "cup", "grams": 120}, {"measure": "tbsp", "grams": 9, "own": 2}],
        "density_g_per_ml": 0.5,
        "allergens": ["lupin"],
        "polyol": null,
        "price": {"amount": 3.2, "currency": "EUR", "grams": 1000},
        "own": [1]
      }
      """;

  private static Food read(String json) {
    return FoodCodec.read("pantry/a.json", "a", json.getBytes(UTF_8));
  }

  private static String food(String members) {
    return "{\"name\": \"x\", \"kind\": \"dry\", " + members + "}";
  }

  @Test
  void aFullFoodFitsBeforeAndAfterTheCodec() {
    assertThat(SchemaCheck.errors("food", FOOD)).isEmpty();
    byte[] written = FoodCodec.write(read(FOOD));
    assertThat(SchemaCheck.errors("food", written)).isEmpty();
    assertThat(FoodCodec.write(FoodCodec.read("pantry/a.json", "a", written))).isEqualTo(written);
    assertThat(new String(written, UTF_8)).contains("\"own_g\": 1", "\"own\": 1", "\"own\": 2", "\"own\": [");
  }

  @Test
  void everyBuiltInFoodFits() {
    for (Food food : BuiltInPantry.all()) {
      assertThat(SchemaCheck.errors("food", FoodCodec.write(food))).as(food.slug()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"own\": 1",
        "\"source\": null, \"per_100_g\": null, \"household\": null",
        "\"density_g_per_ml\": 25, \"allergens\": null, \"price\": null",
        "\"allergens\": [], \"household\": [], \"source\": {}, \"per_100_g\": {}",
        "\"per_100_g\": {\"water_g\": 100.5, \"fat_g\": 0, \"sodium_mg\": 38758}",
        "\"price\": {\"amount\": 0, \"currency\": \"USD\", \"grams\": 0.001}"
      })
  void schemaAndCodecAcceptTheSame(String members) {
    assertThat(SchemaCheck.errors("food", food(members))).isEmpty();
    assertThat(SchemaCheck.errors("food", FoodCodec.write(read(food(members))))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[]",
        "{}",
        "{\"name\": \"x\"}",
        "{\"kind\": \"dry\"}",
        "{\"name\": \" \", \"kind\": \"dry\"}",
        "{\"name\": \"x\", \"kind\": \"Dry\"}",
        "{\"name\": \"x\", \"kind\": null}"
      })
  void schemaAndCodecRefuseTheSameFiles(String json) {
    assertThat(SchemaCheck.errors("food", json)).isNotEmpty();
    assertThatExceptionOfType(UnreadableException.class).isThrownBy(() -> read(json));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"source\": {\"kind\": \"rumour\"}",
        "\"source\": \"label\"",
        "\"source\": {\"id\": 7}",
        "\"per_100_g\": []",
        "\"per_100_g\": {\"fat_g\": \"3\"}",
        "\"per_100_g\": {\"fat_g\": -0.1}",
        "\"per_100_g\": {\"fat_g\": 100.6}",
        "\"per_100_g\": {\"energy_kcal\": 1000.1}",
        "\"per_100_g\": {\"sodium_mg\": 100500.1}",
        "\"household\": {}",
        "\"household\": [{}]",
        "\"household\": [{\"measure\": \"cup\"}]",
        "\"household\": [{\"measure\": \"\", \"grams\": 1}]",
        "\"household\": [{\"measure\": \"cup\", \"grams\": 0}]",
        "\"density_g_per_ml\": 0",
        "\"density_g_per_ml\": 26",
        "\"allergens\": \"eggs\"",
        "\"allergens\": [\"soap\"]",
        "\"allergens\": [1]",
        "\"polyol\": 1",
        "\"price\": {}",
        "\"price\": 3",
        "\"price\": {\"amount\": -1, \"currency\": \"EUR\", \"grams\": 1}",
        "\"price\": {\"amount\": 1, \"currency\": \"eur\", \"grams\": 1}",
        "\"price\": {\"amount\": 1, \"currency\": \"EUR\", \"grams\": 0}"
      })
  void schemaAndCodecRefuseTheSame(String members) {
    assertThat(SchemaCheck.errors("food", food(members))).isNotEmpty();
    assertThatExceptionOfType(UnreadableException.class).isThrownBy(() -> read(food(members)));
  }

  @ParameterizedTest
  @EnumSource(Nutrient.class)
  void theSchemaKnowsEveryNutrient(Nutrient nutrient) {
    String json = food("\"per_100_g\": {\"" + nutrient.key() + "\": -1}");
    assertThat(SchemaCheck.errors("food", json)).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource(Allergen.class)
  void theSchemaKnowsEveryAllergen(Allergen allergen) {
    String json = food("\"allergens\": [\"" + allergen.key() + "\"]");
    assertThat(SchemaCheck.errors("food", json)).isEmpty();
    assertThat(
            SchemaCheck.errors(
                "goal",
                "{\"name\": \"x\", \"without\": {\"allergens\": [\"" + allergen.key() + "\"]}}"))
        .isEmpty();
  }
}
