package io.ovenmark.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Allergen;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WorksheetTest {
  private static final String[] BUN = {
    "lupin-flour: 200 g", "seeds: 50 g", "water: 200 g", "egg: 2 large", "oil: 50 g"
  };
  private final Bench bench = new Bench();

  @ParameterizedTest(name = "{0} of {1} is {2}")
  @CsvSource({
    "protein_g, batch, 102",
    "protein_g, piece, 10.2",
    "protein_g, 100 g dough, 17",
    "protein_g, 100 g baked, 20",
    "fat_g, batch, 105",
    "carbohydrate_g, batch, 91",
    "fibre_g, batch, 65",
    "net_carbohydrate_g, batch, 26",
    "net_carbohydrate_g, piece, 2.6",
    "energy_kcal, batch, 1468",
    "water_g, batch, 301",
    "water_g, 100 g dough, 50.16666667",
    "water_g, 100 g baked, 41.37254902",
    "polyols_g, 100 g baked, 0",
  })
  void macrosAreSumsOverTheLines(String figure, String basis, double value) {
    Worksheet sheet =
        bench.sheet(
            Bench.formula(Yield.ofPieces(10), BUN),
            Policy.USUAL,
            new BakedYield(Quantity.known(0.85), 1));
    assertKnown(
        sheet.figure(
            Figure.withKey(figure).orElseThrow(), Basis.withLabel(basis).orElseThrow()),
        value);
  }

  @ParameterizedTest
  @CsvSource({
    "liquid_ratio, 1.2",
    "dough_moisture_percent, 50.16666667",
    "batch_g, 600",
    "pieces, 10",
    "dough_per_piece_g, 60",
    "baked_per_piece_g, 51",
  })
  void figuresOfTheWholeFormula(String figure, double value) {
    Worksheet sheet =
        bench.sheet(
            Bench.formula(Yield.ofPieces(10), BUN),
            Policy.USUAL,
            new BakedYield(Quantity.known(0.85), 1));
    assertKnown(sheet.figure(Figure.withKey(figure).orElseThrow(), Basis.PIECE), value);
  }

  @Test
  void handlingLossIsTakenFromEveryPieceButNotFromTheBatch() {
    Yield yield = new Yield(Optional.of(10), OptionalDouble.empty(), OptionalDouble.of(5));
    Worksheet sheet = bench.sheet(Bench.formula(yield, BUN));
    assertKnown(sheet.batchGrams(), 600);
    assertKnown(sheet.doughGrams(), 570);
    assertKnown(sheet.doughPerPieceGrams(), 57);
    assertKnown(sheet.figure(Figure.PROTEIN, Basis.BATCH), 102);
    assertKnown(sheet.figure(Figure.PROTEIN, Basis.PIECE), 9.69);
    assertKnown(sheet.figure(Figure.PROTEIN, Basis.DOUGH_100_G), 17);
  }

  @Test
  void statedDoughMassGivesPiecesThatNeedNotBeWhole() {
    Yield yield = new Yield(Optional.empty(), OptionalDouble.of(80), OptionalDouble.of(5));
    Worksheet sheet = bench.sheet(Bench.formula(yield, BUN));
    assertKnown(sheet.pieces(), 7.125);
    assertKnown(sheet.doughPerPieceGrams(), 80);
    assertKnown(sheet.figure(Figure.PROTEIN, Basis.PIECE), 13.6);
  }

  @Test
  void withoutAStatedYieldAPieceIsUnknownButTheDoughIsNot() {
    Worksheet sheet = bench.sheet(BUN);
    assertThat(sheet.pieces()).isEqualTo(Quantity.UNKNOWN);
    assertThat(sheet.doughPerPieceGrams()).isEqualTo(Quantity.UNKNOWN);
    assertThat(sheet.macros().get(Basis.PIECE)).isEqualTo(Macros.UNKNOWN);
    assertKnown(sheet.figure(Figure.PROTEIN, Basis.DOUGH_100_G), 17);
  }

  @Test
  void per100GramsBakedIsUnknownUntilWeighed() {
    Worksheet sheet = bench.sheet(Bench.formula(Yield.ofPieces(10), BUN));
    assertThat(sheet.bakedPerPieceGrams()).isEqualTo(Quantity.UNKNOWN);
    assertThat(sheet.macros().get(Basis.BAKED_100_G)).isEqualTo(Macros.UNKNOWN);
  }

  @Test
  void aLossOfMoreThanAllWaterLeavesNone() {
    Worksheet sheet =
        bench.sheet(
            Bench.formula(Yield.ofPieces(1), "seeds: 100 g"),
            Policy.USUAL,
            new BakedYield(Quantity.known(0.8), 1));
    assertThat(sheet.figure(Figure.WATER, Basis.BAKED_100_G)).isEqualTo(Quantity.ZERO);
    assertKnown(sheet.figure(Figure.FAT, Basis.BAKED_100_G), 62.5);
  }

  @Test
  void gainedMassCountsAsWater() {
    Worksheet sheet =
        bench.sheet(
            Bench.formula(Yield.ofPieces(1), "seeds: 100 g"),
            Policy.USUAL,
            new BakedYield(Quantity.known(1.25), 1));
    assertKnown(sheet.figure(Figure.WATER, Basis.BAKED_100_G), 28);
  }

  @Test
  void noLinesWeighNothingAndHaveNoComposition() {
    Worksheet sheet = bench.sheet(Bench.formula(Yield.ofPieces(4)));
    assertThat(sheet.batchGrams()).isEqualTo(Quantity.ZERO);
    assertThat(sheet.macros().get(Basis.BATCH)).isEqualTo(Macros.NONE);
    assertThat(sheet.macros().get(Basis.PIECE)).isEqualTo(Macros.NONE);
    assertThat(sheet.macros().get(Basis.DOUGH_100_G)).isEqualTo(Macros.UNKNOWN);
    assertThat(sheet.macros().get(Basis.BAKED_100_G)).isEqualTo(Macros.UNKNOWN);
    assertThat(sheet.liquidRatio()).isEqualTo(Quantity.UNKNOWN);
    assertThat(sheet.doughMoisturePercent()).isEqualTo(Quantity.UNKNOWN);
    assertThat(sheet.unknowns()).isEmpty();
    assertThat(sheet.allergens()).isEmpty();
  }

  @Test
  void linesOfNothingWeighNothing() {
    Worksheet sheet = bench.sheet("lupin-flour: 0 g", "water: 0 cups", "unheard-of: 0 slices");
    assertThat(sheet.batchGrams()).isEqualTo(Quantity.ZERO);
    assertThat(sheet.macros().get(Basis.BATCH)).isEqualTo(Macros.NONE);
    assertThat(sheet.macros().get(Basis.DOUGH_100_G)).isEqualTo(Macros.UNKNOWN);
    assertThat(sheet.lines().get(0).percentOfBatch()).isEqualTo(Quantity.UNKNOWN);
    assertThat(sheet.unknowns()).extracting(Unknown::nutrient).containsExactly("food");
  }

  @Test
  void aLineOfNothingChangesNoFigureButItsAllergenIsStillNamed() {
    Worksheet with = bench.sheet("seeds: 100 g", "egg: 0 g");
    Worksheet without = bench.sheet("seeds: 100 g");
    assertThat(with.macros()).isEqualTo(without.macros());
    assertThat(with.allergens()).containsExactly(Allergen.EGGS);
  }

  @Test
  void withoutADryLineThereIsNoLiquidRatio() {
    assertThat(bench.sheet("water: 100 g", "oil: 10 g").liquidRatio()).isEqualTo(Quantity.UNKNOWN);
    assertThat(bench.sheet("seeds: 100 g", "oil: 10 g").liquidRatio()).isEqualTo(Quantity.ZERO);
  }

  @Test
  void bakersPercentageNeedsALineMarkedAsFlour() {
    Formula formula = Bench.formula(Yield.UNSTATED, "lupin-flour: 80 g", "seeds: 20 g");
    assertThat(bench.sheet(formula).lines().get(0).bakersPercent()).isEqualTo(Quantity.UNKNOWN);

    Formula marked =
        formula.withLines(formula.lines().stream().map(line -> line.withFlour(true)).toList());
    assertKnown(bench.sheet(marked).lines().get(0).bakersPercent(), 80);
  }

  @Test
  void allergensStandInTheirOwnOrderAndUnknownOnesAreNamedOnce() {
    bench.add(Bench.withoutAllergenList(bench.find("seeds").orElseThrow()));
    Worksheet sheet =
        bench.sheet(
            "lupin-flour: 1 g", "seeds: 1 g", "seeds: 2 g", "egg: 1 g", "unheard-of: 1 g");
    assertThat(sheet.allergens()).containsExactly(Allergen.EGGS, Allergen.LUPIN);
    assertThat(sheet.allergensUnknownIn()).containsExactly("seeds", "unheard-of");
  }

  @Test
  void netCarbohydrateFollowsThePolicy() {
    Policy half = new Policy(EnergyRule.FOODS, new NetCarbohydrate(0.5, 0, 0));
    Worksheet sheet =
        bench.sheet(
            Bench.formula(Yield.UNSTATED, "lupin-flour: 100 g"), half, BakedYield.UNMEASURED);
    assertKnown(sheet.figure(Figure.NET_CARBOHYDRATE, Basis.BATCH), 25);
  }

  @ParameterizedTest
  @EnumSource(Figure.class)
  void everyFigureCanBeAskedForEveryBasis(Figure figure) {
    Worksheet sheet = bench.sheet(Bench.formula(Yield.ofPieces(10), BUN));
    for (Basis basis : Basis.values()) {
      assertThat(sheet.figure(figure, basis)).isNotNull();
    }
  }

  @Test
  void linesAreFoundById() {
    Worksheet sheet = bench.sheet("seeds: 1 g", "seeds: 2 g");
    assertKnown(sheet.line("seeds-2").orElseThrow().grams(), 2);
    assertThat(sheet.line("water")).isEmpty();
  }

  @Test
  void aWorksheetCannotBeChanged() {
    Worksheet sheet = bench.sheet(BUN);
    assertThatThrownBy(() -> sheet.macros().clear())
        .isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> sheet.allergens().clear())
        .isInstanceOf(UnsupportedOperationException.class);
  }

  private static void assertKnown(Quantity quantity, double value) {
    assertThat(quantity.value()).isPresent();
    assertThat(quantity.low()).isCloseTo(value, within(1e-8));
  }
}
