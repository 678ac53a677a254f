package io.ovenmark.paste;

import io.ovenmark.measure.Quoting;
import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length of time as ISO 8601 writes it: {@code PT1H30M}, {@code P1DT2H}, {@code P2W}. A day has
 * 24 hours and a week 7 days; years and months have no fixed length and are refused.
 */
final class IsoDuration {
  private static final String NUMBER = "(\\d{1,9}(?:[.,]\\d{1,9})?)";
  private static final Pattern SHAPE =
      Pattern.compile(
          "P(?=[\\dT])(?:" + NUMBER + "Y)?(?:" + NUMBER + "M)?(?:" + NUMBER + "W)?(?:" + NUMBER
              + "D)?(?:T(?=\\d)(?:" + NUMBER + "H)?(?:" + NUMBER + "M)?(?:" + NUMBER + "S)?)?",
          Pattern.CASE_INSENSITIVE);
  private static final long[] SECONDS = {0, 0, 604_800, 86_400, 3600, 60, 1};
  private static final int LONGEST = 80;

  private IsoDuration() {}

  /**
   * Reads a duration.
   *
   * @param text such as {@code PT24M}
   * @return its seconds
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  static BigDecimal seconds(String text) {
    Matcher matcher = SHAPE.matcher(text.strip());
    if (text.length() > LONGEST || !matcher.matches()) {
      throw new IllegalArgumentException(
          "The duration " + Quoting.quote(text) + " is not understood.\n"
              + "Write it as ISO 8601 does, such as PT1H30M for an hour and a half.");
    }
    BigDecimal seconds = BigDecimal.ZERO;
    for (int i = 0; i < SECONDS.length; i++) {
      String number = matcher.group(i + 1);
      BigDecimal value =
          number == null ? BigDecimal.ZERO : new BigDecimal(number.replace(',', '.'));
      if (SECONDS[i] == 0 && value.signum() != 0) {
        throw new IllegalArgumentException(
            "The duration " + Quoting.quote(text) + " has years or months, which differ in"
                + " length.\nWrite days, hours and minutes.");
      }
      seconds = seconds.add(value.multiply(BigDecimal.valueOf(SECONDS[i])));
    }
    return seconds.signum() == 0 ? BigDecimal.ZERO : seconds.stripTrailingZeros();
  }
}
