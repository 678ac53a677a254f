package io.ovenmark.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaEditTest {
  private static final Formula BUN =
      Formula.named("Seeded lupin bun")
          .withLines(
              List.of(
                  line("lupin-flour", "120 g").withFlour(true),
                  line("water", "180 g"),
                  line("egg", "3 large"),
                  line("milk", "1 cup"),
                  line("salt", "4 g").withNote(Optional.of("fine"))))
          .withMethod(List.of("Mix.", "Rest.", "Bake."))
          .withBake(
              List.of(
                  BakeSetting.named("bake")
                      .withTemperature(Optional.of(Temperature.parse("190 °C")))
                      .withMinutes(OptionalDouble.of(24)),
                  BakeSetting.named("finish")))
          .withYield(Yield.ofPieces(6));

  private static Line line(String id, String amount) {
    return Line.of(id, id, Amount.parse(amount));
  }

  private static Formula set(String assignment) {
    return new FormulaEdit(BUN).set(assignment).formula();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "water=188g", "water = 188 g", "water.amount=188g", "lines.water=188 g",
        "lines.water.amount=188g"
      })
  void anAmountCanBeSetByTheLineAlone(String assignment) {
    assertThat(set(assignment).line("water").orElseThrow().amount()).hasToString("188 g");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "water+=5 g | 185 g",
        "water-=5 g | 175 g",
        "water−=5 g | 175 g",
        "water += 0.25 kg | 430 g",
        "water-=10% | 162 g",
        "water+=12.5 % | 202.5 g",
        "water-=180 g | 0 g",
        "water-=100% | 0 g",
        "egg+=1 large | 4 large",
        "egg-=50% | 1.5 large",
        "milk+=2 tbsp | 1.125 cup",
        "milk-=1/3 cup | 0.666667 cup",
        "lines.water.amount+=5 g | 185 g",
      })
  void anAmountIsRaisedAndLoweredInTheUnitItIsWrittenIn(String assignment, String expected) {
    String id = assignment.contains("egg") ? "egg" : assignment.contains("milk") ? "milk" : "water";
    assertThat(set(assignment).line(id).orElseThrow().amount()).hasToString(expected);
  }

  @Test
  void theOtherFieldsOfALineCanBeSet() {
    assertThat(set("lines.water.food=oat-milk").line("water").orElseThrow().food())
        .isEqualTo("oat-milk");
    assertThat(set("water.flour=yes").line("water").orElseThrow().flour()).isTrue();
    assertThat(set("lupin-flour.flour=FALSE").line("lupin-flour").orElseThrow().flour()).isFalse();
    assertThat(set("water.note= 35 °C = warm ").line("water").orElseThrow().note())
        .contains("35 °C = warm");
    assertThat(set("salt.note=").line("salt").orElseThrow().note()).isEmpty();
  }

  @Test
  void ovenFieldsWithoutAStageMeanTheFirst() {
    assertThat(set("bake.temperature=205C").bake().get(0).temperature())
        .contains(Temperature.parse("205 °C"));
    assertThat(set("bake.minutes=21").bake().get(0).minutes()).hasValue(21);
    assertThat(set("bake.minutes=21.5 min").bake().get(0).minutes()).hasValue(21.5);
    assertThat(set("bake.minutes-=3").bake().get(0).minutes()).hasValue(21);
    assertThat(set("bake.minutes=").bake().get(0).minutes()).isEmpty();
    assertThat(set("bake.rack=low").bake().get(0).rack()).contains("low");
    assertThat(set("bake.steam=none").bake().get(0).steam()).contains("none");
    assertThat(set("bake.vessel=tin").bake().get(0).vessel()).contains("tin");
    assertThat(set("bake.note=turn once").bake().get(0).note()).contains("turn once");
    assertThat(set("bake.temperature=").bake().get(0).temperature()).isEmpty();
  }

  @Test
  void aStageIsReachedByItsIdAndMadeByAPlus() {
    assertThat(set("bake.finish.minutes=5").bake().get(1).minutes()).hasValue(5);
    assertThat(set("bake.+.minutes=5").bake())
        .extracting(BakeSetting::id)
        .containsExactly("bake", "finish", "bake-2");
    assertThat(
            new FormulaEdit(Formula.named("Bun")).set("bake.temperature=205C").formula().bake())
        .containsExactly(
            BakeSetting.named("bake").withTemperature(Optional.of(Temperature.parse("205 °C"))));
  }

  @Test
  void piecesAndDoughMassClearEachOther() {
    Formula byMass = set("yield.dough_per_piece_g=85 g");
    assertThat(byMass.yield())
        .isEqualTo(new Yield(Optional.empty(), OptionalDouble.of(85), OptionalDouble.empty()));
    assertThat(new FormulaEdit(byMass).set("yield.pieces=7").formula().yield())
        .isEqualTo(Yield.ofPieces(7));
    assertThat(set("yield.pieces+=1").yield()).isEqualTo(Yield.ofPieces(7));
    assertThat(set("yield.pieces=").yield()).isEqualTo(Yield.UNSTATED);
    assertThat(set("yield.dough_per_piece_g=").yield()).isEqualTo(Yield.ofPieces(6));
    assertThat(set("yield.handling_loss_percent=2.5 %").yield().handlingLossPercent())
        .hasValue(2.5);
  }

  @Test
  void theHeadingCanBeSetAndCleared() {
    assertThat(set("name=Ψωμί <b>").name()).isEqualTo("Ψωμί <b>");
    Formula set = set("description=Soft.");
    assertThat(set.description()).contains("Soft.");
    assertThat(new FormulaEdit(set).set("description=").formula().description()).isEmpty();
    Formula kept = set("storage=Two days in a box.");
    assertThat(kept.storage()).contains("Two days in a box.");
    assertThat(new FormulaEdit(kept).set("storage=").formula().storage()).isEmpty();
    assertThat(set("goal=low-carb").goal()).contains("low-carb");
    assertThat(set("reference=wheat-bun").reference()).contains("wheat-bun");
  }

  @Test
  void stepsAreChangedRemovedAndAppended() {
    assertThat(set("method.2=Rest 10 min.").method())
        .containsExactly("Mix.", "Rest 10 min.", "Bake.");
    assertThat(set("method.2=").method()).containsExactly("Mix.", "Bake.");
    assertThat(set("method.+=Cool.").method()).endsWith("Cool.");
    assertThat(set("method+=Cool.").method()).endsWith("Cool.");
  }

  @Test
  void linesAreAddedLastOrBesideAnother() {
    FormulaEdit edit = new FormulaEdit(BUN);
    assertThat(ids(edit.add("psyllium-husk=12 g"))).endsWith("salt", "psyllium-husk");
    assertThat(ids(edit.add("psyllium-husk=12 g after water")))
        .startsWith("lupin-flour", "water", "psyllium-husk");
    assertThat(ids(edit.add("gum:xanthan-gum=2 g before lupin-flour"))).startsWith("gum");
    assertThat(edit.add("egg=1 large after egg").formula().lines().get(3))
        .isEqualTo(Line.of("egg-2", "egg", Amount.parse("1 large")));
  }

  private static List<String> ids(FormulaEdit edit) {
    return edit.formula().lines().stream().map(Line::id).toList();
  }

  @Test
  void linesAndStagesAreRemoved() {
    FormulaEdit edit = new FormulaEdit(BUN);
    assertThat(ids(edit.remove("salt"))).doesNotContain("salt");
    assertThat(ids(edit.remove("lines.salt"))).doesNotContain("salt");
    assertThat(edit.remove("bake.finish").formula().bake()).hasSize(1);
  }

  @Test
  void aReplacedFoodKeepsIdPlaceMarkAndNote() {
    assertThat(new FormulaEdit(BUN).replace("salt=sea-salt 5 g").formula().lines().get(4))
        .isEqualTo(
            new Line(
                "salt",
                "sea-salt",
                Amount.parse("5 g"),
                false,
                Optional.of("fine"),
                Extras.NONE));
    assertThat(new FormulaEdit(BUN).replace("lupin-flour=soy-flour").formula().lines().get(0))
        .isEqualTo(BUN.lines().get(0).withFood("soy-flour"));
  }

  @Test
  void theFormulasOwnWordsWinOverLinesOfTheSameName() {
    Formula odd =
        BUN.withLines(
            List.of(line("bake", "1 g"), line("name", "2 g"), line("lines", "3 g")));
    FormulaEdit edit = new FormulaEdit(odd);
    assertThat(edit.set("name=Bun").formula().name()).isEqualTo("Bun");
    assertThat(edit.set("bake.note=hot").formula().bake().get(0).note()).contains("hot");
    for (String id : List.of("bake", "name", "lines")) {
      Formula next = edit.set("lines." + id + "=9 g").formula();
      assertThat(next.line(id).orElseThrow().amount()).hasToString("9 g");
      assertThat(next.line(id).orElseThrow().amount()).isNotEqualTo(odd.line(id).get().amount());
    }
    assertThatThrownBy(() -> edit.set("bake=9 g"))
        .hasMessage(
            "\"bake\" names no field of the oven stages.\n"
                + "Write \"bake.temperature\", or \"lines.bake\" for a line that is called bake.");
    assertThatThrownBy(() -> edit.set("name.note=x"))
        .hasMessage(
            "\"name.note\" is not a field of a formula.\n"
                + "Write \"name\" alone, or \"lines.name\" for a line of that name.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "watr=1 g | There is no line \"watr\" in this formula. | Its lines are lupin-flour, water, "
            + "egg, milk, salt; did you mean \"water\"?",
        "flour=1 g | There is no line \"flour\" in this formula. | Its lines are lupin-flour, "
            + "water, egg, milk, salt; did you mean \"lupin-flour\"?",
        "cinnamon=1 g | There is no line \"cinnamon\" in this formula. | Its lines are "
            + "lupin-flour, water, egg, milk, salt.",
        "water.amout=1 g | A line has no field \"amout\". | Its fields are amount, food, flour, "
            + "note; did you mean \"amount\"?",
        "lines=1 g | \"lines\" is not a field of a formula. | Write a line and its field, such as "
            + "\"lines.water.amount\".",
        "water 188 g | \"water 188 g\" is not an assignment. | Write a field, an equals sign and a "
            + "value, such as \"water=188 g\".",
        "=188 g | \"=188 g\" is not an assignment. | Write a field, an equals sign and a value, "
            + "such as \"water=188 g\".",
        "water= | The line of \"water\" needs an amount. | Write one such as \"180 g\", or remove "
            + "the line.",
        "water=5000 kg | The amount \"5000 kg\" is more than a tonne. | Check the number and the "
            + "unit.",
        "water-=200 g | Taking \"200 g\" from 180 g leaves less than nothing. | Take 180 g at "
            + "most, or remove the line.",
        "water-=101% | Taking \"101%\" from 180 g leaves less than nothing. | Take 180 g at most, "
            + "or remove the line.",
        "egg+=5 g | The line of \"egg\" is written 3 large, which \"5 g\" does not fit. | Use "
            + "\"large\" or a percentage such as \"10 %\".",
        "water.flour=maybe | The field \"water.flour\" is yes or no, not \"maybe\". | Write yes "
            + "or no.",
        "water.food=Oat Milk | \"Oat Milk\" cannot be a short name. | Use lower-case letters a-z, "
            + "digits and single hyphens, such as \"lupin-flour\".",
        "water.note+=x | The field \"water.note\" holds no amount to raise or lower. | Write it "
            + "with a plain equals sign.",
        "bake.temprature=205C | An oven stage has no field \"temprature\". | Its fields are "
            + "temperature, minutes, rack, steam, vessel, note; did you mean \"temperature\"?",
        "bake.temperature=205 | The temperature \"205\" is not understood. | Write a number and "
            + "the scale, such as \"205 °C\" or \"400 °F\".",
        "bake.finsh.minutes=5 | There is no oven stage \"finsh\" in this formula. | \"bake.+\" "
            + "makes a new one; its stages are bake, finish; did you mean \"finish\"?",
        "bake.minutes=soon | The value \"soon\" of \"bake.minutes\" is not understood. | Write a "
            + "number, with or without \"min\", decimals with a point.",
        "bake.minutes=-5 | The field \"bake.minutes\" cannot be -5. | Use a number from 0 to 2880.",
        "bake.finish.minutes+=5 | The field \"bake.finish.minutes\" is not stated, so it cannot "
            + "be raised or lowered. | Set it with a plain equals sign.",
        "yield.pieces=0 | The field \"yield.pieces\" cannot be 0. | Use a whole number from 1 to "
            + "100000.",
        "yield.pieces=6.5 | The field \"yield.pieces\" cannot be 6.5. | Use a whole number from 1 "
            + "to 100000.",
        "yield.peices=7 | The yield has no field \"peices\". | Its fields are pieces, "
            + "dough_per_piece_g, handling_loss_percent; did you mean \"pieces\"?",
        "yield=7 | The yield has no field \"yield\". | Its fields are pieces, dough_per_piece_g, "
            + "handling_loss_percent.",
        "name= | A formula needs a name. | Write one after \"name=\".",
        "method.4=x | There is no step \"4\" in the method. | It has steps 1 to 3; "
            + "\"method.+=text\" appends one.",
        "method=x | \"method\" names no step of the method. | It has steps 1 to 3; "
            + "\"method.+=text\" appends one.",
        "method.+= | A step needs words. | Write them after \"method.+=\".",
      })
  void whatCannotBeSetIsRefusedWithASentenceAndARemedy(
      String assignment, String sentence, String remedy) {
    assertThatThrownBy(() -> set(assignment))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(sentence + "\n" + remedy);
  }

  @Test
  void whatCannotBeAddedRemovedOrReplacedIsRefused() {
    FormulaEdit edit = new FormulaEdit(BUN);
    assertThatThrownBy(() -> edit.add("water:oat-milk=1 g"))
        .hasMessage(
            "There is already a line \"water\" in this formula.\n"
                + "Choose another id, such as \"water-2\".");
    assertThatThrownBy(() -> edit.add("ghee=5 g after buter"))
        .hasMessageStartingWith("There is no line \"buter\" in this formula.\n");
    assertThatThrownBy(() -> edit.add("ghee")).hasMessageContaining("is not an assignment");
    assertThatThrownBy(() -> edit.add("ghee=")).hasMessageContaining("is not understood");
    assertThatThrownBy(() -> edit.add("ghee=-5 g")).hasMessageContaining("is negative");
    assertThatThrownBy(() -> edit.add("ghee=1e308 g")).hasMessageContaining("absurdly large");
    assertThatThrownBy(() -> edit.remove("slat")).hasMessageContaining("did you mean \"salt\"?");
    assertThatThrownBy(() -> edit.remove("bake.x")).hasMessageContaining("no oven stage \"x\"");
    assertThatThrownBy(() -> edit.replace("salt=Sea Salt")).hasMessageContaining("short name");
    assertThatThrownBy(() -> edit.replace("salt=")).hasMessageContaining("short name");
    assertThatThrownBy(() -> new FormulaEdit(Formula.named("Bun")).set("water=1 g"))
        .hasMessage(
            "There is no line \"water\" in this formula.\n"
                + "It has no lines yet; add one, such as \"water=180 g\".");
  }

  @Test
  void hostileTextsAreShownShortOnOneLine() {
    for (String hostile :
        List.of("<script>\n=1 g", "λ\u0000=1 g", "x".repeat(100_000) + "=1 g", "\uD83D=1 g",
            ".=1 g", "..=1 g", "lines...=1 g", "bake...=1", "water=" + "9".repeat(5000) + " g",
            "water+=" + "9".repeat(5000) + "%", "method.99999999999=x",
            "bake.temperature=" + "9".repeat(5000) + "C", "bake.temperature=20\n5C",
            "bake.minutes=" + "9".repeat(5000))) {
      assertThatThrownBy(() -> set(hostile))
          .isInstanceOf(IllegalArgumentException.class)
          .satisfies(
              refusal -> {
                assertThat(refusal.getMessage().split("\n", -1)).hasSize(2);
                assertThat(refusal.getMessage()).hasSizeLessThan(300);
              });
    }
  }

  @Test
  void whatWasEditedCanAlwaysBeWrittenAndReadBack() {
    List<String> edits =
        List.of(
            "water+=1/3 cup", "water-=33.3%", "water=½ tsp", "water+=0.1 tsp", "milk-=1 ml",
            "egg+=12.345678 %", "yield.pieces=100000", "yield.dough_per_piece_g=0.01",
            "yield.handling_loss_percent=99.9", "bake.minutes=2880", "bake.minutes-=0.1",
            "bake.temperature=-5 °C", "bake.+.note=\u0000 <b>", "method.+=a\nb", "name=\uD83D",
            "water.note=\"", "method.1=", "bake.temperature=", "yield.pieces-=1", "salt=0 kg",
            "salt+=1 oz");
    Random random = new Random(9);
    for (int round = 0; round < 500; round++) {
      FormulaEdit edit = new FormulaEdit(BUN);
      for (int i = 0; i < 8; i++) {
        try {
          edit = edit.set(edits.get(random.nextInt(edits.size())));
        } catch (IllegalArgumentException refused) {
          assertThat(refused.getMessage()).contains("\n");
        }
      }
      Formula formula = edit.formula();
      assertThat(FormulaCodec.read("bun", FormulaCodec.write(formula))).isEqualTo(formula);
    }
  }

  @Test
  void aRefusedEditLeavesTheFormulaAsItWas() {
    FormulaEdit edit = new FormulaEdit(BUN).set("water=188g");
    assertThatThrownBy(() -> edit.set("watr=1 g")).isInstanceOf(IllegalArgumentException.class);
    assertThat(edit.formula().line("water").orElseThrow().amount()).hasToString("188 g");
    assertThat(BUN.line("water").orElseThrow().amount()).hasToString("180 g");
  }
}
