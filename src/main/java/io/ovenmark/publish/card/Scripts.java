package io.ovenmark.publish.card;

import java.text.Bidi;
import java.util.regex.Pattern;

/**
 * Texts of any script beside words of another one, by the marks of the Unicode Bidirectional
 * Algorithm (UAX 9): what runs from right to left moves nothing that stands beside it, and a number
 * keeps before its unit.
 */
final class Scripts {
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile(
          "(\\p{Nd}[\\p{Nd}.,]*) "
              + "(°C|°F|k?g|mg|kcal|ml|l|oz|lb|s|min|h|cups?|tbsp|tsp|mm|cm|%)"
              + "(?![\\p{L}\\p{N}])");

  /** A number and its unit, which no line end parts. */
  private static final String TOGETHER = "$1\u00a0$2";

  /** A number and its unit, isolated from left to right. */
  private static final String ISOLATED = "\u2066$1\u00a0$2\u2069";

  private static final String FIRST_STRONG_ISOLATE = "\u2068";
  private static final String POP_ISOLATE = "\u2069";
  private static final String RIGHT_TO_LEFT_MARK = "\u200f";

  private Scripts() {}

  /** Whether a text begins in a script that runs from right to left. */
  static boolean isRightToLeft(String text) {
    return !new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight();
  }

  private static boolean isMixed(String text) {
    return Bidi.requiresBidi(text.toCharArray(), 0, text.length());
  }

  /** A text in which a number and its unit stay together. */
  static String unbroken(String text) {
    return NUMBER_AND_UNIT.matcher(text).replaceAll(isMixed(text) ? ISOLATED : TOGETHER);
  }

  /** A text that makes a line of plain text. */
  static String line(String text) {
    if (!isMixed(text)) {
      return text;
    }
    return NUMBER_AND_UNIT.matcher(text).replaceAll(ISOLATED)
        + (isRightToLeft(text) ? RIGHT_TO_LEFT_MARK : "");
  }

  /** A text that is part of a line of plain text. */
  static String part(String text) {
    return isMixed(text) ? FIRST_STRONG_ISOLATE + text + POP_ISOLATE : text;
  }
}
