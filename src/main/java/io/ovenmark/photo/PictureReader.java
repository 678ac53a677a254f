package io.ovenmark.photo;

import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Reads the header of a picture, then its pixels; nothing is written to disk. The readers are the
 * JDK's own and the one of the WebP library, whatever others the class path offers. Of a PNG they
 * get to see only what the pixels need: its compressed remarks could unfold to any size.
 */
final class PictureReader implements AutoCloseable {
  /** Markers among those of frames that begin tables. */
  private static final Set<Integer> NO_FRAMES = Set.of(0xc4, 0xc8, 0xcc);

  private static final int FRAME_COLOURS_AT = 9;
  private static final int PRINTING_COLOURS = 4;
  private static final int RIFF_LENGTH_AT = 4;
  private static final int PNG_DEPTH_AT = 24;
  private static final int PNG_COLOUR_AT = 25;

  private static final String JDK = "com.sun.imageio.plugins.";

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
    this.bytes = format == PhotoFormat.PNG ? PngChunks.forPixels(bytes) : bytes;
    this.format = format;
    this.input = new MemoryCacheImageInputStream(new ByteArrayInputStream(this.bytes));
    this.reader = reader(format);
    reader.setInput(input, true, true);
    reader.addIIOReadWarningListener(
        (source, warning) -> {
          if (warning.contains("Premature end") || warning.contains("Missing EOI")) {
            endsEarly.set(true);
          }
        });
  }

  private static ImageReader reader(PhotoFormat format) {
    if (format == PhotoFormat.WEBP) {
      return new WebPImageReaderSpi().createReaderInstance(null);
    }
    Iterator<ImageReader> readers =
        ImageIO.getImageReadersByFormatName(format.name().toLowerCase(Locale.ROOT));
    while (readers.hasNext()) {
      ImageReader reader = readers.next();
      if (reader.getClass().getName().startsWith(JDK)) {
        return reader;
      }
    }
    throw new IllegalStateException("This Java reads no " + format);
  }

  /** Something that a reader does. */
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

  /** Refuses a WebP file that is shorter than it says, whose rest would be read as grey. */
  private void requireWhole() throws Damaged {
    if (format == PhotoFormat.WEBP
        && Integer.reverseBytes(ByteBuffer.wrap(bytes).getInt(RIFF_LENGTH_AT))
            > bytes.length - RIFF_LENGTH_AT - Integer.BYTES) {
      throw new Damaged(null);
    }
  }

  int width() throws Damaged {
    requireWhole();
    return guard(() -> reader.getWidth(0));
  }

  int height() throws Damaged {
    return guard(() -> reader.getHeight(0));
  }

  /** Whether it is in the four colours of printing, which nobody turns into sRGB here. */
  boolean isForPrinting() {
    return format == PhotoFormat.JPEG && jpegColours() == PRINTING_COLOURS;
  }

  /** How many colours a JPEG has, by its frame header (ITU-T T.81, B.2.2); 0 when it has none. */
  private int jpegColours() {
    int at = 2;
    while (at + FRAME_COLOURS_AT < bytes.length && (bytes[at] & 0xff) == 0xff) {
      int marker = bytes[at + 1] & 0xff;
      boolean frame = marker >= 0xc0 && marker <= 0xcf && !NO_FRAMES.contains(marker);
      if (frame) {
        return bytes[at + FRAME_COLOURS_AT];
      }
      at += marker == 0xff ? 1 : 2 + (ByteBuffer.wrap(bytes).getShort(at + 2) & 0xffff);
    }
    return 0;
  }

  /** How many bytes the pixels take in memory; asked of the header alone. */
  long decodedBytes() throws Damaged {
    long pixels = (long) width() * height();
    if (format != PhotoFormat.PNG) {
      return pixels * (format == PhotoFormat.WEBP ? 4 : 3);
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
