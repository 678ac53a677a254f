package io.ovenmark.change;

import static io.ovenmark.change.FormulaDiffTest.BUN;
import static io.ovenmark.change.FormulaDiffTest.BUTTER;
import static io.ovenmark.change.FormulaDiffTest.FLOUR;
import static io.ovenmark.change.FormulaDiffTest.SALT;
import static io.ovenmark.change.FormulaDiffTest.WATER;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.measure.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChangeSentencesTest {
  private static final ChangeSentences SENTENCES = ChangeSentences.plain();

  private static final ChangeSentences OUNCES =
      new ChangeSentences(
          Texts::words, Texts::words, ShownUnits.of(Optional.of("oz"), Optional.of("F")));

  private static List<String> told(Formula from, Formula to) {
    return SENTENCES.of(FormulaDiff.between(from, to));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "180 g | 202 g | Water 180 g → 202 g (+22 g).",
        "202 g | 180 g | Water 202 g → 180 g (−22 g).",
        "1 kg | 950 g | Water 1 kg → 950 g (−50 g).",
        "1/3 cup | 1/2 cup | Water 1/3 cup → 1/2 cup (+0.1667 cup).",
        "100 g | 100 ml | Water 100 g → 100 ml.",
        "1000 g | 1 kg | 'Water is written 1 kg instead of 1000 g, the same amount.'",
        "½ tsp | 0.5 tsp | 'Water is written 0.5 tsp instead of ½ tsp, the same amount.'",
      })
  void anAmountIsToldWithItsDifference(String from, String to, String sentence) {
    assertThat(
            told(
                BUN.withLines(List.of(WATER.withAmount(Amount.parse(from)))),
                BUN.withLines(List.of(WATER.withAmount(Amount.parse(to))))))
        .containsExactly(sentence);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "180 g | 202 g | Water 6.35 oz → 7.13 oz (+0.776 oz).",
        "1 kg | 950 g | Water 35.3 oz → 33.5 oz (−1.76 oz).",
        "6 oz | 7 oz | Water 6 oz → 7 oz (+1 oz).",
        "1 lb | 15 oz | Water 1 lb → 15 oz (−1 oz).",
        "6 oz | 200 g | Water 6 oz → 7.05 oz (+1.05 oz).",
        "1/3 cup | 1/2 cup | Water 1/3 cup → 1/2 cup (+0.1667 cup).",
        "1000 g | 1 kg | 'Water is written 1 kg instead of 1000 g, the same amount.'",
      })
  void aReaderOfOuncesIsToldOuncesButAWayOfWritingStandsAsWritten(
      String from, String to, String sentence) {
    assertThat(
            OUNCES.of(
                FormulaDiff.between(
                    BUN.withLines(List.of(WATER.withAmount(Amount.parse(from)))),
                    BUN.withLines(List.of(WATER.withAmount(Amount.parse(to)))))))
        .containsExactly(sentence);
  }

  @Test
  void aReaderOfGramsAndCelsiusIsToldThoseOfWhatWasWrittenOtherwise() {
    ChangeSentences metric =
        new ChangeSentences(
            Texts::words, Texts::words, ShownUnits.of(Optional.of("g"), Optional.of("C")));
    assertThat(
            metric.of(
                FormulaDiff.between(
                    BUN.withLines(List.of(WATER.withAmount(Amount.parse("6 oz")))),
                    BUN.withLines(List.of(WATER.withAmount(Amount.parse("7 oz")))))))
        .containsExactly("Water 170 g → 198 g (+28.35 g).");
    Formula unheated = BUN.withBake(List.of());
    assertThat(
            metric.of(
                FormulaDiff.between(unheated, BUN.withBake(List.of(stage("375 °F"))))))
        .containsExactly("Added oven stage bake: 191 °C.");
  }

  @Test
  void ovenAndYieldFollowTheReader() {
    BakeSetting cool = stage("190 °C");
    BakeSetting hot = stage("205 °C");
    Formula before = BUN.withBake(List.of(cool)).withYield(ofDough(90));
    Formula after = BUN.withBake(List.of(hot)).withYield(ofDough(95.5));
    assertThat(OUNCES.of(FormulaDiff.between(before, after)))
        .containsExactly(
            "Oven temperature 374 → 401 °F.", "Dough a piece 3.17 oz → 3.37 oz.");
  }

  private static Yield ofDough(double grams) {
    return new Yield(Optional.empty(), OptionalDouble.of(grams), OptionalDouble.empty());
  }

  private static BakeSetting stage(String temperature) {
    return BakeSetting.named("bake").withTemperature(Optional.of(Temperature.parse(temperature)));
  }

  @Test
  void linesComeGoAndAreReplaced() {
    assertThat(told(BUN, BUN.withLines(List.of(FLOUR, WATER, BUTTER))))
        .containsExactly("Removed salt, 4 g.");
    assertThat(told(BUN.withLines(List.of(WATER)), BUN.withLines(List.of(WATER, FLOUR))))
        .containsExactly("Added lupin flour, 120 g, counting as flour.");
    assertThat(
            told(
                BUN.withLines(List.of(BUTTER)),
                BUN.withLines(List.of(BUTTER.withFood("coconut-oil")))))
        .containsExactly("Replaced butter with coconut oil, 60 g.");
    assertThat(
            told(
                BUN.withLines(List.of(BUTTER)),
                BUN.withLines(
                    List.of(BUTTER.withFood("coconut-oil").withAmount(Amount.parse("50 g"))))))
        .containsExactly("Replaced butter with coconut oil, 60 g → 50 g.");
  }

  @Test
  void marksNotesAndOrderAreTold() {
    assertThat(told(BUN, BUN.withLines(List.of(SALT, FLOUR, WATER, BUTTER))))
        .containsExactly("Moved salt to the top.");
    assertThat(told(BUN, BUN.withLines(List.of(FLOUR, BUTTER, SALT, WATER))))
        .containsExactly("Moved water after salt.");
    assertThat(told(BUN, BUN.withLines(List.of(SALT, BUTTER, WATER, FLOUR))))
        .singleElement()
        .asString()
        .matches("Moved [a-z ]+, [a-z ]+ and [a-z ]+\\.");
    Line marked = FLOUR.withFlour(false).withNote(Optional.of("toasted"));
    assertThat(told(BUN, BUN.withLines(List.of(marked, WATER, BUTTER, SALT))))
        .containsExactly(
            "Lupin flour no longer counts as flour.", "Lupin flour: note added: \"toasted\".");
  }

  @Test
  void theOvenIsToldWithArrowsAndUnits() {
    BakeSetting bake = BUN.bake().get(0);
    BakeSetting hotter =
        bake.withTemperature(Optional.of(Temperature.parse("190 °C")))
            .withMinutes(OptionalDouble.of(21.5))
            .withRack(Optional.of("low"));
    assertThat(told(BUN, BUN.withBake(List.of(hotter))))
        .containsExactly(
            "Oven temperature 205 → 190 °C.", "Oven time 24 → 21.5 min.", "Rack added: \"low\".");
    assertThat(
            told(
                BUN,
                BUN.withBake(
                    List.of(bake.withTemperature(Optional.of(Temperature.parse("400 °F")))))))
        .containsExactly("Oven temperature 205 °C → 400 °F.");
    assertThat(
            told(
                BUN,
                BUN.withBake(
                    List.of(bake.withTemperature(Optional.of(Temperature.parse("401 °F")))))))
        .containsExactly(
            "Oven temperature is written 401 °F instead of 205 °C, the same heat.");
    assertThat(told(BUN, BUN.withBake(List.of(bake.withMinutes(OptionalDouble.empty())))))
        .containsExactly("Oven time 24 min no longer stated.");
    BakeSetting cold =
        BakeSetting.named("chill").withTemperature(Optional.of(Temperature.parse("-5 °C")));
    assertThat(told(BUN, BUN.withBake(List.of(bake, cold))))
        .containsExactly("Added oven stage chill: −5 °C.");
    assertThat(
            told(
                BUN.withBake(List.of(cold)),
                BUN.withBake(
                    List.of(cold.withTemperature(Optional.of(Temperature.parse("-10 °C")))))))
        .containsExactly("Oven temperature of stage chill −5 → −10 °C.");
  }

  @Test
  void methodYieldAndHeadingAreTold() {
    assertThat(told(BUN, BUN.withMethod(List.of("Mix.", "Rest 15 min.", "Bake."))))
        .containsExactly("Method: step 2 reworded.");
    assertThat(told(BUN, BUN.withMethod(List.of("Mix.", "Bake.", "Cool on a rack."))))
        .containsExactly("Method: 1 step added and 1 step removed.");
    assertThat(told(BUN, BUN.withMethod(List.of()))).containsExactly("Method removed, 3 steps.");
    assertThat(told(BUN, BUN.withYield(Yield.ofPieces(7)))).containsExactly("Pieces 6 → 7.");
    assertThat(
            told(
                BUN,
                BUN.withYield(
                    new Yield(
                        Optional.empty(), OptionalDouble.of(85), OptionalDouble.of(2)))))
        .containsExactly(
            "Pieces 6 no longer stated.",
            "Dough a piece set to 85 g.",
            "Loss on handling set to 2 %.");
    assertThat(told(BUN, BUN.withName("Bun").withGoal(Optional.of("low-carb"))))
        .containsExactly("Renamed from \"Seeded lupin bun\" to \"Bun\".", "Goal set to low-carb.");
    assertThat(told(BUN, BUN.withExtras(RandomFormulas.extra("proof", "{\"h\": 2}"))))
        .containsExactly("Other field \"proof\" set to { \"h\": 2 }.");
  }

  @Test
  void namesAreAskedForAndBeginTheSentenceWithACapital() {
    ChangeSentences named = new ChangeSentences(id -> "νερό", food -> "Food " + food);
    assertThat(
            named.of(
                new Change.AmountChanged("water", Amount.parse("1 g"), Amount.parse("2 g"))))
        .isEqualTo("Νερό 1 g → 2 g (+1 g).");
    assertThat(named.of(new Change.FoodReplaced("butter", BUTTER, BUTTER.withFood("ghee"))))
        .isEqualTo("Replaced Food butter with Food ghee, 60 g.");
  }

  @Test
  void everySentenceStaysOnOneLineWhateverTheTextsAre() {
    RandomFormulas formulas = new RandomFormulas(4);
    for (int round = 0; round < 500; round++) {
      Formula from = formulas.formula();
      for (String sentence : told(from, formulas.edited(from, 8))) {
        assertThat(sentence).endsWith(".").doesNotContain("\n", "\u0000", "\u202E", "  ");
      }
    }
  }

  @Test
  void longAndHostileTextsAreShortenedButNotEscaped() {
    String hostile = "\u202E<script>\n\u0007" + "👩".repeat(500);
    String sentence = SENTENCES.of(new Change.NameChanged("Bun", hostile));
    assertThat(sentence)
        .startsWith("Renamed from \"Bun\" to \"<script> 👩")
        .endsWith("👩…\".")
        .hasSizeLessThan(250);
  }
}
