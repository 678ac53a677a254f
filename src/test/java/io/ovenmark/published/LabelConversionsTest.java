package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.LabelFood;
import io.ovenmark.pantry.LabelFood.Figure;
import io.ovenmark.pantry.LabelFood.Panel;
import io.ovenmark.pantry.LabelOrder;
import io.ovenmark.pantry.Nutrient;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What stands on package labels. Sources, from memory: Regulation (EU) No 1169/2011, Annex I (salt
 * is sodium × 2.5; carbohydrate does not include fibre), Annex XIV (factors in kJ and kcal), Annex
 * XV (order) and Annex II (allergens); 21 CFR 101.9(c) (order; total carbohydrate includes fibre);
 * FD&amp;C Act section 201(qq) (nine allergens); the thermochemical calorie of 4.184 J, NIST SP 811,
 * appendix B.8.
 */
class LabelConversionsTest {
  private static Food european(Figure figure, double value) {
    return LabelFood.per100Grams("food", FoodKind.DRY, Panel.EUROPEAN_UNION)
        .with(figure, value)
        .food("food");
  }

  /** Annex I, 11: salt = sodium × 2.5; 6 g of salt, the reference intake, are 2400 mg sodium. */
  @ParameterizedTest
  @CsvSource({"6, 2400", "2.5, 1000", "1.25, 500", "0.01, 4", "0, 0"})
  void saltIsTwoAndAHalfTimesSodium(double saltGrams, double sodiumMilligrams) {
    assertThat(european(Figure.SALT, saltGrams).per100g().get(Nutrient.SODIUM).low())
        .isCloseTo(sodiumMilligrams, within(1e-9));
  }

  /** The reference intake of Annex XIII: 8400 kJ stand beside 2000 kcal, rounded to hundreds. */
  @ParameterizedTest
  @CsvSource({"418.4, 100", "4.184, 1", "2092, 500", "3765.6, 900"})
  void aKilocalorieIs4184Joules(double kilojoules, double kilocalories) {
    assertThat(european(Figure.ENERGY_KJ, kilojoules).per100g().get(Nutrient.ENERGY).low())
        .isCloseTo(kilocalories, within(1e-9));
    assertThat(2000 * 4.184).isCloseTo(8400, within(50.0));
  }

  /**
   * Annex XIV states each factor in both units: protein 17 kJ and 4 kcal, fat 37 and 9, alcohol 29
   * and 7, fibre 8 and 2, polyols 10 and 2.4, in whole kilojoules.
   */
  @ParameterizedTest
  @CsvSource({"17, 4", "37, 9", "29, 7", "8, 2", "10, 2.4"})
  void theFactorsInBothUnitsAgreeToAKilojoule(double kilojoules, double kilocalories) {
    double converted =
        european(Figure.ENERGY_KJ, kilojoules).per100g().get(Nutrient.ENERGY).low();

    assertThat(converted).isCloseTo(kilocalories, within(1 / 4.184));
  }

  /** A figure a serving is worth 100 ÷ serving as much in 100 g. */
  @ParameterizedTest
  @CsvSource({"30, 12, 40", "40, 1, 2.5", "28, 7, 25", "100, 9.6, 9.6", "113, 11.3, 10"})
  void figuresAServingAreScaledToAHundredGrams(double serving, double printed, double hundred) {
    Food food =
        LabelFood.perServing("food", FoodKind.DRY, Panel.UNITED_STATES, serving)
            .with(Figure.PROTEIN, printed)
            .food("food");

    assertThat(food.per100g().get(Nutrient.PROTEIN).low()).isCloseTo(hundred, within(1e-9));
  }

  /** The same food on both labels: 13 g without fibre and 28 g fibre are 41 g in all. */
  @Test
  void carbohydrateOfBothLabelsIsTheSameFigureHere() {
    Food europe =
        LabelFood.per100Grams("food", FoodKind.DRY, Panel.EUROPEAN_UNION)
            .with(Figure.CARBOHYDRATE, 13)
            .with(Figure.FIBRE, 28)
            .food("food");
    Food states =
        LabelFood.per100Grams("food", FoodKind.DRY, Panel.UNITED_STATES)
            .with(Figure.CARBOHYDRATE, 41)
            .with(Figure.FIBRE, 28)
            .food("food");

    assertThat(europe.per100g().get(Nutrient.CARBOHYDRATE))
        .isEqualTo(states.per100g().get(Nutrient.CARBOHYDRATE));
  }

  /** Annex XV: energy, fat, saturates, carbohydrate, sugars, polyols, fibre, protein, salt. */
  @Test
  void aEuropeanLabelIsCopiedFromTopToBottom() {
    List<Figure> order =
        LabelOrder.of(Panel.EUROPEAN_UNION).stream().map(LabelOrder.Row::figure).toList();

    assertThat(order)
        .containsSubsequence(
            Figure.ENERGY_KJ, Figure.ENERGY_KCAL, Figure.FAT, Figure.SATURATED_FAT,
            Figure.CARBOHYDRATE, Figure.SUGARS, Figure.POLYOLS, Figure.FIBRE, Figure.PROTEIN,
            Figure.SALT)
        .doesNotHaveDuplicates()
        .doesNotContain(Figure.SODIUM);
  }

  /** 21 CFR 101.9(c): calories, fat, cholesterol, sodium, carbohydrate, protein, minerals. */
  @Test
  void anAmericanLabelIsCopiedFromTopToBottom() {
    List<Figure> order =
        LabelOrder.of(Panel.UNITED_STATES).stream().map(LabelOrder.Row::figure).toList();

    assertThat(order)
        .containsSubsequence(
            Figure.ENERGY_KCAL, Figure.FAT, Figure.SATURATED_FAT, Figure.CHOLESTEROL,
            Figure.SODIUM, Figure.CARBOHYDRATE, Figure.FIBRE, Figure.SUGARS, Figure.PROTEIN,
            Figure.CALCIUM, Figure.IRON, Figure.POTASSIUM)
        .doesNotHaveDuplicates()
        .doesNotContain(Figure.SALT, Figure.ENERGY_KJ);
  }

  /** Nine of the United States; fourteen of the European Union, gluten counting as one. */
  @Test
  void theAllergensToTickAreThoseOfTheLaw() {
    long states = Arrays.stream(Allergen.values()).filter(Allergen::unitedStates).count();
    long europe = Arrays.stream(Allergen.values()).filter(Allergen::europeanUnion).count();

    assertThat(states).isEqualTo(9);
    assertThat(europe - Allergen.group("gluten").size() + 1).isEqualTo(14);
  }
}
