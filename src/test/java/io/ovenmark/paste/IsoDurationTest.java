package io.ovenmark.paste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Durations of ISO 8601; {@code java.time.Duration} refuses the form with weeks. */
class IsoDurationTest {
  @ParameterizedTest
  @CsvSource({
    "PT1H30M, 5400", "P1DT2H, 93600", "P2W, 1209600", "PT24M, 1440", "PT90S, 90", "PT0.5H, 1800",
    "'PT0,5H', 1800", "pt24m, 1440", "PT0S, 0", "P0Y0M0DT0H24M, 1440", "PT1H0M30S, 3630",
    "' PT24M ', 1440"
  })
  void aDurationHasSoManySeconds(String text, BigDecimal seconds) {
    assertThat(IsoDuration.seconds(text)).isEqualByComparingTo(seconds);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "24 min", "PT", "P", "P1", "PT1", "1H", "-PT5M", "PT1M1H", "P1Y", "P1M", "P1DT", "PT1,M",
        "PT99999999999H"
      })
  void whatIsNoneOrHasNoFixedLengthIsRefusedWithARemedy(String text) {
    assertThatThrownBy(() -> IsoDuration.seconds(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageMatching("(?s)The duration .*\\.\n.+");
  }
}
