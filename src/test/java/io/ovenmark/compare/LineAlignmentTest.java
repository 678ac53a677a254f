package io.ovenmark.compare;

import static io.ovenmark.compare.Bench.FOODS;
import static io.ovenmark.compare.Bench.compare;
import static io.ovenmark.compare.Bench.formula;
import static io.ovenmark.compare.Bench.sheet;
import static io.ovenmark.compare.ComparisonAssert.assertThatComparison;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.HouseholdMeasure;
import io.ovenmark.worksheet.Policy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineAlignmentTest {
  @Test
  void linesBelongTogetherByTheirIds() {
    assertThatComparison(
            compare(
                formula("lupin-flour 150 g", "water 210 g", "salt 4 g"),
                formula("lupin-flour 150 g", "water 188 g", "psyllium 10 g")))
        .hasLines("same lupin-flour", "changed water", "removed salt", "added psyllium")
        .hasDelta("water", -22)
        .hasDelta("salt", -4)
        .hasDelta("psyllium", 10)
        .hasDelta("lupin-flour", 0);
  }

  @Test
  void anotherFoodInTheSameLineIsAReplacement() {
    assertThatComparison(compare(formula("fat=butter 30 g"), formula("fat=olive-oil 25 g")))
        .hasLines("replaced fat")
        .replaces("butter, unsalted", "fat")
        .hasDelta("fat", -5);
  }

  @Test
  void linesOfTheSameFoodBelongTogetherWhenTheIdsAreOthers() {
    assertThatComparison(
            compare(
                formula("a=water 100 g", "b=lupin-flour 80 g", "c=water 20 g"),
                formula("x=lupin-flour 90 g", "y=water 90 g", "z=water 20 g")))
        .hasLines("changed x", "changed y", "same z");
  }

  @Test
  void aFlourForAFlourIsAReplacementWhereverItStands() {
    assertThatComparison(
            compare(
                formula("bread-flour 200 g *", "water 120 g", "salt 4 g"),
                formula("water 160 g", "salt 4 g", "lupin-flour 150 g *")))
        .replaces("bread flour", "lupin-flour")
        .hasLines("changed water", "same salt", "replaced lupin-flour");
  }

  @Test
  void aFatForAFatInTheSamePlaceIsAReplacement() {
    assertThatComparison(
            compare(
                formula("water 120 g", "butter 30 g", "salt 4 g"),
                formula("water 120 g", "olive-oil 25 g", "salt 4 g")))
        .hasLines("same water", "replaced olive-oil", "same salt");
  }

  @Test
  void aWetProteinForADryOneIsAReplacementByDryMatter() {
    assertThatComparison(
            compare(
                formula("water 120 g", "egg-white 80 g", "salt 4 g"),
                formula("water 120 g", "whey-isolate 14 g", "salt 4 g")))
        .hasLines("same water", "replaced whey-isolate", "same salt");
  }

  @ParameterizedTest(name = "{2}")
  @CsvSource({
    "psyllium 10 g, salt 10 g, another role",
    "butter 30 g, olive-oil 130 g, more than four times as much",
    "butter 30 g, unheard-of 30 g, an unknown food",
    "butter 30 g, olive-oil 2 tbsp, an unknown mass",
    "bread-flour 30 g *, lupin-flour 30 g, only one is a flour",
    "lupin-flour 30 g, water 30 g, another kind"
  })
  void whatCannotStandInIsRemovedAndAdded(String from, String to, String why) {
    Comparison comparison = compare(formula("egg-white 50 g", from), formula("egg-white 50 g", to));
    assertThat(comparison.lines())
        .extracting(LineComparison::change)
        .containsExactly(LineChange.SAME, LineChange.REMOVED, LineChange.ADDED);
  }

  @Test
  void aFatElsewhereIsNoReplacement() {
    assertThatComparison(
            compare(
                formula("butter 30 g", "water 120 g", "salt 4 g", "lupin-flour 90 g"),
                formula("water 120 g", "salt 4 g", "olive-oil 25 g", "lupin-flour 90 g")))
        .hasLines(
            "removed butter", "same water", "same salt", "added olive-oil", "same lupin-flour");
  }

  @Test
  void removedLinesStandWhereTheyStood() {
    assertThatComparison(
            compare(
                formula("salt 1 g", "psyllium 20 g", "water 100 g", "sugar 5 g", "olive-oil 9 g"),
                formula("water 100 g", "olive-oil 9 g")))
        .hasLines(
            "removed salt", "removed psyllium", "same water", "removed sugar", "same olive-oil");
  }

  @Test
  void theFewestMovedLinesAreMarked() {
    assertThatComparison(
            compare(
                formula("salt 1 g", "psyllium 20 g", "water 100 g"),
                formula("psyllium 20 g", "water 100 g", "salt 1 g")))
        .hasLines("same psyllium", "same water", "same salt")
        .moved("salt");
  }

  @ParameterizedTest
  @CsvSource({
    "210 g, 0.21 kg, REWRITTEN",
    "210 g, 210.0 g, REWRITTEN",
    "1 1/2 oz, 42.5 g, REWRITTEN",
    "210 g, 210 g, SAME",
    "210 g, 210.1 g, CHANGED",
    "210 g, 7 oz, CHANGED",
    "1 cup, 1 cup, SAME",
    "1 cup, 2 cups, CHANGED"
  })
  void anAmountWrittenDifferentlyIsNoChangeOfWeight(String from, String to, LineChange change) {
    LineComparison line = compare(formula("water " + from), formula("water " + to)).lines().get(0);
    assertThat(line.change()).isEqualTo(change);
  }

  @Test
  void aHouseholdWeightThatChangedChangesTheMassOfAnUnchangedLine() {
    var heavier = Bench.withHousehold(FOODS.get("psyllium"), new HouseholdMeasure("tbsp", 6));
    Comparison comparison =
        Comparison.between(
            Side.of("bun@5", sheet(formula("psyllium 2 tbsp"))),
            Side.of("bun@7", sheet(formula("psyllium 2 tbsp"), Bench.with(heavier), Policy.USUAL)));
    assertThatComparison(comparison).hasLines("changed psyllium").hasDelta("psyllium", 2);
    assertThat(comparison.changes()).isEmpty();
    assertThat(comparison.foodDataChanges()).hasSize(1);
  }

  @Test
  void anUnknownMassMakesTheDifferenceUnknown() {
    LineComparison line = compare(formula("water 1 cup"), formula("water 100 g")).lines().get(0);
    assertThat(line.from()).isEqualTo(Quantity.UNKNOWN);
    assertThat(line.delta().isKnown()).isFalse();
    assertThat(line.percentChange()).isEmpty();
  }

  @Test
  void percentAndBakersPercentageAreTold() {
    LineComparison line =
        compare(
                formula("lupin-flour 200 g *", "water 100 g"),
                formula("lupin-flour 200 g *", "water 150 g"))
            .lines()
            .get(1);
    assertThat(line.percentChange()).hasValue(50);
    assertThat(line.fromBakersPercent()).isEqualTo(Quantity.known(50));
    assertThat(line.toBakersPercent()).isEqualTo(Quantity.known(75));
  }

  @Test
  void formulasWithoutLinesCompare() {
    assertThatComparison(compare(formula(), formula())).hasLines().hasNoCauses();
    assertThatComparison(compare(formula(), formula("water 9 g"))).hasLines("added water");
  }
}
