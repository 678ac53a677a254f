package io.ovenmark.compare;

import static io.ovenmark.compare.Bench.FOODS;
import static io.ovenmark.compare.Bench.compare;
import static io.ovenmark.compare.Bench.formula;
import static io.ovenmark.compare.ComparisonAssert.assertThatComparison;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.NetCarbohydrate;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Contributions worked out by hand. */
class AttributionTest {
  @Test
  void aRatioIsSplitIntoWhatItsTwoSidesDid() {
    // 100/100 → 80/125: ΔL · mean(1/D) = −20 · (0.01 + 0.008)/2; Δ(1/D) · mean(L) = −0.002 · 90
    assertThatComparison(
            compare(
                formula("water 100 g", "lupin-flour 100 g"),
                formula("water 80 g", "lupin-flour 125 g")))
        .hasCauses(
            Figure.LIQUID_RATIO, Basis.BATCH, "water −20 g: −0.18", "lupin flour +25 g: −0.18");
  }

  @Test
  void linesAndPiecesShareTheDifferenceOfAPiece() {
    // protein of the batch 36.17 → 54.255, pieces 6 → 8:
    // lines 18.085 · mean(1/6, 1/8) = 2.6374; pieces (1/8 − 1/6) · 45.2125 = −1.8839
    Formula from = formula("lupin-flour 100 g");
    Formula to = formula("lupin-flour 150 g").withYield(Yield.ofPieces(8));
    assertThatComparison(compare(from, to))
        .hasCauses(Figure.PROTEIN, Basis.PIECE, "lupin flour +50 g: +2.64", "pieces 6 → 8: −1.88")
        .hasCauses(Figure.PROTEIN, Basis.BATCH, "lupin flour +50 g: +18.1")
        .hasCauses(Figure.PROTEIN, Basis.DOUGH_100_G)
        .hasCauses(Figure.PIECES, Basis.BATCH, "pieces 6 → 8: +2");
  }

  @Test
  void anUnchangedLineMovesAFigurePerHundredGramsOnlyThroughOthers() {
    assertThatComparison(
            compare(
                formula("lupin-flour 100 g", "water 100 g"),
                formula("lupin-flour 100 g", "water 150 g")))
        .hasCauses(Figure.PROTEIN, Basis.DOUGH_100_G, "water +50 g: −3.62")
        .hasCauses(Figure.PROTEIN, Basis.BATCH);
  }

  @Test
  void aReplacedFoodAndItsMassAreTwoCauses() {
    // fat 30 · 0.8111 → 20 · 1: mass −10 · mean(0.8111, 1), food 0.1889 · mean(30, 20)
    assertThatComparison(compare(formula("fat=butter 30 g"), formula("fat=olive-oil 20 g")))
        .hasCauses(
            Figure.FAT,
            Basis.BATCH,
            "butter 30 g → olive oil 20 g: −9.06",
            "olive oil instead of butter: +4.72");
  }

  @Test
  void newDataOfAFoodIsACauseOfItsOwn() {
    Formula formula = formula("lupin-flour 100 g");
    var food = Bench.withFigure(FOODS.get("lupin-flour"), Nutrient.PROTEIN, 40);
    Side from = Side.of("bun@5", Bench.sheet(formula));
    Side to = Side.of("bun@7", Bench.sheet(formula, Bench.with(food), Policy.USUAL));
    assertThatComparison(Comparison.between(from, to))
        .hasCauses(Figure.PROTEIN, Basis.BATCH, "new data of lupin flour: +3.83")
        .hasCauses(Figure.FAT, Basis.BATCH);
  }

  @Test
  void anotherRuleIsACauseOfItsOwn() {
    Formula formula = formula("lupin-flour 100 g");
    Policy half = new Policy(EnergyRule.US_FACTORS, new NetCarbohydrate(0.5, 1, 1));
    Side from = Side.of("bun@5", Bench.sheet(formula));
    Side to = Side.of("bun@7", Bench.sheet(formula, FOODS, half));
    // US factors: 36.17 · 4 + 9.74 · 9 + (40.37 − 18.9) · 4 = 318.22; the food states 371
    assertThatComparison(Comparison.between(from, to))
        .hasCauses(
            Figure.NET_CARBOHYDRATE,
            Basis.BATCH,
            "net carbohydrate as carbohydrate − 50 % of fibre − polyols − allulose: +9.45")
        .hasCauses(
            Figure.ENERGY,
            Basis.BATCH,
            "energy by US factors instead of the foods' own figures: −52.8");
  }

  @Test
  void handlingLossIsACauseOfItsOwn() {
    Formula from = formula("lupin-flour 100 g");
    Formula to =
        from.withYield(new Yield(Optional.of(6), OptionalDouble.empty(), OptionalDouble.of(3)));
    assertThatComparison(compare(from, to))
        .hasCauses(Figure.DOUGH_PER_PIECE, Basis.BATCH, "handling loss 0 → 3 %: −0.5")
        .hasCauses(Figure.BATCH_MASS, Basis.BATCH);
  }

