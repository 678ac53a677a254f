package io.ovenmark.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Lays plain text out in columns and lines of limited width. */
final class TextLayout {
  static final int WIDTH = 88;

  private static final Pattern BREAK =
      Pattern.compile(" +(?!(?:g|mg|oz|kcal|mm|min|%|°C|°F)(?:[ .,:;)]|$))(?<!\\(n )");

  private final StringBuilder out = new StringBuilder();

  void heading(String text) {
    out.append('\n').append(shown(text)).append('\n');
  }

  void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }

  /** Prose, broken between words, each line behind an indent. */
  void prose(String indent, String text) {
    for (String line : wrap(shown(text), WIDTH - indent.length())) {
      line(indent + line);
    }
  }

  /** An entry whose first line begins with a mark and whose others stand under its text. */
  void entry(String mark, String text) {
    String indent = mark;
    for (String line : wrap(shown(text), WIDTH - length(mark))) {
      line(indent + line);
      indent = " ".repeat(length(mark));
    }
  }

  String text() {
    return out.toString();
  }

  static String left(String text, int width) {
    String shown = cut(shown(text), width);
    return shown + " ".repeat(width - length(shown));
  }

  static String right(String text, int width) {
    String shown = cut(shown(text), width);
    return " ".repeat(width - length(shown)) + shown;
  }

  private static String cut(String text, int width) {
    return length(text) <= width
        ? text
        : text.substring(0, text.offsetByCodePoints(0, width - 1)) + "…";
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  /** On one line, without characters that steer a terminal or turn the writing direction. */
  static String shown(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .map(c -> Character.isISOControl(c) || turnsDirection(c) ? ' ' : c)
        .forEach(shown::appendCodePoint);
    return shown.toString();
  }

  private static boolean turnsDirection(int c) {
    return c == 0x2028 || c == 0x2029 || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
  }

  /** Breaks at spaces, but not between a number and its unit. */
  static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : BREAK.split(text)) {
      String rest = word;
      if (length(line.toString()) + 1 + length(rest) > width && !line.isEmpty()) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (length(rest) > width) {
        int end = rest.offsetByCodePoints(0, width);
        lines.add(rest.substring(0, end));
        rest = rest.substring(end);
      }
      line.append(line.isEmpty() ? "" : " ").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }
}
