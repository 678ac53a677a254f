package io.ovenmark.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Nutrient;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is not known is carried along, bounded where that can be done, and never taken as zero. */
class WorksheetUnknownsTest {
  private static final double INFINITY = Double.POSITIVE_INFINITY;
  private final Bench bench = new Bench();

  @Test
  void unknownFibreOfOneFoodMakesASumALowerBound() {
    bench.forget("seeds", Nutrient.FIBRE);
    Worksheet sheet = bench.sheet("lupin-flour: 100 g", "seeds: 50 g");
    Quantity fibre = sheet.figure(Figure.FIBRE, Basis.BATCH);
    assertThat(fibre).isEqualTo(Quantity.atLeast(30));
    assertThat(fibre).hasToString("at least 30");
    assertThat(sheet.unknowns())
        .containsExactly(new Unknown("seeds", "fibre_g", "the fibre of seeds is not stated"));
  }

  @Test
  void unknownFibreMakesNetCarbohydrateAnUpperBoundThatTheCarbohydrateLimits() {
    bench.forget("seeds", Nutrient.FIBRE);
    assertThat(bench.sheet("seeds: 50 g").figure(Figure.NET_CARBOHYDRATE, Basis.BATCH))
        .hasToString("at most 10");
    assertBetween(
        bench.sheet("lupin-flour: 100 g", "seeds: 50 g").figure(
            Figure.NET_CARBOHYDRATE, Basis.BATCH),
        10,
        20);
  }

  @Test
  void whatDoesNotDependOnTheUnknownStaysKnown() {
    bench.forget("seeds", Nutrient.FIBRE);
    Worksheet sheet = bench.sheet("lupin-flour: 100 g", "seeds: 50 g");
    assertThat(sheet.figure(Figure.PROTEIN, Basis.DOUGH_100_G).isKnown()).isTrue();
    assertThat(sheet.liquidRatio()).isEqualTo(Quantity.ZERO);
    assertThat(sheet.doughMoisturePercent().isKnown()).isTrue();
  }

  @Test
  void anUnresolvedVolumeBoundsEverythingThatDependsOnIt() {
    Worksheet sheet =
        bench.sheet(
            Bench.formula(Yield.ofPieces(2), "lupin-flour: 100 g", "water: 100 g", "seeds: 1 cup"));
    assertThat(sheet.batchGrams()).isEqualTo(Quantity.atLeast(200));
    assertThat(sheet.doughPerPieceGrams()).isEqualTo(Quantity.atLeast(100));
    assertThat(sheet.figure(Figure.PROTEIN, Basis.BATCH)).isEqualTo(Quantity.atLeast(40));
    assertThat(sheet.figure(Figure.PROTEIN, Basis.PIECE)).isEqualTo(Quantity.atLeast(20));
    // any part of seeds from none to nearly all
    assertBetween(sheet.figure(Figure.FAT, Basis.DOUGH_100_G), 5, 50);
    assertThat(sheet.figure(Figure.PROTEIN, Basis.DOUGH_100_G)).isEqualTo(Quantity.known(20));
    assertBetween(sheet.doughMoisturePercent(), 10, 55);
    assertThat(sheet.liquidRatio()).isEqualTo(Quantity.atMost(1));
    assertThat(sheet.lines().get(0).percentOfBatch()).isEqualTo(Quantity.atMost(50));
    assertThat(sheet.lines().get(2).percentOfBatch()).isEqualTo(Quantity.UNKNOWN);
    assertThat(sheet.unknowns())
        .containsExactly(
            new Unknown("seeds", "mass", "seeds has neither a household weight nor a density"));
  }

  @Test
  void aPieceOfStatedDoughMassIsBoundedByTheExtremeCompositions() {
    Yield yield = new Yield(Optional.empty(), OptionalDouble.of(50), OptionalDouble.of(10));
    Worksheet sheet =
        bench.sheet(Bench.formula(yield, "lupin-flour: 100 g", "water: 100 g", "seeds: 1 cup"));
    assertThat(sheet.pieces()).isEqualTo(Quantity.atLeast(3.6));
    assertThat(sheet.doughPerPieceGrams()).isEqualTo(Quantity.known(50));
    assertBetween(sheet.figure(Figure.FAT, Basis.PIECE), 2.5, 25);
  }

  @Test
  void anUnresolvedLineBringsNoneOfWhatItsFoodDoesNotHold() {
    Worksheet sheet = bench.sheet("lupin-flour: 100 g", "oil: 1 glug");
    assertThat(sheet.figure(Figure.PROTEIN, Basis.BATCH)).isEqualTo(Quantity.known(40));
    assertThat(sheet.figure(Figure.PROTEIN, Basis.DOUGH_100_G)).isEqualTo(Quantity.atMost(40));
    assertThat(sheet.liquidRatio()).isEqualTo(Quantity.ZERO);
  }

  @Test
  void anUnresolvedFlourLeavesTheBakersPercentagesAnUpperBound() {
    Formula formula =
        Bench.formula(Yield.UNSTATED, "lupin-flour: 100 g", "seeds: 1 cup", "water: 50 g");
    Formula marked =
        formula.withLines(
            formula.lines().stream()
                .map(line -> line.withFlour(!line.food().equals("water")))
                .toList());
    assertThat(bench.sheet(marked).lines().get(2).bakersPercent()).isEqualTo(Quantity.atMost(50));
  }

