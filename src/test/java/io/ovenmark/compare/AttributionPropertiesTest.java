package io.ovenmark.compare;

import static io.ovenmark.compare.ComparisonAssert.assertThatComparison;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.NetCarbohydrate;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random pairs of formulas: what must hold for every comparison. */
class AttributionPropertiesTest {
  private static final int ROUNDS = 500;

  private final Random random = new Random(20260914);

  @Test
  void theCausesOfEveryFigureAddUpToItsDifferenceAndNoneIsZero() {
    for (int round = 0; round < ROUNDS; round++) {
      Side from = side();
      Side to = random.nextBoolean() ? side() : revised(from);
      assertThatComparison(Comparison.between(from, to)).addsUp();
    }
  }

  @Test
  void swappingTheSidesTurnsEverySign() {
    for (int round = 0; round < ROUNDS; round++) {
      Side from = side();
      Side to = random.nextBoolean() ? side() : revised(from);
      Comparison there = Comparison.between(from, to);
      Comparison back = Comparison.between(to, from);
      for (int i = 0; i < there.figures().size(); i++) {
        FigureComparison one = there.figures().get(i);
        FigureComparison other = back.figures().get(i);
        if (one.from().isKnown() && one.to().isKnown()) {
          double size = Math.max(one.from().low(), one.to().low());
          assertThat(one.delta().low()).isCloseTo(-other.delta().low(), within(1e-11 * size));
          double[] parts = sorted(one, 1);
          double[] turned = sorted(other, -1);
          assertThat(parts).as(one.name()).hasSameSizeAs(turned);
          double scale = 1e-9 * (size + (parts.length == 0 ? 0 : Math.abs(parts[0])));
          assertThat(parts).as(one.name()).containsExactly(turned, within(scale));
        }
      }
    }
  }

  @Test
  void aSideComparedWithItselfHasNoDifferenceAtAll() {
    for (int round = 0; round < 200; round++) {
      Side side = side();
      Comparison comparison = Comparison.between(side, side);
      assertThatComparison(comparison)
          .says("Nothing that is weighed, done or baked differs.")
          .hasNoCauses();
      assertThat(comparison.figures()).allMatch(figure -> figure.delta().equals(Quantity.ZERO));
      assertThat(comparison.lines()).allMatch(line -> line.change() == LineChange.SAME);
      assertThat(comparison.changes()).isEmpty();
    }
  }

  @Test
  void everyLineOfBothSidesStandsInTheComparisonOnce() {
    for (int round = 0; round < ROUNDS; round++) {
      Side from = side();
      Side to = revised(from);
      Comparison comparison = Comparison.between(from, to);
      assertThat(
              comparison.lines().stream()
                  .flatMap(line -> line.before().stream())
                  .map(line -> line.line().id()))
          .containsExactlyInAnyOrderElementsOf(
              from.sheet().formula().lines().stream().map(Line::id).toList());
      assertThat(
              comparison.lines().stream()
                  .flatMap(line -> line.after().stream())
                  .map(line -> line.line().id()))
          .containsExactlyElementsOf(to.sheet().formula().lines().stream().map(Line::id).toList());
    }
  }

  private static double[] sorted(FigureComparison figure, int sign) {
    return figure.contributions().stream()
        .mapToDouble(part -> sign * part.delta())
        .sorted()
        .toArray();
  }

  private Side side() {
    List<Line> lines = new ArrayList<>();
    Formula formula = Formula.named("bun");
    int count = random.nextInt(9);
    for (int i = 0; i < count; i++) {
      String food = food();
      lines.add(
          Line.of(formula.freeLineId(food), food, amount(food)).withFlour(random.nextInt(4) == 0));
      formula = formula.withLines(lines);
    }
    return side(formula.withYield(anyYield()));
  }

  private Side revised(Side side) {
    Formula formula = side.sheet().formula();
    List<Line> lines = new ArrayList<>();
    for (Line line : formula.lines()) {
      switch (random.nextInt(8)) {
        case 0 -> {}
        case 1, 2 -> lines.add(line.withAmount(amount(line.food())));
        case 3 -> lines.add(line.withFood(food()));
        default -> lines.add(line);
      }
    }
    if (random.nextInt(3) == 0) {
      String food = food();
      String id = formula.withLines(lines).freeLineId(food);
      lines.add(random.nextInt(lines.size() + 1), Line.of(id, food, amount(food)));
    }
    if (random.nextInt(5) == 0) {
      Collections.shuffle(lines, random);
    }
    return side(
        formula.withLines(lines).withYield(random.nextBoolean() ? formula.yield() : anyYield()));
  }

  private Side side(Formula formula) {
    Map<String, Food> foods = new HashMap<>(Bench.FOODS);
    if (random.nextInt(3) == 0) {
      foods.computeIfPresent(
          "lupin-flour",
          (slug, food) -> Bench.withFigure(food, Nutrient.FIBRE, 10 + random.nextInt(20)));
    }
    EnergyRule[] rules = EnergyRule.values();
    Policy policy =
        new Policy(
            rules[random.nextInt(rules.length)],
            random.nextBoolean() ? NetCarbohydrate.ALL : new NetCarbohydrate(1, 0.5, 1));
    BakedYield share =
        random.nextInt(3) == 0
            ? BakedYield.UNMEASURED
            : new BakedYield(Quantity.known(0.4 + 0.6 * random.nextDouble()), 2);
    Worksheet sheet =
        Worksheet.of(formula, slug -> Optional.ofNullable(foods.get(slug)), policy, share);
    return Side.of("bun@" + random.nextInt(9), sheet);
  }

  private String food() {
    List<String> foods = Bench.FOODS.keySet().stream().sorted().toList();
    int pick = random.nextInt(foods.size() + 3);
    return pick < foods.size() ? foods.get(pick) : pick == foods.size() ? "unheard-of" : "water";
  }

  private Amount amount(String food) {
    int kind = random.nextInt(25);
    if (kind == 0) {
      return Amount.parse("0 g");
    }
    if (kind == 1) {
      return Amount.parse("2 cups");
    }
    if (kind < 4 && food.equals("psyllium")) {
      return Amount.parse("1 1/2 tbsp");
    }
    return Amount.grams(BigDecimal.valueOf(1 + random.nextInt(3000), 1));
  }

  private Yield anyYield() {
    OptionalDouble loss =
        random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(random.nextInt(10));
    return switch (random.nextInt(7)) {
      case 0 -> Yield.UNSTATED;
      case 1, 2 -> new Yield(Optional.empty(), OptionalDouble.of(40 + random.nextInt(80)), loss);
      default -> new Yield(Optional.of(1 + random.nextInt(12)), OptionalDouble.empty(), loss);
    };
  }
}
