package io.ovenmark.photo;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.util.Arrays;

/**
 * The colours of a picture, row by row, each {@code 0xRRGGBB} in sRGB; what is transparent lies on
 * white.
 *
 * @param width pixels a row
 * @param height rows
 * @param colours {@code width} times {@code height} colours
 */
record Pixels(int width, int height, int[] colours) {
  private static final int OPAQUE = 255;

  /** Where a target pixel takes its colour from along one side, and how much of each. */
  private record Span(int from, float[] shares) {
    static Span[] of(int source, int target) {
      Span[] spans = new Span[target];
      double step = (double) source / target;
      for (int i = 0; i < target; i++) {
        double begin = i * step;
        double end = Math.min(source, (i + 1) * step);
        int first = (int) begin;
        int last = Math.min(source - 1, (int) Math.ceil(end) - 1);
        float[] shares = new float[Math.max(1, last - first + 1)];
        for (int k = 0; k < shares.length; k++) {
          double covered = Math.min(end, first + k + 1) - Math.max(begin, first + k);
          shares[k] = (float) (covered / (end - begin));
        }
        spans[i] = new Span(first, shares);
      }
      return spans;
    }
  }

  /** Takes a picture over in a smaller size: each new pixel is the mean of those it covers. */
  static Pixels shrunk(BufferedImage image, int width, int height) {
    int[] colours = new int[width * height];
    Span[] columns = Span.of(image.getWidth(), width);
    Span[] rows = Span.of(image.getHeight(), height);
    Rows source = new Rows(image);
    float[] sums = new float[image.getWidth() * 3];
    int[] row = new int[image.getWidth()];
    int read = -1;
    for (int y = 0; y < height; y++) {
      Arrays.fill(sums, 0);
      Span span = rows[y];
      for (int k = 0; k < span.shares().length; k++) {
        if (read != span.from() + k) {
          read = span.from() + k;
          source.read(read, row);
        }
        add(sums, row, span.shares()[k]);
      }
      for (int x = 0; x < width; x++) {
        colours[y * width + x] = mean(sums, columns[x]);
      }
    }
    return new Pixels(width, height, colours);
  }

  private static void add(float[] sums, int[] row, float share) {
    for (int x = 0, i = 0; x < row.length; x++) {
      int colour = row[x];
      sums[i++] += share * (colour >> 16 & 0xff);
      sums[i++] += share * (colour >> 8 & 0xff);
      sums[i++] += share * (colour & 0xff);
    }
  }

  private static int mean(float[] sums, Span span) {
    float red = 0;
    float green = 0;
    float blue = 0;
    int i = span.from() * 3;
    for (float share : span.shares()) {
      red += share * sums[i++];
      green += share * sums[i++];
      blue += share * sums[i++];
    }
    return whole(red) << 16 | whole(green) << 8 | whole(blue);
  }

  private static int whole(float value) {
    return Math.max(0, Math.min(255, Math.round(value)));
  }

  /**
   * Turns the picture upright.
   *
   * @param orientation where row 0 and column 0 of the stored picture belong, 1 to 8 (TIFF 6.0, tag
   *     274)
   */
  Pixels upright(int orientation) {
    boolean lying = orientation >= 5;
    int wide = lying ? height : width;
    int high = lying ? width : height;
    int[] turned = new int[colours.length];
    for (int y = 0; y < high; y++) {
      for (int x = 0; x < wide; x++) {
        int fromX =
            switch (orientation) {
              case 2, 3 -> width - 1 - x;
              case 5, 6 -> y;
              case 7, 8 -> width - 1 - y;
              default -> x;
            };
        int fromY =
            switch (orientation) {
              case 3, 4 -> height - 1 - y;
              case 5, 8 -> x;
              case 6, 7 -> height - 1 - x;
              default -> y;
            };
        turned[y * wide + x] = colours[fromY * width + fromX];
      }
    }
    return new Pixels(wide, high, turned);
  }

  /** A picture of these pixels. */
  BufferedImage image() {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    image.setRGB(0, 0, width, height, colours, 0, width);
    return image;
  }

  /** Reads rows in sRGB; greys as they are, which the JDK would lighten. */
  private static final class Rows {
    private final BufferedImage image;
    private final Raster raster;
    private final boolean grey;
    private final boolean plainBytes;
    private final int width;
    private byte[] bytes = new byte[0];
    private int[] samples = new int[0];

    Rows(BufferedImage image) {
      ColorModel model = image.getColorModel();
      this.image = image;
      this.raster = image.getRaster();
      this.width = image.getWidth();
      this.grey =
          model instanceof ComponentColorModel
              && model.getColorSpace().getType() == ColorSpace.TYPE_GRAY;
      this.plainBytes =
          model instanceof ComponentColorModel
              && model.getColorSpace().isCS_sRGB()
              && model.getNumComponents() == 3
              && raster.getTransferType() == DataBuffer.TYPE_BYTE;
    }

    void read(int y, int[] row) {
      if (plainBytes) {
        bytes = (byte[]) raster.getDataElements(0, y, width, 1, sized(bytes));
        for (int x = 0, i = 0; x < width; x++, i += 3) {
          row[x] = (bytes[i] & 0xff) << 16 | (bytes[i + 1] & 0xff) << 8 | bytes[i + 2] & 0xff;
        }
      } else if (grey) {
        readGrey(y, row);
      } else {
        image.getRGB(0, y, width, 1, row, 0, width);
        for (int x = 0; x < width; x++) {
          row[x] = onWhite(row[x], row[x] >>> 24);
        }
      }
    }

    private byte[] sized(byte[] buffer) {
      return buffer.length == width * 3 ? buffer : new byte[width * 3];
    }

    private void readGrey(int y, int[] row) {
      int bands = raster.getNumBands();
      int shift = raster.getSampleModel().getSampleSize(0) - 8;
      samples = raster.getPixels(0, y, width, 1, samples.length == 0 ? (int[]) null : samples);
      for (int x = 0; x < width; x++) {
        int level = samples[x * bands] >> shift;
        int alpha = bands > 1 ? samples[x * bands + 1] >> shift : OPAQUE;
        row[x] = onWhite(level << 16 | level << 8 | level, alpha);
      }
    }

    private static int onWhite(int colour, int alpha) {
      if (alpha == OPAQUE) {
        return colour & 0xffffff;
      }
      return over(colour >> 16 & 0xff, alpha) << 16
          | over(colour >> 8 & 0xff, alpha) << 8
          | over(colour & 0xff, alpha);
    }

    private static int over(int level, int alpha) {
      return (level * alpha + OPAQUE * (OPAQUE - alpha) + OPAQUE / 2) / OPAQUE;
    }
  }
}