  @Test
  void withAStatedDoughMassThePieceFollowsTheShareOfThePieceInTheBatch() {
    Yield ninety = new Yield(Optional.empty(), OptionalDouble.of(90), OptionalDouble.empty());
    Yield eighty = new Yield(Optional.empty(), OptionalDouble.of(80), OptionalDouble.empty());
    Formula from = formula("lupin-flour 100 g", "water 100 g").withYield(ninety);
    Formula to = formula("lupin-flour 100 g", "water 100 g").withYield(eighty);
    assertThatComparison(compare(from, to))
        .hasCauses(Figure.PROTEIN, Basis.PIECE, "dough a piece 90 → 80 g: −1.81")
        .hasCauses(Figure.PIECES, Basis.BATCH, "dough a piece 90 → 80 g: +0.278");
  }

  @Test
  void fromPiecesToADoughMassIsOneCause() {
    Yield eighty = new Yield(Optional.empty(), OptionalDouble.of(80), OptionalDouble.empty());
    Formula from = formula("lupin-flour 100 g", "water 200 g");
    assertThatComparison(compare(from, from.withYield(eighty)))
        .hasCauses(Figure.DOUGH_PER_PIECE, Basis.BATCH, "6 pieces → 80 g dough a piece: +30")
        .hasCauses(Figure.PROTEIN, Basis.PIECE, "6 pieces → 80 g dough a piece: +3.62");
  }

  @Test
  void theLossInTheOvenIsACauseOfItsOwn() {
    Formula formula = formula("lupin-flour 100 g", "water 100 g");
    assertThatComparison(Comparison.between(baked(formula, 0.9), baked(formula, 0.8)))
        .hasCauses(Figure.PROTEIN, Basis.BAKED_100_G, "loss in the oven 10 → 20 %: +2.51")
        .hasCauses(Figure.BAKED_PER_PIECE, Basis.BATCH, "loss in the oven 10 → 20 %: −3.33")
        .hasCauses(Figure.PROTEIN, Basis.DOUGH_100_G);
  }

  @Test
  void waterThatCannotFallBelowZeroIsSaidToBeCutOff() {
    Formula formula = formula("lupin-flour 100 g", "water 10 g");
    Comparison comparison = Comparison.between(baked(formula, 0.9), baked(formula, 0.7));
    assertThat(comparison.figure(Figure.WATER, Basis.BAKED_100_G).to()).isEqualTo(Quantity.ZERO);
    assertThatComparison(comparison)
        .hasCauses(
            Figure.WATER,
            Basis.BAKED_100_G,
            "loss in the oven 10 → 30 %: −25.8",
            "more was lost than the water it held: +16.3");
  }

  @Test
  void anUnknownSideHasNoCauses() {
    Comparison comparison =
        compare(formula("water 100 g"), formula("water 100 g", "mystery-meal 10 g"));
    FigureComparison fibre = comparison.figure(Figure.FIBRE, Basis.BATCH);
    assertThat(fibre.to().isKnown()).isFalse();
    assertThat(fibre.contributions()).isEmpty();
    assertThatComparison(comparison)
        .hasCauses(Figure.PROTEIN, Basis.BATCH, "mystery meal +10 g: +3.62");
  }

  @Test
  void anUnknownThatIsTheSameOnBothSidesDiffersByNothing() {
    Comparison comparison =
        compare(
            formula("mystery-meal 10 g"),
            formula("mystery-meal 10 g").withYield(Yield.ofPieces(5)));
    assertThat(comparison.figure(Figure.FIBRE, Basis.BATCH).delta()).isEqualTo(Quantity.ZERO);
    assertThat(comparison.figure(Figure.FIBRE, Basis.PIECE).delta().isKnown()).isFalse();
  }

  @Test
  void aMassThatIsUnknownDoesNotSpoilWhatTheFoodHasNoneOf() {
    Comparison comparison =
        compare(formula("lupin-flour 10 g", "salt 1 cup"), formula("lupin-flour 20 g", "salt 1 g"));
    assertThatComparison(comparison)
        .hasCauses(Figure.PROTEIN, Basis.BATCH, "lupin flour +10 g: +3.62")
        .addsUp();
  }

  @Test
  void aCompositionThatIsKnownWhateverTheMassHasCausesToo() {
    assertThatComparison(compare(formula("a=sugar 1 cup"), formula("a=lupin-flour 1 cup")))
        .hasCauses(
            Figure.PROTEIN, Basis.DOUGH_100_G, "lupin flour instead of granulated sugar: +36.2")
        .hasCauses(Figure.PROTEIN, Basis.BATCH);
  }

  private static Side baked(Formula formula, double share) {
    BakedYield measured = new BakedYield(Quantity.known(share), 1);
    return Side.of(
        "bun@5",
        Worksheet.of(
            formula, slug -> Optional.ofNullable(foods().get(slug)), Policy.USUAL, measured));
  }

  private static Map<String, io.ovenmark.pantry.Food> foods() {
    return FOODS;
  }
}
