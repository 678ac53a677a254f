package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The texts are those of SR28's file WEIGHT. */
class HouseholdNamesTest {
  @ParameterizedTest
  @CsvSource({
    "1, 'cup, whole', 143, 'cup, whole', 143",
    "0.333, cup, 27, cup, 81",
    "1, cup packed, 220, 'cup, packed', 220",
    "1, cup (4.86 large eggs), 243, cup (4.86 large eggs), 243",
    "1, tablespoon, 12, tbsp, 12",
    "2, tbsp, 32, tbsp, 16",
    "50, berries, 68, berry, 1.36",
    "6, slices, 170, slice, 28.3333",
    "1, fl oz, 30.5, fl oz, 30.5",
    "0.5, 'fl oz, shot', 15, 'fl oz, shot', 30",
    "1, 2 Tbsp, 14, tbsp, 7",
    "1, extra large, 56, extra large, 56"
  })
  void aPublishedWeightBecomesTheWeightOfOne(
      double count, String text, double grams, String measure, double one) {
    assertThat(HouseholdNames.read(count, text, grams))
        .contains(new HouseholdMeasure(measure, one));
  }

  @Test
  void massesAndFiguresWithoutUseAreLeftOut() {
    assertThat(HouseholdNames.read(1, "oz (23 whole kernels)", 28.35)).isEmpty();
    assertThat(HouseholdNames.read(4, "oz", 113)).isEmpty();
    assertThat(HouseholdNames.read(0, "cup", 100)).isEmpty();
    assertThat(HouseholdNames.read(1, "cup", 0)).isEmpty();
    assertThat(HouseholdNames.read(1, " ", 5)).isEmpty();
  }
}
