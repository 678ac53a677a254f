package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.tasting.Triangle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Least numbers of right answers in a triangle test, by the method of ISO 4120: the smallest count
 * whose probability by guessing (binomial, one in three) is at most α. Computed here and elsewhere
 * independently, not copied from the standard's tables.
 */
class TriangleNumbersTest {
  @ParameterizedTest
  @CsvSource({
    "0.05, 6, 5", "0.05, 8, 6", "0.05, 10, 7", "0.05, 12, 8", "0.05, 15, 9", "0.05, 18, 10",
    "0.05, 20, 11", "0.05, 24, 13", "0.05, 30, 15", "0.05, 36, 18",
    "0.01, 6, 6", "0.01, 12, 9", "0.01, 18, 12", "0.01, 24, 15", "0.01, 30, 17", "0.01, 36, 20"
  })
  void soManyMustBeRight(double alpha, int tasters, int right) {
    assertThat(Triangle.leastCorrect(tasters, alpha)).hasValue(right);
  }
}
