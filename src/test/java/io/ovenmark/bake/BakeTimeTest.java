package io.ovenmark.bake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BakeTimeTest {
  private final Clock clock =
      Clock.fixed(Instant.parse("2026-09-14T14:20:30.5Z"), ZoneId.of("Europe/Berlin"));

  @ParameterizedTest
  @CsvSource({
    "2026-09-14T10:30:00+02:00, 2026-09-14T10:30:00+02:00",
    "2026-09-14T10:30Z, 2026-09-14T10:30:00Z",
    "2026-09-14T10:30, 2026-09-14T10:30:00+02:00",
    "2026-09-14 10:30, 2026-09-14T10:30:00+02:00",
    "2026-01-14 10:30, 2026-01-14T10:30:00+01:00",
    "10:30, 2026-09-14T10:30:00+02:00",
    "8:05, 2026-09-14T08:05:00+02:00",
    "2026-09-14, 2026-09-14T16:20:30+02:00",
    "2026-09-13, 2026-09-13T12:00:00+02:00"
  })
  void whatIsLeftOutComesFromTheClock(String text, OffsetDateTime time) {
    assertThat(BakeTime.read(text, clock)).isEqualTo(time);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "yesterday", "14.9.2026", "2026-02-30", "2026-09-14 25:00", "25:00", "2026"})
  void aSlipIsToldInOneSentenceWithTheRemedy(String text) {
    assertThatThrownBy(() -> BakeTime.read(text, clock))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .matches("[^\n]+\\.\n[^\n]+");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2027-09-14", "2026-09-16T00:00Z"})
  void aBakeOfTheFutureIsASlip(String text) {
    assertThatThrownBy(() -> BakeTime.read(text, clock)).hasMessageContaining("in the future");
  }
}
