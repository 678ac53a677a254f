package io.ovenmark.publish.story;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Texts below each other, in a column. */
final class TextColumn {
  /** What stands where a column ends before its text. */
  static final String GOES_ON = "… continued in the text";

  private static final String CONTINUED = ", continued";
  private static final double INDENT = 26;
  private static final double AFTER_TEXT = 0.38;

  private final double width;
  private final List<Part> parts;

  /**
   * A text of the column.
   *
   * @param text the text
   * @param above the space above it, unless it is the first
   * @param bar the colour of the bar beside it; null for none
   * @param heads whether it heads what follows, so that it never stands last
   */
  private record Part(PictureText text, double above, Color bar, boolean heads) {
    double height() {
      return above + text.height();
    }
  }

  TextColumn(double width) {
    this(width, new ArrayList<>());
  }

  private TextColumn(double width, List<Part> parts) {
    this.width = width;
    this.parts = parts;
  }

  TextColumn heading(String text, TextStyle style) {
    return add(PictureText.of(text, style, width), style.size() * 0.9, null, true);
  }

  TextColumn paragraph(String text, TextStyle style) {
    return add(PictureText.of(text, style, width), style.size() * AFTER_TEXT, null, false);
  }

  TextColumn paragraphs(List<String> texts, TextStyle style) {
    texts.forEach(adding(style));
    return this;
  }

  /** Adds paragraphs of a style, one by one. */
  Consumer<String> adding(TextStyle style) {
    return text -> paragraph(text, style);
  }

  /** A paragraph with a bar beside it. */
  TextColumn barred(String text, TextStyle style, Color bar) {
    return add(PictureText.of(text, style, width - INDENT), style.size() * 0.6, bar, false);
  }

  private TextColumn add(PictureText text, double above, Color bar, boolean heads) {
    if (!text.isEmpty()) {
      parts.add(new Part(text, parts.isEmpty() ? 0 : Math.round(above), bar, heads));
    }
    return this;
  }

  boolean isEmpty() {
    return parts.isEmpty();
  }

  double width() {
    return width;
  }

  double height() {
    return parts.stream().mapToDouble(Part::height).sum();
  }

  /** Its words. */
  String words() {
    StringBuilder words = new StringBuilder();
    for (Part part : parts) {
      words.append(words.length() == 0 ? "" : " ").append(part.text.words());
      words.append(part.heads ? ":" : words.toString().endsWith(".") ? "" : ".");
    }
    return words.toString();
  }

  /** Draws it. */
  void draw(PictureCanvas canvas, double x, double y) {
    double at = y;
    for (Part part : parts) {
      at += part.above;
      if (part.bar == null) {
        canvas.text(part.text, x, at);
      } else {
        canvas.fill(part.bar, x, at + 3, 7, part.text.height() - 6);
        canvas.text(part.text, x + INDENT, at);
      }
      at += part.text.height();
    }
  }

  /**
   * As much of it as fits.
   *
   * @param height the height
   * @return the same when all of it fits; else its beginning, and a line that says that it goes on
   */
  TextColumn within(double height) {
    if (height() <= height) {
      return this;
    }
    TextStyle style = TextStyle.quiet(TextStyle.SMALLEST);
    PictureText notice = PictureText.of(GOES_ON, style, width);
    List<Part> begun =
        begun(height - notice.height() - style.size() * 0.3, true, new ArrayList<>());
    TextColumn cut = new TextColumn(width, begun);
    return cut.add(notice, style.size() * 0.3, null, false);
  }

  /**
   * All of it, on as many pages as it takes. A page that does not begin with a heading gets the one
   * that stood last, with the word that it goes on.
   *
   * @param height of a page; at least a few lines
   * @param breaking whether any text may be broken; else only one that is longer than a page
   * @return a column for each page, nothing left out
   */
  List<TextColumn> pages(double height, boolean breaking) {
    List<TextColumn> pages = new ArrayList<>();
    List<Part> rest = parts;
    Optional<Part> heading = Optional.empty();
    while (!rest.isEmpty()) {
      List<Part> left = new ArrayList<>();
      List<Part> begun = new TextColumn(width, rest).begun(height, breaking, left);
      if (begun.stream().allMatch(Part::heads) && !left.isEmpty()) {
        throw new IllegalArgumentException("A page of " + height + " holds no line.");
      }
      pages.add(new TextColumn(width, begun));
      heading = begun.stream().filter(Part::heads).reduce((one, next) -> next).or(or(heading));
      if (!left.isEmpty() && !left.get(0).heads && heading.isPresent()) {
        headed(left, heading.get().text);
      }
      rest = left;
    }
    return pages;
  }

  private static Supplier<Optional<Part>> or(Optional<Part> earlier) {
    return () -> earlier;
  }

  private void headed(List<Part> rest, PictureText heading) {
    String words = heading.words().strip();
    String more = words.endsWith(CONTINUED) ? words : words + CONTINUED;
    Part first = rest.get(0);
    double above = Math.round(first.text.style().size() * AFTER_TEXT);
    rest.set(0, new Part(first.text, above, first.bar, false));
    rest.add(0, new Part(PictureText.of(more, heading.style(), width), 0, null, true));
  }

  /**
   * What fits into a height.
   *
   * @param breaking whether a text may be broken between two lines; else only when it is the first
   * @param left what does not fit is put there
   */
  private List<Part> begun(double height, boolean breaking, List<Part> left) {
    List<Part> begun = new ArrayList<>();
    double used = 0;
    int at = 0;
    while (at < parts.size() && used + parts.get(at).height() <= height) {
      used += parts.get(at).height();
      begun.add(parts.get(at));
      at++;
    }
    if (at < parts.size()) {
      Part broken = parts.get(at);
      int lines = broken.text.rowsWithin(height - used - broken.above);
      boolean alone = begun.stream().allMatch(Part::heads);
      if (lines > 0 && !broken.heads && (breaking || alone)) {
        begun.add(new Part(broken.text.lines(0, lines), broken.above, broken.bar, false));
        PictureText rest = broken.text.lines(lines, broken.text.rows().size());
        left.add(new Part(rest, 0, broken.bar, false));
        at++;
      }
    }
    List<Part> later = new ArrayList<>(parts.subList(at, parts.size()));
    while (!begun.isEmpty() && begun.get(begun.size() - 1).heads && at < parts.size()) {
      later.add(0, begun.remove(begun.size() - 1));
    }
    if (left.isEmpty() && !later.isEmpty()) {
      Part first = later.get(0);
      later.set(0, new Part(first.text, 0, first.bar, first.heads));
    }
    left.addAll(later);
    return begun;
  }
}
