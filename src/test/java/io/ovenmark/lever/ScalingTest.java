package io.ovenmark.lever;

import static io.ovenmark.worksheet.Bench.formula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Bench;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScalingTest {
  private static final Yield SIX =
      new Yield(Optional.of(6), OptionalDouble.empty(), OptionalDouble.of(4));
  private static final ScaleQuestion ASK = ScaleQuestion.NOTHING;

  private final Bench bench = new Bench();

  /** 450 g, 6 pieces of 72 g. */
  private static Formula bun() {
    return formula(
        SIX, "lupin-flour: 150 g", "seeds: 46 g", "water: 180 g", "egg: 1 large", "oil: 20 g",
        "salt: 4 g");
  }

  private Scaling scale(ScaleQuestion question) {
    return scale(bun(), question);
  }

  private Scaling scale(Formula formula, ScaleQuestion question) {
    return Scaling.of(bench.sheet(formula), question, ShownUnits.AS_WRITTEN);
  }

  private static ScaledLine line(Scaling scaling, String id) {
    return scaling.lines().stream()
        .filter(line -> line.line().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void morePiecesKeepTheirDough() {
    Scaling scaling = scale(ASK.withPieces(9));

    assertThat(scaling.factor()).isCloseTo(1.5, within(1e-12));
    assertThat(scaling.exact().doughPerPieceGrams().low()).isCloseTo(72, within(1e-9));
    assertThat(scaling.exact().batchGrams().low()).isCloseTo(675, within(1e-9));
    assertThat(line(scaling, "water").amount()).hasToString("270 g");
    assertThat(scaling.formula().yield().pieces()).contains(9);
    assertThat(scaling.remarks()).isEmpty();
  }

  @Test
  void aLargerPieceKeepsTheNumberAndWarnsOfOvenAndLeavening() {
    Scaling scaling = scale(ASK.withDoughPerPiece(108));

    assertThat(scaling.factor()).isCloseTo(1.5, within(1e-12));
    assertThat(scaling.pieces()).hasValue(6);
    assertThat(scaling.exact().doughPerPieceGrams().low()).isCloseTo(108, within(1e-9));
    assertThat(scaling.remarks())
        .anyMatch(remark -> remark.startsWith("Oven time and temperature do not scale"))
        .anyMatch(remark -> remark.startsWith("Leavening, salt and spices"))
        .allMatch(remark -> remark.contains("common practice, no source"));
  }

  @Test
  void leaveningIsNamed() {
    Formula formula =
        bun().withLines(
            List.of(
                Line.of("flour", "lupin-flour", Amount.parse("100 g")),
                Line.of("lift", "baking-powder", Amount.parse("6 g"))));
    bench.add(BuiltInPantry.find("baking-powder").orElseThrow());

    assertThat(scale(formula, ASK.withPieces(12)).remarks())
        .anyMatch(remark -> remark.startsWith("Leavening (" )
            && remark.contains("baking powder"));
  }

  /** By hand: 8 × 95 g ÷ 0.98 = 775.5 g. */
  @Test
  void piecesDoughAndLossTogether() {
    Scaling scaling = scale(ASK.withPieces(8).withDoughPerPiece(95).withHandlingLoss(2));

    assertThat(scaling.exact().batchGrams().low()).isCloseTo(8 * 95 / 0.98, within(1e-9));
    assertThat(scaling.exact().doughPerPieceGrams().low()).isCloseTo(95, within(1e-9));
    assertThat(scaling.formula().yield().handlingLossPercent()).hasValue(2);
  }

  @Test
  void aBakedMassNeedsTheLossThatWasWeighedOrGiven() {
    assertThatThrownBy(() -> scale(ASK.withBakedPerPiece(80, OptionalDouble.empty())))
        .hasMessageStartingWith("The loss on baking is not known");
    Scaling given = scale(ASK.withBakedPerPiece(80, OptionalDouble.of(20)));
    assertThat(given.exact().doughPerPieceGrams().low()).isCloseTo(100, within(1e-9));
    assertThat(given.bakingLossPercent()).hasValue(20);
    Worksheet weighed =
        bench.sheet(bun(), Policy.USUAL, new BakedYield(Quantity.known(0.8), 2));
    Scaling measured =
        Scaling.of(
            weighed,
            ASK.withBakedPerPiece(80, OptionalDouble.empty()),
            ShownUnits.AS_WRITTEN);
    assertThat(measured.exact().bakedPerPieceGrams().low()).isCloseTo(80, within(1e-9));
  }

  /** By hand: 100 g of seeds of 46 g allow 2.17 times, 240 g of water 1.33 times: 8 pieces. */
  @Test
  void theScarcestIngredientDecidesAndPiecesComeOutWhole() {
    Scaling scaling = scale(ASK.withHave(Map.of("seeds", 100.0, "water", 250.0)));

    assertThat(scaling.pieces()).hasValue(8);
    assertThat(scaling.exact().doughPerPieceGrams().low()).isCloseTo(72, within(1e-9));
    assertThat(scaling.atHand())
        .filteredOn(AtHand::scarcest)
        .extracting(AtHand::food)
        .containsExactly("water");
    for (AtHand hand : scaling.atHand()) {
      assertThat(hand.usedGrams()).isLessThanOrEqualTo(hand.haveGrams());
    }
  }

  @Test
  void whatIsAtHandCountsForAllLinesOfAFood() {
    Formula formula =
        formula(SIX, "lupin-flour: 150 g", "seeds: 30 g", "water: 100 g", "seeds: 20 g");

    Scaling scaling = scale(formula, ASK.withHave(Map.of("seeds-2", 100.0)));
    assertThat(scaling.factor()).isCloseTo(2, within(1e-12));
    assertThat(scaling.pieces()).hasValue(12);
  }

  @Test
  void whatIsAtHandForLessThanAPieceIsRefused() {
    assertThatThrownBy(() -> scale(ASK.withHave(Map.of("seeds", 4.6))))
        .hasMessageStartingWith("What is at hand makes 0.6 of a piece");
    assertThatThrownBy(() -> scale(ASK.withHave(Map.of("caraway", 5.0))))
        .hasMessageStartingWith("The formula has no line or food \"caraway\"");
  }

  @Test
  void withoutAYieldTheBatchFollowsFromWhatIsAtHand() {
    Formula formula = bun().withYield(Yield.UNSTATED);

    Scaling scaling = scale(formula, ASK.withHave(Map.of("seeds", 23.0)));
    assertThat(scaling.factor()).isCloseTo(0.5, within(1e-12));
    assertThat(scaling.pieces()).isEmpty();
    assertThatThrownBy(() -> scale(formula, ASK.withPieces(5)))
        .hasMessageStartingWith("The formula does not say how large a piece is.");
    Scaling both = scale(formula, ASK.withPieces(5).withDoughPerPiece(90));
    assertThat(both.exact().batchGrams().low()).isCloseTo(450, within(1e-9));
    assertThat(both.exact().doughPerPieceGrams().low()).isCloseTo(90, within(1e-9));
  }

  @Test
  void aDoughPieceThatIsStatedStaysStated() {
    Formula formula =
        bun().withYield(
            new Yield(Optional.empty(), OptionalDouble.of(60), OptionalDouble.of(4)));

    Scaling scaling = scale(formula, ASK.withPieces(10));
    assertThat(scaling.formula().yield().doughPerPieceGrams()).hasValue(60);
    assertThat(scaling.exact().pieces().low()).isCloseTo(10, within(1e-9));
  }

  @Test
  void aTinOfWhichNobodyKnowsTheDoughIsRefused() {
    Tin tin = Tin.read("loaf:25x11x7cm");
    assertThatThrownBy(
            () ->
                scale(
                    ASK.withTin(
                        tin, Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty())))
        .hasMessageStartingWith("What this dough weighs in a tin is not known")
        .hasMessageContaining("density of the dough");
  }

  /** By hand: 1925 ml × 0.6 × 1.1 g/ml = 1270.5 g. */
  @Test
  void aTinFollowsFromDensityAndFill() {
    Scaling scaling =
        scale(
            ASK.withTin(
                Tin.read("loaf:25x11x7cm"), Optional.empty(), OptionalDouble.of(1.1),
                OptionalDouble.of(60)));

    assertThat(scaling.pieces()).hasValue(1);
    assertThat(scaling.exact().doughPerPieceGrams().low()).isCloseTo(1270.5, within(1e-9));
    assertThat(scaling.tin().orElseThrow().because()).contains("60 % filled", "1.1 g/ml");
    assertThat(scaling.remarks()).noneMatch(remark -> remark.contains("as is common practice"));
    Scaling usual =
        scale(
            ASK.withTin(
                Tin.read("loaf:25x11x7cm"), Optional.empty(), OptionalDouble.of(1.1),
                OptionalDouble.empty()));
    assertThat(usual.remarks()).anyMatch(remark -> remark.contains("60 %"));
    assertThat(usual.factor()).isCloseTo(scaling.factor(), within(1e-12));
  }

  /** A tin twice as deep takes twice the dough. */
  @Test
  void aTinFollowsFromTheOneThatAPieceFillsNow() {
    ScaleQuestion question =
        ASK.withTin(
            Tin.read("round:20x10cm"),
            Optional.of(Tin.read("round:20x5cm")),
            OptionalDouble.empty(),
            OptionalDouble.empty());

    assertThat(scale(question).factor()).isCloseTo(2, within(1e-12));
    assertThat(scale(question).pieces()).hasValue(6);
    assertThat(scale(question.withPieces(3)).factor()).isCloseTo(1, within(1e-12));
  }

  @Test
  void theVesselOfTheFormulaMayBeTheTin() {
    Formula formula =
        bun().withBake(
            List.of(
                BakeSetting.named("bake")
                    .withVessel(Optional.of("round tin 20 x 5 cm, greased"))));

    Scaling scaling =
        scale(
            formula,
            ASK.withTin(
                Tin.read("square:20x5cm"), Optional.empty(), OptionalDouble.empty(),
                OptionalDouble.empty()));
    assertThat(scaling.factor()).isCloseTo(4 / Math.PI, within(1e-12));
    assertThat(scaling.tin().orElseThrow().because())
        .isEqualTo("filled as the round tin 20 cm × 5 cm is with 72 g now");
  }

  @Test
  void contradictingQuestionsAreRefused() {
    assertThatThrownBy(
            () -> ASK.withDoughPerPiece(90).withBakedPerPiece(80, OptionalDouble.empty()))
        .hasMessageStartingWith("The size of a piece is given twice.");
    assertThatThrownBy(() -> ASK.withPieces(5).withHave(Map.of("seeds", 5.0)))
        .hasMessageStartingWith("Both the number of pieces and what is at hand");
    assertThatThrownBy(() -> ASK.withPieces(5.5)).hasMessageContaining("not whole");
    assertThatThrownBy(() -> ASK.withPieces(0)).hasMessageContaining("from 1 to 100000");
    assertThatThrownBy(() -> ASK.withDoughPerPiece(-1)).hasMessageContaining("not possible");
    assertThatThrownBy(() -> scale(ASK)).hasMessageStartingWith("Nothing was asked for.");
  }

  @ParameterizedTest
  @CsvSource({
    "150 g, 1.333333, 0.1, 200 g, weighed",
    "150 g, 1.3337, 0.1, 200.1 g, weighed",
    "150 g, 1.3337, 1, 200 g, weighed",
    "150 g, 1.34, 5, 200 g, weighed",
    "3 g, 1, 1, 3 g, weighed",
    "3 g, 0.8, 5, 3/8 tsp, spoons",
    "1 tsp, 1.34, 0.1, 1 3/8 tsp, spoons",
    "1 tsp, 3, 0.1, 1 tbsp, spoons",
    "1 tbsp, 1.5, 0.1, 1 1/2 tbsp, spoons",
    "2 tsp, 4.5, 0.1, 3 tbsp, spoons",
    "1 tbsp, 6, 0.1, 108 g, weighed",
    "1/4 tsp, 0.1, 0.1, 0.2 g, weighed",
    "150 g, 1.3337, 0, 200.055 g, as written",
  })
  void amountsAreMeasuredAsWrittenOrWeighed(
      String amount, double factor, double reading, String measured, String how) {
    bench.add(
        Bench.withHousehold(Bench.food("salt", FoodKind.DRY, 0, 0, 0, 0, 0, 0), "tsp", 6));
    Line line = Line.of("salt", "salt", Amount.parse(amount));
    Quantity now = bench.find("salt").orElseThrow().resolve(line.amount()).grams();

    Measured found = Measured.of(line, bench.find("salt"), now, factor, reading);

    assertThat(found.amount()).hasToString(measured);
    assertThat(found.how().key()).isEqualTo(how);
    assertThat(found.grams().low())
        .isCloseTo(
            bench.find("salt").orElseThrow().resolve(found.amount()).grams().low(), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "1 large, 2, 2 large, counted", "1 large, 2.05, 2 large, counted",
    "1 large, 1.5, 75 g, weighed", "3 large, 0.33, 1 large, counted",
    "1 handful, 1.5, 1.5 handful, as written"
  })
  void whatIsCountedStaysCountedWhenItComesOutNearAWholeNumber(
      String amount, double factor, String measured, String how) {
    Line line = Line.of("egg", "egg", Amount.parse(amount));
    Quantity now = bench.find("egg").orElseThrow().resolve(line.amount()).grams();

    Measured found = Measured.of(line, bench.find("egg"), now, factor, 0.1);

    assertThat(found.amount()).hasToString(measured);
    assertThat(found.how().key()).isEqualTo(how);
  }

  @Test
  void nothingStaysNothingAndSomethingNeverBecomesNothing() {
    Formula formula = formula(SIX, "lupin-flour: 150 g", "salt: 0.4 g", "egg: 0 large");

    Scaling scaling = scale(formula, ASK.withPieces(3).withReading(5));
    assertThat(line(scaling, "salt").amount()).hasToString("5 g");
    assertThat(line(scaling, "salt").errorPercent().orElseThrow()).isCloseTo(2400, within(1e-9));
    assertThat(line(scaling, "egg").amount()).hasToString("0 large");
    assertThat(line(scaling, "egg").errorPercent()).isEmpty();
  }

  @Test
  void whatMeasuringMovesIsShown() {
    Scaling scaling = scale(ASK.withPieces(7).withReading(5));

    assertThat(scaling.rounding()).extracting(FigureMove::figure).contains(
        Figure.LIQUID_RATIO, Figure.NET_CARBOHYDRATE);
    for (FigureMove move : scaling.rounding()) {
      assertThat(move.from()).isEqualTo(scaling.exact().figure(move.figure(), move.basis()));
      assertThat(move.to()).isEqualTo(scaling.measured().figure(move.figure(), move.basis()));
    }
    assertThat(scale(ASK.withPieces(12)).rounding()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {2, 5, 12, 30, 1000})
  void scalingAndScalingBackGivesTheSameMasses(double pieces) {
    Worksheet there = scale(ASK.withPieces(pieces)).exact();
    Scaling back =
        Scaling.of(
            there, ASK.withPieces(6).withReading(0), ShownUnits.AS_WRITTEN);

    Worksheet before = bench.sheet(bun());
    for (int i = 0; i < before.lines().size(); i++) {
      assertThat(back.exact().lines().get(i).grams().low())
          .isCloseTo(before.lines().get(i).grams().low(), within(1e-9));
    }
    assertThat(back.exact().figure(Figure.PROTEIN, Basis.PIECE).low())
        .isCloseTo(before.figure(Figure.PROTEIN, Basis.PIECE).low(), within(1e-9));
    assertThat(back.exact().liquidRatio().low())
        .isCloseTo(before.liquidRatio().low(), within(1e-9));
  }

  @Test
  void aMassThatIsNotKnownScalesInItsMeasure() {
    Formula formula = formula(SIX, "lupin-flour: 150 g", "seeds: 2 handful");

    Scaling scaling = scale(formula, ASK.withPieces(9));
    assertThat(line(scaling, "seeds").amount()).hasToString("3 handful");
    assertThat(line(scaling, "seeds").exact().isKnown()).isFalse();
    assertThatThrownBy(() -> scale(formula, ASK.withDoughPerPiece(90)))
        .hasMessageContaining("since the mass of seeds is not");
  }
}
