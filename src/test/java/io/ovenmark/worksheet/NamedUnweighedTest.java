package io.ovenmark.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodEdit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NamedUnweighedTest {
  private static final Formula BUN =
      new FormulaEdit(Formula.named("Seeded lupin bun"))
          .add("lupin-flour=120 g")
          .add("pumpkin-seeds=37 g")
          .add("baking-powder=9 g")
          .add("egg-white=40 g")
          .add("water=180 g")
          .formula();

  private static List<NamedUnweighed> in(List<Food> pantry, String... steps) {
    Worksheet sheet =
        Worksheet.of(
            BUN.withMethod(List.of(steps)),
            BuiltInPantry::find,
            Policy.USUAL,
            BakedYield.UNMEASURED);
    return NamedUnweighed.in(sheet, pantry);
  }

  @Test
  void theSeedsOfAnEarlierRevisionAreFoundInTheStepThatStillNamesThem() {
    assertThat(
            in(
                List.of(),
                "Heat the oven.",
                "Whisk everything dry together, the sunflower seeds included."))
        .containsExactly(new NamedUnweighed(2, "sunflower seeds"));
  }

  @ParameterizedTest
  @CsvSource({
    "Butter the tin well., Butter",
    "Brush with milk before the oven., milk",
    "Dust the bench with almond flour., almond flour",
    "Fold in the walnuts., walnuts",
    "Dissolve the yeast in the water., yeast",
    "Season with table salt., table salt",
    "Finish with Greek yogurt on top., Greek yogurt"
  })
  void whatComesFromTheShelfUnweighedIsNamed(String step, String words) {
    assertThat(in(List.of(), step)).containsExactly(new NamedUnweighed(1, words));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Whip the egg white; stir the lupin flour with baking powder and the pumpkin seeds.",
        "Dust with flour; the seeds go on top, the powder is sifted.",
        "Round with wet hands; steam with hot water.",
        "Cream everything until pale; a kernel of air stays.",
        "Divide into walnut-sized pieces and bake until honey-coloured.",
        "No butter here: bake without salt, instead of honey nothing.",
        "Line with baking paper.",
        ""
      })
  void whatIsWeighedAndWhatIsNoFoodIsNotNamed(String step) {
    assertThat(in(List.of(), step)).isEmpty();
  }

  @Test
  void aFoodThatIsOnlyInThePantryIsFoundByItsWholeNameInAnyScript() {
    Food mastic =
        FoodEdit.of(
            BuiltInPantry.find("honey").orElseThrow(), "name", "μαστίχα Χίου, τριμμένη");
    assertThat(in(List.of(mastic), "Ρίξτε λίγη Μαστίχα Χίου."))
        .containsExactly(new NamedUnweighed(1, "Μαστίχα Χίου"));
    assertThat(in(List.of(), "Ρίξτε λίγη Μαστίχα Χίου.")).isEmpty();
  }

  @Test
  void aStepNamesAFoodOnce() {
    assertThat(in(List.of(), "Melt the butter. Brush with butter.", "More butter."))
        .containsExactly(new NamedUnweighed(1, "butter"), new NamedUnweighed(2, "butter"));
  }
}
