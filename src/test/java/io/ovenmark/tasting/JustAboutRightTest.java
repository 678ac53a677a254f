package io.ovenmark.tasting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JustAboutRightTest {
  private static JustAboutRight.Said said(int score, double liking) {
    return new JustAboutRight.Said(score, OptionalDouble.of(liking));
  }

  /** Right: 8, 7, 9 (mean 8); too little: 6, 5 (5.5), 2 of 6; too much: 7, 1 of 6. */
  private static final JustAboutRight SWEET =
      JustAboutRight.of(
          1,
          "sweet",
          List.of(said(0, 8), said(0, 7), said(0, 9), said(-1, 6), said(-2, 5), said(1, 7)));

  @Test
  void sharesAndDropsByHand() {
    assertThat(SWEET.counts()).containsExactly(1, 1, 3, 1, 0);
    assertThat(SWEET.right()).hasValue(0.5);
    assertThat(SWEET.tooLittle().tasters()).isEqualTo(2);
    assertThat(SWEET.tooLittle().drop()).hasValue(2.5);
    assertThat(SWEET.tooLittle().weighted().orElseThrow()).isCloseTo(2.5 / 3, within(1e-12));
    assertThat(SWEET.tooMuch().drop()).hasValue(1);
    assertThat(SWEET.directionP()).hasValue(1);
  }

  @Test
  void aSideCountsFromAFifthOn() {
    assertThat(SWEET.tooLittle().counts()).isTrue();
    assertThat(SWEET.tooMuch().counts()).isFalse();
  }

  /** Variances 1 of 3 and 0.5 of 2: error 0.763763, Welch 2.882353 degrees of freedom. */
  @Test
  void theIntervalIsWelchs() {
    double half = SWEET.tooLittle().highest().orElseThrow() - 2.5;

    assertThat(half).isCloseTo(2.5 - SWEET.tooLittle().lowest().orElseThrow(), within(1e-9));
    assertThat(half / 0.763763).isBetween(3.18, 3.36);
    assertThat(SWEET.tooMuch().lowest()).isEmpty();
  }

  @Test
  void withoutLikingOrScoresTheDropIsUnknown() {
    JustAboutRight unliked =
        JustAboutRight.of(
            2,
            "moist",
            List.of(
                new JustAboutRight.Said(-1, OptionalDouble.empty()),
                new JustAboutRight.Said(0, OptionalDouble.empty())));
    JustAboutRight none = JustAboutRight.of(1, "moist", List.of());

    assertThat(unliked.tooLittle().drop()).isEmpty();
    assertThat(unliked.tooLittle().counts()).isTrue();
    assertThat(none.right()).isEmpty();
    assertThat(none.tooLittle().counts()).isFalse();
    assertThat(none.directionP()).isEmpty();
  }
}
