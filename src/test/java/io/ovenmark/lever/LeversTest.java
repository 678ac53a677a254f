package io.ovenmark.lever;

import static io.ovenmark.worksheet.Bench.formula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Bench;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LeversTest {
  private static final Yield SIX =
      new Yield(Optional.of(6), OptionalDouble.empty(), OptionalDouble.of(4));

  private final Bench bench = new Bench();

  /** Dry 200 g, liquid 230 g, oil 20 g: liquid ratio 1.15. */
  private static Formula bun() {
    return formula(
        SIX, "lupin-flour: 150 g", "seeds: 46 g", "water: 180 g", "egg: 1 large", "oil: 20 g",
        "salt: 4 g");
  }

  private Levers ask(Question question) {
    return ask(bun(), question);
  }

  private Levers ask(Formula formula, Question question) {
    return Levers.of(bench.sheet(formula), question, Readings.FINE, ShownUnits.AS_WRITTEN);
  }

  private static Question want(String... wishes) {
    return Question.of(List.of(wishes).stream().map(Wish::read).toArray(Wish[]::new));
  }

  private static Answer single(Levers levers, String line) {
    return levers.answers().stream()
        .filter(answer -> answer.line().filter(line::equals).isPresent())
        .findFirst()
        .orElseThrow(() -> new AssertionError(
                    line + " in " + levers.answers().stream().map(Answer::line).toList()));
  }

  private static Answer combined(Levers levers) {
    return levers.answers().stream()
        .filter(answer -> answer.kind() == Answer.Kind.COMBINED)
        .findFirst()
        .orElseThrow();
  }

  private static double to(Answer answer, String line) {
    return answer.lines().stream()
        .filter(move -> move.line().equals(line))
        .findFirst()
        .orElseThrow()
        .toGrams();
  }

  /** By hand: liquids 1.1 × 200 = 220 g, so water 170; dry 230 ÷ 1.1 = 209.09 g. */
  @Test
  void aLiquidRatioFollowsFromEachLineThatCountsForIt() {
    Levers levers = ask(want("liquid ratio 1.1"));

    assertThat(to(single(levers, "water"), "water")).isCloseTo(170, within(1e-9));
    assertThat(to(single(levers, "egg"), "egg")).isCloseTo(40, within(1e-9));
    assertThat(to(single(levers, "lupin-flour"), "lupin-flour"))
        .isCloseTo(150 + 230 / 1.1 - 200, within(1e-9));
    assertThat(levers.answers())
        .filteredOn(answer -> answer.kind() == Answer.Kind.SINGLE)
        .extracting(answer -> answer.line().orElseThrow())
        .containsExactlyInAnyOrder("water", "egg", "lupin-flour", "seeds", "salt");
    assertThat(levers.answers()).last().extracting(Answer::kind).isEqualTo(Answer.Kind.COMBINED);
    assertThat(levers.answers()).extracting(Answer::number).containsExactly(1, 2, 3, 4, 5, 6);
  }

  @Test
  void theLeastDisturbingChangeComesFirst() {
    Levers levers = ask(want("liquid ratio 1.1"));

    assertThat(levers.answers().get(0).line()).contains("water");
    assertThat(levers.answers().get(4).line()).contains("salt");
    for (int i = 1; i < 5; i++) {
      assertThat(levers.answers().get(i).disturbance())
          .isGreaterThanOrEqualTo(levers.answers().get(i - 1).disturbance());
    }
  }

  /**
   * By hand with multipliers: minimise the squares of relative changes u with 180u₁ + 50u₂ −
   * 1.1(150u₃ + 46u₄ + 4u₅) = 220 − 230; u = λa, λ = −10 ÷ |a|².
   */
  @Test
  void theCombinedChangeIsTheLeastSquareOfRelativeChanges() {
    double[] a = {180, 50, -165, -50.6, -4.4};
    double square = 0;
    for (double each : a) {
      square += each * each;
    }
    Answer answer = combined(ask(want("liquid ratio 1.1")));

    assertThat(to(answer, "water")).isCloseTo(180 * (1 - 10 * 180 / square), within(1e-7));
    assertThat(to(answer, "egg")).isCloseTo(50 * (1 - 10 * 50 / square), within(1e-7));
    assertThat(to(answer, "seeds")).isCloseTo(46 * (1 + 10 * 50.6 / square), within(1e-7));
    assertThat(answer.lines()).extracting(LineMove::line).doesNotContain("oil");
    assertThat(answer.after().liquidRatio().low()).isCloseTo(1.1, within(1e-9));
  }

  @Test
  void dryingByLessLiquidAndByMoreFlourAreToldApart() {
    Levers levers = ask(want("liquid ratio 1.1"));

    assertThat(LeverSentences.ways(levers, ShownUnits.AS_WRITTEN).orElseThrow())
        .isEqualTo(
            "Drying by less water takes 10 g from the batch and leaves net carbohydrate at 3.22 g a"
                + " piece; drying by more lupin flour adds 9.09 g to the batch and 0.145 g net"
                + " carbohydrate to a piece.");
  }

  @Test
  void wettingIsToldApartLikewise() {
    Levers levers = ask(want("dough moisture at least 54 %"));

    assertThat(LeverSentences.ways(levers, ShownUnits.AS_WRITTEN).orElseThrow())
        .startsWith("Wetting by more water adds ")
        .contains("; wetting by less ");
  }

  @Test
  void aWishThatSaysNothingOfWaterHasNoWaysToTellApart() {
    assertThat(
            LeverSentences.ways(ask(want("protein a piece 13 g")), ShownUnits.AS_WRITTEN))
        .isEmpty();
  }

  @Test
  void linesThatMustStayStay() {
    Levers levers = ask(want("liquid ratio 1.1").keeping("water", "lupin-flour"));

    for (Answer answer : levers.answers()) {
      assertThat(answer.lines())
          .extracting(LineMove::line)
          .doesNotContain("water", "lupin-flour");
      assertThat(answer.after().line("water").orElseThrow().line())
          .isEqualTo(bun().line("water").orElseThrow());
    }
  }

  @Test
  void limitsOnLinesHold() {
    Levers levers =
        ask(
            want("liquid ratio 1.0")
                .within(LineLimit.atLeast("water", 170), LineLimit.within("seeds", 46, 10)));

    assertThat(levers.answers())
        .noneMatch(answer -> answer.line().filter("water"::equals).isPresent());
    Answer answer = combined(levers);
    assertThat(to(answer, "water")).isGreaterThanOrEqualTo(170 - 1e-9);
    assertThat(to(answer, "seeds")).isBetween(46.0, 50.6 + 1e-9);
    Levers tight =
        ask(
            want("liquid ratio 1.0")
                .keeping("egg", "salt")
                .within(LineLimit.atLeast("water", 170), LineLimit.within("seeds", 46, 1)));
    assertThat(to(combined(tight), "seeds")).isCloseTo(46.46, within(1e-6));
  }

  @Test
  void aBatchThatMustStayTakesFromTheOthersWhatALineGains() {
    Levers levers = ask(want("liquid ratio 1.1").withBatchFixed(true));

    for (Answer answer : levers.answers()) {
      assertThat(answer.after().batchGrams().low()).isCloseTo(450, within(1e-7));
      assertThat(answer.after().liquidRatio().low()).isCloseTo(1.1, within(1e-9));
    }
    Answer water = single(levers, "water");
    double others = (450 - to(water, "water")) / 270;
    assertThat(to(water, "oil")).isCloseTo(20 * others, within(1e-9));
    assertThat(to(water, "salt")).isCloseTo(4 * others, within(1e-9));
  }

  /** By hand: 6 × 60 g ÷ 0.96 = 375 g of batch. */
  @Test
  void doughAPieceMovesTheBatchWhenThePiecesStay() {
    Levers levers = ask(want("dough a piece 60 g"));

    assertThat(combined(levers).after().batchGrams().low()).isCloseTo(375, within(1e-7));
    assertThat(combined(levers).yield()).isEmpty();
    assertThat(single(levers, "water").after().doughPerPieceGrams().low())
        .isCloseTo(60, within(1e-9));
    assertThat(to(single(levers, "water"), "water")).isCloseTo(105, within(1e-9));
  }

  @Test
  void doughAPieceMovesNoLineWhenThePiecesFollow() {
    Levers levers = ask(want("dough a piece 60 g").withPiecesFixed(false));

    assertThat(levers.answers()).hasSize(1);
    Answer answer = levers.answers().get(0);
    assertThat(answer.kind()).isEqualTo(Answer.Kind.DIVISION);
    assertThat(answer.lines()).isEmpty();
    assertThat(answer.yield().orElseThrow().doughPerPieceGrams()).hasValue(60);
    assertThat(answer.after().pieces().low()).isCloseTo(450 * 0.96 / 60, within(1e-9));
  }

  @Test
  void aNumberOfPiecesIsGrantedByTheDivisionAlone() {
    Answer answer = ask(want("pieces 8")).answers().get(0);

    assertThat(answer.kind()).isEqualTo(Answer.Kind.DIVISION);
    assertThat(answer.yield().orElseThrow().pieces()).contains(8);
    assertThat(answer.yield().orElseThrow().handlingLossPercent()).hasValue(4);
    assertThat(answer.after().doughPerPieceGrams().low()).isCloseTo(54, within(1e-9));
  }

  @Test
  void piecesAndDoughAPieceTogetherScaleTheBatch() {
    for (boolean fixed : List.of(true, false)) {
      Levers levers = ask(want("pieces 8", "dough a piece 72 g").withPiecesFixed(fixed));

      Answer answer = combined(levers);
      assertThat(answer.after().pieces().low()).isCloseTo(8, within(1e-7));
      assertThat(answer.after().doughPerPieceGrams().low()).isCloseTo(72, within(1e-7));
      assertThat(answer.after().batchGrams().low()).isCloseTo(600, within(1e-6));
    }
  }

  @Test
  void freePiecesKeepTheirDoughAndFollowInNumber() {
    Levers levers = ask(want("protein a piece at least 13 g").withPiecesFixed(false));

    for (Answer answer : levers.answers()) {
      assertThat(answer.after().doughPerPieceGrams().low()).isCloseTo(72, within(1e-7));
      assertThat(answer.after().figure(Figure.PROTEIN, Basis.PIECE).low())
          .isGreaterThanOrEqualTo(13 - 1e-7);
    }
    assertThat(single(levers, "water").lines().get(0).toGrams()).isLessThan(180);
  }

  @Test
  void severalWishesAreGrantedTogether() {
    Levers levers =
        ask(
            want(
                "liquid ratio 1.1", "protein a piece at least 13 g",
                "net carbohydrate a piece at most 2.9 g"));

    assertThat(levers.answers()).hasSize(1);
    Answer answer = combined(levers);
    assertThat(levers.question().wishes()).allMatch(wish -> wish.isMet(answer.after()));
  }

  @Test
  void whatIsGrantedAlreadyMovesNothing() {
    Levers levers = ask(want("liquid ratio at most 1.2"));

    assertThat(levers.granted()).isTrue();
    assertThat(levers.answers()).isEmpty();
    assertThat(levers.contradiction()).isEmpty();
  }

  @Test
  void aDivisionThatNobodyAskedForIsNoChange() {
    Levers levers = ask(want("protein a piece at least 12 g").withPiecesFixed(false));

    assertThat(levers.granted()).isTrue();
    assertThat(levers.answers()).isEmpty();
  }

  @Test
  void aLimitThatIsBrokenNowMovesTheLineEvenWhenTheWishIsGranted() {
    Levers levers =
        ask(want("liquid ratio at most 1.2").within(LineLimit.atMost("oil", 15)));

    assertThat(levers.granted()).isFalse();
    assertThat(levers.answers()).hasSize(1);
    assertThat(to(levers.answers().get(0), "oil")).isCloseTo(15, within(1e-9));
  }

  @Test
  void anImpossibleWishIsAnsweredWithWhatContradictsAndTheNearestValue() {
    Levers levers =
        ask(
            want("liquid ratio 0.8")
                .keeping("lupin-flour", "egg", "salt", "oil")
                .within(LineLimit.atLeast("water", 150), LineLimit.atMost("seeds", 50)));

    assertThat(levers.answers()).isEmpty();
    Contradiction contradiction = levers.contradiction().orElseThrow();
    assertThat(contradiction.because())
        .containsExactly(
            "water at least 150 g",
            "seeds at most 50 g",
            "lupin flour stays at 150 g",
            "egg stays at 50 g",
            "salt stays at 4 g",
            "liquid ratio 0.8");
    Contradiction.Nearest nearest = contradiction.nearest().get(0);
    assertThat(nearest.alone().orElseThrow()).isCloseTo(200 / 204., within(1e-9));
    assertThat(nearest.together().orElseThrow()).isCloseTo(200 / 204., within(1e-9));
  }

  @Test
  void wishesThatAreReachableOnlyOneByOneSayHowNearTogether() {
    Levers levers =
        ask(
            want("protein a piece at least 14 g", "fat a piece at most 7 g")
                .keeping("lupin-flour", "water", "egg", "oil", "salt"));

    Contradiction contradiction = levers.contradiction().orElseThrow();
    assertThat(contradiction.because())
        .contains("at least 14 g protein a piece", "at most 7 g fat a piece")
        .doesNotContain("water stays at 180 g", "salt stays at 4 g");
    Contradiction.Nearest protein = contradiction.nearest().get(0);
    assertThat(protein.alone().orElseThrow()).isCloseTo(14, within(1e-6));
    assertThat(protein.together().orElseThrow()).isLessThan(12);
  }

  @Test
  void whatNoFoodHoldsCannotBeReached() {
    Contradiction contradiction =
        ask(want("protein per 100 g dough at least 45 g")).contradiction().orElseThrow();

    assertThat(contradiction.because()).contains("at least 45 g protein per 100 g dough");
    assertThat(contradiction.nearest().get(0).alone().orElseThrow()).isBetween(30.0, 40.0);
  }

  @Test
  void bothBoundsOfAWishCount() {
    Levers levers = ask(want("dough moisture 50 to 51 %"));

    assertThat(combined(levers).after().doughMoisturePercent().low())
        .isCloseTo(51, within(1e-7));
  }

  @Test
  void bakedFiguresRestOnTheLossThatWasWeighed() {
    Worksheet sheet =
        bench.sheet(bun(), Policy.USUAL, new BakedYield(Quantity.known(0.85), 2));
    Levers levers =
        Levers.of(
            sheet,
            want("water per 100 g baked at most 35 g", "baked a piece 60 g"),
            Readings.FINE,
            ShownUnits.AS_WRITTEN);

    Answer answer = combined(levers);
    assertThat(answer.after().figure(Figure.WATER, Basis.BAKED_100_G).low())
        .isCloseTo(35, within(1e-6));
    assertThat(answer.after().bakedPerPieceGrams().low()).isCloseTo(60, within(1e-6));
    assertThat(levers.remarks()).anyMatch(remark -> remark.contains("another dough loses"));
  }

  @Test
  void withoutAWeighedPieceBakedFiguresAreRefused() {
    assertThatThrownBy(() -> ask(want("baked a piece 60 g")))
        .hasMessageStartingWith("No piece of this revision was weighed before and after the oven");
  }

  @Test
  void withoutAYieldWhatIsStatedForAPieceIsRefused() {
    Formula formula = bun().withYield(Yield.UNSTATED);

    assertThatThrownBy(() -> ask(formula, want("protein a piece 9 g")))
        .hasMessageStartingWith("The formula does not say into how many pieces");
    assertThat(ask(formula, want("liquid ratio 1.1")).answers()).isNotEmpty();
    assertThat(ask(formula, want("protein per 100 g dough 16 g")).answers()).isNotEmpty();
  }

  @Test
  void anUnknownThatCannotBeBoundedIsRefusedWithTheFood() {
    bench.forget("seeds", Nutrient.SUGARS);

    assertThatThrownBy(() -> ask(want("sugars a piece at most 2 g")))
        .hasMessage(
            "For seeds the figure for sugars is unknown, so nobody can say that this stays below.\n"
                + "Ask for at least, or state the figure of those foods.");
  }

  @Test
  void anUnknownThatHasBoundsIsGrantedWhateverItIs() {
    bench.forget("seeds", Nutrient.FIBRE);

    Levers levers = ask(want("net carbohydrate a piece at most 3 g"));
    assertThat(levers.remarks()).anyMatch(remark -> remark.startsWith("For seeds the figure for"));
    for (Answer answer : levers.answers()) {
      assertThat(answer.after().figure(Figure.NET_CARBOHYDRATE, Basis.PIECE).high())
          .isLessThanOrEqualTo(3 + 1e-6);
    }
    assertThatThrownBy(() -> ask(want("net carbohydrate a piece 3 g")))
        .hasMessageContaining("so this cannot be brought to one value");
    Levers fibre = ask(want("fibre a piece at least 8 g"));
    assertThat(fibre.answers())
        .isNotEmpty()
        .allMatch(
            answer ->
                answer.after().figure(Figure.FIBRE, Basis.PIECE).low() >= 8 - 1e-6);
  }

  @Test
  void aMassThatIsNotKnownIsNamed() {
    Formula formula =
        formula(SIX, "lupin-flour: 150 g", "water: 180 g", "seeds: 1 handful", "oil: 1 dash");

    assertThatThrownBy(() -> ask(formula, want("protein a piece 9 g")))
        .hasMessageStartingWith("The mass of seeds, oil is not known");
    assertThatThrownBy(() -> ask(formula, want("liquid ratio 1")))
        .hasMessageStartingWith("The mass of seeds is not known");
    Formula onlyOil = formula(SIX, "lupin-flour: 150 g", "water: 180 g", "oil: 1 dash");
    assertThat(to(single(ask(onlyOil, want("liquid ratio 1")), "water"), "water"))
        .isCloseTo(150, within(1e-9));
  }

  @Test
  void aLineOfNothingStaysOut() {
    Formula formula =
        formula(SIX, "lupin-flour: 150 g", "water: 180 g", "egg: 0 large", "seeds: 20 g");

    Levers levers = ask(formula, want("liquid ratio 1.3").within(LineLimit.atMost("egg", 20)));
    assertThat(levers.answers()).isNotEmpty();
    for (Answer answer : levers.answers()) {
      assertThat(answer.lines()).extracting(LineMove::line).doesNotContain("egg");
    }
    assertThat(levers.remarks()).contains(
        "There is no egg in the dough that could move: its limit has no effect.");
  }

  @Test
  void unknownLinesAndWholePiecesAreChecked() {
    assertThatThrownBy(() -> ask(want("liquid ratio 1").keeping("caraway")))
        .hasMessageStartingWith("There is no line \"caraway\"")
        .hasMessageContaining("lupin-flour, seeds, water");
    assertThatThrownBy(() -> ask(want("pieces 7.5")))
        .hasMessageStartingWith("A batch gives a whole number of pieces");
    assertThatThrownBy(() -> ask(formula(SIX), want("liquid ratio 1")))
        .hasMessageStartingWith("The formula has no lines yet");
    assertThatThrownBy(() -> ask(formula(SIX, "water: 5 g"), want("liquid ratio 1")))
        .hasMessageStartingWith("No line of the formula counts as dry");
    assertThatThrownBy(() -> new LineLimit("water", 5, 4)).hasMessageContaining("contradict");
    assertThatThrownBy(() -> Question.of()).hasMessageStartingWith("Nothing was asked for.");
  }

  @Test
  void massesAreWeighedOnTheSideOfTheWish() {
    Levers levers =
        Levers.of(
            bench.sheet(bun()),
            want("net carbohydrate a piece at most 2.5 g"),
            5,
            ShownUnits.AS_WRITTEN);

    for (Answer answer : levers.answers()) {
      assertThat(answer.weighed().figure(Figure.NET_CARBOHYDRATE, Basis.PIECE).low())
          .isLessThanOrEqualTo(2.5 + 1e-6);
      for (LineMove move : answer.lines()) {
        assertThat(move.weigh().grams().orElseThrow().doubleValue() % 5).isZero();
      }
    }
  }

  @Test
  void whatElseMovesIsTold() {
    Answer answer = single(ask(want("liquid ratio 1.1")), "water");

    assertThat(answer.moves())
        .extracting(FigureMove::name)
        .containsExactly(
            "water a piece", "liquid ratio", "dough moisture", "batch mass", "dough a piece");
    FigureMove batch = answer.moves().get(3);
    assertThat(batch.change(ShownUnits.AS_WRITTEN)).isEqualTo("450 → 440 g");
    assertThat(batch.difference(ShownUnits.AS_WRITTEN)).isEqualTo("−10 g");
  }

  @Test
  void linesOfTheSameFoodAreToldApart() {
    Formula twice =
        formula(SIX, "lupin-flour: 150 g", "water: 100 g", "water: 80 g", "seeds: 40 g");

    assertThat(LineNames.of(bench.sheet(twice)))
        .containsExactly("lupin flour", "water", "water-2", "seeds");
    Levers levers = ask(twice, want("liquid ratio 0.9"));
    assertThat(levers.answers())
        .filteredOn(answer -> answer.kind() == Answer.Kind.SINGLE)
        .extracting(answer -> answer.line().orElseThrow())
        .contains("water", "water-2");
  }

  @Test
  void theSummarySaysWhatToDoInASentence() {
    assertThat(LeverSummary.of(ask(want("liquid ratio 1.1")), ShownUnits.AS_WRITTEN))
        .isEqualTo(
            "5 changes of one line do it; water 180 → 170 g (−5.56 %) disturbs the rest least.");
    assertThat(LeverSummary.of(ask(want("pieces 8")), ShownUnits.AS_WRITTEN))
        .isEqualTo("No line has to move: divide into 8 pieces.");
    assertThat(
            LeverSummary.of(
                ask(want("liquid ratio 1.1", "protein a piece 13.5 g")), ShownUnits.AS_WRITTEN))
        .isEqualTo("No single line does it; several together do.");
    assertThat(
            LeverSummary.of(
                ask(want("liquid ratio 1.1").keeping("water", "egg", "seeds", "salt")),
                ShownUnits.AS_WRITTEN))
        .startsWith("One change of one line does it: lupin flour 150 → 159 g");
  }
}
