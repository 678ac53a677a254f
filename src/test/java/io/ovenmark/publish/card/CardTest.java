package io.ovenmark.publish.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Temperature;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Bench;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CardTest {
  private static final List<String> CAUTIONS = List.of("Contains eggs.", "Not a label.");

  private final Bench bench = new Bench();

  private static Formula bun(String name) {
    return Bench.formula(
            Yield.ofPieces(4), "lupin-flour: 120 g", "egg: 1 large", "water: 150 g", "salt: 4 g")
        .withName(name)
        .withMethod(List.of("Mix.", "Rest 10 min.", "Bake."))
        .withBake(
            List.of(
                BakeSetting.named("bake")
                    .withTemperature(Optional.of(Temperature.parse("205 °C")))
                    .withMinutes(OptionalDouble.of(21))
                    .withRack(Optional.of("middle"))));
  }

  private Card card(Formula formula, CardChoices choices) {
    return CardMaker.of(
        bench.sheet(formula),
        new CardMaker.Facts(
            "bun@3", Optional.of("2026-09-14"), Optional.empty(), CAUTIONS),
        choices);
  }

  private static CardChoices times(double times) {
    return new CardChoices(
        CardChoices.Paper.A4, CardChoices.Masses.GRAMS, times, Optional.empty(), List.of());
  }

  /** By hand: a quarter of 120 × 40 % + 50 × 12 % = 54 g protein is 13.5 g. */
  @Test
  void amountsAndFiguresAreThoseOfTheWorksheet() {
    Card card = card(bun("Lupin bun"), CardChoices.USUAL);

    assertThat(card.ingredients())
        .extracting(Card.Ingredient::inOneLine)
        .contains("120 g lupin flour", "50 g (1 large) egg", "4 g salt");
    assertThat(card.figures())
        .filteredOn(fact -> fact.key().equals("protein_g"))
        .singleElement()
        .satisfies(fact -> assertThat(fact.text()).isEqualTo("13.5 g"));
    assertThat(card.yield())
        .startsWith("4 pieces of 81 g dough")
        .endsWith("not weighed after baking");
  }

  /** 205 °C = 401 °F (NIST SP 811), which no dial has: the nearest 5 is 400. */
  @ParameterizedTest
  @CsvSource({"205 °C, 205 °C (400 °F)", "400 °F, 400 °F (205 °C)", "375 °F, 375 °F (190 °C)"})
  void theOvenStandsInBothScales(String written, String shown) {
    Formula formula =
        bun("Bun")
            .withBake(
                List.of(
                    BakeSetting.named("bake")
                        .withTemperature(Optional.of(Temperature.parse(written)))));

    assertThat(card(formula, CardChoices.USUAL).stages().get(0).inOneLine()).isEqualTo(shown);
  }

  @Test
  void scalingMultipliesAmountsAndPiecesAndLeavesThePiece() {
    Card once = card(bun("Bun"), CardChoices.USUAL);
    Card twice = card(bun("Bun"), times(2));

    assertThat(twice.ingredients().get(0).mass()).isEqualTo("240 g");
    assertThat(twice.ingredients().get(1).measure()).contains("2 large");
    assertThat(twice.servings()).contains("8 pieces");
    assertThat(twice.figures()).isEqualTo(once.figures());
    assertThat(twice.basis()).anyMatch(text -> text.startsWith("Amounts are 2 times the formula"));
  }

  @Test
  void onlyWholePiecesAreCountedAndTheDoughLeftIsStated() {
    Formula formula =
        new FormulaEdit(Formula.named("Bun"))
            .add("lupin-flour=100 g")
            .add("water=110 g")
            .set("yield.dough_per_piece_g=50")
            .formula();

    assertThat(card(formula, CardChoices.USUAL).yield())
        .isEqualTo("4 pieces of 50 g dough (10 g over); not weighed after baking");
    assertThat(card(formula, CardChoices.USUAL).servings()).contains("4 pieces");
    assertThat(card(formula, times(5)).yield()).startsWith("21 pieces of 50 g dough;");
    assertThat(card(formula, times(0.2)).yield()).startsWith("0.84 pieces of 50 g dough;");
    assertThat(card(bun("Bun"), times(0.625)).servings()).contains("2 pieces");
  }

  @Test
  void whatIsNotKnownSaysSo() {
    bench.forget("lupin-flour", Nutrient.FIBRE);
    Card card = card(bun("Bun"), CardChoices.USUAL);

    assertThat(card.figures())
        .filteredOn(fact -> fact.key().equals("net_carbohydrate_g"))
        .singleElement()
        .satisfies(fact -> assertThat(fact.known()).isFalse());
    assertThat(card.basis()).anyMatch(text -> text.equals("Not all is known of: lupin flour."));
    assertThat(nutrition(card)).doesNotContainKey("fiberContent").containsKey("proteinContent");
  }

  @Test
  void anAmountWithoutMassStandsAsItWasEntered() {
    Formula formula = Bench.formula(Yield.ofPieces(4), "seeds: 2 handfuls");
    Card card = card(formula, times(3));

    assertThat(card.ingredients().get(0).inOneLine()).isEqualTo("3 × 2 handfuls seeds");
    assertThat(card.ingredients().get(0).known()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"<script>alert(1)</script>", "Bun \"x\" & 'y'", "خبز الترمس", "Σησαμένια τραγανά"})
  void textsOfAnyScriptAreWrittenAndNeverRun(String name) {
    String page = CardHtml.of(card(bun(name), CardChoices.USUAL), CardChoices.Paper.A4);

    assertThat(page).doesNotContain("<script").contains("dir=\"auto\"");
    String shown = name.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    assertThat(page).contains(shown.replace("\"", "&quot;").replace("'", "&#x27;"));
  }

  @Test
  void nothingOnThePageComesFromElsewhere() {
    String page = CardHtml.of(card(bun("Bun"), CardChoices.USUAL), CardChoices.Paper.LETTER);

    assertThat(page).contains("@page { size: 8.5in 11in").doesNotContain("http", "url(", "@import");
  }

  @Test
  void twoCardsOfTheSameAreTheSameToTheByte() {
    for (CardChoices.Paper paper : CardChoices.Paper.values()) {
      assertThat(CardHtml.of(card(bun("Bun"), times(2)), paper))
          .isEqualTo(CardHtml.of(card(bun("Bun"), times(2)), paper));
    }
  }

  @Test
  void cautionsStandInEveryFormAndMayOnlyGrow() {
    CardChoices more =
        new CardChoices(
            CardChoices.Paper.A4,
            CardChoices.Masses.GRAMS,
            1,
            Optional.empty(),
            List.of("Ask each guest.", " "));
    Card card = card(bun("Bun"), more);

    assertThat(card.cautions())
        .containsExactly("Contains eggs.", "Not a label.", "Ask each guest.");
    List<String> forms =
        List.of(
            CardHtml.of(card, CardChoices.Paper.INDEX),
            CardMarkdown.of(card),
            CardText.of(card, CardText.LONG).text(),
            CardText.of(card, CardText.SHORT).text(),
            CardJsonLd.of(card).toString());
    assertThat(forms).allSatisfy(form -> assertThat(form).contains(card.cautions()));
  }

  @Test
  void aTextThatIsTooLongLosesTheLeastNeedfulFirst() {
    List<String> steps =
        IntStream.range(0, 40).mapToObj(i -> "Step " + i + " is told at length here.").toList();
    Formula formula = bun("Bun").withMethod(steps).withDescription(Optional.of("Soft."));

    CardText longText = CardText.of(card(formula, CardChoices.USUAL), CardText.LONG);
    CardText shortText = CardText.of(card(formula, CardChoices.USUAL), CardText.SHORT);

    assertThat(longText.leftOut()).isEmpty();
    assertThat(longText.signs()).isEqualTo(longText.text().length()).isLessThan(5000);
    assertThat(shortText.fits()).isTrue();
    assertThat(shortText.leftOut()).contains("the method");
    assertThat(shortText.text()).contains("120 g lupin flour").contains("Contains eggs.");
    assertThat(shortText.signs()).isLessThanOrEqualTo(CardText.SHORT);
  }

  @Test
  void aTextWhoseNeedfulIsTooLongSaysThatItDoesNotFit() {
    CardText text = CardText.of(card(bun("Bun ".repeat(100)), CardChoices.USUAL), 200);

    assertThat(text.fits()).isFalse();
    assertThat(text.text()).contains("Contains eggs.");
  }

  /** CommonMark 0.31.2, section 2.4: these signs mean something unless a backslash stands before. */
  @ParameterizedTest
  @CsvSource({
    "a*b, a\\*b", "_x_, \\_x\\_", "1. Mix, 1\\. Mix", "1.5 g, 1.5 g", "2) Rest, 2\\) Rest",
    "- dry, \\- dry", "<b>, \\<b\\>"
  })
  void markdownTakesNothingForItsOwn(String text, String written) {
    assertThat(CardMarkdown.plain(text)).isEqualTo(written);
  }

  /**
   * Property names of the schema.org vocabulary: schema.org/Recipe with what it takes from HowTo,
   * CreativeWork and Thing, and schema.org/NutritionInformation.
   */
  @Test
  void programsFindTheVocabularysOwnNames() {
    Set<String> recipe =
        Set.of(
            "@context", "@type", "name", "description", "datePublished", "version", "recipeYield",
            "recipeIngredient", "recipeInstructions", "cookTime", "nutrition");
    Set<String> nutrition =
        Set.of(
            "@type", "calories", "carbohydrateContent", "cholesterolContent", "fatContent",
            "fiberContent", "proteinContent", "saturatedFatContent", "servingSize",
            "sodiumContent", "sugarContent", "transFatContent", "unsaturatedFatContent");
    Card card = card(bun("Bun"), CardChoices.USUAL);
    Map<String, Object> data = CardJsonLd.of(card);

    assertThat(recipe).containsAll(data.keySet());
    assertThat(nutrition).containsAll(nutrition(card).keySet());
    assertThat(data).containsEntry("@type", "Recipe").containsEntry("cookTime", "PT21M");
    assertThat(nutrition(card))
        .containsEntry("@type", "NutritionInformation")
        .containsEntry("proteinContent", "13.5 g")
        .hasEntrySatisfying("calories", text -> assertThat(text.toString()).endsWith("calories"));
    assertThat(new ArrayList<>((List<?>) data.get("recipeInstructions")))
        .allSatisfy(
            step -> assertThat(step).asInstanceOf(
                    org.assertj.core.api.InstanceOfAssertFactories.map(String.class, Object.class))
                .containsEntry("@type", "HowToStep"));
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> nutrition(Card card) {
    return (Map<String, Object>) CardJsonLd.of(card).get("nutrition");
  }

  /** UAX 9: FSI and PDI isolate, RLM keeps the full stop at the end of its sentence. */
  @Test
  void textsFromRightToLeftMoveNothingBesideThem() {
    Formula formula =
        bun("خبز الترمس").withMethod(List.of("اخبز حتى 96 °C ثم برّد.")).withBake(
            List.of(BakeSetting.named("bake").withRack(Optional.of("الأوسط"))));
    bench.add(Bench.named(bench.find("lupin-flour").orElseThrow(), "طحين الترمس"));
    Card card = card(formula, CardChoices.USUAL);
    String page = CardHtml.of(card, CardChoices.Paper.A4);

    assertThat(page)
        .contains("<main dir=\"rtl\"", "<bdi>طحين الترمس</bdi>", "<bdi>120\u00a0g</bdi>")
        .contains("حتى \u206696\u00a0°C\u2069 ثم", "<bdi>rack: الأوسط</bdi>");
    assertThat(CardHtml.of(card(bun("Bun"), CardChoices.USUAL), CardChoices.Paper.A4))
        .contains("<main dir=\"ltr\"");
    for (String text :
        List.of(CardMarkdown.of(card), CardText.of(card, CardText.LONG).text())) {
      assertThat(text)
          .contains("\u2068طحين الترمس\u2069", "حتى \u206696\u00a0°C\u2069 ثم برّد.\u200f");
    }
    assertThat(CardJsonLd.of(card).get("recipeIngredient").toString())
        .contains("120 g طحين الترمس")
        .doesNotContain("\u2068");
  }

  @Test
  void whatIsUnknownIsLeftOutForProgramsAndNeverNought() {
    Formula formula = Formula.named("Trial").withLines(
        List.of(
            Line.of("moss", "sea-moss", Amount.parse("2 handfuls")),
            Line.of("powder", "powder", Amount.parse("50 g"))));
    Map<String, Object> data = CardJsonLd.of(card(formula, CardChoices.USUAL));

    assertThat(data).doesNotContainKeys("nutrition", "recipeYield", "cookTime", "description");
    assertThat(data.get("recipeIngredient"))
        .isEqualTo(List.of("2 handfuls sea-moss", "50 g powder"));
    assertThat(data.toString()).doesNotContain("null", "NaN", "unknown g", " 0 ");
    assertThat(CardJsonLd.of(card(Formula.named("Empty"), CardChoices.USUAL)))
        .doesNotContainKey("recipeIngredient")
        .containsKey("recipeInstructions");
  }

  @Test
  void blankTextsLeaveNoEmptyPlaces() {
    Formula formula =
        bun("Bun")
            .withDescription(Optional.of(" "))
            .withStorage(Optional.of(""))
            .withMethod(List.of("Mix.", "", " "));
    Card card = card(formula, CardChoices.USUAL);

    assertThat(card.description()).isEmpty();
    assertThat(card.storage()).isEmpty();
    assertThat(card.method()).containsExactly("Mix.");
  }

  @Test
  void ouncesStandFirstAndTheKitchensMeasureSecond() {
    CardChoices ounces =
        new CardChoices(
            CardChoices.Paper.A4, CardChoices.Masses.OUNCES, 1, Optional.empty(), List.of());

    assertThat(card(bun("Bun"), ounces).ingredients().get(1).inOneLine())
        .isEqualTo("1.76 oz (1 large) egg");
  }

  @Test
  void theFormulasStorageStandsUnlessAnotherIsTyped() {
    Formula formula = bun("Bun").withStorage(Optional.of("Two days."));
    CardChoices typed =
        new CardChoices(
            CardChoices.Paper.A4, CardChoices.Masses.GRAMS, 1, Optional.of("Freeze."), List.of());

    assertThat(card(bun("Bun"), CardChoices.USUAL).storage()).isEmpty();
    assertThat(card(formula, CardChoices.USUAL).storage()).contains("Two days.");
    assertThat(card(formula, typed).storage()).contains("Freeze.");
    assertThat(CardText.of(card(formula, typed), CardText.SHORT).text())
        .contains("STORAGE: Freeze.");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, 1001})
  void anAbsurdNumberOfTimesIsRefused(double times) {
    assertThatThrownBy(() -> times(times)).hasMessageContaining("Use 0.01 to 1000.");
  }
}
