package io.ovenmark.compare;

import static io.ovenmark.compare.Bench.FOODS;
import static io.ovenmark.compare.Bench.compare;
import static io.ovenmark.compare.Bench.formula;
import static io.ovenmark.compare.Bench.goal;
import static io.ovenmark.compare.Bench.oven;
import static io.ovenmark.compare.Bench.sheet;
import static io.ovenmark.compare.ComparisonAssert.assertThatComparison;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.NetCarbohydrate;
import io.ovenmark.worksheet.Policy;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the opening sentence says, case by case. */
class SummarySentenceTest {
  private static final Formula BUN =
      oven(
              formula(
                  "lupin-flour 150 g *",
                  "psyllium 24 g",
                  "egg-white 80 g",
                  "water 210 g",
                  "salt 4 g"),
              "190 °C",
              24)
          .withMethod(List.of("Mix the dry foods.", "Rest 20 min.", "Bake."));

  private static Formula set(String id, String amount) {
    return BUN.withLines(
        BUN.lines().stream()
            .map(line -> line.id().equals(id) ? line.withAmount(Amount.parse(amount)) : line)
            .toList());
  }

  private static Formula without(String id) {
    return BUN.withLines(BUN.lines().stream().filter(line -> !line.id().equals(id)).toList());
  }

  private static Formula plus(Formula to, String line) {
    List<Line> lines = new ArrayList<>(to.lines());
    lines.addAll(formula(line).lines());
    return to.withLines(lines);
  }

