package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.publish.label.DailyValue;
import io.ovenmark.publish.label.ReferenceAmount;
import io.ovenmark.publish.label.Rounding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Amounts at the edges of the published rules of rounding. Half way goes up: the habit of the FDA,
 * from memory; the texts of the rules do not say.
 */
class LabelRoundingTest {
  /** Source: 21 CFR 101.9(c), rule of 2016; FDA, A Food Labeling Guide, Appendix H. */
  @ParameterizedTest
  @CsvSource({
    "US_ENERGY, 0, 0 kcal",
    "US_ENERGY, 4.9, 0 kcal",
    "US_ENERGY, 5, 5 kcal",
    "US_ENERGY, 7.4, 5 kcal",
    "US_ENERGY, 7.6, 10 kcal",
    "US_ENERGY, 47, 45 kcal",
    "US_ENERGY, 47.5, 50 kcal",
    "US_ENERGY, 48, 50 kcal",
    "US_ENERGY, 50, 50 kcal",
    "US_ENERGY, 52, 50 kcal",
    "US_ENERGY, 54.9, 50 kcal",
    "US_ENERGY, 55, 60 kcal",
    "US_ENERGY, 55.1, 60 kcal",
    "US_ENERGY, 154, 150 kcal",
    "US_ENERGY, 156, 160 kcal",
    "US_FAT, 0.49, 0 g",
    "US_FAT, 0.5, 0.5 g",
    "US_FAT, 0.74, 0.5 g",
    "US_FAT, 0.76, 1 g",
    "US_FAT, 4.7, 4.5 g",
    "US_FAT, 4.74, 4.5 g",
    "US_FAT, 4.75, 5 g",
    "US_FAT, 4.76, 5 g",
    "US_FAT, 5, 5 g",
    "US_FAT, 5.4, 5 g",
    "US_FAT, 5.5, 6 g",
    "US_FAT, 5.6, 6 g",
    "US_CHOLESTEROL, 1.9, 0 mg",
    "US_CHOLESTEROL, 2, less than 5 mg",
    "US_CHOLESTEROL, 4, less than 5 mg",
    "US_CHOLESTEROL, 4.9, less than 5 mg",
    "US_CHOLESTEROL, 7.4, 5 mg",
    "US_CHOLESTEROL, 7.5, 10 mg",
    "US_CHOLESTEROL, 7.6, 10 mg",
    "US_CHOLESTEROL, 12.6, 15 mg",
    "US_SODIUM, 4.9, 0 mg",
    "US_SODIUM, 5, 5 mg",
    "US_SODIUM, 7.6, 10 mg",
    "US_SODIUM, 137, 135 mg",
    "US_SODIUM, 137.5, 140 mg",
    "US_SODIUM, 138, 140 mg",
    "US_SODIUM, 140, 140 mg",
    "US_SODIUM, 142, 140 mg",
    "US_SODIUM, 144, 140 mg",
    "US_SODIUM, 145, 150 mg",
    "US_SODIUM, 146, 150 mg",
    "US_CARBOHYDRATE, 0.49, 0 g",
    "US_CARBOHYDRATE, 0.5, less than 1 g",
    "US_CARBOHYDRATE, 0.7, less than 1 g",
    "US_CARBOHYDRATE, 0.99, less than 1 g",
    "US_CARBOHYDRATE, 1, 1 g",
    "US_CARBOHYDRATE, 1.4, 1 g",
    "US_CARBOHYDRATE, 1.5, 2 g",
    "US_CARBOHYDRATE, 1.6, 2 g",
    "US_CARBOHYDRATE, 12.4, 12 g",
    "US_PROTEIN, 0.49, 0 g",
    "US_PROTEIN, 0.6, less than 1 g",
    "US_PROTEIN, 1.4, 1 g",
    "US_PROTEIN, 5.6, 6 g",
  })
  void unitedStates(Rounding rule, double amount, String declared) {
    assertThat(rule.declare(amount).text()).isEqualTo(declared);
  }

  /** Source: FDA guidance on vitamins and minerals, from memory. */
  @ParameterizedTest
  @CsvSource({
    "US_MINERAL, 4.9, 0 mg",
    "US_MINERAL, 5, 10 mg",
    "US_MINERAL, 196, 200 mg",
    "US_IRON, 1.04, 1 mg",
    "US_IRON, 1.05, 1.1 mg",
    "US_VITAMIN_D, 0, 0 µg",
    "US_VITAMIN_D, 0.049, 0 µg",
    "US_VITAMIN_D, 0.05, 0.1 µg",
    "US_VITAMIN_D, 0.149, 0.1 µg",
    "US_VITAMIN_D, 0.15, 0.2 µg",
    "US_VITAMIN_D, 2, 2 µg",
    "US_VITAMIN_D, 19.95, 20 µg",
  })
  void vitaminsAndMinerals(Rounding rule, double amount, String declared) {
    assertThat(rule.declare(amount).text()).isEqualTo(declared);
  }

