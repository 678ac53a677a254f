package io.ovenmark.publish.story;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/**
 * The sheet of a picture: its size and margins, and what can be drawn on it. It remembers which
 * words stand where.
 */
final class PictureCanvas {
  static final int WIDTH = 1920;
  static final int HEIGHT = 1080;

  /** What lies outside may be cut off by a screen: a twentieth at each edge. */
  static final double LEFT = 96;

  static final double RIGHT = WIDTH - LEFT;
  static final double TOP = 54;
  static final double BOTTOM = HEIGHT - TOP;
  static final double ACROSS = RIGHT - LEFT;

  private static final double ASCENT = 0.76;

  private final BufferedImage image =
      new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
  private final Graphics2D graphics = image.createGraphics();
  private final List<Placed> placed = new ArrayList<>();

  /** Words, and the box of their line. */
  record Placed(String words, Rectangle2D box) {}

  PictureCanvas() {
    graphics.setRenderingHint(
        RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    fill(Palette.PAPER, 0, 0, WIDTH, HEIGHT);
  }

  BufferedImage image() {
    return image;
  }

  /** The words that stand on it, line by line. */
  List<Placed> placed() {
    return List.copyOf(placed);
  }

  /**
   * Draws a text from its upper left corner.
   *
   * @return where it ends below
   */
  double text(PictureText text, double x, double y) {
    return text(text, x, y, 0);
  }

  /** Draws a text whose lines end at the right of its width. */
  double textAtEnd(PictureText text, double x, double y) {
    return text(text, x, y, 1);
  }

  /** Draws a text whose lines stand in the middle of its width. */
  double textInMiddle(PictureText text, double x, double y) {
    return text(text, x, y, 0.5);
  }

  private double text(PictureText text, double x, double y, double share) {
    graphics.setColor(text.style().colour());
    double leading = text.style().leading();
    double at = y;
    for (PictureText.Row row : text.rows()) {
      at += row.above();
      double left = x + (text.width() - row.across()) * start(row, share);
      double hanging =
          row.letters().isLeftToRight() ? 0 : row.letters().getAdvance() - row.across();
      double size = text.style().size();
      double baseline = Math.round(at + (leading - size) / 2 + size * ASCENT + size * 0.1);
      row.letters().draw(graphics, (float) (left - hanging), (float) baseline);
      placed.add(
          new Placed(row.words(), new Rectangle2D.Double(left, at, row.across(), leading)));
      at += leading;
    }
    return at;
  }

  private static double start(PictureText.Row row, double share) {
    return row.letters().isLeftToRight() ? share : Math.max(share, share == 0.5 ? 0.5 : 1);
  }

  void fill(Color colour, double x, double y, double width, double height) {
    fill(colour, new Rectangle2D.Double(x, y, width, height));
  }

  void fill(Color colour, Shape shape) {
    graphics.setColor(colour);
    graphics.fill(shape);
  }

  void outline(Color colour, double thick, Shape shape) {
    graphics.setColor(colour);
    graphics.setStroke(
        new BasicStroke((float) thick, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    graphics.draw(shape);
  }

  /** A line of short strokes. */
  void dashes(Color colour, double thick, Shape shape) {
    graphics.setColor(colour);
    graphics.setStroke(
        new BasicStroke(
            (float) thick,
            BasicStroke.CAP_ROUND,
            BasicStroke.JOIN_ROUND,
            1,
            new float[] {1, (float) (thick * 3)},
            0));
    graphics.draw(shape);
  }

  void line(Color colour, double thick, double fromX, double fromY, double toX, double toY) {
    outline(colour, thick, new Line2D.Double(fromX, fromY, toX, toY));
  }

  /** The mark of what was before: a hollow ring around a point. */
  void ring(double x, double y, double radius) {
    double thick = Math.max(3, radius * 0.3);
    Shape ring = around(x, y, radius - thick / 2);
    fill(Palette.PAPER, ring);
    outline(Palette.BEFORE, thick, ring);
  }

  /** The mark of what came after: a filled dot around a point. */
  void dot(double x, double y, double radius) {
    fill(Palette.AFTER, around(x, y, radius));
  }

  /** A point that is neither: small and hollow. */
  void point(double x, double y, double radius) {
    Shape ring = around(x, y, radius);
    fill(Palette.PAPER, ring);
    outline(Palette.RULE_STRONG, 2.5, ring);
  }

  private static Shape around(double x, double y, double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  /** A photo with a thin rule round it, at full pixels so that it stays sharp. */
  void photo(BufferedImage photo, int x, int y) {
    graphics.drawImage(photo, x, y, null);
    outline(
        Palette.RULE_STRONG,
        1.5,
        new Rectangle2D.Double(x + 0.5, y + 0.5, photo.getWidth() - 1, photo.getHeight() - 1));
  }

  /** A picture that reaches the edges of the sheet. */
  void bleeding(BufferedImage photo, int x, int y) {
    graphics.drawImage(photo, x, y, null);
  }

  /** The file. */
  byte[] png(String description) {
    graphics.dispose();
    return PictureFile.png(image, description);
  }
}
