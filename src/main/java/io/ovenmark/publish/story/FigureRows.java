package io.ovenmark.publish.story;

import io.ovenmark.publish.card.Card;
import java.util.ArrayList;
import java.util.List;

/**
 * The macros of a piece as rows, the name at the left, the figure at the right; and how they were
 * worked out, where there is room.
 */
final class FigureRows {
  private static final double EXPLAINED = 32;
  private static final double ABOVE_BASIS = 14;
  private static final double BETWEEN = 24;

  private final PictureText heading;
  private final List<Row> rows;
  private final PictureText basis;
  private final double width;
  private final double gap;
  private final double figuresAcross;

  private record Row(PictureText label, PictureText figure) {
    double height() {
      return Math.max(label.height(), figure.height());
    }
  }

  private FigureRows(
      List<Card.Fact> facts, String explained, double width, double size, double gap) {
    this.width = width;
    basis = PictureText.of(explained, TextStyle.quiet(TextStyle.SMALLEST), width);
    this.gap = gap;
    heading = PictureText.of("A piece", TextStyle.bold(size), width);
    double labels =
        facts.stream()
            .map(fact -> label(fact, size, width * 0.5))
            .mapToDouble(PictureText::across)
            .max()
            .orElse(0);
    figuresAcross = width - Math.ceil(labels) - BETWEEN;
    rows = new ArrayList<>();
    for (Card.Fact fact : facts) {
      TextStyle style = fact.known() ? TextStyle.bold(size) : TextStyle.quiet(size);
      rows.add(
          new Row(
              label(fact, size, width * 0.5),
              PictureText.of(fact.text(), style, figuresAcross)));
    }
  }

  private static PictureText label(Card.Fact fact, double size, double width) {
    return PictureText.of(PictureWords.capital(fact.label()), TextStyle.plain(size), width);
  }

  /** As large as it fits. */
  static FigureRows fitted(Card card, double width, double height) {
    String basis = String.join(" ", card.basis());
    FigureRows explained = fitted(card.figures(), basis, EXPLAINED, width, height);
    return explained.height() <= height
        ? explained
        : fitted(card.figures(), "", TextStyle.SMALLEST, width, height);
  }

  private static FigureRows fitted(
      List<Card.Fact> facts, String basis, double smallest, double width, double height) {
    FigureRows last = null;
    double least = basis.isEmpty() ? 2 : 12;
    for (double size = 40; size >= smallest; size -= 2) {
      for (double gap = 22; gap >= least; gap -= 5) {
        last = new FigureRows(facts, basis, width, size, gap);
        if (last.height() <= height) {
          return last;
        }
      }
    }
    return last;
  }

  double height() {
    double under = basis.isEmpty() ? 0 : ABOVE_BASIS + basis.height();
    return heading.height()
        + 8
        + rows.stream().mapToDouble(row -> row.height() + gap).sum()
        + under;
  }

  void draw(PictureCanvas canvas, double x, double y) {
    double at = canvas.text(heading, x, y) + 8;
    canvas.fill(Palette.INK, x, at - 1, width, 3);
    for (Row row : rows) {
      canvas.text(row.label, x, at + gap / 2);
      canvas.textAtEnd(row.figure, x + width - figuresAcross, at + gap / 2);
      at += row.height() + gap;
      canvas.fill(Palette.RULE, x, at - 1, width, 2);
    }
    canvas.text(basis, x, at + ABOVE_BASIS);
  }
}
