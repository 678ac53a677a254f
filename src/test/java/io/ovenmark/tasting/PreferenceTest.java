package io.ovenmark.tasting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.inference.AlternativeHypothesis;
import org.apache.commons.statistics.inference.BinomialTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PreferenceTest {
  /** The smaller of the library's exact one-sided tests, doubled: one in two is symmetric. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7, 20, 41})
  void pIsThatOfTheLibrarysExactTests(int deciding) {
    BinomialTest test = BinomialTest.withDefaults();
    for (int first = 0; first <= deciding; first++) {
      double more =
          test.with(AlternativeHypothesis.GREATER_THAN).test(deciding, first, 0.5).getPValue();
      double fewer =
          test.with(AlternativeHypothesis.LESS_THAN).test(deciding, first, 0.5).getPValue();
      assertThat(Preference.of(first, deciding - first, 3).p().orElseThrow())
          .isCloseTo(Math.min(1, 2 * Math.min(more, fewer)), within(1e-12));
    }
  }

  /** 2 (1 + 10 + 45) / 2^10 = 0.109375 for 8 of 10; 2 (1 + 10) / 2^10 = 0.0215 for 9. */
  @Test
  void byHandNineOfTenShowAPreferenceAndEightDoNot() {
    assertThat(Preference.of(8, 2, 0).p().orElseThrow()).isCloseTo(0.109375, within(1e-12));
    assertThat(Preference.of(9, 1, 0).p().orElseThrow()).isCloseTo(22.0 / 1024, within(1e-12));
    assertThat(Preference.leastMajority(10)).hasValue(9);
    assertThat(Preference.leastMajority(5)).isEmpty();
    assertThat(Preference.leastMajority(6)).hasValue(6);
  }

  @Test
  void whoPrefersNeitherIsLeftOutAndCounted() {
    Preference with = Preference.of(9, 1, 4);

    assertThat(with.p()).isEqualTo(Preference.of(9, 1, 0).p());
    assertThat(with.neither()).isEqualTo(4);
    assertThat(Preference.of(0, 0, 5).p()).isEmpty();
  }

  @Test
  void boundsOfTheShareLieAroundItAndMirror() {
    Preference one = Preference.of(7, 3, 0);
    Preference other = Preference.of(3, 7, 0);

    assertThat(one.lowest().orElseThrow()).isLessThan(0.7);
    assertThat(one.highest().orElseThrow()).isGreaterThan(0.7);
    assertThat(one.lowest().orElseThrow())
        .isCloseTo(1 - other.highest().orElseThrow(), within(1e-9));
    assertThat(Preference.of(4, 0, 0).highest()).hasValue(1);
  }
}
