package io.ovenmark.tasting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.inference.AlternativeHypothesis;
import org.apache.commons.statistics.inference.BinomialTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TriangleTest {
  /** Every way in which n people can answer, each right with a probability. */
  private static double enumerated(int n, int least, double right) {
    double sum = 0;
    for (int ways = 0; ways < 1 << n; ways++) {
      int correct = Integer.bitCount(ways);
      if (correct >= least) {
        sum += Math.pow(right, correct) * Math.pow(1 - right, n - correct);
      }
    }
    return sum;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 5, 12, 37})
  void pIsThatOfTheLibrarysExactTest(int answered) {
    for (int correct = 0; correct <= answered; correct++) {
      double expected =
          BinomialTest.withDefaults()
              .with(AlternativeHypothesis.GREATER_THAN)
              .test(answered, correct, 1.0 / 3)
              .getPValue();
      assertThat(Triangle.of(answered, correct).p().orElseThrow())
          .isCloseTo(expected, within(1e-12));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 6, 12, 15})
  void powerIsThatOfCountingAllWaysToAnswer(int answered) {
    int needed = Triangle.leastCorrect(answered, 0.05).orElseThrow();
    for (double share : new double[] {0, 0.25, 0.5, 1}) {
      double right = share + (1 - share) / 3;
      assertThat(Triangle.power(answered, share))
          .isCloseTo(enumerated(answered, needed, right), within(1e-12));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {6, 12, 24, 60})
  void theVisibleShareIsSeenFourTimesInFive(int answered) {
    double share = Triangle.visible(answered).orElseThrow();

    assertThat(Triangle.power(answered, share)).isCloseTo(0.8, within(1e-9));
  }

  /** With the bound as the true share, so few or fewer right answers come 1 time in 20. */
  @Test
  void theUpperBoundIsExact() {
    Triangle triangle = Triangle.of(12, 5);
    double right = triangle.highest().orElseThrow() * 2 / 3 + 1.0 / 3;

    assertThat(1 - enumerated(12, 6, right)).isCloseTo(0.05, within(1e-9));
    assertThat(triangle.lowest()).hasValue(0);
  }

  /** Of 12, the third that guesses right is 4; 8 right are 4 more of the 8 who do not guess. */
  @Test
  void theShareOfDiscriminatorsIsWhatIsNotGuessed() {
    assertThat(Triangle.of(12, 8).discriminators().orElseThrow()).isCloseTo(0.5, within(1e-12));
    assertThat(Triangle.of(12, 3).discriminators()).hasValue(0);
    assertThat(Triangle.of(12, 12).highest()).hasValue(1);
  }

  @Test
  void twoTastersCanShowNothingAndThreeJustCan() {
    assertThat(Triangle.leastCorrect(2, 0.05)).isEmpty();
    assertThat(Triangle.visible(2)).isEmpty();
    assertThat(Triangle.power(2, 1)).isZero();
    assertThat(Triangle.leastCorrect(3, 0.05)).hasValue(3);
  }

  @Test
  void withoutAnswersNothingIsKnown() {
    Triangle none = Triangle.of(0, 0);

    assertThat(none.p()).isEmpty();
    assertThat(none.highest()).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> Triangle.of(3, 4));
  }

  @Test
  void theTastersNeededAreTheFewestThatSeeTheShare() {
    int tasters = Triangle.tastersFor(0.5).orElseThrow();

    assertThat(Triangle.power(tasters, 0.5)).isGreaterThanOrEqualTo(0.8);
    assertThat(Triangle.power(tasters - 1, 0.5)).isLessThan(0.8);
    assertThat(Triangle.tastersFor(0.01)).isEmpty();
  }
}
