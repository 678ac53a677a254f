package io.ovenmark.change;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaDiffTest {
  static final Line WATER = Line.of("water", "water", Amount.parse("180 g"));
  static final Line FLOUR =
      Line.of("lupin-flour", "lupin-flour", Amount.parse("120 g")).withFlour(true);
  static final Line SALT = Line.of("salt", "salt", Amount.parse("4 g"));
  static final Line BUTTER = Line.of("butter", "butter", Amount.parse("60 g"));
  static final Formula BUN =
      Formula.named("Seeded lupin bun")
          .withLines(List.of(FLOUR, WATER, BUTTER, SALT))
          .withMethod(List.of("Mix.", "Rest 10 min.", "Bake."))
          .withBake(
              List.of(
                  BakeSetting.named("bake")
                      .withTemperature(Optional.of(Temperature.parse("205 °C")))
                      .withMinutes(OptionalDouble.of(24))))
          .withYield(Yield.ofPieces(6));

  @Test
  void aFormulaDoesNotDifferFromItself() {
    assertThat(FormulaDiff.between(BUN, BUN)).isEmpty();
  }

  @Test
  void aReadCopyDoesNotDiffer() {
    assertThat(FormulaDiff.between(BUN, FormulaCodec.read("bun", FormulaCodec.write(BUN))))
        .isEmpty();
  }

  @Test
  void linesAreMatchedByIdAndNotByPlace() {
    Formula to = BUN.withLines(List.of(WATER.withAmount(Amount.parse("202 g")), BUTTER, SALT));
    assertThat(FormulaDiff.between(BUN, to))
        .containsExactly(
            new Change.LineRemoved(FLOUR, 0),
            new Change.AmountChanged("water", Amount.parse("180 g"), Amount.parse("202 g")));
  }

  @Test
  void anotherFoodUnderTheSameIdIsAReplacementThatTellsTheAmountToo() {
    Line oil = BUTTER.withFood("coconut-oil").withAmount(Amount.parse("50 g"));
    assertThat(FormulaDiff.between(BUN, BUN.withLines(List.of(FLOUR, WATER, oil, SALT))))
        .containsExactly(new Change.FoodReplaced("butter", BUTTER, oil));
  }

  @ParameterizedTest
  @CsvSource({
    "1 kg, 1000 g", "½ tsp, 0.5 tsp", "1/3 kg, 333.333333333 g", "1 lb, 16 oz",
    "3 large, 3.0 large", "150 grams, 150 g", "0 g, 0 kg"
  })
  void theSameAmountInOtherCharactersIsOnlyRewritten(String one, String other) {
    assertThat(amounts(one, other))
        .singleElement()
        .isInstanceOfSatisfying(
            Change.AmountRewritten.class,
            change -> {
              assertThat(change.from()).hasToString(one);
              assertThat(change.to()).hasToString(other);
            });
    assertThat(amounts(other, one)).singleElement().isInstanceOf(Change.AmountRewritten.class);
  }

  @ParameterizedTest
  @CsvSource({
    "1 kg, 1001 g", "3 tsp, 1 tbsp", "3 large, 3 medium", "0 g, 0 large", "100 g, 100.0001 g",
    "100 g, 100 ml"
  })
  void whatMayWeighOtherwiseIsAChangedAmount(String one, String other) {
    assertThat(amounts(one, other)).singleElement().isInstanceOf(Change.AmountChanged.class);
    assertThat(amounts(other, one)).singleElement().isInstanceOf(Change.AmountChanged.class);
  }

  private static List<Change> amounts(String from, String to) {
    return FormulaDiff.between(
        BUN.withLines(List.of(SALT.withAmount(Amount.parse(from)))),
        BUN.withLines(List.of(SALT.withAmount(Amount.parse(to)))));
  }

  @ParameterizedTest
  @CsvSource({"205 °C, 401 °F, true", "205 °C, 400 °F, false", "205 °C, 206 °C, false"})
  void theSameHeatInTheOtherScaleIsOnlyRewritten(String from, String to, boolean rewritten) {
    assertThat(FormulaDiff.between(at(from), at(to)))
        .singleElement()
        .isInstanceOf(
            rewritten ? Change.TemperatureRewritten.class : Change.BakeSettingChanged.class);
  }

  private static Formula at(String heat) {
    return BUN.withBake(
        List.of(
            BakeSetting.named("bake").withTemperature(Optional.of(Temperature.parse(heat)))));
  }

  @Test
  void theFewestLinesThatExplainANewOrderAreSaidToHaveMoved() {
    assertThat(FormulaDiff.between(BUN, BUN.withLines(List.of(SALT, FLOUR, WATER, BUTTER))))
        .containsExactly(
            new Change.LinesReordered(
                List.of("lupin-flour", "water", "butter", "salt"),
                List.of("salt", "lupin-flour", "water", "butter"),
                List.of("salt")));
  }

  @Test
  void anAddedLineAloneIsNoNewOrder() {
    Line yeast = Line.of("yeast", "yeast", Amount.parse("3 g"));
    assertThat(FormulaDiff.between(BUN, BUN.withLines(List.of(FLOUR, yeast, WATER, BUTTER, SALT))))
        .containsExactly(new Change.LineAdded(yeast, 1));
  }

  @Test
  void noFewerLinesThanSaidCouldHaveMoved() {
    Random random = new Random(11);
    for (int round = 0; round < 300; round++) {
      List<String> from =
          new ArrayList<>(IntStream.range(0, 1 + random.nextInt(7)).mapToObj(i -> "" + i).toList());
      List<String> to = new ArrayList<>(from);
      Collections.shuffle(to, random);
      List<String> moved = LongestRun.moved(from, to);
      List<String> restFrom = new ArrayList<>(from);
      restFrom.removeAll(moved);
      List<String> restTo = new ArrayList<>(to);
      restTo.removeAll(moved);
      assertThat(restTo).isEqualTo(restFrom);
      assertThat(restTo).hasSize(longestCommon(from, to));
    }
  }

  /** The longest common subsequence by trying every subset, another way than the one tested. */
  private static int longestCommon(List<String> from, List<String> to) {
    int best = 0;
    for (int subset = 0; subset < 1 << from.size(); subset++) {
      int chosen = subset;
      List<String> kept =
          from.stream().filter(item -> (chosen >> from.indexOf(item) & 1) == 1).toList();
      if (to.stream().filter(kept::contains).toList().equals(kept)) {
        best = Math.max(best, kept.size());
      }
    }
    return best;
  }

  @Test
  void changesComeInAFixedOrder() {
    Formula to =
        BUN.withName("Bun")
            .withDescription(Optional.of("Soft."))
            .withGoal(Optional.of("low-carb"))
            .withReference(Optional.of("wheat-bun"))
            .withLines(
                List.of(
                    Line.of("yeast", "yeast", Amount.parse("3 g")),
                    BUTTER.withFood("ghee").withFlour(true).withNote(Optional.of("soft")),
                    WATER.withExtras(RandomFormulas.extra("hardness", "7"))))
            .withMethod(List.of("Mix."))
            .withBake(List.of(BakeSetting.named("finish"), BUN.bake().get(0).withMinutes(
                OptionalDouble.empty())))
            .withYield(
                new Yield(Optional.empty(), OptionalDouble.of(85), OptionalDouble.of(2)))
            .withStorage(Optional.of("Two days."))
            .withExtras(RandomFormulas.extra("proof", "1"));
    assertThat(FormulaDiff.between(BUN, to))
        .extracting(change -> change.getClass().getSimpleName())
        .containsExactly(
            "NameChanged",
            "DescriptionChanged",
            "GoalChanged",
            "ReferenceChanged",
            "LineRemoved",
            "LineRemoved",
            "LineAdded",
            "FoodReplaced",
            "FlourMarkChanged",
            "LineNoteChanged",
            "ExtraChanged",
            "LinesReordered",
            "MethodChanged",
            "BakeSettingAdded",
            "BakeSettingChanged",
            "YieldChanged",
            "YieldChanged",
            "YieldChanged",
            "StorageChanged",
            "ExtraChanged");
  }

  @Test
  void unknownFieldsDifferByValueAndNotByTheOrderOfTheirMembers() {
    Extras one = RandomFormulas.extra("x", "{\"a\": 1, \"b\": 2}");
    Extras other = RandomFormulas.extra("x", "{\"b\": 2.0, \"a\": 1}");
    assertThat(FormulaDiff.between(BUN.withExtras(one), BUN.withExtras(other))).isEmpty();
    assertThat(FormulaDiff.between(BUN, BUN.withExtras(RandomFormulas.extra("x", "null"))))
        .singleElement()
        .isInstanceOfSatisfying(
            Change.ExtraChanged.class, change -> assertThat(change.from()).isEmpty());
  }

  @Test
  void aDiffIsEmptyExactlyWhenFormulasAreEqualAndWrittenAlike() {
    RandomFormulas formulas = new RandomFormulas(1);
    int equal = 0;
    for (int round = 0; round < 2000; round++) {
      Formula from = formulas.formula();
      Formula to = formulas.edited(from, round % 3);
      boolean same = from.equals(to) && written(from).equals(written(to));
      assertThat(FormulaDiff.between(from, to).isEmpty()).isEqualTo(same);
      equal += same ? 1 : 0;
    }
    assertThat(equal).isBetween(500, 1500);
  }

  @Test
  void aDiffIsCompleteItTurnsTheEarlierFormulaIntoTheLater() {
    RandomFormulas formulas = new RandomFormulas(2);
    for (int round = 0; round < 2000; round++) {
      Formula from = formulas.formula();
      Formula to = round % 2 == 0 ? formulas.formula() : formulas.edited(from, 6);
      Formula replayed = Replay.of(FormulaDiff.between(from, to), from);
      assertThat(replayed).isEqualTo(to);
      assertThat(written(replayed)).isEqualTo(written(to));
    }
  }

  private static List<String> written(Formula formula) {
    return formula.lines().stream().map(line -> line.amount().toString()).toList();
  }

  @Test
  void aThousandLinesInReverseAreNoTrouble() {
    List<Line> lines =
        new ArrayList<>(
            IntStream.range(0, 1000)
                .mapToObj(i -> Line.of("line-" + i, "water", Amount.parse("1 g")))
                .toList());
    Formula from = BUN.withLines(lines);
    Collections.reverse(lines);
    List<Change> changes = FormulaDiff.between(from, BUN.withLines(lines));
    assertThat(((Change.LinesReordered) changes.get(0)).moved()).hasSize(999);
  }

  @Test
  void hostileTextsComeThroughUnaltered() {
    String hostile = "<script>\u0000\uD83D\n\u202E";
    assertThat(FormulaDiff.between(BUN, BUN.withName(hostile)))
        .containsExactly(new Change.NameChanged("Seeded lupin bun", hostile));
  }
}
