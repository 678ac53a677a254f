package io.ovenmark.demo;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.Piece;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RadialGradientPaint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/**
 * A tray from above. Each piece is a small landscape lit from the upper left: its size follows
 * the measured width, its brown the crust shade, and what is uneven about it comes from
 * {@link Texture}.
 */
final class TrayPicture {
  private static final int TRAY = 0x3b4346;
  private static final int STONE = 0xd8d6cf;
  private static final int COCOA = 0x3d2315;
  private static final int PAPER = 0xe9e2d3;
  private static final double[] LIGHT = {-0.46, -0.55, 0.70};

  private static final PictureSheet.Light STEEL =
      new PictureSheet.Light() {
        @Override
        public double slow(int x, int y) {
          double away = Math.hypot((x - 560) / 1300.0, (y - 330) / 900.0);
          return 1.16 - 0.34 * away + 0.09 * Texture.rough(12, x / 210.0, y / 170.0, 4);
        }

        @Override
        public double fast(int x, int y) {
          return 0.042 * (Texture.grain(x / 48, y) - 0.5) + 0.04 * (Texture.grain(x, y) - 0.5);
        }
      };

  private TrayPicture() {}

  static void draw(
      PictureSheet sheet, PictureLayout layout, List<Piece> pieces, PieceShape shape, long seed) {
    worktop(sheet);
    tray(sheet);
    sheet.ruler(
        PictureLayout.MARGIN + 20,
        PictureLayout.TRAY_BOTTOM + 38,
        PictureLayout.WIDTH - 2.0 * PictureLayout.MARGIN - 40,
        layout.pixelsPerMillimetre());
    for (PictureLayout.Spot spot : layout.spots()) {
      long own = seed * 131 + spot.piece().id().hashCode();
      shadow(sheet.graphics(), spot, shape);
      piece(sheet, spot, shape, PictureLayout.crust(spot.piece(), pieces), own);
      if (shape != PieceShape.CUP) {
        seeds(sheet.graphics(), spot, shape, layout.pixelsPerMillimetre(), own);
      }
      double beside = shape == PieceShape.RECTANGLE ? 0.5 : 0.42;
      sheet.letter(
          spot.piece().id(),
          spot.x() + beside * spot.width() + (shape == PieceShape.RECTANGLE ? 46 : 22),
          spot.y() + beside * spot.height() + (shape == PieceShape.RECTANGLE ? 0 : 18));
    }
  }

  /** Only where the tray does not cover it, its rounded corners left out. */
  private static void worktop(PictureSheet sheet) {
    int beside = PictureLayout.MARGIN + 30;
    int right = PictureLayout.WIDTH - beside;
    int below = PictureLayout.TRAY_BOTTOM - 30;
    sheet.stone(0, 0, PictureLayout.WIDTH, 60, STONE);
    sheet.stone(0, 60, beside, below, STONE);
    sheet.stone(right, 60, PictureLayout.WIDTH, below, STONE);
    sheet.stone(0, below, PictureLayout.WIDTH, PictureLayout.HEIGHT, STONE);
  }

  private static void tray(PictureSheet sheet) {
    int left = PictureLayout.MARGIN;
    int right = PictureLayout.WIDTH - PictureLayout.MARGIN;
    int top = 30;
    int bottom = PictureLayout.TRAY_BOTTOM;
    Graphics2D graphics = sheet.graphics();
    graphics.setColor(new Color(0, 0, 0, 9));
    for (int i = 14; i > 0; i--) {
      Path2D shadow = new Path2D.Double(Path2D.WIND_EVEN_ODD);
      shadow.append(
          new RoundRectangle2D.Double(
              left - i + 5, top - i + 9, right - left + 2.0 * i, bottom - top + 2.0 * i, 50, 50),
          false);
      shadow.append(
          new Rectangle2D.Double(left + 40, top + 40, right - left - 80, bottom - top - 80), false);
      graphics.fill(shadow);
    }
    graphics.setColor(new Color(CrustColour.lit(TRAY, 0.8)));
    graphics.fill(new RoundRectangle2D.Double(left, top, right - left, bottom - top, 40, 40));
    int rim = 16;
    sheet.surface(left + rim, top + rim, right - rim, bottom - rim, TRAY, STEEL);
    graphics.setStroke(new BasicStroke(2f));
    graphics.setColor(new Color(255, 255, 255, 46));
    graphics.draw(
        new RoundRectangle2D.Double(
            left + 2, top + 2, right - left - 4, bottom - top - 4, 38, 38));
    graphics.setColor(new Color(0, 0, 0, 90));
    graphics.draw(
        new RoundRectangle2D.Double(
            left + rim, top + rim, right - left - 2.0 * rim, bottom - top - 2.0 * rim, 16, 16));
  }