  @Test
  void aSingleUnresolvedLineStillHasTheCompositionOfItsFood() {
    Worksheet sheet = bench.sheet("seeds: 1 cup");
    assertThat(sheet.batchGrams()).isEqualTo(Quantity.UNKNOWN);
    assertThat(sheet.figure(Figure.FAT, Basis.DOUGH_100_G)).isEqualTo(Quantity.known(50));
    assertThat(sheet.doughMoisturePercent()).isEqualTo(Quantity.known(10));
  }

  @Test
  void aMissingFoodLeavesEveryMacroOpenAndItsKindToo() {
    Worksheet sheet =
        bench.sheet("lupin-flour: 100 g", "water: 100 g", "unheard-of: 50 g");
    assertThat(sheet.batchGrams()).isEqualTo(Quantity.known(250));
    for (Figure figure : Figure.macros()) {
      assertThat(sheet.figure(figure, Basis.BATCH).high()).as(figure.key()).isEqualTo(INFINITY);
    }
    assertThat(sheet.figure(Figure.PROTEIN, Basis.BATCH).low()).isEqualTo(40);
    assertBetween(sheet.liquidRatio(), 100.0 / 150, 1.5);
    // its water cannot be more than its mass
    assertBetween(sheet.doughMoisturePercent(), 44, 64);
    assertThat(sheet.lines().get(2).name()).isEqualTo("unheard-of");
    assertThat(sheet.lines().get(2).percentOfBatch()).isEqualTo(Quantity.known(20));
    assertThat(sheet.unknowns())
        .containsExactly(
            new Unknown("unheard-of", "food", "the pantry has no food \"unheard-of\""));
  }

  @Test
  void aMissingFoodOfUnknownMassLeavesNothingKnown() {
    Worksheet sheet = bench.sheet("lupin-flour: 100 g", "unheard-of: 1 cup");
    assertThat(sheet.macros().get(Basis.DOUGH_100_G)).isEqualTo(Macros.UNKNOWN);
    assertThat(sheet.doughMoisturePercent()).isEqualTo(Quantity.UNKNOWN);
    assertThat(sheet.liquidRatio()).isEqualTo(Quantity.UNKNOWN);
    assertThat(sheet.figure(Figure.PROTEIN, Basis.BATCH)).isEqualTo(Quantity.atLeast(40));
  }

  @Test
  void theWaterOfADoughNeverExceedsItsMass() {
    bench.forget("seeds", Nutrient.WATER);
    assertThat(bench.sheet("water: 100 g", "seeds: 100 g").doughMoisturePercent())
        .isEqualTo(Quantity.between(50, 100));
    assertThat(bench.sheet("seeds: 100 g").doughMoisturePercent()).isEqualTo(Quantity.UNKNOWN);
  }

  @Test
  void unknownWaterLeavesBakedWaterALowerBound() {
    bench.forget("seeds", Nutrient.WATER);
    Worksheet sheet =
        bench.sheet(
            Bench.formula(Yield.ofPieces(1), "water: 100 g", "seeds: 100 g"),
            Policy.USUAL,
            new BakedYield(Quantity.known(0.8), 1));
    assertThat(sheet.figure(Figure.WATER, Basis.BAKED_100_G).low()).isCloseTo(37.5, within(1e-9));
    assertThat(sheet.figure(Figure.WATER, Basis.BAKED_100_G).high()).isEqualTo(INFINITY);
  }

  @Test
  void anUnknownFigureOfALineOfNothingIsNoUnknown() {
    bench.forget("seeds", Nutrient.FIBRE);
    Worksheet sheet = bench.sheet("lupin-flour: 100 g", "seeds: 0 g");
    assertThat(sheet.figure(Figure.FIBRE, Basis.BATCH)).isEqualTo(Quantity.known(30));
    assertThat(sheet.unknowns()).isEmpty();
  }

  @Test
  void energyByFactorsNamesTheFoodThatLacksAFigure() {
    bench.forget("lupin-flour", Nutrient.SOLUBLE_FIBRE);
    Policy policy = new Policy(EnergyRule.US_FACTORS, NetCarbohydrate.ALL);
    Worksheet sheet =
        bench.sheet(
            Bench.formula(Yield.UNSTATED, "lupin-flour: 100 g"), policy, BakedYield.UNMEASURED);
    // 40 g protein, 10 g fat, 10 g other carbohydrate, 30 g fibre at 0 to 2 kcal
    assertBetween(sheet.figure(Figure.ENERGY, Basis.BATCH), 290, 350);
    assertThat(sheet.unknowns())
        .containsExactly(
            new Unknown(
                "lupin-flour",
                "energy_kcal",
                "lupin flour lacks a figure that the US factors need"));
  }

  private static void assertBetween(Quantity quantity, double low, double high) {
    assertThat(quantity.low()).isCloseTo(low, within(1e-9));
    assertThat(quantity.high()).isCloseTo(high, within(1e-9));
  }
}
