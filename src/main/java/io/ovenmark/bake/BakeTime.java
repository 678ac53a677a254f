package io.ovenmark.bake;

import io.ovenmark.measure.Quoting;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/**
 * Reads when something went into the oven: {@code 2026-09-14T10:30:00+02:00}, {@code 2026-09-14
 * 10:30}, {@code 10:30} for today, or {@code 2026-09-14} alone, which counts as noon unless it is
 * today. A time without zone is of the clock's zone.
 */
public final class BakeTime {
  private static final String EXAMPLE = "Write it as in \"2026-09-14 10:30\".";

  private BakeTime() {}

  /**
   * Reads a time.
   *
   * @param text date, time of day, or both
   * @param clock what time it is now, and the zone
   * @return the time, to the second
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when it is not
   *     understood or lies in the future
   */
  public static OffsetDateTime read(String text, Clock clock) {
    OffsetDateTime now = OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
    OffsetDateTime time;
    try {
      time = parse(text.strip().replaceFirst("(?<=\\d) +(?=\\d)", "T"), now, clock.getZone());
    } catch (DateTimeException e) {
      throw PieceWord.bad(
          Quoting.quote(text) + " is not a date and time.", EXAMPLE);
    }
    if (time.isAfter(now.plusDays(1))) {
      throw PieceWord.bad("The bake lies in the future: " + time + ".", EXAMPLE);
    }
    return time.truncatedTo(ChronoUnit.SECONDS);
  }

  private static OffsetDateTime parse(String text, OffsetDateTime now, ZoneId zone) {
    if (text.matches("\\d{1,2}:\\d{2}")) {
      LocalTime time = LocalTime.parse(text.length() == 4 ? "0" + text : text);
      return at(now.toLocalDate().atTime(time), zone);
    }
    if (!text.contains("T")) {
      LocalDate date = LocalDate.parse(text);
      return date.equals(now.toLocalDate()) ? now : at(date.atTime(LocalTime.NOON), zone);
    }
    boolean zoned = text.matches(".*T.*(?:[Zz]|[+-]\\d{2}:\\d{2})");
    return zoned ? OffsetDateTime.parse(text) : at(LocalDateTime.parse(text), zone);
  }

  private static OffsetDateTime at(LocalDateTime time, ZoneId zone) {
    return time.atZone(zone).toOffsetDateTime();
  }
}
