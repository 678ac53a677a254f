package io.ovenmark.compare;

import static io.ovenmark.compare.Bench.FOODS;
import static io.ovenmark.compare.Bench.formula;
import static io.ovenmark.compare.Bench.sheet;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.HouseholdMeasure;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Policy;
import java.util.List;
import org.junit.jupiter.api.Test;

class FoodDataChangeTest {
  private static List<FoodDataChange> changes(Food to) {
    return FoodDataChange.between(
        sheet(formula("psyllium 9 g", "water 20 g")),
        sheet(formula("psyllium 9 g", "salt 1 g"), Bench.with(to), Policy.USUAL),
        ShownUnits.AS_WRITTEN);
  }

  @Test
  void eachFigureThatDiffersIsTold() {
    List<FoodDataChange> changes =
        changes(Bench.withFigure(FOODS.get("psyllium"), Nutrient.FIBRE, 84));
    assertThat(changes).hasSize(1);
    assertThat(changes.get(0).food()).isEqualTo("psyllium");
    assertThat(changes.get(0).figures())
        .containsExactly(
            new FoodDataChange.FoodFigureChange(
                Nutrient.FIBRE, Quantity.known(80), Quantity.known(84)));
    assertThat(changes.get(0).movesFigures()).isTrue();
  }

  @Test
  void householdWeightsThatDifferAreTold() {
    List<FoodDataChange> changes =
        changes(
            Bench.withHousehold(
                FOODS.get("psyllium"),
                new HouseholdMeasure("tbsp", 6.5),
                new HouseholdMeasure("tsp", 2)));
    assertThat(changes.get(0).weights())
        .extracting(weight -> weight.label() + ": " + weight.from() + weight.to())
        .containsExactly(
            "weight of 1 tbsp: Optional[5 g]Optional[6.5 g]",
            "weight of 1 tsp: Optional.emptyOptional[2 g]");
  }

  @Test
  void anotherNameMovesNoFigure() {
    Food food = FOODS.get("psyllium");
    FoodDataChange change =
        changes(Bench.withFigure(food, "psyllium", "psyllium husk powder", Nutrient.FIBRE, 80.0))
            .get(0);
    assertThat(change.movesFigures()).isFalse();
    assertThat(change.others()).hasSize(1);
  }

  @Test
  void foodsOfOneSideOnlyAreNoChangeOfData() {
    assertThat(changes(Bench.withFigure(FOODS.get("salt"), Nutrient.SODIUM, 1))).isEmpty();
  }
}
