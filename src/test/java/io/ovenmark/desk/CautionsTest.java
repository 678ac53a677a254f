package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Bench;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sources: 71 °C (160 °F) for egg dishes, USDA Food Safety and Inspection Service, second hand; raw
 * flour and xylitol, FDA consumer updates, second hand; more than 10 % polyols, Regulation (EU) No
 * 1169/2011, Annex III, 2.4, read; lupin and peanut, other tree nuts: from memory.
 */
class CautionsTest {
  private final Bench bench = new Bench();

  private static List<String> keys(Worksheet sheet) {
    return Cautions.keyed(sheet, List.of(), ShownUnits.AS_WRITTEN).stream()
        .map(Caution::key)
        .toList();
  }

  private static Food brings(String slug, Allergen... allergens) {
    return Bench.food(slug, FoodKind.DRY, 10, 1, 10, 5, 5, 100, allergens);
  }

  private static Food sweetener(double polyols, String kind) {
    Food food =
        Bench.with(
            Bench.food("sweetener", FoodKind.DRY, 0, 0, 100, 0, 0, 0),
            Nutrient.POLYOLS,
            Quantity.known(polyols));
    return kind == null ? food : Bench.withPolyol(food, kind);
  }

  @Test
  void whatIsAlwaysSaidDefersToThoseWhoTreat() {
    List<String> cautions = Cautions.of(bench.sheet("water: 100 g"));

    assertThat(cautions).hasSize(1);
    assertThat(cautions.get(0)).contains("aid", "medicine for blood sugar", "those who treat them");
  }

  @ParameterizedTest
  @CsvSource({
    "egg: 50 g, allergens egg raw-egg medical-diets",
    "lupin-flour: 50 g, allergens raw-flour lupin medical-diets",
    "seeds: 50 g, medical-diets",
    "peanuts: 50 g, allergens peanut medical-diets",
    "almonds: 50 g, allergens tree-nuts medical-diets",
    "mix: 50 g, allergens-unknown medical-diets",
    "almonds: 0 g, allergens tree-nuts medical-diets",
  })
  void eachCautionAppearsByItself(String line, String expected) {
    bench
        .add(brings("peanuts", Allergen.PEANUTS))
        .add(brings("almonds", Allergen.TREE_NUTS))
        .add(Bench.withoutAllergenList(brings("mix")));

    assertThat(keys(bench.sheet(line))).containsExactly(expected.split(" "));
  }

  @Test
  void eggAndRawFlourAreBothNamedWithTheTemperatureInBothScales() {
    List<String> cautions = Cautions.of(bench.sheet("egg: 50 g", "lupin-flour: 50 g"));

    assertThat(cautions)
        .anyMatch(words -> words.contains("71 °C (160 °F)") && words.contains("local food codes"))
        .contains("Raw flour is not ready to eat: do not taste the dough.")
        .contains("Contains lupin: people allergic to peanut can react to it.");
  }

  /** More than 10 %, of the baked mass where that is known. */
  @ParameterizedTest
  @CsvSource({
    "9, 0, false",
    "10, 0, false",
    "10.1, 0, true",
    "9, 5, false",
    "9, 10, false",
    "9, 11, true",
  })
  void polyolsAboveTenPercent(double grams, double loss, boolean said) {
    bench.add(sweetener(100, "erythritol"));
    Worksheet sheet =
        bench.sheet(
            Bench.formula(
                Yield.ofPieces(1), "sweetener: " + grams + " g", "water: " + (100 - grams) + " g"),
            Policy.USUAL,
            new BakedYield(Quantity.known(1 - loss / 100), 1));

    assertThat(keys(sheet).contains("polyols")).isEqualTo(said);
  }

  @Test
  void polyolsThatMayPassTenPercentAreSaidToDoSo() {
    bench.add(sweetener(100, "erythritol"));

    assertThat(Cautions.of(bench.sheet("sweetener: 8 g", "water: 50 g", "seeds: 42 g")))
        .anyMatch(words -> words.startsWith("May be above 10 % polyols"));
    assertThat(keys(bench.sheet("sweetener: 2 g", "seeds: 98 g"))).doesNotContain("polyols");
  }

  @ParameterizedTest
  @CsvSource({
    "xylitol, xylitol",
    "Xylitol, xylitol",
    "xylitol and erythritol, xylitol",
    "erythritol, ''",
    "a blend, polyol-kind",
    ", polyol-kind",
  })
  void xylitolAndWhatMayBeXylitolIsPoisonousToDogs(String kind, String key) {
    bench.add(sweetener(100, kind));
    Worksheet sheet = bench.sheet("sweetener: 1 g", "water: 99 g");

    assertThat(keys(sheet).stream().filter(each -> each.contains("xylitol") || each.contains("kind")))
        .containsExactlyElementsOf(key.isEmpty() ? List.of() : List.of(key));
    if (!key.isEmpty()) {
      assertThat(Cautions.of(sheet)).anyMatch(words -> words.contains("poisonous to dogs"));
    }
  }

  @Test
  void cautionsAreOnlyWordedLonger() {
    List<Caution> cautions =
        Cautions.keyed(bench.sheet("egg: 50 g"), List.of(), ShownUnits.AS_WRITTEN);
    List<String> plain = cautions.stream().map(Caution::words).toList();

    assertThat(Cautions.worded(cautions, Map.of())).isEqualTo(cautions);
    for (String shorter : List.of("", "  ", "Contains egg", "egg: bake", plain.get(1))) {
      assertThat(Cautions.worded(cautions, Map.of("egg", shorter))).isEqualTo(cautions);
    }
    for (String longer : List.of("Use a probe.", plain.get(1) + " Use a probe.")) {
      assertThat(Cautions.worded(cautions, Map.of("egg", longer)))
          .extracting(Caution::words)
          .hasSameSizeAs(plain)
          .contains(plain.get(0), plain.get(1) + " Use a probe.", plain.get(2));
    }
    assertThat(Cautions.worded(cautions, Map.of("egg", "No: " + plain.get(1))).get(1).words())
        .startsWith(plain.get(1));
    assertThatThrownBy(() -> Cautions.worded(cautions, Map.of("lupin", "none")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("There is no caution \"lupin\" here.");
  }
}