  static Stream<Arguments> cases() {
    List<Line> turned = new ArrayList<>(BUN.lines());
    Collections.swap(turned, 3, 4);
    return Stream.of(
        arguments("nothing", BUN, "Nothing that is weighed, done or baked differs."),
        arguments("one line", set("water", "188 g"), "Water down 22 g: liquid ratio 1.63 → 1.51."),
        arguments(
            "a line that weighs the same after another writing",
            set("water", "0.21 kg"),
            "Nothing that is weighed, done or baked differs; only the way of writing water"
                + " differs."),
        arguments(
            "an amount that cannot be resolved",
            set("salt", "1 tsp"),
            "Table salt 4 g → 1 tsp, of unknown weight: liquid ratio 1.63 → at most 1.67."),
        arguments(
            "part of a food for another of the same role",
            plus(set("egg-white", "40 g"), "whey-isolate 14 g"),
            "Half the egg white gave way to whey isolate: liquid ratio 1.63 → 1.3,"
                + " net carbohydrate 5.66 → 6.29 g a piece."),
        arguments(
            "all of a food for another of the same role",
            plus(without("egg-white"), "whey-isolate 14 g"),
            "Egg white gave way to whey isolate: liquid ratio 1.63 → 1.09,"
                + " net carbohydrate 5.66 → 6.25 g a piece."),
        arguments(
            "a food of another role is told apart",
            plus(without("egg-white"), "psyllium-2=psyllium 8 g"),
            "Egg white left out (80 g) and psyllium husk (psyllium-2) new (8 g):"
                + " liquid ratio 1.63 → 1.13, net carbohydrate 5.66 → 5.63 g a piece."),
        arguments(
            "the same line with another food",
            BUN.withLines(
                BUN.lines().stream()
                    .map(line -> line.id().equals("psyllium") ? line.withFood("sugar") : line)
                    .toList()),
            "Psyllium husk gave way to granulated sugar: net carbohydrate 5.66 → 9.46 g a piece."),
        arguments(
            "many lines",
            plus(
                    formula(
                        "lupin-flour 140 g *",
                        "psyllium 30 g",
                        "egg-white 70 g",
                        "water 250 g",
                        "salt 5 g"),
                    "olive-oil 12 g")
                .withBake(BUN.bake())
                .withMethod(BUN.method()),
            "Water up 40 g, olive oil new (12 g), lupin flour down 10 g and 3 more:"
                + " liquid ratio 1.63 → 1.83, net carbohydrate 5.66 → 5.34 g a piece."),
        arguments(
            "a batch in proportion",
            formula(
                    "lupin-flour 300 g *",
                    "psyllium 48 g",
                    "egg-white 160 g",
                    "water 420 g",
                    "salt 8 g")
                .withYield(Yield.ofPieces(12))
                .withBake(BUN.bake())
                .withMethod(BUN.method()),
            "All lines × 2 and pieces 6 → 12."),
        arguments(
            "only the yield",
            BUN.withYield(Yield.ofPieces(7)),
            "Pieces 6 → 7: net carbohydrate 5.66 → 4.86 g a piece."),
        arguments(
            "another form of yield",
            BUN.withYield(new Yield(Optional.empty(), OptionalDouble.of(78), OptionalDouble.of(2))),
            "Pieces no longer 6, dough a piece now 78 g and handling loss now 2 %."),
        arguments(
            "only the oven",
            oven(BUN, "205 °C", 21),
            "Oven temperature 190 → 205 °C and oven time 24 → 21 min."),
        arguments(
            "the same heat in the other scale",
            oven(BUN, "374 °F", 24),
            "Nothing that is weighed, done or baked differs; only the way of writing the oven"
                + " temperature differs."),
        arguments(
            "only the method",
            BUN.withMethod(List.of("Mix the dry foods.", "Rest 30 min.", "Bake.")),
            "Method: step 2 reworded."),
        arguments(
            "only the order",
            BUN.withLines(turned),
            "Nothing that is weighed, done or baked differs; only the order of the lines"
                + " differs."),
        arguments(
            "only the storage",
            BUN.withStorage(Optional.of("Two days in a box.")),
            "Nothing that is weighed, done or baked differs; only the storage differs."),
        arguments(
            "only words",
            BUN.withDescription(Optional.of("For breakfast.")).withName("Bun"),
            "Nothing that is weighed, done or baked differs; only the name and the description"
                + " differ."),
        arguments(
            "a note on a line",
            BUN.withLines(
                BUN.lines().stream()
                    .map(
                        line ->
                            line.id().equals("water") ? line.withNote(Optional.of("35 °C")) : line)
                    .toList()),
            "The note on water differs."),
        arguments(
            "a flour mark",
            BUN.withLines(
                BUN.lines().stream()
                    .map(line -> line.id().equals("psyllium") ? line.withFlour(true) : line)
                    .toList()),
            "Psyllium husk now counts as flour."),
        arguments(
            "a food that the pantry does not have",
            plus(BUN, "unheard-of 10 g"),
            "Unheard-of new (10 g): liquid ratio 1.63 → between 1.54 and 1.69,"
                + " net carbohydrate a piece 5.66 → at least 5.66 g."),
        arguments(
            "everything gone",
            Formula.named("Seeded lupin bun"),
            "Water left out (210 g), lupin flour left out (150 g), egg white left out (80 g), 2"
                + " more and pieces no longer 6: liquid ratio 1.63 → unknown, net carbohydrate a"
                + " piece 5.66 g → unknown. Oven temperature no longer 190 °C and oven time no"
                + " longer 24 min. Method removed, 3 steps."));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void theSummarySaysWhatMattersInPlainWords(String name, Formula to, String sentence) {
    assertThatComparison(compare(BUN, to)).says(sentence).addsUp();
  }

  @Test
  void aLimitThatIsNowKeptIsTold() {
    Formula drier = plus(set("lupin-flour", "95 g"), "whey-isolate 14 g");
    assertThatComparison(compare(BUN, drier, goal(4)))
        .says(
            "Lupin flour down 55 g and whey isolate new (14 g): liquid ratio 1.63 → 2.12,"
                + " net carbohydrate 5.66 → 4.38 g a piece, still outside the goal.");
    assertThatComparison(compare(BUN, drier, goal(5)))
        .says(
            "Lupin flour down 55 g and whey isolate new (14 g): liquid ratio 1.63 → 2.12,"
                + " net carbohydrate 5.66 → 4.38 g a piece, now inside the goal.");
    assertThatComparison(compare(drier, BUN, goal(5)))
        .says(
            "Lupin flour up 55 g and whey isolate left out (14 g): liquid ratio 2.12 → 1.63,"
                + " net carbohydrate 4.38 → 5.66 g a piece, now outside the goal.");
  }

  @Test
  void anAllergenThatCameInIsTold() {
    assertThatComparison(compare(BUN, plus(BUN, "whey-isolate 14 g"), goal(9, "milk")))
        .says(
            "Whey isolate new (14 g): liquid ratio 1.63 → 1.51,"
                + " net carbohydrate 5.66 → 6.34 g a piece. Now broken: no milk (whey isolate).");
    assertThatComparison(compare(BUN, without("egg-white"), goal(9, "eggs")))
        .says(
            "Egg white left out (80 g): liquid ratio 1.63 → 1.18,"
                + " net carbohydrate 5.66 → 5.57 g a piece. Now kept: no eggs.");
  }

  @Test
  void whatAnUnknownFoodLeavesOpenIsTold() {
    assertThatComparison(compare(BUN, plus(BUN, "mystery-meal 30 g"), goal(7, "milk")))
        .says(
            "Mystery meal new (30 g): liquid ratio 1.63 → 1.39, net carbohydrate a piece"
                + " 5.66 → between 5.66 and 7.69 g, no longer certain to be inside the goal.");
  }

  @Test
  void differentGoalsAreTold() {
    Comparison comparison =
        Comparison.between(Side.of("bun@5", sheet(BUN)), Bench.held("bun@7", BUN, goal(9)));
    assertThatComparison(comparison)
        .says(
            "Nothing that is weighed, done or baked differs."
                + " Held to different goals: no goal → “low-carbohydrate bun”.");
    assertThatComparison(
            Comparison.between(
                Bench.held("bun@5", BUN, goal(9)), Bench.held("bun@7", BUN, goal(7))))
        .says(
            "Nothing that is weighed, done or baked differs."
                + " The rules of the goal “low-carbohydrate bun” differ.");
  }

  @Test
  void aFoodThatChangedUnderAnUnchangedFormulaIsTold() {
    Food food = Bench.withFigure(FOODS.get("lupin-flour"), Nutrient.FIBRE, 24);
    Comparison comparison =
        Comparison.between(
            Side.of("bun@5", sheet(BUN)),
            Side.of("bun@7", sheet(BUN, Bench.with(food), Policy.USUAL)));
    assertThatComparison(comparison)
        .says(
            "The food changed, not the formula (lupin flour):"
                + " net carbohydrate 5.66 → 4.39 g a piece.")
        .addsUp();
  }

  @Test
  void anotherRuleIsTold() {
    Policy half = new Policy(EnergyRule.EU_FACTORS, new NetCarbohydrate(0.5, 1, 1));
    Comparison comparison =
        Comparison.between(Side.of("bun@5", sheet(BUN)), Side.of("bun@7", sheet(BUN, FOODS, half)));
    assertThatComparison(comparison)
        .says(
            "Energy by EU factors instead of the foods' own figures and net carbohydrate as"
                + " carbohydrate − 50 % of fibre − polyols − allulose instead of carbohydrate −"
                + " fibre − polyols − allulose: net carbohydrate 5.66 → 9.63 g a piece.");
  }

  @Test
  void twoLinesOfOneFoodAreToldApartByTheirIds() {
    Formula soaked = formula("soak=water 50 g", "dough=water 100 g", "lupin-flour 100 g");
    Formula more = formula("soak=water 60 g", "dough=water 90 g", "lupin-flour 100 g");
    assertThatComparison(compare(soaked, more))
        .says("Water (soak) up 10 g and water (dough) down 10 g.");
  }

  @Test
  void namesInAnyScriptAreCapitalisedAndNothingElse() {
    Food food = FOODS.get("lupin-flour");
    food = Bench.withFigure(food, food.slug(), "αλεύρι, λούπινο", Nutrient.ASH, 3.0);
    Formula less = set("lupin-flour", "140 g");
    Map<String, Food> foods = Bench.with(food);
    assertThatComparison(
            Comparison.between(
                Side.of("bun@5", sheet(BUN, foods, Policy.USUAL)),
                Side.of("bun@7", sheet(less, foods, Policy.USUAL))))
        .says(
            "Αλεύρι down 10 g: liquid ratio 1.63 → 1.73,"
                + " net carbohydrate 5.66 → 5.31 g a piece.");
  }
}
