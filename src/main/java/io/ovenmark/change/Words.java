package io.ovenmark.change;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a text into words, runs of white space, and single signs. Joined, the parts are exactly the
 * text. A surrogate pair, a letter with its accents and a joined emoji are never cut.
 */
final class Words {
  private static final int JOINER = 0x200D;

  private final String text;

  private Words(String text) {
    this.text = text;
  }

  static List<String> of(String text) {
    Words words = new Words(text);
    List<String> parts = new ArrayList<>();
    for (int start = 0; start < text.length(); ) {
      int end = words.end(start);
      parts.add(text.substring(start, end));
      start = end;
    }
    return parts;
  }

  private int end(int start) {
    int c = text.codePointAt(start);
    int i = start + Character.charCount(c);
    if (isSpace(c)) {
      while (i < text.length() && isSpace(text.codePointAt(i))) {
        i += Character.charCount(text.codePointAt(i));
      }
      return i;
    }
    if (Character.isLetterOrDigit(c) && !Character.isIdeographic(c)) {
      return wordEnd(i);
    }
    if (isFlagPart(c) && i < text.length() && isFlagPart(text.codePointAt(i))) {
      i += 2;
    }
    return marksEnd(i);
  }

  private int wordEnd(int from) {
    int i = marksEnd(from);
    while (i < text.length()) {
      int c = text.codePointAt(i);
      int next = i + Character.charCount(c);
      boolean joins =
          ".,'’-‐\u200C".indexOf(c) >= 0 && next < text.length() && isPart(text.codePointAt(next));
      if (!joins && !isPart(c)) {
        return i;
      }
      i = marksEnd(next);
    }
    return i;
  }

  private int marksEnd(int from) {
    int i = from;
    while (i < text.length()) {
      int c = text.codePointAt(i);
      if (c == JOINER) {
        i++;
        if (i < text.length()) {
          i += Character.charCount(text.codePointAt(i));
        }
      } else if (isMark(c)) {
        i += Character.charCount(c);
      } else {
        return i;
      }
    }
    return i;
  }

  private static boolean isPart(int c) {
    return Character.isLetterOrDigit(c) && !Character.isIdeographic(c);
  }

  private static boolean isMark(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.COMBINING_SPACING_MARK
        || c >= 0x1F3FB && c <= 0x1F3FF;
  }

  private static boolean isFlagPart(int c) {
    return c >= 0x1F1E6 && c <= 0x1F1FF;
  }

  static boolean isSpace(int c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }
}
