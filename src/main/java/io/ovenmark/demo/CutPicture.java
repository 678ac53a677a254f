package io.ovenmark.demo;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.Piece;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Locale;

/**
 * Pieces cut through, seen from the side beside a ruler. Height and width follow the measures,
 * the crust the shade, and the crumb what was found: a damp band where it was gummy, a wet line,
 * fine or few pores, a dark base.
 */
final class CutPicture {
  private static final int WALL = 0xcfd2cc;
  private static final int BOARD = 0x3b4346;
  private static final int STONE = 0xd8d6cf;
  private static final int CRUMB = 0xe8d6a2;
  private static final int PORE = 0xb8965a;
  private static final int DAMP = 0xa07c3c;
  private static final int COCOA = 0x3d2315;
  private static final int COCOA_CRUMB = 0x6b432a;
  private static final double CRUST_MM = 2.1;
  private static final double FLAKE = 0.085;
  private static final double SPECK = 0.075;
  private static final int UPPER_END = 530;
  private static final int BOARD_END = 1056;

  private CutPicture() {}

  static void draw(
      PictureSheet sheet, PictureLayout layout, List<Piece> pieces, PieceShape shape, long seed) {
    sheet.stone(0, BOARD_END, PictureLayout.WIDTH, PictureLayout.HEIGHT, STONE);
    boolean single =
        layout.spots().stream().allMatch(spot -> spot.y() == PictureLayout.SINGLE_FOOT);
    if (single) {
      shelf(sheet, layout, 0, PictureLayout.SINGLE_FOOT, BOARD_END);
    } else {
      shelf(sheet, layout, 0, PictureLayout.UPPER_FOOT, UPPER_END);
      shelf(sheet, layout, UPPER_END, PictureLayout.LOWER_FOOT, BOARD_END);
    }
    for (PictureLayout.Spot spot : layout.spots()) {
      double crust = PictureLayout.crust(spot.piece(), pieces);
      shadow(sheet.graphics(), spot);
      new Face(spot, shape, layout.pixelsPerMillimetre(), crust, seed).draw(sheet);
      label(sheet, spot);
    }
  }

  private static void shelf(
      PictureSheet sheet, PictureLayout layout, int top, int foot, int bottom) {
    sheet.stone(0, top, PictureLayout.WIDTH, foot, WALL);
    sheet.surface(
        0,
        foot,
        PictureLayout.WIDTH,
        bottom,
        BOARD,
        new PictureSheet.Light() {
          @Override
          public double slow(int x, int y) {
            double depth = 0.16 * (y - foot) / (bottom - foot);
            return 1.1 - depth + 0.06 * Texture.rough(21, x / 240.0, y / 40.0, 3);
          }

          @Override
          public double fast(int x, int y) {
            return 0.05 * (Texture.grain(x, y) - 0.5) + (y < foot + 4 ? 0.25 : 0);
          }
        });
    double scale = layout.pixelsPerMillimetre();
    int centimetres = (int) ((foot - top - 40) / (10 * scale));
    double length = 10 * scale * Math.min(6, centimetres) + 20;
    sheet.uprightRuler(PictureLayout.MARGIN + 30.0, foot, length, scale);
  }

  private static void label(PictureSheet sheet, PictureLayout.Spot spot) {
    sheet.letter(spot.piece().id(), spot.x() - 70, spot.y() + 66);
    String height =
        spot.piece().heightMillimetres().isPresent()
            ? String.format(
                Locale.ROOT, "%.0f mm", spot.piece().heightMillimetres().getAsDouble())
            : "not measured";
    sheet.words(height, spot.x() - 30, spot.y() + 76, 28, false, new Color(0xe6e8e6));
  }

  private static void shadow(Graphics2D graphics, PictureLayout.Spot spot) {
    for (int i = 12; i > 0; i--) {
      graphics.setColor(new Color(0, 0, 0, 12));
      double width = spot.width() * 0.96 + 6.0 * i;
      graphics.fill(
          new Ellipse2D.Double(spot.x() - width / 2 + 8, spot.y() - 1.3 * i, width, 2.8 * i));
    }
  }

  /** One cut face; lengths in millimetres, the middle of the base at 0, 0, upwards positive. */
  private static final class Face {
    private final PictureLayout.Spot spot;
    private final PieceShape shape;
    private final double scale;
    private final double crust;
    private final long seed;
    private final double halfWidth;
    private final double height;
    private final boolean gummy;
    private final boolean wetLine;
    private final boolean darkBase;
    private final double poreSize;
    private final double poreShare;

    Face(PictureLayout.Spot spot, PieceShape shape, double scale, double crust, long seed) {
      this.spot = spot;
      this.shape = shape;
      this.scale = scale;
      this.crust = crust;
      this.seed = seed * 131 + spot.piece().id().hashCode();
      this.halfWidth = spot.width() / scale / 2;
      this.height = spot.height() / scale;
      this.gummy = found(FindingVocabulary.GUMMY_CRUMB);
      this.wetLine = found(FindingVocabulary.WET_LINE);
      this.darkBase = found(FindingVocabulary.DARK_BASE);
      boolean even = found(FindingVocabulary.EVEN_CRUMB);
      boolean dense = found(FindingVocabulary.DENSE) || found(FindingVocabulary.FLAT);
      this.poreSize = even ? 1.9 : 2.6;
      this.poreShare = dense ? 0.2 : even ? 0.34 : 0.36;
    }

    private boolean found(FindingVocabulary finding) {
      return spot.piece().findings().contains(finding.word());
    }

