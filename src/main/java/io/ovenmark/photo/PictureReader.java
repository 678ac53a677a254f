package io.ovenmark.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Reads the header of a picture, then its pixels; nothing is written to disk. */
final class PictureReader implements AutoCloseable {
  private static final int PNG_DEPTH_AT = 24;
  private static final int PNG_COLOUR_AT = 25;

  private final byte[] bytes;
  private final PhotoFormat format;
  private final ImageInputStream input;
  private final ImageReader reader;
  private final AtomicBoolean endsEarly = new AtomicBoolean();

  /** A picture whose data cannot be made sense of. */
  static final class Damaged extends Exception {
    private static final long serialVersionUID = 1L;

    Damaged(Throwable cause) {
      super(cause);
    }
  }

  /** Opens a picture of a readable format. */
  PictureReader(byte[] bytes, PhotoFormat format) {
    this.bytes = bytes;
    this.format = format;
    this.input = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes));
    this.reader = ImageIO.getImageReadersByFormatName(format.reader()).next();
    reader.setInput(input, true, true);
    reader.addIIOReadWarningListener(
        (source, warning) -> {
          if (warning.contains("Premature end") || warning.contains("Missing EOI")) {
            endsEarly.set(true);
          }
        });
  }

  /** Something that the JDK's reader does. */
  private interface Task<T> {
    T run() throws IOException;
  }

  private static <T> T guard(Task<T> task) throws Damaged {
    try {
      return task.run();
    } catch (IOException | RuntimeException e) {
      throw new Damaged(e);
    }
  }

  int width() throws Damaged {
    return guard(() -> reader.getWidth(0));
  }

  int height() throws Damaged {
    return guard(() -> reader.getHeight(0));
  }

  /** How many bytes the pixels take in memory; asked of the header alone. */
  long decodedBytes() throws Damaged {
    long pixels = (long) width() * height();
    if (format != PhotoFormat.PNG) {
      return pixels * 3;
    }
    int channels =
        switch (bytes[PNG_COLOUR_AT]) {
          case 2 -> 3;
          case 4 -> 2;
          case 6 -> 4;
          default -> 1;
        };
    return pixels * channels * Math.max(1, bytes[PNG_DEPTH_AT] / 8);
  }

  /**
   * Reads the pixels.
   *
   * @param every takes every so manieth pixel of every so manieth row; 1 for all
   */
  BufferedImage read(int every) throws Damaged {
    ImageReadParam param = reader.getDefaultReadParam();
    param.setSourceSubsampling(every, every, 0, 0);
    BufferedImage image = guard(() -> reader.read(0, param));
    if (endsEarly.get()) {
      throw new Damaged(null);
    }
    return image;
  }

  @Override
  public void close() {
    reader.dispose();
    try {
      input.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
