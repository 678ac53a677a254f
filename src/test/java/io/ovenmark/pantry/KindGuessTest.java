package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class KindGuessTest {
  /** The first two digits of an NDB number of SR28 are, for most foods, its food group. */
  private static int group(Food food) {
    return Integer.parseInt(food.source().id().orElse("00").substring(0, 2));
  }

  @Test
  void theGuessIsRightForNineInTenOfTheBuiltInFoods() {
    List<Food> foods =
        BuiltInPantry.all().stream().filter(f -> f.source().kind() == Source.Kind.SR28).toList();
    List<String> wrong =
        foods.stream()
            .filter(f -> KindGuess.of(f.name(), group(f), f.per100g()) != f.kind())
            .map(Food::slug)
            .toList();
    assertThat(wrong).as("wrong of " + foods.size()).hasSizeLessThan(foods.size() / 10);
  }

  @Test
  void withoutAnyFigureAFoodIsTakenForDry() {
    assertThat(KindGuess.of("something", 0, Nutrients.UNKNOWN)).isEqualTo(FoodKind.DRY);
  }
}
