package io.ovenmark.lever;

import static io.ovenmark.worksheet.Bench.food;
import static io.ovenmark.worksheet.Bench.formula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.goal.LimitText;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Bench;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReplacementsTest {
  private static final Yield SIX = Yield.ofPieces(6);

  private static final Food SOY =
      food("soy-flour", FoodKind.DRY, 50, 2, 34, 17, 8, 330, Allergen.SOYBEANS);
  private static final Food BUCKWHEAT =
      food("buckwheat-flour", FoodKind.DRY, 12, 3, 71, 10, 11, 335);
  private static final Food WHEAT =
      food("wheat-flour", FoodKind.DRY, 12, 2, 72, 2, 13, 360, Allergen.WHEAT);
  private static final Food SHELLS = food("shells", FoodKind.DRY, 0.5, 1, 80, 70, 8, 200);
  private static final Food MILK =
      food("milk", FoodKind.LIQUID, 3, 4, 5, 0, 88, 61, Allergen.MILK);
  private static final Food UNLABELLED =
      Bench.withoutAllergenList(
          Bench.with(
              food("unlabelled-flour", FoodKind.DRY, 0, 5, 30, 20, 10, 300),
              Nutrient.PROTEIN,
              Quantity.UNKNOWN));
  private static final Food SALT = Bench.with(
      food("sea-salt", FoodKind.DRY, 0, 0, 0, 0, 0, 0), Nutrient.SODIUM, Quantity.known(38_000));

  private final Bench bench = new Bench();

  /** Lupin flour 150 g: 60 g protein, 135 g dry mass, 15 g water, 15 g fat. */
  private static Formula bun() {
    return formula(
        SIX, "lupin-flour: 150 g", "seeds: 46 g", "water: 180 g", "egg: 1 large", "oil: 20 g");
  }

  private Replacements ask(Kept kept, Optional<Goal> goal, Food... foods) {
    return Replacements.of(
        bench.sheet(bun()), "lupin-flour", kept, goal, standIns(foods), Readings.FINE);
  }

  private static List<StandIn> standIns(Food... foods) {
    return Stream.of(foods).map(each -> new StandIn(each, true)).toList();
  }

  private static Goal goal(List<String> limits, List<String> allergens, List<String> foods) {
    return new Goal(
        "bun",
        "Bun",
        Optional.empty(),
        limits.stream().map(LimitText::read).toList(),
        allergens,
        foods,
        Optional.empty(),
        Extras.NONE);
  }

  private static Replacement only(Replacements found) {
    assertThat(found.answers()).hasSize(1);
    return found.answers().get(0);
  }

  /** By hand: 60 ÷ 0.50, 135 ÷ 0.92, 15 ÷ 0.02, 15 ÷ 0.08 and 150 g. */
  @ParameterizedTest
  @CsvSource({"PROTEIN, 120", "DRY_MASS, 146.739130435", "FAT, 750", "WATER, 187.5", "MASS, 150"})
  void theAmountKeepsTheChosenFigure(Kept kept, double grams) {
    Replacement answer = only(ask(kept, Optional.empty(), SOY));

    assertThat(answer.grams()).isCloseTo(grams, within(1e-6));
    assertThat(Replacements.holds(answer.after().line("lupin-flour").orElseThrow(), kept).low())
        .isCloseTo(
            Replacements.holds(bench.sheet(bun()).line("lupin-flour").orElseThrow(), kept).low(),
            within(1e-9));
    assertThat(answer.after().line("lupin-flour").orElseThrow().line().food())
        .isEqualTo("soy-flour");
  }

  @Test
  void whatIsWeighedIsAsFineAsTheScale() {
    Replacements found =
        Replacements.of(
            bench.sheet(bun()), "lupin-flour", Kept.DRY_MASS, Optional.empty(), standIns(SOY), 5);

    assertThat(only(found).weigh()).hasToString("145 g");
    assertThat(only(found).weighed().batchGrams().low()).isEqualTo(145 + 46 + 180 + 50 + 20.0);
  }

  @Test
  void everythingThatMovesIsTold() {
    Replacements found = ask(Kept.PROTEIN, Optional.empty(), SOY);
    Replacement answer = only(found);

    assertThat(answer.moves(found.before(), Basis.PIECE))
        .extracting(FigureMove::figure)
        .contains(
            Figure.LIQUID_RATIO,
            Figure.DOUGH_MOISTURE,
            Figure.BATCH_MASS,
            Figure.NET_CARBOHYDRATE,
            Figure.FAT)
        .doesNotContain(Figure.PROTEIN, Figure.PIECES);
    assertThat(answer.moves(found.before(), Basis.BATCH))
        .extracting(FigureMove::figure)
        .contains(Figure.NET_CARBOHYDRATE)
        .doesNotContain(Figure.BATCH_MASS);
    assertThat(answer.gained(found.before())).containsExactly(Allergen.SOYBEANS);
    assertThat(answer.lost(found.before())).containsExactly(Allergen.LUPIN);
  }

  @Test
  void foodsThatAreNotProposedAreNamedWithTheReason() {
    Goal goal = goal(List.of(), List.of("gluten"), List.of("buckwheat-flour"));
    Replacements found =
        ask(
            Kept.PROTEIN, Optional.of(goal), SOY, WHEAT, BUCKWHEAT, UNLABELLED, SHELLS, SALT,
            bench.find("oil").orElseThrow());

    assertThat(found.answers()).extracting(each -> each.standIn().food()).containsExactly(SOY);
    assertThat(found.setAside())
        .extracting(each -> each.standIn().food().slug() + ": " + each.because())
        .containsExactly(
            "wheat-flour: contains wheat (gluten), which the goal Bun is without",
            "buckwheat-flour: the goal Bun is without buckwheat-flour",
            "unlabelled-flour: its protein is not known",
            "shells: it would take 12000 g for 150 g",
            "sea-salt: it has no protein",
            "oil: it has no protein");
    assertThat(found.setAside())
        .extracting(SetAside::why)
        .containsExactly(
            SetAside.Why.FORBIDDEN,
            SetAside.Why.FORBIDDEN,
            SetAside.Why.UNKNOWN,
            SetAside.Why.OUT_OF_PROPORTION,
            SetAside.Why.NOTHING,
            SetAside.Why.NOTHING);
  }

  @Test
  void saltCannotMakeUpTheMassOfAFlour() {
    Replacements found = ask(Kept.DRY_MASS, Optional.empty(), SALT);

    assertThat(found.answers()).isEmpty();
    assertThat(found.setAside().get(0).why()).isEqualTo(SetAside.Why.OTHER_WORK);
    assertThat(found.setAside().get(0).because())
        .isEqualTo("it is salt, and taste or strength decides its amount");
    assertThat(ReplacementSentences.summary(found, ShownUnits.AS_WRITTEN))
        .startsWith("No food of the pantry");
  }

  @Test
  void theSameKindComesFirstThenTheGoalThenTheLeastDisturbance() {
    Goal goal = goal(List.of("net carbohydrate at most 6 g a piece"), List.of(), List.of());
    Food meal = food("hemp-meal", FoodKind.DRY, 39, 11, 40, 31, 10, 300);
    Replacements found = ask(Kept.MASS, Optional.of(goal), MILK, WHEAT, SOY, meal);

    assertThat(found.answers())
        .extracting(each -> each.standIn().food().slug())
        .containsExactly("hemp-meal", "soy-flour", "wheat-flour", "milk");
    assertThat(found.answers()).extracting(Replacement::number).containsExactly(1, 2, 3, 4);
    assertThat(found.answers())
        .extracting(each -> each.goal().orElseThrow().outcome())
        .containsExactly(
            GoalCheck.Outcome.MET,
            GoalCheck.Outcome.MET,
            GoalCheck.Outcome.BROKEN,
            GoalCheck.Outcome.MET);
  }

  @Test
  void aFoodOfUnknownAllergensLeavesTheGoalOpen() {
    Goal goal = goal(List.of(), List.of("milk"), List.of());
    Replacement answer = only(ask(Kept.MASS, Optional.of(goal), UNLABELLED));

    assertThat(answer.goal().orElseThrow().outcome()).isEqualTo(GoalCheck.Outcome.UNKNOWN);
    assertThat(
            ReplacementSentences.of(
                ask(Kept.MASS, Optional.of(goal), UNLABELLED), answer, ShownUnits.AS_WRITTEN))
        .contains("150 g of unlabelled flour weighs as much as 150 g of lupin flour.")
        .contains("Whether the goal Bun is met is not known: no milk (unlabelled flour).")
        .contains("Its allergens are unknown.");
  }

  @Test
  void theSentenceSaysAmountMovesGoalAndAllergens() {
    Goal goal = goal(List.of("net carbohydrate at most 3 g a piece"), List.of(), List.of());
    Replacements found = ask(Kept.PROTEIN, Optional.of(goal), SOY);

    assertThat(ReplacementSentences.of(found, only(found), ShownUnits.AS_WRITTEN))
        .startsWith("120 g of soy flour has the protein of 150 g of lupin flour. Net carbohydrate a"
            + " piece 3.35 → 4.25 g, fat a piece")
        .contains("The goal Bun is missed, as before: at most 3 g net carbohydrate a piece (4.25 g)")
        .endsWith("It brings soybeans. The formula no longer contains lupin.");
    assertThat(ReplacementSentences.note(found, only(found)))
        .isEqualTo("Lupin flour 150 g → soy flour 120 g, same protein");
    assertThat(ReplacementSentences.keeps(found, only(found), ShownUnits.AS_WRITTEN))
        .isEqualTo("150 g × 40 ÷ 50 = 120 g, by the protein in 100 g of each.");
  }

  @Test
  void structureIsToldInTradeWords() {
    Replacements found =
        Replacements.of(
            bench.sheet(bun()),
            "egg",
            Kept.WATER,
            Optional.empty(),
            standIns(MILK),
            Readings.FINE);

    assertThat(only(found).structure())
        .singleElement()
        .asString()
        .startsWith("Egg sets the crumb")
        .endsWith("(common practice, no source).");
    assertThat(only(ask(Kept.MASS, Optional.empty(), WHEAT)).structure())
        .singleElement()
        .asString()
        .startsWith("Gluten makes the dough elastic");
  }

  @Test
  void theLineKeepsItsIdPlaceAndMark() {
    Formula before =
        formula(SIX, "water: 10 g", "lupin-flour: 150 g").withLines(
            formula(SIX, "water: 10 g", "lupin-flour: 150 g").lines().stream()
                .map(line -> line.withFlour(true))
                .toList());
    Replacements found =
        Replacements.of(
            bench.sheet(before),
            "lupin-flour",
            Kept.MASS,
            Optional.empty(),
            standIns(SOY),
            Readings.FINE);

    assertThat(only(found).after().formula().lines().get(1).id()).isEqualTo("lupin-flour");
    assertThat(only(found).after().formula().lines().get(1).flour()).isTrue();
    assertThat(only(found).after().formula().lines().get(0)).isEqualTo(before.lines().get(0));
  }

  @Test
  void whatCannotBeKeptIsRefusedWithARemedy() {
    Worksheet sheet = bench.sheet(bun());
    Worksheet odd = bench.sheet(formula(SIX, "lupin-flour: 2 cups", "seeds: 0 g", "gone: 5 g"));

    refused(sheet, "butter", Kept.MASS, "There is no line \"butter\"", "lupin-flour");
    refused(sheet, "water", Kept.PROTEIN, "There is no protein in water", "Keep water instead");
    refused(odd, "lupin-flour", Kept.MASS, "weighs an unknown mass", "in grams");
    refused(odd, "seeds", Kept.MASS, "weighs nothing", "in grams");
    refused(odd, "gone", Kept.MASS, "has no food \"gone\"", "Add the food");
    bench.add(UNLABELLED);
    refused(
        bench.sheet(formula(SIX, "unlabelled-flour: 5 g")), "unlabelled-flour", Kept.PROTEIN,
        "The protein of unlabelled flour is not known", "Keep its mass");
  }

  private static void refused(
      Worksheet sheet, String line, Kept kept, String sentence, String remedy) {
    assertThatThrownBy(
            () ->
                Replacements.of(
                    sheet, line, kept, Optional.empty(), standIns(SOY), Readings.FINE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(sentence)
        .hasMessageContaining(remedy);
  }

  @ParameterizedTest
  @CsvSource({
    "protein, PROTEIN", "dry, DRY_MASS", "Dry mass, DRY_MASS", "moisture, WATER", " fat , FAT",
    "water, WATER", "mass, MASS"
  })
  void whatIsKeptIsReadFromWords(String text, Kept kept) {
    assertThat(Kept.read(text)).isEqualTo(kept);
  }

  @Test
  void whatIsUsuallyKeptFollowsFromTheFood() {
    assertThat(Kept.usual(SOY)).isEqualTo(Kept.DRY_MASS);
    assertThat(Kept.usual(MILK)).isEqualTo(Kept.WATER);
    assertThat(Kept.usual(bench.find("oil").orElseThrow())).isEqualTo(Kept.FAT);
    assertThat(Kept.usual(Bench.with(SOY, Nutrient.WATER, Quantity.UNKNOWN)))
        .isEqualTo(Kept.MASS);
    assertThatThrownBy(() -> Kept.read("taste")).hasMessageContaining("protein, dry, fat");
  }
}
