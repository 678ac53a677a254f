package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.notebook.Refusal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadPastedTest {
  @TempDir Path temporary;
  private Kitchen kitchen;
  private ReadPasted verb;

  @BeforeEach
  void begin() {
    kitchen = new Kitchen(temporary);
    verb = new ReadPasted(kitchen.desk());
  }

  @AfterEach
  void end() {
    kitchen.close();
  }

  private static PasteChoices foods(String words, String food) {
    return PasteChoices.ofFoods(Map.of(words, food));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void linesAreViewedWithFoodsAndDoubts() {
    PasteViews.PastedView view =
        verb.call("Bench bun\nMakes 4\n120 g lupin flour\n2-3 tbsp honey\n60 g almond meal\nMethod\nMix.");
    assertThat(view.source()).isEqualTo("text");
    assertThat(view.name()).isEqualTo("Bench bun");
    assertThat(view.certain()).isFalse();
    assertThat(view.lines())
        .extracting(PasteViews.PastedLineView::kind, PasteViews.PastedLineView::status)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("title", "certain"),
            org.assertj.core.groups.Tuple.tuple("yield", "certain"),
            org.assertj.core.groups.Tuple.tuple("ingredient", "certain"),
            org.assertj.core.groups.Tuple.tuple("ingredient", "doubtful"),
            org.assertj.core.groups.Tuple.tuple("ingredient", "doubtful"),
            org.assertj.core.groups.Tuple.tuple("heading", "heading"),
            org.assertj.core.groups.Tuple.tuple("step", "certain"));
    PasteViews.PastedLineView lupin = view.lines().get(2);
    assertThat(lupin.grams()).isEqualTo(120);
    assertThat(lupin.foods().get(0).certain()).isTrue();
    assertThat(lupin.foods().get(0).inPantry()).isTrue();
    assertThat(lupin.lineId()).isEqualTo("lupin-flour");
    PasteViews.PastedLineView honey = view.lines().get(3);
    assertThat(honey.amount()).isEqualTo("2 tbsp");
    assertThat(honey.upTo()).isEqualTo("3 tbsp");
    assertThat(honey.grams()).isEqualTo(42);
    assertThat(honey.approximate()).isTrue();
    PasteViews.PastedLineView almond = view.lines().get(4);
    assertThat(almond.foodWords()).isEqualTo("almond meal");
    assertThat(almond.foods()).noneMatch(PasteViews.FoodCandidateView::certain);
    assertThat(almond.doubts()).extracting(PasteViews.DoubtView::about).containsExactly("food");
    assertThat(view.yield().pieces()).isEqualTo(4);
    assertThat(view.method()).containsExactly("Mix.");
  }

  @Test
  void theDraftIsTheFormulasOwnJson() {
    PasteViews.PastedView view = verb.call("120 g lupin flour\n60 g almond meal");
    Formula draft = FormulaCodec.read("draft", bytes(view.formula()));
    assertThat(draft.lines()).hasSize(1);
    assertThat(Json.compact(view)).contains("\"formula\":{\n").contains("\"up_to\":null");
  }

  @Test
  void choicesSettleFoods() {
    PasteViews.PastedView view =
        verb.call("60 g almond meal\n20 g butter", PasteChoices.ofFoods(Map.of(
            "almond meal", "almond-flour", "Butter", "butter-unsalted")));
    assertThat(view.certain()).isTrue();
    assertThatThrownBy(() -> verb.call("60 g almond meal", foods("almond meal", "nothing-such")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("nothing-such");
    assertThatThrownBy(() -> verb.call("60 g almond meal", foods("almond meal", "No Slug")))
        .isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> verb.call("60 g almond meal", foods(" ", "water")))
        .isInstanceOf(Refusal.class);
  }

  @Test
  void theFormulaThatIsMadeCanBeSaved() {
    ReadPasted.Made made =
        verb.formula(
            "lines.txt", bytes("\uFEFF120 g lupin flour\n60 g water\n"), PasteChoices.NONE);
    new NewFormula(kitchen.desk())
        .call(made.formula().withName("Plain bun"), Optional.empty(), "Begin", kitchen.by());
    assertThat(kitchen.desk().notebook().latest().formula("plain-bun").orElseThrow().lines())
        .hasSize(2);
    kitchen.assertSound();
  }

  @Test
  void linesInDoubtRefuseTheFormulaWithHowToSettleThem() {
    assertThatThrownBy(
            () ->
                verb.formula(
                    "lines.txt",
                    bytes("60 g water\n60 g almond meal\n3 eggs\n5 g xylophone dust"),
                    PasteChoices.NONE))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> {
              assertThat(refusal.problems()).hasSize(3);
              assertThat(refusal.problems().get(0).where()).isEqualTo("lines.txt:2:1");
              assertThat(refusal.problems().get(0).hint())
                  .contains("almond-flour, almonds-blanched".split(", "))
                  .contains("--food \"almond meal=");
              assertThat(refusal.problems().get(1).message()).contains("3 large");
              assertThat(refusal.problems().get(2).hint()).contains("xylophone dust=FOOD");
            });
  }

  @Test
  void aChoiceThatNoLineNeedsIsASlip() {
    assertThatThrownBy(
            () -> verb.formula("x", bytes("60 g water"), foods("almond meal", "almond-flour")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("No line has the words \"almond meal\"");
  }

  @Test
  void nothingAndOtherEncodingsAreRefused() {
    byte[] latin = {(byte) 0xBD, ' '};
    for (byte[] file : List.of(bytes(""), bytes("Method\nMix it."), latin)) {
      assertThatThrownBy(() -> verb.formula("x", file, PasteChoices.NONE))
          .isInstanceOf(Refusal.class);
    }
  }

  @Test
  void aRecipeInJsonIsReadAndABrokenOneRefused() {
    PasteViews.PastedView view =
        verb.call("{\"@type\":\"Recipe\",\"name\":\"Bun\",\"recipeIngredient\":[\"60 g water\"]}");
    assertThat(view.source()).isEqualTo("schema.org");
    assertThat(view.certain()).isTrue();
    assertThatThrownBy(() -> verb.call("{\"@type\":\"Recipe\","))
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.where()).startsWith("pasted text:1:"));
    assertThatThrownBy(() -> verb.call("{\"name\": \"Bun\"}"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no schema.org recipe");
  }

  private static PasteViews.PastedLineView only(
      String text, PasteChoices choices, ReadPasted verb) {
    PasteViews.PastedView view = verb.call(text, choices);
    assertThat(view.lines()).hasSize(1);
    return view.lines().get(0);
  }

  @Test
  void anAmountInDoubtIsSettledByAChoice() {
    PasteViews.PastedLineView open = only("2-3 tbsp honey", PasteChoices.NONE, verb);
    assertThat(open.amounts()).containsExactly("2 tbsp", "3 tbsp");
    PasteViews.PastedLineView settled =
        only("2-3 tbsp honey", amounts("2-3 tbsp  honey ", "3 tbsp"), verb);
    assertThat(settled.status()).isEqualTo("certain");
    assertThat(settled.amount()).isEqualTo("3 tbsp");
    assertThat(settled.grams()).isEqualTo(63);
    assertThat(settled.note()).isEqualTo("2-3 tbsp");
    assertThat(settled.amounts()).isEqualTo(open.amounts());
    assertThat(settled.remarks()).isEmpty();
  }

  @Test
  void anAmountIsChosenForACountAndForALineThatSaysNone() {
    assertThat(only("3 eggs", amounts("1", "3 medium"), verb))
        .matches(line -> line.status().equals("certain") && line.amount().equals("3 medium"));
    assertThat(only("salt to taste", PasteChoices.NONE, verb).status()).isEqualTo("doubtful");
    assertThat(only("salt to taste", amounts("salt to taste", "2 g"), verb))
        .matches(line -> line.status().equals("certain") && line.grams() == 2);
  }

  @Test
  void aChosenAmountThatCannotBeReadIsADoubtAndNotARefusal() {
    PasteViews.PastedLineView line = only("2-3 tbsp honey", amounts("1", "some"), verb);
    assertThat(line.amount()).isNull();
    assertThat(line.lineId()).isNull();
    assertThat(line.doubts()).extracting(PasteViews.DoubtView::about).containsExactly("amount");
    assertThat(line.doubts().get(0).message()).contains("some");
  }

  @Test
  void anAmountStaysWithItsLineWhenOthersComeAboveIt() {
    PasteChoices choices = amounts("2-3 tbsp honey", "3 tbsp");
    assertThat(verb.call("2-3 tbsp honey\n60 g water", choices).certain()).isTrue();
    assertThat(verb.call("60 g water\n2-3 tbsp honey", choices).certain()).isTrue();
    assertThat(verb.call("60 g water\n1-3 tbsp honey", choices).certain()).isFalse();
  }

  @Test
  void aLineIsLeftOutOnlyWhenThatIsSaidAndItIsTold() {
    PasteChoices choices = PasteChoices.of(Map.of(), Map.of(), Set.of("5 g xylophone dust"));
    PasteViews.PastedView view = verb.call("60 g water\n5 g xylophone dust", choices);
    assertThat(view.certain()).isTrue();
    assertThat(view.lines().get(1).kind()).isEqualTo("left_out");
    assertThat(view.remarks()).containsExactly("Left out as chosen: \"5 g xylophone dust\".");
    PasteViews.PastedView all =
        verb.call("60 g water", PasteChoices.of(Map.of(), Map.of(), Set.of("1")));
    assertThat(all.certain()).isFalse();
  }

  @Test
  void amountsAndLinesLeftOutHoldForARecipeInJsonToo() {
    String recipe =
        "{\"@type\":\"Recipe\",\"name\":\"Bun\",\"recipeIngredient\":[\"60 g water\",\"3 eggs\","
            + "\"5 g xylophone dust\"]}";
    PasteChoices choices =
        PasteChoices.of(Map.of(), Map.of("3 eggs", "3 large"), Set.of("5 g xylophone dust"));
    assertThat(verb.call(recipe).certain()).isFalse();
    assertThat(verb.call(recipe, choices).certain()).isTrue();
  }

  @Test
  void amountsForLinesThatAreNotThereAreSlips() {
    for (PasteChoices slip :
        List.of(
            amounts("2", "3 g"),
            PasteChoices.of(Map.of(), Map.of(), Set.of("salt")),
            amounts("Mix it.", "3 g"))) {
      assertThatThrownBy(() -> verb.formula("x", bytes("60 g water\nMethod\nMix it."), slip))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("There is no ingredient on line");
    }
  }

  @Test
  void howToSettleAnAmountIsTold() {
    assertThatThrownBy(
            () -> verb.formula("x", bytes("60 g water\n2-3 tbsp honey"), PasteChoices.NONE))
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.hint()).contains("--amount \"2=2 tbsp\""));
  }

  private static PasteChoices amounts(String line, String amount) {
    return PasteChoices.of(Map.of(), Map.of(line, amount), Set.of());
  }
}
