package io.ovenmark.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What must hold for every replacement, tried on seeded random formulas of the built-in foods. */
class ReplacementsPropertiesTest {
  private static final int TRIALS = 60;

  private final Random random = new Random(20261125);

  private Formula formula() {
    List<Food> foods = new ArrayList<>(BuiltInPantry.all());
    Collections.shuffle(foods, random);
    List<Line> lines = new ArrayList<>();
    for (Food food : foods.subList(0, 3 + random.nextInt(9))) {
      lines.add(
          Line.of(
              food.slug(), food.slug(), Amount.grams(BigDecimal.valueOf(1 + random.nextInt(400)))));
    }
    return Formula.named("random")
        .withLines(lines)
        .withYield(random.nextBoolean() ? Yield.ofPieces(1 + random.nextInt(20)) : Yield.UNSTATED);
  }

  private static Worksheet workOut(Formula formula) {
    BakedYield baked = new BakedYield(Quantity.known(0.9), 3);
    return Worksheet.of(formula, BuiltInPantry::find, Policy.USUAL, baked);
  }

  private static List<StandIn> all() {
    return BuiltInPantry.all().stream().map(food -> new StandIn(food, false)).toList();
  }

  @Test
  void theKeptFigureIsKeptWhenWorkedOutAnewAndNoFoodIsLost() {
    int kept = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      Worksheet sheet = workOut(formula());
      WorksheetLine line = sheet.lines().get(random.nextInt(sheet.lines().size()));
      for (Kept figure : Kept.values()) {
        Quantity held = Replacements.holds(line, figure);
        if (held.isKnown() && held.low() > 0) {
          Replacements found =
              Replacements.of(
                  sheet, line.line().id(), figure, Optional.empty(), all(), Readings.FINE);
          allFoodsAreNamed(found);
          for (Replacement answer : found.answers()) {
            stays(found, answer);
            kept++;
          }
        }
      }
    }
    assertThat(kept).isGreaterThan(2000);
  }

  private static void allFoodsAreNamed(Replacements found) {
    Set<String> named = new HashSet<>();
    named.add(found.line().line().food());
    found.answers().forEach(each -> named.add(each.standIn().food().slug()));
    found.setAside().forEach(each -> named.add(each.standIn().food().slug()));
    assertThat(named).hasSize(BuiltInPantry.all().size());
    assertThat(found.answers().size() + found.setAside().size() + 1)
        .isEqualTo(BuiltInPantry.all().size());
  }

  private static void stays(Replacements found, Replacement answer) {
    String what = found.kept() + " of " + found.line().name() + " by " + answer.standIn();
    Worksheet anew = workOut(answer.after().formula());
    WorksheetLine line = anew.line(found.line().line().id()).orElseThrow();
    double share = Replacements.holds(line, found.kept()).low() / found.keptGrams();
    assertThat(share).as(what).isCloseTo(1, within(1e-9));
    assertThat(anew.figure(Figure.WATER, Basis.BATCH))
        .isEqualTo(answer.after().figure(Figure.WATER, Basis.BATCH));
    assertThat(answer.disturbance()).as(what).isNotNegative();
    for (int i = 0; i < anew.lines().size(); i++) {
      WorksheetLine other = found.before().lines().get(i);
      if (!other.line().id().equals(found.line().line().id())) {
        assertThat(anew.lines().get(i).line()).isEqualTo(other.line());
      }
    }
  }

  @Test
  void theSameFoodUnderAnotherNameMovesNothing() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Worksheet sheet = workOut(formula());
      WorksheetLine line = sheet.lines().get(random.nextInt(sheet.lines().size()));
      Food own = line.food().orElseThrow();
      Food twin =
          new Food(
              "twin", own.name(), own.kind(), own.source(), own.per100g(), own.household(),
              own.densityGramsPerMillilitre(), own.allergens(), own.polyol(), own.price(),
              own.extras());
      Replacements found =
          Replacements.of(
              sheet,
              line.line().id(),
              Kept.usual(own),
              Optional.empty(),
              List.of(new StandIn(twin, true)),
              0);
      assertThat(found.answers()).hasSize(1);
      Replacement answer = found.answers().get(0);
      assertThat(answer.sameKind()).isTrue();
      assertThat(answer.disturbance()).isCloseTo(0, within(1e-9));
      for (Basis basis : Basis.values()) {
        assertThat(answer.moves(sheet, basis)).isEmpty();
      }
      assertThat(answer.gained(sheet)).isEmpty();
      assertThat(answer.lost(sheet)).isEmpty();
    }
  }

  @Test
  void theOrderDoesNotDependOnTheOrderOfTheFoods() {
    Worksheet sheet = workOut(formula());
    String line = sheet.lines().get(0).line().id();
    List<StandIn> turned = new ArrayList<>(all());
    Collections.reverse(turned);

    assertThat(names(Replacements.of(sheet, line, Kept.MASS, Optional.empty(), turned, 1)))
        .isEqualTo(names(Replacements.of(sheet, line, Kept.MASS, Optional.empty(), all(), 1)));
  }

  private static List<String> names(Replacements found) {
    return found.answers().stream().map(each -> each.standIn().food().slug()).toList();
  }
}
