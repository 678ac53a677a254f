package io.ovenmark.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * The sheet that a picture is drawn on: pixels, words, rulers, caption and the JPEG file. A Java
 * runtime without fonts (a container without a font configuration) throws on the first letter; then
 * the words are left out and the picture stays.
 */
final class PictureSheet {
  private static final Color INK = new Color(0x1c2426);
  private static final Color INK_SOFT = new Color(0x566165);
  private static final Color STEEL = new Color(0xdfe2e1);
  private static final Color TAG = new Color(0x1c, 0x24, 0x26, 0xd8);
  private static final float QUALITY = 0.86f;
  private static final int BLOCK = 8;

  private final BufferedImage image =
      new BufferedImage(PictureLayout.WIDTH, PictureLayout.HEIGHT, BufferedImage.TYPE_INT_RGB);
  private final int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
  private final Graphics2D graphics = image.createGraphics();
  private boolean lettering = true;

  PictureSheet() {
    graphics.setRenderingHint(
        RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
  }

  /** For shapes; coordinates are pixels. */
  Graphics2D graphics() {
    return graphics;
  }

  /** Sets a pixel, or blends it in where the cover is below 1; nothing outside the sheet. */
  void pixel(int x, int y, int colour, double cover) {
    if (cover <= 0 || x < 0 || y < 0 || x >= PictureLayout.WIDTH || y >= PictureLayout.HEIGHT) {
      return;
    }
    int at = y * PictureLayout.WIDTH + x;
    pixels[at] = cover >= 1 ? colour : CrustColour.blend(pixels[at], colour, cover);
  }

  /** How light each pixel of a surface is. */
  interface Light {
    /**
     * The slow part of it, asked for once in a block of pixels.
     *
     * @return a light around 1
     */
    double slow(int x, int y);

    /**
     * What changes from pixel to pixel.
     *
     * @return what is added to the slow part
     */
    double fast(int x, int y);
  }

  /** Covers an area, its right and lower edges excluded, with a lit surface. */
  void surface(int left, int top, int right, int bottom, int colour, Light light) {
    double[] slow = new double[right / BLOCK + 1];
    for (int y = top; y < bottom; y++) {
      if (y == top || y % BLOCK == 0) {
        for (int i = left / BLOCK; i < slow.length; i++) {
          slow[i] = light.slow(i * BLOCK, y);
        }
      }
      for (int x = left; x < right; x++) {
        double lit = slow[x / BLOCK] + light.fast(x, y);
        pixels[y * PictureLayout.WIDTH + x] = CrustColour.lit(colour, lit);
      }
    }
  }

  /** Stone over an area of the sheet, its right and lower edges excluded. */
  void stone(int left, int top, int right, int bottom, int colour) {
    surface(
        left,
        top,
        right,
        bottom,
        colour,
        new Light() {
          @Override
          public double slow(int x, int y) {
            return 1 + 0.035 * Texture.rough(71, x / 260.0, y / 180.0, 3);
          }

          @Override
          public double fast(int x, int y) {
            double grain = Texture.grain(x, y);
            return 0.03 * (grain - 0.5) - (grain > 0.994 ? 0.07 : 0);
          }
        });
  }

  /** Words from the left. */
  void words(String text, double x, double y, int size, boolean bold, Color colour) {
    write(text, x, y, size, bold, colour, 0);
  }

  /** Words around a middle. */
  void wordsAround(String text, double x, double y, int size, boolean bold, Color colour) {
    write(text, x, y, size, bold, colour, 0.5);
  }

  /** A piece's letter on a dark tag. */
  void letter(String id, double x, double y) {
    double width = 34 + 18.0 * id.length();
    graphics.setColor(TAG);
    graphics.fill(new RoundRectangle2D.Double(x - width / 2, y - 27, width, 54, 10, 10));
    wordsAround(id, x, y + 12, 38, true, Color.WHITE);
  }

  /** A steel ruler lying in the picture, millimetres along its upper edge. */
  void ruler(double x, double y, double length, double pixelsPerMillimetre) {
    steel(x, y, length, 62);
    int millimetres = (int) ((length - 24) / pixelsPerMillimetre);
    for (int mm = 0; mm <= millimetres; mm++) {
      double at = x + 12 + mm * pixelsPerMillimetre;
      double tick = mm % 10 == 0 ? 28 : mm % 5 == 0 ? 20 : 12;
      graphics.draw(new Line2D.Double(at, y + 1, at, y + tick));
      if (mm % 10 == 0 && mm > 0 && at < x + length - 50) {
        wordsAround(String.valueOf(mm / 10), at, y + 52, 22, false, INK);
      }
    }
    wordsAround("cm", x + length - 22, y + 52, 22, false, INK);
  }

  /** A steel ruler standing in the picture, millimetres along its right edge, 0 at the foot. */
  void uprightRuler(double x, double foot, double length, double pixelsPerMillimetre) {
    steel(x, foot - length, 76, length);
    int millimetres = (int) ((length - 16) / pixelsPerMillimetre);
    for (int mm = 0; mm <= millimetres; mm++) {
      double at = foot - mm * pixelsPerMillimetre;
      double tick = mm % 10 == 0 ? 28 : mm % 5 == 0 ? 20 : 12;
      graphics.draw(new Line2D.Double(x + 75 - tick, at, x + 75, at));
      if (mm % 10 == 0 && mm > 0) {
        wordsAround(String.valueOf(mm), x + 24, at + 8, 20, false, INK);
      }
    }
    wordsAround("mm", x + 24, foot - 8, 20, false, INK);
  }

  private void steel(double x, double y, double width, double height) {
    graphics.setColor(new Color(0, 0, 0, 60));
    graphics.fill(new Rectangle2D.Double(x + 4, y + 5, width, height));
    graphics.setColor(STEEL);
    graphics.fill(new Rectangle2D.Double(x, y, width, height));
    graphics.setColor(new Color(255, 255, 255, 110));
    graphics.fill(new Rectangle2D.Double(x, y, width, Math.min(height, 5)));
    graphics.setColor(INK);
    graphics.setStroke(new BasicStroke(1.3f));
  }

  /** What the picture shows, and that it was drawn, on the worktop below. */
  void caption(String text) {
    words(text, PictureLayout.MARGIN, 1110, 32, false, INK);
    words("drawn for the demo", PictureLayout.MARGIN, 1158, 26, false, INK_SOFT);
  }

  /** The finished picture. */
  byte[] jpeg() {
    graphics.dispose();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 19);
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam parameters = writer.getDefaultWriteParam();
      parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      parameters.setCompressionQuality(QUALITY);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), parameters);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private void write(
      String text, double x, double y, int size, boolean bold, Color colour, double anchor) {
    if (!lettering) {
      return;
    }
    try {
      graphics.setFont(new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, size));
      double width = graphics.getFontMetrics().stringWidth(text);
      graphics.setColor(colour);
      graphics.drawString(text, (float) (x - anchor * width), (float) y);
    } catch (RuntimeException | LinkageError | InternalError e) {
      // what a runtime without fonts throws differs from version to version
      lettering = false;
    }
    graphics.setColor(INK);
  }
}
