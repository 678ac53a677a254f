package io.ovenmark.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Small help with pasted text. */
final class PasteText {
  /** A longer line is no ingredient. */
  static final int LONGEST_LINE = 400;

  private static final String BULLETS = "*•·∙▪◦‣●○■□☐☑✓✔→>◆–—―−-";
  private static final Pattern BULLET =
      Pattern.compile(
          "^(?:[" + BULLETS + "]+\\s+|[•·∙▪◦‣●○■□☐☑✓✔→◆–—―−-](?=[\\p{L}\\d" + Numbers.SIGNS
              + "])|\\[[ xX]?\\]\\s*|#+\\s+)+");
  private static final Pattern NUMBERING =
      Pattern.compile(
          "^(?:step\\s+\\d{1,3}\\s*[:.)-]?|\\(?\\d{1,3}[.)]|\\d{1,3}\\s*[:](?!\\d))\\s+(?=\\S)",
          Pattern.CASE_INSENSITIVE);

  private PasteText() {}

  /**
   * A text on one line: every blank, line break and control character becomes one space, characters
   * without width vanish, decimal digits of other scripts become 0 to 9.
   */
  static String tidy(String text) {
    StringBuilder out = new StringBuilder(Math.min(text.length(), 4096));
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.getType(c) == Character.FORMAT) {
        continue;
      }
      boolean blank =
          Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c);
      if (!blank) {
        boolean digit = Character.getType(c) == Character.DECIMAL_DIGIT_NUMBER;
        out.append(digit ? (char) ('0' + Character.digit(c, 10)) : c);
      } else if (out.length() > 0 && out.charAt(out.length() - 1) != ' ') {
        out.append(' ');
      }
    }
    int end = out.length();
    return out.substring(0, end > 0 && out.charAt(end - 1) == ' ' ? end - 1 : end);
  }

  /** Without a bullet, a box to tick or a heading's sign in front, or emphasis around it. */
  static String withoutBullet(String tidy) {
    String text = BULLET.matcher(tidy).replaceFirst("");
    while (text.length() > 4 && text.startsWith("**") && text.endsWith("**")) {
      text = text.substring(2, text.length() - 2).strip();
    }
    return text;
  }

  /** Whether a step's or item's number stands in front. */
  static boolean isNumbered(String tidy) {
    return NUMBERING.matcher(withoutBullet(tidy)).find();
  }

  /** Without a bullet or number in front. */
  static String withoutNumber(String tidy) {
    return NUMBERING.matcher(withoutBullet(tidy)).replaceFirst("");
  }

  /** The lines of a text, at most so many; what follows them stays together as the last. */
  static List<String> lines(String text, int most) {
    List<String> lines = new ArrayList<>();
    int start = 0;
    while (start < text.length()) {
      int end = start;
      while (end < text.length() && !isLineEnd(text.charAt(end))) {
        end++;
      }
      if (lines.size() == most) {
        lines.add(text.substring(start));
        return lines;
      }
      lines.add(text.substring(start, end));
      boolean pair =
          end + 1 < text.length() && text.charAt(end) == '\r' && text.charAt(end + 1) == '\n';
      start = end + (pair ? 2 : 1);
    }
    return lines;
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r' || c == '\u000B' || c == '\f' || c == '\u0085' || c == '\u2028'
        || c == '\u2029';
  }

  /** How many words a tidy text has. */
  static int words(String tidy) {
    return tidy.isEmpty() ? 0 : tidy.split(" ").length;
  }
}
