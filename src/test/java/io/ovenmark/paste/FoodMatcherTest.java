package io.ovenmark.paste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.json.Extras;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrients;
import io.ovenmark.pantry.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FoodMatcherTest {
  private static final FoodMatcher BUILT_IN = FoodMatcher.of(List.of());

  private static FoodMatch match(String line) {
    return BUILT_IN.match(IngredientLine.read(line));
  }

  private static Food food(String slug, String name) {
    return new Food(
        slug,
        name,
        FoodKind.DRY,
        new Source(Source.Kind.LABEL, Optional.empty(), Optional.empty()),
        Nutrients.of(Map.of()),
        List.of(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  private static List<String> slugs(FoodMatch match) {
    return match.candidates().stream().map(each -> each.food().slug()).toList();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          egg whites                  | egg-white
          Egg Whites                  | egg-white
          3 large egg whites          | egg-white
          eggs                        | egg-whole
          eggs, whites only           | egg-white
          free-range eggs             | egg-whole
          water (warm)                | water
          boiling water               | water
          unsalted butter             | butter-unsalted
          butter, unsalted            | butter-unsalted
          melted unsalted butter      | butter-unsalted
          salted butter               | butter-salted
          fine sea salt               | salt
          organic coconut flour       | coconut-flour
          flour, bread                | wheat-flour-bread
          milk, whole                 | milk-whole
          oil, olive                  | oil-olive
          extra virgin olive oil      | oil-olive
          sugar                       | sugar-granulated
          sugar, brown                | sugar-brown
          corn starch                 | cornstarch
          fiber, oat                  | oat-fibre
          bamboo fiber                | bamboo-fibre
          ground cinnamon             | cinnamon
          freshly ground black pepper | black-pepper
          gelatin powder, unflavored  | gelatin-dry
          Gruyère                     | gruyere
          unsalted almonds            | almonds
          walnuts, chopped            | walnuts
          psyllium husk               | psyllium-husk
          baking soda                 | baking-soda
          half-and-half               | cream-half-and-half
          flour, lupin                | lupin-flour
          """)
  void aFoodThatAloneIsCalledSoIsCertain(String line, String slug) {
    FoodMatch match = match(line);
    assertThat(match.food().map(Food::slug)).contains(slug);
    assertThat(match.candidates().get(0).score()).isEqualTo(1);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          almond meal          | almond-flour, almonds-blanched
          ground almonds       | almond-flour, almonds-blanched
          almonds, ground      | almond-flour, almonds-blanched
          greek yoghurt        | yogurt-greek-nonfat, yogurt-greek-whole
          flour                | wheat-flour-all-purpose
          butter               | butter-salted, butter-unsalted
          yeast                | yeast-active-dry, yeast-compressed
          milk                 | milk-whole
          vanilla              | vanilla-extract
          gluten-free oats     | oats-rolled
          sugar-free chocolate | chocolate-dark-70
          salt and pepper      | salt, black-pepper
          psylium husk         | psyllium-husk
          erythritl            | erythritol
          ginger, grated       | ginger-ground
          """)
  void whatMayMeanSeveralFoodsIsAChoice(String line, String among) {
    FoodMatch match = match(line);
    assertThat(match.certainty()).isEqualTo(FoodMatch.Certainty.DOUBTFUL);
    assertThat(match.food()).isEmpty();
    assertThat(slugs(match)).contains(among.split(", "));
    assertThat(match.candidates()).allSatisfy(each -> assertThat(each.why()).isNotBlank());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "xylophone", "???", "🍞", "of the"})
  void whatFitsNothingHasNoCandidate(String words) {
    assertThat(BUILT_IN.match(words, "").certainty()).isEqualTo(FoodMatch.Certainty.NONE);
    assertThat(BUILT_IN.match(words, "").candidates()).isEmpty();
  }

  @Test
  void wordsThatOnlyDescribeAreToldAndNotLost() {
    assertThat(match("organic warm water").leftOut()).containsExactly("organic", "warm");
    assertThat(match("ground cinnamon").leftOut()).isEmpty();
  }

  @Test
  void candidatesAreFewAndBestFirst() {
    FoodMatch match = match("flour");
    assertThat(match.candidates()).hasSize(FoodMatch.MOST);
    assertThat(match.candidates())
        .isSortedAccordingTo((a, b) -> Double.compare(b.score(), a.score()));
  }

  @Test
  void aFurtherAmountBehindTheFoodDoesNotDecideWhichFoodItIs() {
    assertThat(match("flour, plus 20 g bread flour").food()).isEmpty();
    assertThat(match("butter (not salted)").food()).isEmpty();
    assertThat(match("butter (salted or unsalted)").food()).isEmpty();
  }

  @Test
  void theNotebooksFoodsComeFirst() {
    FoodMatcher matcher = FoodMatcher.of(List.of(food("house-flour", "flour of the house")));
    FoodMatch match = matcher.match("flour", "");
    assertThat(match.certainty()).isEqualTo(FoodMatch.Certainty.DOUBTFUL);
    assertThat(match.candidates()).anySatisfy(each -> assertThat(each.inPantry()).isTrue());
    Food own = food("bench-almond", "almond flour");
    assertThat(FoodMatcher.of(List.of(own)).match("almond flour", "").food()).contains(own);
  }

  @Test
  void theNotebooksFoodStandsInThePlaceOfTheBuiltInOne() {
    Food own = food("water", "tap water of the bench");
    FoodMatcher matcher = FoodMatcher.of(List.of(own));
    assertThat(matcher.match("water", "").food()).contains(own);
    assertThat(matcher.find("water")).contains(own);
  }

  @Test
  void aNotebooksFoodKeepsTheOtherNamesOfTheBuiltInOne() {
    Food almond = BuiltInPantry.find("almond-flour").orElseThrow();
    FoodMatch match = FoodMatcher.of(List.of(almond)).match("almond meal", "");
    assertThat(match.certainty()).isEqualTo(FoodMatch.Certainty.DOUBTFUL);
    assertThat(slugs(match)).startsWith("almond-flour", "almonds-blanched");
  }

  @Test
  void aChoiceSettlesTheWordsHoweverTheyAreWritten() {
    Food almond = BuiltInPantry.find("almond-flour").orElseThrow();
    FoodMatcher matcher = BUILT_IN.choosing("Almond  meals", almond);
    assertThat(matcher.match("almond meal", "").food()).contains(almond);
    assertThat(BUILT_IN.match("almond meal", "").food()).isEmpty();
    assertThatThrownBy(() -> BUILT_IN.choosing(" of ", almond))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\n");
  }

  @Test
  void everyBuiltInFoodIsFoundByItsOwnShortNameAmongTheFirst() {
    for (Food food : BuiltInPantry.all()) {
      FoodMatch match = BUILT_IN.match(food.slug().replace('-', ' '), "");
      assertThat(slugs(match)).as(food.slug()).contains(food.slug());
    }
  }
}