  /**
   * Source: European Commission, Guidance document on tolerances, December 2012, Table 4; second
   * hand (a laboratory's summary). "0 g" is allowed where "less than" stands.
   */
  @ParameterizedTest
  @CsvSource({
    "EU_KILOJOULES, 1042.4, 1042 kJ",
    "EU_KILOJOULES, 1042.5, 1043 kJ",
    "EU_KILOCALORIES, 0.4, 0 kcal",
    "EU_KILOCALORIES, 251.5, 252 kcal",
    "EU_GRAMS, 0, 0 g",
    "EU_GRAMS, 0.49, < 0.5 g",
    "EU_GRAMS, 0.5, 0.5 g",
    "EU_GRAMS, 0.54, 0.5 g",
    "EU_GRAMS, 0.55, 0.6 g",
    "EU_GRAMS, 3.949, 3.9 g",
    "EU_GRAMS, 3.95, 4.0 g",
    "EU_GRAMS, 9.94, 9.9 g",
    "EU_GRAMS, 9.95, 10 g",
    "EU_GRAMS, 10, 10 g",
    "EU_GRAMS, 10.4, 10 g",
    "EU_GRAMS, 10.5, 11 g",
    "EU_SATURATES, 0.09, < 0.1 g",
    "EU_SATURATES, 0.1, 0.1 g",
    "EU_SATURATES, 0.15, 0.2 g",
    "EU_SATURATES, 9.95, 10 g",
    "EU_SATURATES, 10.5, 11 g",
    "EU_SALT, 0, 0 g",
    "EU_SALT, 0.0125, < 0.01 g",
    "EU_SALT, 0.0126, 0.01 g",
    "EU_SALT, 0.015, 0.02 g",
    "EU_SALT, 0.994, 0.99 g",
    "EU_SALT, 0.995, 1.0 g",
    "EU_SALT, 1, 1.0 g",
    "EU_SALT, 1.24, 1.2 g",
    "EU_SALT, 1.25, 1.3 g",
  })
  void europeanUnion(Rounding rule, double amount, String declared) {
    assertThat(rule.declare(amount).text()).isEqualTo(declared);
  }

  /**
   * On labels an ounce is 28 g: 21 CFR 101.9(b)(5)(viii), second hand; so Table 2 of 101.12(b)
   * writes 2 oz as 56 g. The reference amounts of that table: second hand, rule of 2016.
   */
  @ParameterizedTest
  @CsvSource({
    "2 oz, 56, false",
    "1 oz, 28, true",
    "30 g, 30, true",
    "30.1 g, 30.1, false",
    "bread, 50, false",
    "biscuits, 55, false",
    "muffins, 110, false",
    "sweet-bread, 55, false",
    "cookies, 30, true",
    "crackers, 30, true",
    "brownies, 40, false",
    "light-cake, 55, false",
    "cake, 80, false",
    "heavy-cake, 125, false",
  })
  void referenceAmounts(String text, double grams, boolean small) {
    assertThat(ReferenceAmount.read(text).grams()).isEqualTo(grams);
    assertThat(ReferenceAmount.read(text).isSmall()).isEqualTo(small);
  }

  /**
   * Source: 21 CFR 101.9(c)(8)(iv) and (c)(9), rule of 2016, read in a reprint: 3 g fat is 3.8 %,
   * 196 mg potassium 4.2 %; the steps for minerals, (c)(8)(iii), from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "FAT, 3, 4",
    "FAT, 78, 100",
    "SATURATED_FAT, 2.48, 12",
    "SATURATED_FAT, 2.52, 13",
    "CHOLESTEROL, 300, 100",
    "CARBOHYDRATE, 275, 100",
    "SODIUM, 2300, 100",
    "FIBRE, 28, 100",
    "ADDED_SUGARS, 50, 100",
    "POTASSIUM, 196, 4",
    "POTASSIUM, 4700, 100",
    "CALCIUM, 117, 10",
    "CALCIUM, 162.5, 15",
    "CALCIUM, 1300, 100",
    "IRON, 0.17, 0",
    "IRON, 18, 100",
    "VITAMIN_D, 20, 100",
  })
  void shareOfTheDailyValue(DailyValue value, double amount, String percent) {
    assertThat(value.rounded(amount / value.amount() * 100).toPlainString()).isEqualTo(percent);
  }
}
