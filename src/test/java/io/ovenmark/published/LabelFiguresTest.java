package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.publish.label.Component;
import io.ovenmark.publish.label.Label;
import io.ovenmark.publish.label.LabelRow;
import io.ovenmark.publish.label.LabelTerms;
import io.ovenmark.publish.label.Region;
import io.ovenmark.publish.label.Rounding;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Labels against published figures. The biscuits: <i>Baking Powder Biscuits, USDA Recipe for Child
 * Care Centers</i>, Institute of Child Nutrition, public domain; 25 pieces, amounts as in {@link
 * BiscuitsTest}.
 */
class LabelFiguresTest {
  private static final Formula BISCUITS =
      PublishedData.formula(
          Yield.ofPieces(25),
          List.of(
              new String[] {"20080", "31 oz"},
              new String[] {"01092", "42.5 g"},
              new String[] {"18370", "32.2 g"},
              new String[] {"02047", "3/4 tsp"},
              new String[] {"01055", "1 lb"},
              new String[] {"14411", "1 3/4 cup"}));

  private final Label biscuits =
      Label.of(PublishedData.sheet(BISCUITS, BakedYield.UNMEASURED), LabelTerms.USUAL);

  /**
   * What is published for one piece, rounded as a label is, must be what the label here declares,
   * and the unrounded figures lie within energy 2 %, grams 0.5, sodium 3 %.
   */
  @ParameterizedTest
  @CsvSource({
    "calories, 153, 3.06, 150 kcal",
    "fat_g, 3, 0.5, 3 g",
    "carbohydrate_g, 27, 0.5, 27 g",
    "fibre_g, 4, 0.5, 4 g",
    "protein_g, 6, 0.5, 6 g",
    "sodium_mg, 201, 6.03, 200 mg",
  })
  void aBiscuitIsLabelledAsPublished(
      String key, double published, double tolerance, String declared) {
    LabelRow row = row(biscuits, Region.UNITED_STATES, key);
    Rounding rule = row.line().rounding();

    assertThat(row.amounts().get(Basis.PIECE).value().orElseThrow())
        .isCloseTo(published, within(tolerance));
    assertThat(row.declared(Basis.PIECE).orElseThrow().text()).isEqualTo(declared);
    assertThat(rule.declare(published).text()).isEqualTo(declared);
  }

  /** Salt = sodium × 2.5: Regulation (EU) No 1169/2011, Annex I. 198 mg sodium, 0.49 g salt. */
  @Test
  void saltIsSodiumTimesTwoAndAHalf() {
    double sodium =
        row(biscuits, Region.UNITED_STATES, "sodium_mg").amounts().get(Basis.PIECE).low();
    LabelRow salt = row(biscuits, Region.EUROPEAN_UNION, "salt_g");

    assertThat(salt.amounts().get(Basis.PIECE).low())
        .isCloseTo(sodium * 2.5 / 1000, within(1e-12));
    assertThat(salt.declared(Basis.PIECE).orElseThrow().text()).isIn("0.49 g", "0.5 g", "0.50 g");
  }

  /** In the European Union carbohydrate is without fibre (Annex I); 27.3 − 3.76 g. */
  @Test
  void carbohydrateIsWithoutFibreInTheEuropeanUnion() {
    double total =
        row(biscuits, Region.UNITED_STATES, "carbohydrate_g").amounts().get(Basis.PIECE).low();
    double fibre = row(biscuits, Region.UNITED_STATES, "fibre_g").amounts().get(Basis.PIECE).low();

    assertThat(
            row(biscuits, Region.EUROPEAN_UNION, "carbohydrate_g")
                .amounts()
                .get(Basis.PIECE)
                .low())
        .isCloseTo(total - fibre, within(1e-9));
  }

  /**
   * Loss on baking is water: SR28, NDB No. 18402 pie crust unbaked → 18336 baked, yield 89.0 %
   * from the published water, energy 469 → 527, protein 5.7 → 6.4, fat 30.8 → 34.6, sodium 482 →
   * 542; within the published value's own last digit and 1 %.
   */
  @ParameterizedTest
  @CsvSource({
    "calories, 469, 527",
    "protein_g, 5.7, 6.4",
    "fat_g, 30.8, 34.6",
    "sodium_mg, 482, 542",
  })
  void aHundredGramsAsBakedAreDenserByTheLoss(String key, double dough, double baked) {
    Label label =
        Label.of(
            PublishedData.sheet(
                PublishedData.formula(
                    Yield.ofPieces(1), List.<String[]>of(new String[] {"18402", "100 g"})),
                BakedYield.UNMEASURED),
            LabelTerms.USUAL.withLoss(100 - 100 * (100 - 19.7) / (100 - 9.8)));
    LabelRow row = row(label, Region.UNITED_STATES, key);

    assertThat(row.amounts().get(Basis.DOUGH_100_G).low()).isCloseTo(dough, within(1e-9));
    assertThat(row.amounts().get(Basis.BAKED_100_G).low())
        .isCloseTo(baked, within(Math.max(baked * 0.01, 0.05)));
  }

  /**
   * The lists of 201(qq) FD&amp;C Act (FALCPA 2004, FASTER Act 2021; FDA, 14 January 2025) and of
   * Regulation (EU) No 1169/2011, Annex II: nine, and fourteen with the cereals as one.
   */
  @Test
  void nineAllergensInTheUnitedStatesAndFourteenInTheEuropeanUnion() {
    List<Allergen> all = Arrays.asList(Allergen.values());

    assertThat(all.stream().filter(Allergen::unitedStates).map(Allergen::key))
        .containsExactlyInAnyOrder(
            "milk", "eggs", "fish", "crustaceans", "tree nuts", "peanuts", "wheat", "soybeans",
            "sesame");
    assertThat(
            all.stream()
                .filter(Allergen::europeanUnion)
                .map(each -> Allergen.group("gluten").contains(each) ? "gluten" : each.key())
                .distinct())
        .containsExactlyInAnyOrder(
            "gluten", "crustaceans", "eggs", "fish", "peanuts", "soybeans", "milk", "tree nuts",
            "celery", "mustard", "sesame", "sulphites", "lupin", "molluscs");
  }

  @Test
  void whatTheSourceDoesNotReportIsNeverDeclared() {
    LabelRow saturated = row(biscuits, Region.UNITED_STATES, "saturated_fat_g");

    assertThat(saturated.amounts().get(Basis.PIECE).toString()).startsWith("at least ");
    assertThat(saturated.declared(Basis.PIECE)).isEmpty();
    assertThat(saturated.missing()).anyMatch(words -> words.contains("saturated fat"));
    assertThat(biscuits.amounts(Component.VITAMIN_D, Region.UNITED_STATES).get(Basis.PIECE))
        .matches(Quantity::isUnknown);
  }

  private static LabelRow row(Label label, Region region, String key) {
    return label.rows(region).stream()
        .filter(row -> row.line().key().equals(key))
        .findFirst()
        .orElseThrow();
  }
}