  private static void shadow(Graphics2D graphics, PictureLayout.Spot spot, PieceShape shape) {
    double radius = 0.62 * spot.width();
    AffineTransform before = graphics.getTransform();
    graphics.translate(spot.x() + 0.05 * spot.width(), spot.y() + 0.06 * spot.width());
    graphics.scale(1, spot.height() / spot.width());
    float solid = shape == PieceShape.RECTANGLE ? 0.84f : 0.72f;
    graphics.setPaint(
        new RadialGradientPaint(
            0f,
            0f,
            (float) radius,
            new float[] {0f, solid, 1f},
            new Color[] {
              new Color(0, 0, 0, 170), new Color(0, 0, 0, 150), new Color(0, 0, 0, 0)
            }));
    if (shape != PieceShape.RECTANGLE) {
      graphics.fill(new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius));
    }
    graphics.setTransform(before);
    if (shape == PieceShape.RECTANGLE) {
      for (int i = 9; i > 0; i--) {
        graphics.setColor(new Color(0, 0, 0, 16));
        graphics.fill(
            new RoundRectangle2D.Double(
                spot.x() - spot.width() / 2 - i + 5,
                spot.y() - spot.height() / 2 - i + 8,
                spot.width() + 2.0 * i,
                spot.height() + 2.0 * i,
                20,
                20));
      }
    }
  }

  private static void piece(
      PictureSheet sheet, PictureLayout.Spot spot, PieceShape shape, double crust, long seed) {
    boolean torn = spot.piece().findings().contains(FindingVocabulary.CRACKED.word());
    PieceSurface surface = new PieceSurface(shape, seed, torn);
    double half = 0.5 * spot.width();
    int reach = (int) (half * 1.12);
    int size = 2 * reach + 2;
    int left = (int) spot.x() - reach;
    int top = (int) spot.y() - reach;
    double turn = shape == PieceShape.RECTANGLE ? 0.05 * Texture.noise(seed, 3.3, 1.1) : 0;
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    float[] heights = new float[size * size];
    float[] covers = new float[size * size];
    for (int pass = 0; pass < 2; pass++) {
      for (int row = 0; row + pass < size; row++) {
        for (int column = 0; column + pass < size; column++) {
          double dx = (left + column + 0.5 - spot.x()) / half;
          double dy = (top + row + 0.5 - spot.y()) / half;
          double u = cos * dx + sin * dy;
          double v = cos * dy - sin * dx;
          int at = row * size + column;
          if (pass == 0) {
            double inside = surface.inside(u, v);
            covers[at] = (float) Math.min(1, inside * half + 0.5);
            heights[at] = covers[at] > -2 ? (float) surface.height(u, v, inside) : 0;
          } else if (covers[at] > 0) {
            double slopeX = (heights[at + 1] - heights[at]) * half;
            double slopeY = (heights[at + size] - heights[at]) * half;
            int colour = colour(surface, u, v, crust, light(slopeX, slopeY));
            sheet.pixel(left + column, top + row, colour, covers[at]);
          }
        }
      }
    }
  }

  private static double light(double slopeX, double slopeY) {
    double length = Math.sqrt(slopeX * slopeX + slopeY * slopeY + 1);
    double facing = (-slopeX * LIGHT[0] - slopeY * LIGHT[1] + LIGHT[2]) / length;
    return 0.54 + 0.64 * Math.max(0, facing);
  }

  private static int colour(PieceSurface surface, double u, double v, double crust, double light) {
    double paper = surface.paper(u, v);
    int lined = paper > 0 ? CrustColour.lit(PAPER, light * surface.pleat(u, v)) : 0;
    if (paper >= 1) {
      return lined;
    }
    int base = CrustColour.at(crust + surface.browning(u, v));
    if (surface.shape() == PieceShape.CUP) {
      base = CrustColour.blend(base, COCOA, 0.66);
    }
    int lit = CrustColour.lit(base, light);
    return paper > 0 ? CrustColour.blend(lit, lined, paper) : lit;
  }

  private static void seeds(
      Graphics2D graphics, PictureLayout.Spot spot, PieceShape shape, double scale, long seed) {
    boolean flat = shape == PieceShape.RECTANGLE;
    int count = flat ? 150 : 74;
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * Texture.hash(seed, i, 1);
      double out = Math.sqrt(Texture.hash(seed, i, 2)) * 0.86;
      double x = flat ? 1.84 * (Texture.hash(seed, i, 3) - 0.5) : out * Math.cos(angle);
      double y = flat ? 1.80 * (Texture.hash(seed, i, 4) - 0.5) : out * Math.sin(angle);
      boolean large = Texture.hash(seed, i, 5) > 0.84;
      double millimetres = large ? (flat ? 4.4 : 7.2) : 3.0;
      double length = millimetres * scale * (0.85 + 0.3 * Texture.hash(seed, i, 6));
      double breadth = (large ? (flat ? 2.1 : 2.9) : 1.7) * scale;
      int colour = large ? (flat ? 0x8a5f34 : 0xa69c83) : 0xf0dfb4;
      AffineTransform before = graphics.getTransform();
      graphics.translate(spot.x() + x * spot.width() / 2, spot.y() + y * spot.height() / 2);
      graphics.rotate(2 * Math.PI * Texture.hash(seed, i, 7));
      graphics.setColor(new Color(0x20, 0x10, 0x04, 92));
      graphics.fill(new Ellipse2D.Double(-length / 2 + 1, -breadth / 2 + 2, length, breadth));
      graphics.setColor(new Color(CrustColour.lit(colour, 0.82 + 0.2 * Texture.hash(seed, i, 8))));
      graphics.fill(new Ellipse2D.Double(-length / 2, -breadth / 2, length, breadth));
      graphics.setColor(new Color(255, 255, 255, 60));
      graphics.fill(
          new Ellipse2D.Double(-length / 3, -breadth / 2.6, length / 1.7, breadth / 3.2));
      graphics.setTransform(before);
    }
  }
}
