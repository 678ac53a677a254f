package io.ovenmark.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * How many columns of a terminal a text takes: none for combining marks, two for East Asian wide
 * characters and most pictographs, one for everything else (after Unicode's UAX 11, by blocks).
 */
final class TextWidth {
  private TextWidth() {}

  static int of(String text) {
    return text.codePoints().map(TextWidth::of).sum();
  }

  private static int of(int c) {
    int type = Character.getType(c);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    boolean wide =
        c >= 0x1100 && c <= 0x115f
            || c >= 0x2e80 && c <= 0xa4cf && c != 0x303f
            || c >= 0xac00 && c <= 0xd7a3
            || c >= 0xf900 && c <= 0xfaff
            || c >= 0xfe30 && c <= 0xfe6f
            || c >= 0xff00 && c <= 0xff60
            || c >= 0xffe0 && c <= 0xffe6
            || c >= 0x1f300 && c <= 0x1faff
            || c >= 0x20000 && c <= 0x3fffd;
    return wide ? 2 : 1;
  }

  /** Fills up with spaces on the right. */
  static String left(String text, int width) {
    return text + " ".repeat(Math.max(0, width - of(text)));
  }

  /** Fills up with spaces on the left. */
  static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - of(text))) + text;
  }

  /** Breaks a text between words; a word that is too long stands on a line of its own. */
  static List<String> wrap(String text, int width, String indent) {
    List<String> lines = new ArrayList<>();
    int start = 0;
    while (start < text.length() && text.charAt(start) == ' ') {
      start++;
    }
    StringBuilder line = new StringBuilder(text.substring(0, start));
    boolean empty = true;
    for (String word : text.substring(start).split(" ", -1)) {
      if (!empty && of(line.toString()) + 1 + of(word) > width) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
