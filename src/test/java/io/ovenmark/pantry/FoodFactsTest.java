package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.json.Extras;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FoodFactsTest {
  /** Every food of the built-in table, put together again from its facts alone. */
  @Test
  void whatIsShownIsReadBackAsTheSameFood() {
    for (Food food : BuiltInPantry.all()) {
      Food empty =
          new Food(
              food.slug(), "x", FoodKind.PRODUCE, food.source(), Nutrients.UNKNOWN,
              List.of(), OptionalDouble.empty(), Optional.empty(),
              Optional.empty(), Optional.empty(), Extras.NONE);
      for (Map.Entry<String, String> fact : FoodFacts.of(food).entrySet()) {
        if (!fact.getKey().equals(FoodFacts.SOURCE) && !fact.getKey().contains("=")) {
          empty = FoodEdit.of(empty, fact.getKey(), fact.getValue());
        }
      }
      assertThat(FoodFacts.of(empty))
          .containsAllEntriesOf(without(FoodFacts.of(food), FoodFacts.SOURCE));
    }
  }

  private static Map<String, String> without(Map<String, String> facts, String fact) {
    Map<String, String> rest = new LinkedHashMap<>(facts);
    rest.remove(fact);
    return rest;
  }

  @Test
  void thePriceHasItsDay() {
    Price price = FoodText.price("5,10 EUR for 1 kg on 2026-09-01");

    assertThat(price)
        .isEqualTo(
            new Price(
                new BigDecimal("5.1"), "EUR", 1000, Optional.of(LocalDate.of(2026, 9, 1))));
    Food food = FoodEdit.of(BuiltInPantry.find("salt").orElseThrow(), "price",
        "5.10 EUR for 1 kg on 2026-09-01");
    assertThat(FoodCodec.read("salt", "salt", FoodCodec.write(food))).isEqualTo(food);
    assertThat(new String(FoodCodec.write(food), StandardCharsets.UTF_8))
        .contains("\"date\": \"2026-09-01\"");
    assertThatThrownBy(() -> FoodText.price("5 EUR for 1 kg on Monday"))
        .hasMessageContaining("not a day");
  }

  @ParameterizedTest
  @CsvSource({"'0,05', 0.05", "'37,2', 37.2", "12.5, 12.5", "'0,125', 0.125", "'12,3456', 12.3456"})
  void aCommaIsADecimalSignWhereItCanBeNothingElse(String text, double value) {
    assertThat(FoodText.number("protein", text, "g")).isEqualTo(value);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1,500", "<0.5", "< 0,5", "1.500,0", "12 kcal", "twelve", "-1"})
  void whatCanMeanTwoThingsIsRefused(String text) {
    assertThatThrownBy(() -> FoodText.number("saturated_fat_g", text, "g"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageMatching("(?is).*saturated fat.*\n.+");
  }
}
