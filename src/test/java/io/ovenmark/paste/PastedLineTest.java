package io.ovenmark.paste;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.measure.Amount;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a line comes to once its food is known. */
class PastedLineTest {
  private static final FoodMatcher FOODS = FoodMatcher.of(List.of());

  private static PastedLine line(String text) {
    List<PastedLine> lines = PastedFormula.read("Ingredients\n" + text, FOODS).lines();
    return lines.get(1);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          120 g water (warm)                | 120 g           | warm
          3 large egg whites                | 3 large         |
          2 eggs, large                     | 2 large         | large
          12 almonds                        | 12 almond       |
          1 cup sifted powdered sugar       | 1 cup, sifted   | sifted
          1 cup powdered sugar, sifted      | 1 cup, sifted   | sifted
          1 packed cup brown sugar          | 1 cup, packed   | packed
          1 cup chopped walnuts             | 1 cup, chopped  | chopped
          1½ cups walnuts, chopped          | 1½ cup, chopped | chopped
          1 cup (120 g) lupin flour         | 120 g           | 1 cup
          1 egg (52 g)                      | 52 g            | 1 egg
          100 g / 3.5 oz unsalted butter    | 100 g           | 3.5 oz
          1 cup + 2 tbsp bread flour        | 1.125 cup       | 1 cup + 2 tbsp
          2 x 50 g cream cheese             | 100 g           | 2 × 50 g
          5 g poppy seeds (optional)        | 5 g             | optional
          200 g organic coconut flour       | 200 g           | organic
          a pinch of salt                   | 1 pinch         |
          """)
  void aCertainLineHasAnAmountAndKeepsTheRestAsANote(String text, String amount, String note) {
    PastedLine line = line(text);
    assertThat(line.status()).isEqualTo(PastedLine.Status.CERTAIN);
    assertThat(line.amount()).contains(Amount.parse(amount));
    assertThat(line.note().orElse(null)).isEqualTo(note);
    assertThat(line.lineId()).isPresent();
  }

  @Test
  void ofARangeTheLowerEndIsProposedAndDoubted() {
    PastedLine line = line("2-3 tbsp psyllium husk powder");
    assertThat(line.status()).isEqualTo(PastedLine.Status.DOUBTFUL);
    assertThat(line.amount()).contains(Amount.parse("2 tbsp"));
    assertThat(line.choices()).containsExactly(Amount.parse("2 tbsp"), Amount.parse("3 tbsp"));
    assertThat(line.lineId()).contains("psyllium-husk");
  }

  @Test
  void aBareCountIsAChoiceOfTheFoodsOwnMeasures() {
    PastedLine line = line("3 eggs");
    assertThat(line.status()).isEqualTo(PastedLine.Status.DOUBTFUL);
    assertThat(line.amount()).isEmpty();
    assertThat(line.choices()).contains(Amount.parse("3 large"), Amount.parse("3 medium"));
    assertThat(line.lineId()).isEmpty();
    assertThat(line("1 egg yolk").amount()).contains(Amount.parse("1 large"));
    assertThat(line("1 egg yolk").status()).isEqualTo(PastedLine.Status.DOUBTFUL);
    assertThat(line("3 almond flour").doubts().get(0).message()).contains("is not known");
  }

  @Test
  void aFoodThatIsInDoubtIsNotInTheDraft() {
    PastedLine line = line("120 g almond meal");
    assertThat(line.status()).isEqualTo(PastedLine.Status.DOUBTFUL);
    assertThat(line.lineId()).isEmpty();
    assertThat(line.doubts().get(0).message())
        .isEqualTo("It is not certain which food \"almond meal\" means.");
    assertThat(line.doubts().get(0).hint()).contains("almond-flour").contains("almonds-blanched");
  }

  @Test
  void alternativesAreAChoiceUntilOneIsMade() {
    PastedLine line = line("30 g lupin flour or almond flour");
    assertThat(line.status()).isEqualTo(PastedLine.Status.DOUBTFUL);
    assertThat(line.match().candidates())
        .extracting(each -> each.food().slug())
        .containsExactly("lupin-flour", "almond-flour");
    FoodMatcher chosen = FOODS.choosing("lupin flour", FOODS.find("almond-flour").orElseThrow());
    PastedLine settled =
        PastedFormula.read("30 g lupin flour or almond flour", chosen).lines().get(0);
    assertThat(settled.status()).isEqualTo(PastedLine.Status.CERTAIN);
    assertThat(settled.lineId()).contains("almond-flour");
    assertThat(settled.note()).contains("or almond flour");
  }

  @Test
  void whatWeighsUnknownIsCertainAndSaysSo() {
    PastedLine line = line("1 cup lupin flour");
    assertThat(line.status()).isEqualTo(PastedLine.Status.CERTAIN);
    assertThat(line.remarks().get(0)).startsWith("How much it weighs is not known: ");
    assertThat(line("1 cup almonds").choices()).contains(Amount.parse("1 cup, sliced"));
  }

  @Test
  void massAndVolumeThatContradictTheFoodsWeightsAreRemarked() {
    assertThat(line("1 cup (100 g) water").remarks().get(0)).contains("1 cup is 237 g");
    assertThat(line("1 cup (240 g) water").remarks()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "salt to taste, The line says no amount.",
    "100 g xylophone dust, No food is called",
    "2000000 g water, is absurdly large",
    "2000 kg water, is more than a tonne",
    "5 g salt and pepper, It is not certain"
  })
  void whatIsNotUnderstoodSaysWhatToDo(String text, String sentence) {
    PastedLine line = line(text);
    assertThat(line.status()).isNotEqualTo(PastedLine.Status.CERTAIN);
    assertThat(line.doubts().get(0).message()).contains(sentence);
    assertThat(line.doubts()).allSatisfy(doubt -> assertThat(doubt.hint()).isNotBlank());
    assertThat(line.text()).isEqualTo(text);
  }

  @Test
  void whatFitsNoFoodIsUnknown() {
    assertThat(line("100 g xylophone dust").status()).isEqualTo(PastedLine.Status.UNKNOWN);
    assertThat(line("()").status()).isEqualTo(PastedLine.Status.UNKNOWN);
  }
}
