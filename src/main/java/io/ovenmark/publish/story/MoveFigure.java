package io.ovenmark.publish.story;

import java.awt.Color;
import java.awt.geom.Rectangle2D;

/** The figure that moved: a hollow bar before and a filled one after, from zero; the difference. */
final class MoveFigure {
  private static final double LEAST_BAR = 6;
  private static final double APART = 18;

  private final Move move;
  private final double width;
  private final double scale;
  private final PictureText label;
  private final PictureText from;
  private final PictureText to;
  private final PictureText difference;
  private final PictureText turned;

  /**
   * Sets it as large as it fits.
   *
   * @param move the figure
   * @param width of the drawing
   * @param height that it shall not exceed, unless the smallest does
   */
  static MoveFigure fitted(Move move, double width, double height) {
    double scale = Math.max(1, Math.min(1.6, width / 520));
    MoveFigure figure = new MoveFigure(move, width, scale);
    while (figure.height() > height && scale > 0.8) {
      scale -= 0.1;
      figure = new MoveFigure(move, width, scale);
    }
    return figure;
  }

  private MoveFigure(Move move, double width, double scale) {
    this.move = move;
    this.width = width;
    this.scale = scale;
    double values = width * 0.36;
    label =
        PictureText.fitted(
            PictureWords.capital(move.label()), TextStyle.bold(36 * scale), 26, width, 96 * scale);
    from = value(move.fromText(), Palette.BEFORE, values);
    to = value(move.toText(), Palette.AFTER, values);
    difference =
        PictureText.fitted(
            move.difference(),
            TextStyle.bold(68 * scale).in(Palette.INK),
            30,
            width,
            90 * scale);
    turned =
        PictureText.of(
            move.turned() ? "It crossed a limit of the goal." : "",
            TextStyle.plain(30).in(Palette.GOAL_INK),
            width);
  }

  private PictureText value(String text, Color colour, double widest) {
    return PictureText.fitted(
        text, TextStyle.bold(38 * scale).in(colour), 26, widest, 52 * scale);
  }

  private double bar() {
    return 50 * scale;
  }

  private double row() {
    return Math.max(bar(), Math.max(from.height(), to.height())) + 14 * scale;
  }

  double height() {
    return label.height()
        + 14
        + 2 * row()
        + difference.height()
        + (turned.isEmpty() ? 0 : 6 + turned.height());
  }

  void draw(PictureCanvas canvas, double x, double y) {
    double at = canvas.text(label, x, y) + 14;
    double words = Math.max(from.across(), to.across());
    double longest = width - words - APART;
    double low = Math.min(0, Math.min(move.from(), move.to()));
    double high = Math.max(0, Math.max(move.from(), move.to()));
    double one = high > low ? longest / (high - low) : 0;
    double zero = x - low * one;
    value(canvas, from, at, zero, move.from() * one, x + longest + APART, false);
    at += row();
    value(canvas, to, at, zero, move.to() * one, x + longest + APART, true);
    double first = at - row();
    canvas.fill(Palette.INK, zero, first - 5, 3, at + bar() + 5 - (first - 5));
    at += row();
    at = canvas.text(difference, x, at);
    if (!turned.isEmpty()) {
      canvas.text(turned, x, at + 6);
    }
  }

  private void value(
      PictureCanvas canvas,
      PictureText text,
      double y,
      double zero,
      double length,
      double farthest,
      boolean after) {
    double drawn = Math.max(LEAST_BAR, Math.abs(length));
    double left = length < 0 ? zero - drawn : zero;
    if (after) {
      canvas.fill(Palette.AFTER, left, y, drawn, bar());
    } else {
      double inside = Math.max(2, drawn - 4);
      canvas.outline(
          Palette.BEFORE, 4, new Rectangle2D.Double(left + 2, y + 2, inside, bar() - 4));
    }
    double beside = length < 0 ? farthest : Math.min(farthest, left + drawn + APART);
    canvas.text(text, beside, y + (bar() - text.height()) / 2);
  }
}