    void draw(PictureSheet sheet) {
      int left = (int) (spot.x() - spot.width() * 0.55);
      int right = (int) (spot.x() + spot.width() * 0.55);
      int top = (int) (spot.y() - spot.height() * 1.08);
      double[] roofs = new double[right - left + 1];
      for (int x = left; x <= right; x++) {
        double along = Math.min(1, Math.abs(x + 0.5 - spot.x()) / scale / halfWidth);
        roofs[x - left] = height * roof(along);
      }
      for (int y = top; y <= spot.y() + 1; y++) {
        for (int x = left; x <= right; x++) {
          double mmX = (x + 0.5 - spot.x()) / scale;
          double mmY = (spot.y() - y - 0.5) / scale;
          double inside = inside(mmX, mmY, roofs[x - left]);
          double cover = inside * scale + 0.5;
          if (cover > 0) {
            sheet.pixel(x, y, colour(mmX, mmY, inside), Math.min(1, cover));
          }
        }
      }
    }

    /** About the distance from the outline, positive inside. */
    private double inside(double x, double y, double roof) {
      double wave = 0.9 * Texture.rough(seed, x / 9, y / 9, 3);
      double t = Math.max(0, y / height);
      double side = halfWidth * profile(Math.min(1, t)) - Math.abs(x);
      return Math.min(Math.min(side, roof - y) + wave * 0.5, y + 0.15 * wave);
    }

    /** Half the width at a height, as a share of the greatest. */
    private double profile(double t) {
      if (shape == PieceShape.CUP) {
        return t < 0.58 ? 0.76 + 0.2 * t / 0.58 : 1.0;
      }
      return t < 0.26 ? 0.945 + 0.055 * Math.sin(t / 0.26 * Math.PI / 2) : 1.0;
    }

    /** Height of the upper side at a share of the half width. */
    private double roof(double along) {
      if (shape == PieceShape.CUP) {
        return 0.6 + 0.4 * Math.pow(1 - Math.pow(along, 2.3), 0.8);
      }
      return 0.3 * Math.pow(1 - Math.pow(along, 14), 0.5)
          + 0.7 * Math.pow(1 - Math.pow(along, 2.5), 0.56);
    }

    private int colour(double x, double y, double inside) {
      double crustEdge = CRUST_MM * (0.8 + 0.35 * Texture.noise(seed + 3, x / 4, y / 4));
      boolean base = y < crustEdge * 1.1 && inside > y - 0.6;
      double light = 1.0 + 0.05 * Texture.rough(seed + 5, x / 14, y / 14, 3) - 0.03 * x / halfWidth;
      double grain = 0.07 * (Texture.grain((int) (x * 9), (int) (y * 9)) - 0.5);
      int crumb = crumb(x, y);
      double shade = crust + 0.3 * Texture.noise(seed + 4, x / 5, y / 5) + 0.25;
      if (base) {
        shade += darkBase ? 1.5 : 0.1;
      }
      int skin = CrustColour.at(shade);
      if (shape == PieceShape.CUP) {
        skin = CrustColour.blend(skin, COCOA, 0.62);
      }
      double depth = base ? (darkBase ? y * 0.75 : y) : inside;
      double share = Math.min(1, Math.max(0, (depth - 0.35 * crustEdge) / (0.65 * crustEdge)));
      return CrustColour.lit(CrustColour.blend(skin, crumb, share), light + grain);
    }

    private int crumb(double x, double y) {
      int solid = shape == PieceShape.CUP ? COCOA_CRUMB : CRUMB;
      double damp = damp(x, y);
      double wideShare = poreShare * 0.62;
      double pore = Texture.cell(seed + 9, x / poreSize, y / (poreSize * 0.8), poreShare);
      double large =
          Texture.cell(seed + 10, x / (poreSize * 2.3), y / (poreSize * 1.7), wideShare);
      double open = Math.max(0, 1 - pore / poreShare);
      double wide = Math.max(0, 1 - large / wideShare);
      double dark = Math.max(Math.min(1, 1.5 * open) * 0.55, Math.min(1, 2 * wide) * 0.75);
      int hollow = shape == PieceShape.CUP ? COCOA : PORE;
      int crumb = CrustColour.blend(solid, hollow, dark * (1 - 0.9 * damp));
      crumb = CrustColour.blend(crumb, shape == PieceShape.CUP ? COCOA : DAMP, 0.62 * damp);
      if (shape != PieceShape.CUP) {
        crumb = seed(crumb, x, y);
      }
      return crumb;
    }

    /** How damp the crumb is at a place, from 0 to 1. */
    private double damp(double x, double y) {
      double wave = 1.6 * Texture.rough(seed + 11, x / 16, y / 16, 2);
      double damp = 0;
      if (gummy) {
        double top = 0.46 * height + 3.2 * wave;
        double patch = 0.8 + 0.3 * Texture.rough(seed + 12, x / 6, y / 4, 2);
        damp = y < top ? patch * Math.min(1, (top - y) / 8) : 0;
      }
      if (wetLine) {
        double away = Math.abs(y - 5.2 - wave);
        damp = Math.max(damp, Math.max(0, 1.5 - away) / 1.2);
      }
      return Math.min(1, damp);
    }

    private int seed(int crumb, double x, double y) {
      if (Texture.cell(seed + 13, x / 15, y / 11, FLAKE) < FLAKE) {
        return CrustColour.blend(crumb, 0xa2977a, 0.9);
      }
      return Texture.cell(seed + 15, x / 5.2, y / 5.2, SPECK) < SPECK
          ? CrustColour.blend(crumb, 0x8a6637, 0.6)
          : crumb;
    }
  }
}
