package io.ovenmark.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrient;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold for every formula, tried on seeded random ones. */
class WorksheetPropertiesTest {
  private static final int TRIALS = 300;
  private static final String[] POLYOLS = {"erythritol", "maltitol", "a blend"};

  private final Random random = new Random(20260914);
  private final Bench bench = new Bench();

  @Test
  void piecesTogetherHoldTheBatchLessTheHandlingLoss() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Worksheet sheet = bench.sheet(randomFormula());
      double kept = 1 - sheet.formula().yield().handlingLossPercent().orElse(0) / 100;
      for (Figure figure : Figure.macros()) {
        close(
            sheet.figure(figure, Basis.PIECE).times(sheet.pieces()),
            sheet.figure(figure, Basis.BATCH).times(kept));
      }
      close(sheet.doughPerPieceGrams().times(sheet.pieces()), sheet.doughGrams());
    }
  }

  @Test
  void sharesOfTheBatchSumToAHundred() {
    for (int trial = 0; trial < TRIALS; trial++) {
      double sum = 0;
      for (WorksheetLine line : bench.sheet(randomFormula()).lines()) {
        sum += line.percentOfBatch().value().orElseThrow();
      }
      assertThat(sum).isCloseTo(100, within(1e-9));
    }
  }

  @Test
  void scalingAllLinesLeavesWhatIsRelative() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Formula formula = randomFormula();
      BakedYield baked = new BakedYield(Quantity.known(0.7 + random.nextDouble() * 0.3), 1);
      BigDecimal factor = BigDecimal.valueOf(1 + random.nextInt(400), 1);
      Worksheet one = bench.sheet(formula, Policy.USUAL, baked);
      Worksheet many = bench.sheet(scaled(formula, factor), Policy.USUAL, baked);
      close(many.liquidRatio(), one.liquidRatio());
      close(many.doughMoisturePercent(), one.doughMoisturePercent());
      close(many.batchGrams(), one.batchGrams().times(factor.doubleValue()));
      for (int i = 0; i < one.lines().size(); i++) {
        close(many.lines().get(i).percentOfBatch(), one.lines().get(i).percentOfBatch());
        close(many.lines().get(i).bakersPercent(), one.lines().get(i).bakersPercent());
      }
      for (Figure figure : Figure.macros()) {
        close(
            many.figure(figure, Basis.DOUGH_100_G), one.figure(figure, Basis.DOUGH_100_G));
        close(
            many.figure(figure, Basis.BAKED_100_G), one.figure(figure, Basis.BAKED_100_G));
      }
    }
  }

  @Test
  void forgettingANutrientGivesBoundsThatHoldTheFormerValue() {
    Nutrient[] nutrients = Nutrient.values();
    for (int trial = 0; trial < TRIALS; trial++) {
      Formula formula = randomFormula();
      Policy policy = randomPolicy();
      BakedYield baked = new BakedYield(Quantity.known(0.9), 1);
      Worksheet known = bench.sheet(formula, policy, baked);
      Line line = formula.lines().get(random.nextInt(formula.lines().size()));
      Food food = bench.find(line.food()).orElseThrow();
      Nutrient forgotten = nutrients[random.nextInt(nutrients.length)];

      bench.forget(food.slug(), forgotten);
      Worksheet bounded = bench.sheet(formula, policy, baked);
      bench.add(food);

      holds(bounded, known, policy + " without " + forgotten + " of " + food);
    }
  }

  @Test
  void losingAMassGivesBoundsThatHoldTheFormerValue() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Formula formula = randomFormula();
      Worksheet known = bench.sheet(formula);
      List<Line> lines = new ArrayList<>(formula.lines());
      int lost = random.nextInt(lines.size());
      lines.set(lost, lines.get(lost).withAmount(Amount.parse("1 handful")));

      Worksheet bounded = bench.sheet(formula.withLines(lines));

      holds(bounded, known, "line " + lost);
      for (int i = 0; i < lines.size(); i++) {
        holds(bounded.lines().get(i).percentOfBatch(), known.lines().get(i).percentOfBatch());
        holds(bounded.lines().get(i).bakersPercent(), known.lines().get(i).bakersPercent());
      }
    }
  }

  @Test
  void losingAFoodGivesBoundsThatHoldTheFormerValue() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Formula formula = randomFormula();
      Worksheet known = bench.sheet(formula);
      String lost = formula.lines().get(random.nextInt(formula.lines().size())).food();
      Worksheet bounded =
          Worksheet.of(
              formula,
              slug -> slug.equals(lost) ? Optional.empty() : bench.find(slug),
              Policy.USUAL,
              BakedYield.UNMEASURED);
      holds(bounded, known, lost);
    }
  }

  @Test
  void addingALineNeverLowersAMacroOfTheBatch() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Formula longer = randomFormula();
      List<Line> lines = longer.lines();
      Worksheet less =
          bench.sheet(longer.withLines(lines.subList(0, lines.size() - 1)));
      Worksheet more = bench.sheet(longer);
      for (Figure figure : Figure.macros()) {
        assertThat(more.figure(figure, Basis.BATCH).low())
            .isGreaterThanOrEqualTo(less.figure(figure, Basis.BATCH).low());
      }
    }
  }

  @Test
  void onlyWaterLeavesInTheOven() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Formula formula = randomFormula();
      double moisture = bench.sheet(formula).doughMoisturePercent().low();
      double share = 1 - random.nextDouble() * moisture / 100;
      Worksheet sheet =
          bench.sheet(formula, Policy.USUAL, new BakedYield(Quantity.known(share), 1));
      Macros dough = sheet.macros().get(Basis.DOUGH_100_G);
      Macros baked = sheet.macros().get(Basis.BAKED_100_G);
      for (Figure figure : Figure.macros()) {
        double left = baked.get(figure).low() * share;
        double lost = figure == Figure.WATER ? 100 * (1 - share) : 0;
        assertThat(left).isCloseTo(dough.get(figure).low() - lost, within(1e-8));
      }
    }
  }

  private static void holds(Worksheet bounded, Worksheet known, String what) {
    for (Figure figure : Figure.values()) {
      for (Basis basis : Basis.values()) {
        Quantity outer = bounded.figure(figure, basis);
        Quantity inner = known.figure(figure, basis);
        if (!inner.isKnown()) {
          continue;
        }
        double slack = 1e-9 * Math.max(1, Math.abs(inner.low()));
        assertThat(outer.low()).as(figure + " " + what).isLessThanOrEqualTo(inner.low() + slack);
        assertThat(outer.high())
            .as(figure + " " + what)
            .isGreaterThanOrEqualTo(inner.high() - slack);
      }
    }
  }

  private static void holds(Quantity outer, Quantity inner) {
    assertThat(outer.low()).isLessThanOrEqualTo(inner.low() + 1e-9);
    assertThat(outer.high()).isGreaterThanOrEqualTo(inner.high() - 1e-9);
  }

  private static void close(Quantity actual, Quantity expected) {
    assertThat(actual.isKnown()).isEqualTo(expected.isKnown());
    if (expected.isKnown()) {
      assertThat(actual.low())
          .isCloseTo(expected.low(), within(1e-9 * Math.max(1, Math.abs(expected.low()))));
    }
  }

  private static Formula scaled(Formula formula, BigDecimal factor) {
    return formula.withLines(
        formula.lines().stream()
            .map(
                line ->
                    line.withAmount(
                        Amount.grams(line.amount().grams().orElseThrow().multiply(factor))))
            .toList());
  }

  private Policy randomPolicy() {
    EnergyRule[] rules = EnergyRule.values();
    return new Policy(
        rules[random.nextInt(rules.length)],
        new NetCarbohydrate(random.nextInt(3) / 2.0, random.nextInt(2), random.nextInt(2)));
  }

  /** Two to nine lines of random foods, weighed to 0.1 g; a yield of either form. */
  private Formula randomFormula() {
    List<Line> lines = new ArrayList<>();
    int count = 2 + random.nextInt(8);
    for (int i = 0; i < count; i++) {
      String slug = "food-" + i;
      bench.add(randomFood(slug));
      Amount amount = Amount.grams(BigDecimal.valueOf(1 + random.nextInt(5000), 1));
      lines.add(Line.of(slug, slug, amount).withFlour(random.nextInt(3) == 0));
    }
    OptionalDouble loss =
        random.nextBoolean() ? OptionalDouble.of(random.nextInt(20)) : OptionalDouble.empty();
    Yield yield =
        random.nextBoolean()
            ? new Yield(Optional.of(1 + random.nextInt(30)), OptionalDouble.empty(), loss)
            : new Yield(Optional.empty(), OptionalDouble.of(5 + random.nextInt(100)), loss);
    return Formula.named("random").withLines(lines).withYield(yield);
  }

  /** A food whose parts sum to 100 g: whole grams of protein, fat, carbohydrate, alcohol, water. */
  private Food randomFood(String slug) {
    FoodKind[] kinds = FoodKind.values();
    int left = 100;
    int protein = random.nextInt(left + 1);
    left -= protein;
    int fat = random.nextInt(left + 1);
    left -= fat;
    int carbohydrate = random.nextInt(left + 1);
    left -= carbohydrate;
    int alcohol = random.nextInt(left + 1);
    int fibre = random.nextInt(carbohydrate + 1);
    int polyols = random.nextInt(carbohydrate - fibre + 1);
    int allulose = random.nextInt(carbohydrate - fibre - polyols + 1);
    Food food =
        Bench.food(
            slug,
            kinds[random.nextInt(kinds.length)],
            protein,
            fat,
            carbohydrate,
            fibre,
            left - alcohol,
            random.nextInt(900));
    food = Bench.with(food, Nutrient.ALCOHOL, Quantity.known(alcohol));
    food = Bench.with(food, Nutrient.POLYOLS, Quantity.known(polyols));
    food = Bench.with(food, Nutrient.ALLULOSE, Quantity.known(allulose));
    food = Bench.with(food, Nutrient.SOLUBLE_FIBRE, Quantity.known(random.nextInt(fibre + 1)));
    food = Bench.with(food, Nutrient.SODIUM, Quantity.known(random.nextInt(1000)));
    return Bench.withPolyol(food, POLYOLS[random.nextInt(POLYOLS.length)]);
  }
}
