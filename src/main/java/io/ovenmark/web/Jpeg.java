package io.ovenmark.web;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Reads and scales JPEG pictures in memory, with a bound on what a picture may unfold to. */
final class Jpeg {
  private static final long MOST_PIXELS = 80_000_000L;
  private static final float QUALITY = 0.85f;

  private Jpeg() {}

  /**
   * Whether the bytes begin as a JPEG picture does.
   *
   * @param bytes any bytes
   * @return true when they do
   */
  static boolean isJpeg(byte[] bytes) {
    return bytes.length > 3
        && (bytes[0] & 0xFF) == 0xFF
        && (bytes[1] & 0xFF) == 0xD8
        && (bytes[2] & 0xFF) == 0xFF;
  }

  /**
   * A picture no wider than wanted.
   *
   * @param jpeg the picture
   * @param width the greatest width
   * @return the scaled picture; empty when it is damaged or too large
   */
  static Optional<byte[]> scaled(byte[] jpeg, int width) {
    try {
      return read(jpeg, width).map(Jpeg::write);
    } catch (IOException | RuntimeException damaged) {
      return Optional.empty();
    }
  }

  private static Optional<BufferedImage> read(byte[] jpeg, int width) throws IOException {
    Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName("jpeg");
    ImageReader reader = readers.next();
    try (var in = new MemoryCacheImageInputStream(new ByteArrayInputStream(jpeg))) {
      reader.setInput(in, true, true);
      long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
      if (pixels > MOST_PIXELS) {
        return Optional.empty();
      }
      int wide = Math.min(width, reader.getWidth(0));
      ImageReadParam param = reader.getDefaultReadParam();
      int step = Math.max(1, reader.getWidth(0) / (2 * wide));
      param.setSourceSubsampling(step, step, 0, 0);
      BufferedImage source = reader.read(0, param);
      int high =
          Math.max(1, Math.round((float) wide * reader.getHeight(0) / reader.getWidth(0)));
      return Optional.of(draw(source, wide, high));
    } finally {
      reader.dispose();
    }
  }

  private static BufferedImage draw(BufferedImage source, int wide, int high) {
    BufferedImage picture = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = picture.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    graphics.drawImage(source, 0, 0, wide, high, null);
    graphics.dispose();
    return picture;
  }

  private static byte[] write(BufferedImage picture) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (var out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.write(null, new IIOImage(picture, null, null), param);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
