package io.ovenmark.paste;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.MeasureUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PastedFormulaTest {
  private static final FoodMatcher FOODS = FoodMatcher.of(List.of());

  private static final String WHOLE =
      """
      Seeded lupin bun
      Makes 6 buns
      Prep time: 20 min

      Ingredients
      • 120 g lupin flour
      • 45 g flaxseed
      • 180 g water (warm)
      • 2 large eggs

      For the topping:
      • 10 g sesame seeds, toasted

      Method
      1. Whisk everything dry together.
      2. Stir in water and egg,
         then rest for 10 minutes.
      3. Shape, top and bake at 190 °C.

      Notes
      Keeps for two days.
      """;

  private static PastedFormula read(String text) {
    return PastedFormula.read(text, FOODS);
  }

  private static List<String> kinds(PastedFormula pasted) {
    return pasted.lines().stream().map(line -> line.kind().name()).toList();
  }

  @Test
  void aWholeBlockBecomesAFormula() {
    PastedFormula pasted = read(WHOLE);
    assertThat(pasted.isCertain()).isTrue();
    assertThat(pasted.name()).contains("Seeded lupin bun");
    Formula draft = pasted.draft();
    assertThat(draft.name()).isEqualTo("Seeded lupin bun");
    assertThat(draft.yield().pieces()).contains(6);
    assertThat(draft.lines())
        .extracting(Line::food)
        .containsExactly("lupin-flour", "flaxseed", "water", "egg-whole", "sesame-seeds");
    assertThat(draft.line("sesame-seeds").orElseThrow().note())
        .contains("toasted; For the topping");
    assertThat(draft.line("egg-whole").orElseThrow().amount()).isEqualTo(Amount.parse("2 large"));
    assertThat(draft.method())
        .containsExactly(
            "Whisk everything dry together.",
            "Stir in water and egg, then rest for 10 minutes.",
            "Shape, top and bake at 190 °C.");
    assertThat(draft.bake()).isEmpty();
    assertThat(pasted.remarks())
        .containsExactly(
            "2 lines are neither ingredients nor steps and are left out of the formula.");
  }

  @Test
  void everyLineSaysWhatItWasTakenFor() {
    assertThat(kinds(read(WHOLE)))
        .containsExactly(
            "TITLE", "YIELD", "NOTE", "HEADING", "INGREDIENT", "INGREDIENT", "INGREDIENT",
            "INGREDIENT", "HEADING", "INGREDIENT", "HEADING", "STEP", "STEP", "STEP", "STEP",
            "HEADING", "NOTE");
    assertThat(read(WHOLE).lines().get(4).number()).isEqualTo(6);
  }

  @Test
  void bareLinesAreIngredients() {
    PastedFormula pasted = read("120 g lupin flour\n60 g water\n\n2 g salt");
    assertThat(pasted.isCertain()).isTrue();
    assertThat(pasted.name()).isEmpty();
    assertThat(pasted.draft().name()).isEqualTo("Pasted formula");
    assertThat(pasted.draft().lines()).hasSize(3);
    assertThat(pasted.draft().method()).isEmpty();
  }

  @Test
  void aMethodWithoutAHeadingIsRecognisedByItsWords() {
    PastedFormula pasted =
        read(
            """
            120 g lupin flour
            60 g water

            Mix the flour with the water.
            Leave it for ten minutes.
            """);
    assertThat(pasted.draft().lines()).hasSize(2);
    assertThat(pasted.draft().method())
        .containsExactly("Mix the flour with the water.", "Leave it for ten minutes.");
  }

  @Test
  void paragraphsThatWereBrokenAreJoined() {
    PastedFormula pasted =
        read("Directions:\nWhisk everything dry\ntogether in a bowl.\n\nStir in the water.");
    assertThat(pasted.draft().method())
        .containsExactly("Whisk everything dry together in a bowl.", "Stir in the water.");
  }

  @Test
  void aHeadingWithinTheMethodBeginsItsFirstStep() {
    PastedFormula pasted = read("Method\nFor the topping:\nToast the seeds.\nLet them cool.");
    assertThat(pasted.draft().method())
        .containsExactly("For the topping: Toast the seeds.", "Let them cool.");
  }

  @Test
  void aFirstLineThatIsAFoodIsNoTitle() {
    assertThat(kinds(read("Butter\n120 g water"))).containsExactly("INGREDIENT", "INGREDIENT");
    assertThat(kinds(read("Salt to taste\n120 g water")))
        .containsExactly("INGREDIENT", "INGREDIENT");
    assertThat(kinds(read("Sesame crispbread\n120 g water"))).startsWith("TITLE");
    assertThat(kinds(read("Almond flour\nIngredients\n120 g water"))).startsWith("TITLE");
    assertThat(kinds(read("# Crispbread\n120 g water"))).startsWith("TITLE");
    assertThat(read("Crispbread").name()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "INGREDIENTS", "Ingredients:", "## Ingredients", "**Ingredients**", "--- ingredients ---",
        "You will need:"
      })
  void headingsOfPartsAreKnownInManyForms(String heading) {
    PastedFormula pasted = read("Crispbread\n" + heading + "\nSalt 2 g\nINSTRUCTIONS\nMix it.");
    assertThat(kinds(pasted))
        .containsExactly("TITLE", "HEADING", "INGREDIENT", "HEADING", "STEP");
    assertThat(pasted.draft().method()).containsExactly("Mix it.");
    assertThat(pasted.lines().get(2).section()).isEmpty();
  }

  @Test
  void shoutedWordsThatAreNoFoodAreHeadings() {
    PastedFormula pasted = read("120 g water\nTHE GLAZE\n20 g honey\nSALT");
    assertThat(kinds(pasted))
        .containsExactly("INGREDIENT", "HEADING", "INGREDIENT", "INGREDIENT");
    assertThat(pasted.draft().line("honey").orElseThrow().note()).contains("THE GLAZE");
  }

  @Test
  void servingsAreNotTakenForPieces() {
    PastedFormula pasted = read("Serves 6\n120 g water");
    assertThat(pasted.draft().yield().pieces()).isEmpty();
    assertThat(pasted.remarks().get(0)).contains("may count servings");
    assertThat(pasted.isCertain()).isTrue();
  }

  @Test
  void aLineInDoubtStopsTheWholeFromBeingCertain() {
    PastedFormula pasted = read("120 g almond meal\n60 g water\n100 g xylophone dust");
    assertThat(pasted.isCertain()).isFalse();
    assertThat(pasted.doubtful()).extracting(PastedLine::number).containsExactly(1, 3);
    assertThat(pasted.draft().lines()).extracting(Line::food).containsExactly("water");
  }

  @Test
  void withoutAnIngredientNothingIsCertain() {
    assertThat(read("").isCertain()).isFalse();
    assertThat(read("").lines()).isEmpty();
    assertThat(read("Method\nMix it.").isCertain()).isFalse();
  }

  @Test
  void theSameFoodTwiceGetsTwoLines() {
    assertThat(read("100 g water\n20 g water").draft().lines())
        .extracting(Line::id)
        .containsExactly("water", "water-2");
  }

  @Test
  void anEndlessLineAndEndlessLinesAreKeptAndDoubted() {
    String tall = "120 g water ".repeat(900_000);
    PastedFormula one = read(tall);
    assertThat(one.lines()).hasSize(1);
    assertThat(one.lines().get(0).text()).isEqualTo(tall);
    assertThat(one.lines().get(0).doubts().get(0).message()).contains("too long");
    PastedFormula many = read("120 g water\n".repeat(5000));
    assertThat(many.draft().lines()).hasSize(500);
    assertThat(many.isCertain()).isFalse();
    assertThat(many.lines().get(500).text()).startsWith("120 g water\n").hasSize(4500 * 12);
  }

  @Test
  void scriptsAndControlCharactersAreText() {
    PastedFormula pasted =
        read("120 g water\n<script>alert(1)</script>\n\u001B[2J\u0000 2 g salt\u0007");
    assertThat(pasted.lines()).hasSize(3);
    assertThat(pasted.lines().get(1).text()).isEqualTo("<script>alert(1)</script>");
    assertThat(pasted.lines().get(1).status()).isEqualTo(PastedLine.Status.UNKNOWN);
    String json = new String(FormulaCodec.write(pasted.draft()));
    assertThat(json).doesNotContain("script").doesNotContain("\u001B");
  }

  @Test
  void anyTextIsReadAndKept() {
    Random random = new Random(20260302);
    List<String> scraps =
        List.of(
            "1", "½", "1/2", "1/0", "2-3", " ", "\t", "g", "cup", "(", ")", "[", "]", ",", ";", "or",
            "and", "plus", "+", "-", "–", "/", "x", "water", "almond meal", "flour", "eggs", "large",
            "of", "can", "optional", ":", ".", "\n", "\r\n", "\u2028", "Method", "Makes", "Ingredients",
            "Mix the dough.", "\uD83C", "\uDF5E", "\u0000", "\u202E", "%", "°C", "<b>", "\"", "\\",
            "heaped", "pinch of", "about", "minus", "999999999", "T", "t", "é", "ß", "\u00A0");
    for (int round = 0; round < 1500; round++) {
      StringBuilder text = new StringBuilder();
      int parts = random.nextInt(12);
      for (int i = 0; i < parts; i++) {
        text.append(scraps.get(random.nextInt(scraps.size())));
        text.append(random.nextInt(3) == 0 ? "" : " ");
      }
      PastedFormula pasted = read(text.toString());
      List<String> kept = pasted.lines().stream().map(PastedLine::text).toList();
      List<String> given =
          PasteText.lines(text.toString(), Integer.MAX_VALUE).stream()
              .filter(line -> !PasteText.tidy(line).isEmpty())
              .collect(Collectors.toCollection(ArrayList::new));
      assertThat(kept).as(text.toString()).isEqualTo(given);
      byte[] file = FormulaCodec.write(pasted.draft());
      assertThat(FormulaCodec.write(FormulaCodec.read("draft", file))).isEqualTo(file);
    }
  }

  @Test
  void anAmountInAnyUnitIsReadAsItIsWritten() {
    Random random = new Random(7);
    for (MeasureUnit unit : MeasureUnit.values()) {
      for (int i = 0; i < 40; i++) {
        String number = List.of("1", "2 1/2", "½", "1¾", "0.75", "3/8", "12", "1.5").get(i % 8);
        Amount amount = Amount.parse(number + " " + unit.symbol());
        String food = List.of("water", "lupin flour", "honey").get(random.nextInt(3));
        String line = random.nextBoolean() ? amount + " " + food : food + " " + amount;
        assertThat(IngredientLine.read(line).amount().flatMap(PastedAmount::least))
            .as(line)
            .contains(amount);
        assertThat(IngredientLine.read(line).food()).as(line).isEqualTo(food);
      }
    }
  }
}
