package io.ovenmark.publish.story;

import io.ovenmark.publish.card.Card;
import java.util.ArrayList;
import java.util.List;

/** The macros of a piece as rows: the name at the left, the figure at the right. */
final class FigureRows {
  private final PictureText heading;
  private final List<Row> rows;
  private final double width;
  private final double gap;

  private record Row(PictureText label, PictureText figure) {
    double height() {
      return Math.max(label.height(), figure.height());
    }
  }

  private FigureRows(List<Card.Fact> facts, double width, double size, double gap) {
    this.width = width;
    this.gap = gap;
    heading = PictureText.of("A piece", TextStyle.bold(size), width);
    rows = new ArrayList<>();
    for (Card.Fact fact : facts) {
      TextStyle style = fact.known() ? TextStyle.bold(size) : TextStyle.quiet(size);
      rows.add(
          new Row(
              PictureText.of(PictureWords.capital(fact.label()), TextStyle.plain(size), width * 0.5),
              PictureText.of(fact.text(), style, width * 0.48)));
    }
  }

  /** As large as it fits. */
  static FigureRows fitted(List<Card.Fact> facts, double width, double height) {
    FigureRows last = null;
    for (double size = 40; size >= TextStyle.SMALLEST; size -= 2) {
      for (double gap = 22; gap >= 4; gap -= 6) {
        last = new FigureRows(facts, width, size, gap);
        if (last.height() <= height) {
          return last;
        }
      }
    }
    return last;
  }

  double height() {
    return heading.height() + 8 + rows.stream().mapToDouble(row -> row.height() + gap).sum();
  }

  void draw(PictureCanvas canvas, double x, double y) {
    double at = canvas.text(heading, x, y) + 8;
    canvas.line(Palette.INK, 3, x, at, x + width, at);
    for (Row row : rows) {
      canvas.text(row.label, x, at + gap / 2);
      canvas.textAtEnd(row.figure, x + width * 0.52, at + gap / 2);
      at += row.height() + gap;
      canvas.line(Palette.RULE, 2, x, at, x + width, at);
    }
  }
}
