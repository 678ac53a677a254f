package io.ovenmark.publish.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RoundingPropertiesTest {
  private static final int DRAWS = 4000;

  /** Where a declaration stands among others: "less than 1 g" between 0 and 1 g. */
  private static BigDecimal rank(Declared declared) {
    return declared
        .number()
        .orElseGet(() -> declared.lessThan().orElseThrow().divide(BigDecimal.valueOf(2)));
  }

  private static double[] draws(long seed) {
    Random random = new Random(seed);
    double[] draws = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      double size = Math.pow(10, random.nextInt(6) - 2);
      // half of them on a grid of hundredths and thousandths, where the edges are
      double value = random.nextDouble() * size;
      draws[i] = i % 2 == 0 ? value : Math.round(value * 1000) / 1000.0;
    }
    Arrays.sort(draws);
    return draws;
  }

  @ParameterizedTest
  @EnumSource(Rounding.class)
  void moreIsNeverDeclaredAsLess(Rounding rule) {
    BigDecimal before = BigDecimal.ZERO;
    for (double amount : draws(rule.ordinal())) {
      BigDecimal here = rank(rule.declare(amount));
      assertThat(here).as("%s of %s", rule, amount).isGreaterThanOrEqualTo(before);
      before = here;
    }
  }

  @ParameterizedTest
  @EnumSource(Rounding.class)
  void whatIsRoundedStaysAsItIs(Rounding rule) {
    for (double amount : draws(100 + rule.ordinal())) {
      Declared once = rule.declare(amount);
      boolean saltThatTheGuidanceCountsAsLess =
          rule == Rounding.EU_SALT && once.text().equals("0.01 g");
      if (once.number().isPresent() && !saltThatTheGuidanceCountsAsLess) {
        assertThat(rule.declare(once.number().get().doubleValue()))
            .as("%s of %s", rule, amount)
            .isEqualTo(once);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(DailyValue.class)
  void percentagesAreMonotoneAndStay(DailyValue value) {
    BigDecimal before = BigDecimal.ZERO;
    for (double percent : draws(200 + value.ordinal())) {
      BigDecimal here = value.rounded(percent);
      assertThat(here).isGreaterThanOrEqualTo(before);
      assertThat(value.rounded(here.doubleValue())).isEqualByComparingTo(here);
      before = here;
    }
  }

  /** 4.75 written as sums and products that miss it in binary by a little. */
  @ParameterizedTest
  @CsvSource({
    "US_FAT, 4.749999999999999, 5 g",
    "US_FAT, 4.750000000000001, 5 g",
    "US_FAT, 0.49999999999999994, 0.5 g",
    "US_ENERGY, 47.49999999999999, 50 kcal",
    "US_ENERGY, 4.999999999999999, 5 kcal",
    "US_SODIUM, 137.49999999999997, 140 mg",
    "EU_SALT, 0.012500000000000002, < 0.01 g",
    "EU_GRAMS, 9.949999999999999, 10 g",
    "US_FAT, 4.7499, 4.5 g",
  })
  void binaryFractionsDoNotDecide(Rounding rule, double amount, String declared) {
    assertThat(rule.declare(amount).text()).isEqualTo(declared);
  }

  @Test
  void sumsOfTenthsFallOnTheirEdge() {
    double sum = 0;
    for (int i = 0; i < 475; i++) {
      sum += 0.01;
    }
    assertThat(sum).isNotEqualTo(4.75);
    assertThat(Rounding.US_FAT.declare(sum).text()).isEqualTo("5 g");
  }

  @ParameterizedTest
  @CsvSource({"-0.001", "NaN", "Infinity"})
  void whatIsNoAmountIsRefused(double amount) {
    assertThatThrownBy(() -> Rounding.US_FAT.declare(amount))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0 or more");
  }

  @ParameterizedTest
  @EnumSource(Rounding.class)
  void everyRuleNamesItsUnitAndSource(Rounding rule) {
    assertThat(rule.declare(20).text()).endsWith(" " + rule.unit());
    assertThat(rule.rule()).isNotBlank();
    assertThat(rule.source().law()).containsAnyOf("CFR", "EU");
  }
}
