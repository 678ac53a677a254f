package io.ovenmark.publish.story;

import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextLayout;
import java.text.AttributedCharacterIterator;
import java.text.Bidi;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A text broken into lines. A word wider than a line is broken, so that nothing is ever wider; a
 * figure stays with its unit; a paragraph that is written from right to left ends at the right.
 */
final class PictureText {
  private static final Pattern FIGURE_AND_UNIT =
      Pattern.compile(
          "([\\p{Nd}½¼¾][\\p{Nd}.,]*) (?="
              + "(mm|cm|g|kg|mg|ml|kcal|kJ|min|h|s|oz|in|tsp|tbsp|cup|%|°C|°F)(?!\\p{L}))");
  private static final char UNBREAKABLE = '\u00a0';

  /** Keeps a figure before its unit where the words run from right to left. */
  private static final char LEFT_TO_RIGHT = '\u200e';

  private static final double BETWEEN_PARAGRAPHS = 0.38;

  private final TextStyle style;
  private final double width;
  private final List<Row> rows;

  /** A line: its letters, the words in it, and the space above it. */
  record Row(TextLayout letters, String words, double above) {
    double across() {
      return letters.getVisibleAdvance();
    }
  }

  private PictureText(TextStyle style, double width, List<Row> rows) {
    this.style = style;
    this.width = width;
    this.rows = List.copyOf(rows);
  }

  /**
   * Breaks a text into lines.
   *
   * @param text may have several paragraphs, one to a line; may be empty
   * @param style how it is set
   * @param width of the lines, in pixels
   */
  static PictureText of(String text, TextStyle style, double width) {
    List<Row> rows = new ArrayList<>();
    for (String paragraph : text.split("\\R")) {
      String words = tidy(paragraph);
      if (!words.isEmpty()) {
        lay(words, style, width, rows);
      }
    }
    return new PictureText(style, width, rows);
  }

  /**
   * Sets a text as large as it fits.
   *
   * @param text a text
   * @param style the largest
   * @param smallest the smallest size
   * @param width of the lines
   * @param height within which it shall fit
   * @return the largest that fits; the smallest, cut with a word that it goes on, when none does
   */
  static PictureText fitted(
      String text, TextStyle style, double smallest, double width, double height) {
    for (double size = style.size(); size >= smallest; size -= 2) {
      TextStyle tried = new TextStyle(size, style.bold(), style.colour());
      PictureText fits = of(text, tried, width);
      if (fits.height() <= height) {
        return fits;
      }
    }
    PictureText least = of(text, new TextStyle(smallest, style.bold(), style.colour()), width);
    int lines = least.rowsWithin(height);
    return least.lines(0, Math.max(1, lines)).goingOn();
  }

  /** Sets a heading as large as it fits, in lines of about one length. */
  static PictureText heading(
      String text, TextStyle style, double smallest, double width, double height) {
    return fitted(text, style, smallest, width, height).even(text);
  }

  private PictureText even(String text) {
    if (rows.size() < 2 || !words().strip().equals(plain(tidy(text)))) {
      return this;
    }
    double low = width / 2;
    double high = width;
    PictureText best = this;
    while (high - low > 16) {
      double middle = (low + high) / 2;
      PictureText narrower = of(text, style, middle);
      if (narrower.rows.size() > rows.size() || narrower.breaksWords(text)) {
        low = middle;
      } else {
        best = narrower;
        high = middle;
      }
    }
    return new PictureText(style, width, best.rows);
  }

  private boolean breaksWords(String text) {
    return Arrays.stream(tidy(text).split("\\s+"))
        .anyMatch(word -> rows.stream().noneMatch(row -> row.words.contains(word)));
  }

  /** The last line ends with a mark that the text goes on. */
  private PictureText goingOn() {
    String mark = " …";
    Row last = rows.get(rows.size() - 1);
    String words = last.words.strip();
    while (words.length() > 1 && of(words + mark, style, width).rows.size() > 1) {
      int space = words.lastIndexOf(' ');
      int shorter = space > 0 ? space : words.offsetByCodePoints(words.length(), -1);
      words = words.substring(0, shorter).strip();
    }
    List<Row> ended = new ArrayList<>(rows.subList(0, rows.size() - 1));
    Row end = of(words + mark, style, width).rows.get(0);
    ended.add(new Row(end.letters, end.words, last.above));
    return new PictureText(style, width, ended);
  }

  private static void lay(String words, TextStyle style, double width, List<Row> rows) {
    AttributedCharacterIterator set = PictureType.set(words, style);
    LineBreakMeasurer measurer =
        new LineBreakMeasurer(
            set, BreakIterator.getLineInstance(Locale.ROOT), PictureType.EXACT);
    double above = rows.isEmpty() ? 0 : Math.round(style.size() * BETWEEN_PARAGRAPHS);
    while (measurer.getPosition() < words.length()) {
      int from = measurer.getPosition();
      TextLayout letters = measurer.nextLayout((float) width);
      rows.add(new Row(letters, words.substring(from, measurer.getPosition()), above));
      above = 0;
    }
  }

  private static String tidy(String paragraph) {
    String words = paragraph.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    String mark = Bidi.requiresBidi(words.toCharArray(), 0, words.length())
        ? String.valueOf(LEFT_TO_RIGHT)
        : "";
    return FIGURE_AND_UNIT.matcher(words).replaceAll(mark + "$1" + UNBREAKABLE);
  }

  TextStyle style() {
    return style;
  }

  double width() {
    return width;
  }

  List<Row> rows() {
    return rows;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The width of its longest line. */
  double across() {
    return rows.stream().mapToDouble(Row::across).max().orElse(0);
  }

  double height() {
    return rows.stream().mapToDouble(row -> row.above + style.leading()).sum();
  }

  /** How many of its lines fit into a height. */
  int rowsWithin(double height) {
    double used = 0;
    int count = 0;
    for (Row row : rows) {
      used += row.above + style.leading();
      if (used > height) {
        break;
      }
      count++;
    }
    return count;
  }

  /** Some of its lines, as a text of their own. */
  PictureText lines(int from, int to) {
    List<Row> some = new ArrayList<>(rows.subList(from, to));
    if (!some.isEmpty()) {
      Row first = some.get(0);
      some.set(0, new Row(first.letters, first.words, 0));
    }
    return new PictureText(style, width, some);
  }

  /** Words as they were before they were set. */
  static String plain(String set) {
    return set.replace(UNBREAKABLE, ' ').replace(String.valueOf(LEFT_TO_RIGHT), "");
  }

  /** Its words, as they stand in the lines. */
  String words() {
    StringBuilder words = new StringBuilder();
    for (Row row : rows) {
      words.append(row.above > 0 ? " " : "").append(row.words);
    }
    return plain(words.toString());
  }
}
