package io.ovenmark.paste;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.measure.Amount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the parts of a line are; which food they mean is in {@link FoodMatcherTest}. */
class IngredientLineTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          # text                                  | amount        | food
          120 g water                             | 120 g         | water
          120g water                              | 120 g         | water
          120  g   water                          | 120 g         | water
          1kg lupin flour                         | 1 kg          | lupin flour
          120 G LUPIN FLOUR                       | 120 g         | LUPIN FLOUR
          2 TBSP SESAME SEEDS                     | 2 tbsp        | SESAME SEEDS
          1 1/2 cups almond meal                  | 1 1/2 cups    | almond meal
          1-1/2 cups water                        | 1 1/2 cups    | water
          1 and 1/2 cups water                    | 1 1/2 cups    | water
          1½ cups water                           | 1½ cups       | water
          1 ½ cups water                          | 1½ cups       | water
          1 and ½ cups water                      | 1½ cups       | water
          ½ tsp salt                              | ½ tsp         | salt
          ½tsp salt                               | ½ tsp         | salt
          ⅐ cup water                             | 1/7 cup       | water
          2⅑ cups water                           | 2 1/9 cups    | water
          3/4 tsp salt                            | 3/4 tsp       | salt
          3⁄4 tsp salt                            | 3/4 tsp       | salt
          .5 tsp salt                             | 0.5 tsp       | salt
          0.5 tsp salt                            | 0.5 tsp       | salt
          1,5 dl milk                             | 1.5 dl        | milk
          0,125 l water                           | 0.125 l       | water
          2,25 kg water                           | 2.25 kg       | water
          1,250.5 g water                         | 1250.5 g      | water
          1,000,000 mg water                      | 1000000 mg    | water
          1.25 kg water                           | 1.25 kg       | water
          2 tsp. baking powder                    | 2 tsp         | baking powder
          2 tsps baking powder                    | 2 tsp         | baking powder
          2 Tbsp. honey                           | 2 tbsp        | honey
          1 T honey                               | 1 tbsp        | honey
          2 tablespoonfuls honey                  | 2 tablespoon  | honey
          8 fl oz whole milk                      | 8 fl oz       | whole milk
          8 fl. oz. whole milk                    | 8 fl oz       | whole milk
          8 fluid ounces whole milk               | 8 fl oz       | whole milk
          1 pint water                            | 1 pint        | water
          1-cup water                             | 1 cup         | water
          1 cup of water                          | 1 cup         | water
          1 cup of the whey                       | 1 cup         | whey
          3 large egg whites                      | 3 large       | egg whites
          3 lg eggs                               | 3 large       | eggs
          1 med. onion                            | 1 medium      | onion
          1 extra-large egg                       | 1 extra large | egg
          3 eggs                                  | 3             | eggs
          three eggs                              | 3             | eggs
          a dozen eggs                            | 12            | eggs
          an egg                                  | 1             | egg
          half a lemon                            | 1/2           | lemon
          a quarter of a lemon                    | 1/4           | lemon
          a pinch of salt                         | 1 pinch       | salt
          pinch of salt                           | 1 pinch       | salt
          Pinch of fine salt                      | 1 pinch       | fine salt
          a handful of sesame seeds               | 1 handful     | sesame seeds
          2 cloves of garlic                      | 2 cloves      | garlic
          1 clove garlic                          | 1 clove       | garlic
          1 scoop whey protein                    | 1 scoop       | whey protein
          1 packet dry yeast                      | 1 packet      | dry yeast
          2 cloves                                | 2             | cloves
          - 120 g water                           | 120 g         | water
          – 120 g water                           | 120 g         | water
          -120 g water                            | 120 g         | water
          • 120 g water                           | 120 g         | water
          •120 g water                            | 120 g         | water
          * 120 g water                           | 120 g         | water
          ☐ 120 g water                           | 120 g         | water
          [ ] 120 g water                         | 120 g         | water
          [x] 120 g water                         | 120 g         | water
          1. 120 g water                          | 120 g         | water
          2) 120 g water                          | 120 g         | water
          (3) 120 g water                         | 120 g         | water
          water 120 g                             | 120 g         | water
          water: 120 g                            | 120 g         | water
          water - 120 g                           | 120 g         | water
          water, 120 g                            | 120 g         | water
          water (120 g)                           | 120 g         | water
          water ... 120 g                         | 120 g         | water
          Eggs: 3                                 | 3             | Eggs
          eggs x 3                                | 3             | eggs
          2 x 50 g cream cheese                   | 100 g         | cream cheese
          2 × 50 g cream cheese                   | 100 g         | cream cheese
          1 cup + 2 tbsp water                    | 1.125 cup     | water
          1 cup plus 2 tbsp water                 | 1.125 cup     | water
          1 cup minus 1 tbsp water                | 0.9375 cup    | water
          250 ml 2% milk                          | 250 ml        | 2% milk
          100 g 70% dark chocolate                | 100 g         | 70% dark chocolate
          1/2 cup half-and-half                   | 1/2 cup       | half-and-half
          １２０ g water                             | 120 g         | water
          ١٢ g salt                               | 12 g          | salt
          0 g salt                                | 0 g           | salt
          """)
  void anAmountAndTheWordsForTheFoodAreTold(String text, String amount, String food) {
    IngredientLine line = IngredientLine.read(text);
    assertThat(line.amount().map(PastedAmount::toString)).contains(amount);
    assertThat(line.food()).isEqualTo(food);
    assertThat(line.doubts()).isEmpty();
    assertThat(line.isHeading()).isFalse();
    assertThat(line.text()).isEqualTo(text);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          120 g almond meal, sifted             | almond meal   | sifted                | ``      | ``
          120 g water (warm)                    | water         |                       | warm    | ``
          120 g water (warm), filtered          | water         | filtered              | warm    | ``
          120 g butter, soft, in cubes          | butter        | soft, in cubes        | ``      | ``
          120 g butter; soft                    | butter        | soft                  | ``      | ``
          120 g butter - soft                   | butter        | soft                  | ``      | ``
          100 g cream cheese at room temperature| cream cheese  | at room temperature   | ``      | ``
          salt to taste                         | salt          | to taste              | ``      | ``
          salt, to taste                        | salt          | to taste              | ``      | ``
          5 g salt plus more to taste           | salt          | plus more to taste    | ``      | ``
          20 g oil for the tin                  | oil           | for the tin           | ``      | ``
          20 g butter or margarine              | butter        |                       | ``      | margarine
          20 g butter and/or oil                | butter        |                       | ``      | oil
          20 g butter, or margarine             | butter        |                       | ``      | margarine
          20 g butter (or margarine)            | butter        |                       | ``      | margarine
          20 g lupin flour/soy flour            | lupin flour   |                       | ``      | soy flour
          20 g lupin flour / soy flour          | lupin flour   |                       | ``      | soy flour
          about 20 g butter                     | butter        |                       | about   | ``
          approx. 20 g butter                   | butter        |                       | approx. | ``
          ~20 g butter                          | butter        |                       | ~       | ``
          1 packed cup brown sugar              | brown sugar   |                       | packed  | ``
          1 large clove garlic                  | garlic        |                       | large   | ``
          1 large, ripe banana                  | ripe banana   |                       | ``      | ``
          2 g vinegar*                          | vinegar       |                       | ``      | ``
          2 g vinegar.                          | vinegar       |                       | ``      | ``
          """)
  void whatStandsBesideTheFoodIsKept(
      String text, String food, String preparation, String remark, String alternative) {
    IngredientLine line = IngredientLine.read(text);
    assertThat(line.food()).isEqualTo(food);
    assertThat(line.preparation().orElse(null)).isEqualTo(preparation);
    assertThat(String.join("; ", line.remarks())).isEqualTo(remark);
    assertThat(String.join("; ", line.alternatives())).isEqualTo(alternative);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "5 g poppy seeds (optional)", "5 g poppy seeds, optional", "optional: 5 g poppy seeds",
        "5 g poppy seeds [OPTIONAL]", "Optional - 5 g poppy seeds", "5 g optional poppy seeds"
      })
  void whatMayBeLeftOutIsMarked(String text) {
    IngredientLine line = IngredientLine.read(text);
    assertThat(line.optional()).isTrue();
    assertThat(line.food()).isEqualTo("poppy seeds");
    assertThat(line.amount().map(PastedAmount::toString)).contains("5 g");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2-3 tbsp psyllium       | 2 tbsp   | 3 tbsp
          2–3 tbsp psyllium       | 2 tbsp   | 3 tbsp
          2 — 3 tbsp psyllium     | 2 tbsp   | 3 tbsp
          2 − 3 tbsp psyllium     | 2 tbsp   | 3 tbsp
          2 to 3 tbsp psyllium    | 2 tbsp   | 3 tbsp
          1 or 2 large eggs       | 1 large  | 2 large
          3-2 tbsp psyllium       | 2 tbsp   | 3 tbsp
          1/2-3/4 cup water       | 1/2 cup  | 3/4 cup
          ½-¾ cup water           | ½ cup    | ¾ cup
          ½ - 1 cup water         | ½ cup    | 1 cup
          1 - 1 1/2 cups water    | 1 cups   | 1 1/2 cups
          100 g - 120 g water     | 100 g    | 120 g
          100-120g water          | 100 g    | 120 g
          750 g - 1 kg water      | 750 g    | 1000 g
          water 100-120 g         | 100 g    | 120 g
          """)
  void bothEndsOfARangeAreKept(String text, String least, String most) {
    PastedAmount amount = IngredientLine.read(text).amount().orElseThrow();
    assertThat(amount.isRange()).isTrue();
    assertThat(amount.least()).contains(Amount.parse(least));
    assertThat(amount.most()).contains(Amount.parse(most));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          100 g / 3.5 oz butter        | 100 g     | 3.5 oz
          100 g (3.5 oz) butter        | 100 g     | 3.5 oz
          100 g [3.5 oz] butter        | 100 g     | 3.5 oz
          100 g butter (3.5 oz)        | 100 g     | 3.5 oz
          100 g = 3.5 oz butter        | 100 g     | 3.5 oz
          1 cup (125 g) flour          | 1 cup     | 125 g
          1 cup (about 125 g) flour    | 1 cup     | 125 g
          1 cup or 250 ml water        | 1 cup     | 250 ml
          2 large eggs (100 g)         | 2 large   | 100 g
          1 egg (50 g)                 | 1         | 50 g
          2 tablespoons (30 ml) oil    | 2 tablespoons | 30 ml
          1 (15 oz) can chickpeas      | 1 can     | 15 oz
          1 (15-ounce) can chickpeas   | 1 can     | 15 oz
          1 15-ounce can chickpeas     | 1 can     | 15 oz
          2 (200 g) tubs cream cheese  | 2 tubs    | 400 g
          """)
  void theSameInAnotherUnitIsKept(String text, String amount, String equivalent) {
    PastedAmount pasted = IngredientLine.read(text).amount().orElseThrow();
    assertThat(pasted).hasToString(amount);
    assertThat(pasted.equivalents()).containsExactly(Amount.parse(equivalent));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1,000 g water              | may be 1000 or 1.000
          1.000 g water              | may be 1000 or 1.
          1 000 g water              | Two numbers stand side by side
          1 t salt                   | a teaspoon or a tablespoon
          1 c water                  | a cup or a centilitre
          1/0 cup water              | divides by zero
          99999999 g water           | absurdly large
          0.0000000000001 g salt     | too many decimals
          """)
  void whatMayMeanTwoThingsIsNoAmount(String text, String sentence) {
    IngredientLine line = IngredientLine.read(text);
    assertThat(line.amount()).isEmpty();
    assertThat(line.doubts()).hasSize(1);
    assertThat(line.doubts().get(0).message()).contains(sentence);
    assertThat(line.doubts().get(0).hint()).isNotBlank();
    assertThat(line.food()).isIn("water", "salt");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1 heaped tsp baking powder         | 1 tsp  | anybody's guess
          1 scant cup water                  | 1 cup  | anybody's guess
          1 lb (500 g) water                 | 1 lb   | are not the same
          1 can (400 g) chickpeas            | 1 can  | counts packages
          2 x 400 g cans chickpeas           | 800 g  | counts packages
          1 cup water plus 2 tbsp            | 1 cup  | A further amount
          1 cup flour, plus 20 g for dusting | 1 cup  | A further amount
          1 cup + 20 g water                 | 1 cup  | cannot be added up
          """)
  void whatLeavesTheAmountOpenIsDoubted(String text, String amount, String sentence) {
    IngredientLine line = IngredientLine.read(text);
    assertThat(line.amount().map(PastedAmount::toString)).contains(amount);
    assertThat(line.doubts()).hasSize(1);
    assertThat(line.doubts().get(0).message()).contains(sentence);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"salt", "some salt", "a little salt", "a few almonds", "half and half", "2% milk"})
  void aLineMayHaveNoAmount(String text) {
    IngredientLine line = IngredientLine.read(text);
    assertThat(line.amount()).isEmpty();
    assertThat(line.food()).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"For the topping:", "- For the topping:", "For the topping :"})
  void aColonAtTheEndMakesAHeading(String text) {
    IngredientLine line = IngredientLine.read(text);
    assertThat(line.isHeading()).isTrue();
    assertThat(line.food()).isEqualTo("For the topping");
    assertThat(line.doubts()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "\t", "()", ",", "…", "12", "½", "1 cup", "3 large", "- "})
  void aLineWithoutAFoodIsDoubted(String text) {
    IngredientLine line = IngredientLine.read(text);
    assertThat(line.food()).isEmpty();
    assertThat(line.doubts()).hasSize(1);
    assertThat(line.doubts().get(0).kind()).isEqualTo(Doubt.Kind.LINE);
  }

  @Test
  void spacesOfAllKindsAndCharactersWithoutWidthDoNotCount() {
    IngredientLine line =
        IngredientLine.read("\uFEFF\u00A0120\u202Fg\u2009lupin\u200B\u00AD flour\u0000\u0007");
    assertThat(line.amount().map(PastedAmount::toString)).contains("120 g");
    assertThat(line.food()).isEqualTo("lupin flour");
  }

  @Test
  void aTallLineIsNoIngredient() {
    IngredientLine line = IngredientLine.read("120 g water ".repeat(60));
    assertThat(line.amount()).isEmpty();
    assertThat(line.doubts().get(0).message()).contains("too long");
  }
}
