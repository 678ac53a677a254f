package io.ovenmark.bake;

import io.ovenmark.measure.Quoting;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.regex.Pattern;

/**
 * Reads and writes points in time in the form of RFC 3339, section 5.6 (a profile of ISO 8601);
 * seconds may be left out when reading.
 */
final class Moment {
  private static final Pattern SHAPE =
      Pattern.compile(
          "[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}(?::[0-9]{2}(?:\\.[0-9]{1,9})?)?"
              + "(?:Z|[+-][0-9]{2}:[0-9]{2})");
  private static final String REMEDY =
      "Write date, time and zone, such as \"2026-09-14T10:30:00+02:00\".";

  private Moment() {}

  /**
   * Reads a point in time.
   *
   * @param text date, time of day and distance from UTC
   * @return the point
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  static OffsetDateTime parse(String text) {
    if (text.length() <= 40 && SHAPE.matcher(text).matches()) {
      try {
        return OffsetDateTime.parse(text);
      } catch (DateTimeException e) {
        throw new IllegalArgumentException(refusal(text), e);
      }
    }
    throw new IllegalArgumentException(refusal(text));
  }

  /**
   * Writes a point in time, seconds always included.
   *
   * @param time the point
   * @return text that {@link #parse} reads
   */
  static String write(OffsetDateTime time) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
  }

  /**
   * Checks that a point in time can be written.
   *
   * @param time the point, not null
   * @throws IllegalArgumentException when the year has not four digits or the zone is not in whole
   *     minutes
   */
  static void check(OffsetDateTime time) {
    if (time.getYear() < 0
        || time.getYear() > 9999
        || time.getOffset().getTotalSeconds() % 60 != 0) {
      throw new IllegalArgumentException(refusal(time.toString()));
    }
  }

  private static String refusal(String text) {
    return Quoting.quote(text) + " is not a date and time.\n" + REMEDY;
  }
}
