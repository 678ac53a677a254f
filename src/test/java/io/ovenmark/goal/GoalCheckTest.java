package io.ovenmark.goal;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Yield;
import io.ovenmark.goal.GoalCheck.Outcome;
import io.ovenmark.goal.GoalCheck.Result;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Bench;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GoalCheckTest {
  private final Bench bench = new Bench();

  @ParameterizedTest(name = "fibre {0} g against {1} to {2}: {3}")
  @CsvSource({
    // known: 30 g in the batch
    "30, 20, , MET",
    "30, 30, , MET",
    "30, 31, , BROKEN",
    "30, , 30, MET",
    "30, , 29, BROKEN",
    "30, 25, 35, MET",
    "30, 10, 20, BROKEN",
    "30, 40, 50, BROKEN",
    // at least 30 g, as the fibre of one food is unknown
    "30+, 20, , MET",
    "30+, 30, , MET",
    "30+, 31, , UNKNOWN",
    "30+, , 40, UNKNOWN",
    "30+, , 29, BROKEN",
    "30+, 20, 40, UNKNOWN",
    "30+, 0, , MET",
    // wholly unknown
    "0+, 0, , MET",
    "0+, 1, , UNKNOWN",
    "0+, , 0, UNKNOWN",
    "0+, , 1000, UNKNOWN",
  })
  void aLimitIsMetOrBrokenOnlyWhenTheUnknownCannotChangeIt(
      String fibre, Double atLeast, Double atMost, Outcome outcome) {
    if (fibre.endsWith("+")) {
      bench.forget("seeds", Nutrient.FIBRE);
    }
    Worksheet sheet =
        fibre.equals("30")
            ? bench.sheet("lupin-flour: 100 g")
            : fibre.equals("0+")
                ? bench.sheet("seeds: 10 g")
                : bench.sheet("lupin-flour: 100 g", "seeds: 10 g");
    Result result = check(limit(Figure.FIBRE, Basis.BATCH, atLeast, atMost), sheet);
    assertThat(result.outcome()).isEqualTo(outcome);
    assertThat(result.value()).isEqualTo(sheet.figure(Figure.FIBRE, Basis.BATCH));
    assertThat(result.because()).isEmpty();
  }

  @Test
  void anUpperBoundCanMeetAnUpperLimit() {
    bench.forget("seeds", Nutrient.FIBRE);
    Worksheet sheet = bench.sheet("seeds: 10 g");
    assertThat(sheet.figure(Figure.NET_CARBOHYDRATE, Basis.BATCH)).hasToString("at most 2");
    assertThat(outcome(limit(Figure.NET_CARBOHYDRATE, Basis.BATCH, null, 2.0), sheet))
        .isEqualTo(Outcome.MET);
    assertThat(outcome(limit(Figure.NET_CARBOHYDRATE, Basis.BATCH, null, 1.9), sheet))
        .isEqualTo(Outcome.UNKNOWN);
    assertThat(outcome(limit(Figure.NET_CARBOHYDRATE, Basis.BATCH, 3.0, null), sheet))
        .isEqualTo(Outcome.BROKEN);
  }

  @Test
  void aLimitThatIsMissedByArithmeticOnlyIsMet() {
    bench.add(Bench.with(bench.find("salt").orElseThrow(), Nutrient.SODIUM, Quantity.known(0.1)));
    // 0.1 + 0.1 + 0.1 is a little more than 0.3 in binary arithmetic
    Worksheet sheet = bench.sheet("salt: 100 g", "salt: 100 g", "salt: 100 g");
    assertThat(sheet.figure(Figure.SODIUM, Basis.BATCH).low()).isGreaterThan(0.3);
    assertThat(outcome(limit(Figure.SODIUM, Basis.BATCH, null, 0.3), sheet))
        .isEqualTo(Outcome.MET);
    assertThat(outcome(limit(Figure.SODIUM, Basis.BATCH, null, 0.2999), sheet))
        .isEqualTo(Outcome.BROKEN);
  }

  @Test
  void figuresOfTheWholeFormulaCanBeLimited() {
    Worksheet sheet =
        bench.sheet(Bench.formula(Yield.ofPieces(4), "lupin-flour: 100 g", "water: 80 g"));
    assertThat(outcome(limit(Figure.LIQUID_RATIO, Basis.PIECE, 0.7, 0.9), sheet))
        .isEqualTo(Outcome.MET);
    assertThat(outcome(limit(Figure.DOUGH_PER_PIECE, Basis.PIECE, 50.0, null), sheet))
        .isEqualTo(Outcome.BROKEN);
    assertThat(outcome(limit(Figure.BAKED_PER_PIECE, Basis.PIECE, 40.0, null), sheet))
        .isEqualTo(Outcome.UNKNOWN);
  }

  @Test
  void anAllergenIsMetOnlyWhenTheAllergensOfEveryFoodAreKnown() {
    Goal goal = goal(List.of(), List.of("eggs"), List.of());
    assertThat(GoalCheck.of(goal, bench.sheet("lupin-flour: 100 g")).outcome())
        .isEqualTo(Outcome.MET);

    Result broken = only(goal, bench.sheet("egg: 50 g", "seeds: 1 g", "egg: 20 g"));
    assertThat(broken.rule()).isEqualTo("no eggs");
    assertThat(broken.outcome()).isEqualTo(Outcome.BROKEN);
    assertThat(broken.because()).containsExactly("egg");

    Result missing = only(goal, bench.sheet("lupin-flour: 100 g", "unheard-of: 1 g"));
    assertThat(missing.outcome()).isEqualTo(Outcome.UNKNOWN);
    assertThat(missing.because()).containsExactly("unheard-of");

    bench.add(Bench.withoutAllergenList(bench.find("seeds").orElseThrow()));
    Result unlisted = only(goal, bench.sheet("seeds: 1 g", "seeds: 2 g"));
    assertThat(unlisted.outcome()).isEqualTo(Outcome.UNKNOWN);
    assertThat(unlisted.because()).containsExactly("seeds");
    assertThat(only(goal, bench.sheet("seeds: 1 g", "egg: 1 g")).outcome())
        .isEqualTo(Outcome.BROKEN);
  }

  @Test
  void aLineOfNothingStillBreaksAnAllergenRule() {
    Goal goal = goal(List.of(), List.of("eggs"), List.of("egg"));
    assertThat(GoalCheck.of(goal, bench.sheet("seeds: 1 g", "egg: 0 g")).results())
        .extracting(Result::outcome)
        .containsOnly(Outcome.BROKEN);
  }

  @ParameterizedTest
  @CsvSource({"WHEAT", "RYE", "BARLEY", "OATS"})
  void glutenForbidsEveryCerealThatContainsIt(Allergen cereal) {
    bench.add(Bench.food("flour", FoodKind.DRY, 0, 0, 0, 0, 0, 0, cereal));
    Result result = only(goal(List.of(), List.of("gluten"), List.of()), bench.sheet("flour: 1 g"));
    assertThat(result.outcome()).isEqualTo(Outcome.BROKEN);
  }

  @Test
  void aFoodIsForbiddenByItsSlugWhetherThePantryHasItOrNot() {
    Goal goal = goal(List.of(), List.of(), List.of("unheard-of"));
    assertThat(only(goal, bench.sheet("seeds: 1 g")).outcome()).isEqualTo(Outcome.MET);
    Result broken = only(goal, bench.sheet("unheard-of: 1 cup"));
    assertThat(broken.rule()).isEqualTo("no unheard-of");
    assertThat(broken.outcome()).isEqualTo(Outcome.BROKEN);
    assertThat(broken.because()).containsExactly("unheard-of");
  }

  @Test
  void oneBrokenRuleBreaksTheGoalAndElseOneUnknownLeavesItOpen() {
    Limit met = limit(Figure.PROTEIN, Basis.BATCH, 1.0, null);
    Limit broken = limit(Figure.PROTEIN, Basis.BATCH, null, 1.0);
    Limit open = limit(Figure.PROTEIN, Basis.BAKED_100_G, 1.0, null);
    Worksheet sheet = bench.sheet("lupin-flour: 100 g");
    assertThat(GoalCheck.of(goal(List.of(met), List.of(), List.of()), sheet).outcome())
        .isEqualTo(Outcome.MET);
    assertThat(GoalCheck.of(goal(List.of(met, open), List.of(), List.of()), sheet).outcome())
        .isEqualTo(Outcome.UNKNOWN);
    assertThat(
            GoalCheck.of(goal(List.of(open, broken, met), List.of(), List.of()), sheet).outcome())
        .isEqualTo(Outcome.BROKEN);
    assertThat(GoalCheck.of(goal(List.of(), List.of(), List.of()), sheet).outcome())
        .isEqualTo(Outcome.MET);
  }

  @Test
  void resultsStandInTheGoalsOrder() {
    Goal goal =
        goal(
            List.of(
                limit(Figure.PROTEIN, Basis.PIECE, 8.0, null),
                limit(Figure.FAT, Basis.PIECE, null, 9.0)),
            List.of("milk", "eggs"),
            List.of("seeds"));
    assertThat(GoalCheck.of(goal, bench.sheet("water: 1 g")).results())
        .extracting(Result::rule)
        .containsExactly(
            "at least 8 g protein a piece",
            "at most 9 g fat a piece",
            "no milk",
            "no eggs",
            "no seeds");
  }

  private static Outcome outcome(Limit limit, Worksheet sheet) {
    return check(limit, sheet).outcome();
  }

  private static Result check(Limit limit, Worksheet sheet) {
    return only(goal(List.of(limit), List.of(), List.of()), sheet);
  }

  private static Result only(Goal goal, Worksheet sheet) {
    List<Result> results = GoalCheck.of(goal, sheet).results();
    assertThat(results).hasSize(1);
    return results.get(0);
  }

  private static Limit limit(Figure figure, Basis basis, Double atLeast, Double atMost) {
    return new Limit(figure, basis, bound(atLeast), bound(atMost), Extras.NONE);
  }

  private static OptionalDouble bound(Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private static Goal goal(List<Limit> limits, List<String> allergens, List<String> foods) {
    return new Goal(
        "low-carbohydrate",
        "low carbohydrate",
        Optional.empty(),
        limits,
        allergens,
        foods,
        Optional.empty(),
        Extras.NONE);
  }
}
