package io.ovenmark.photo;

import java.awt.image.BufferedImage;

/**
 * Makes of any picture the one that the notebook keeps: JPEG in sRGB, upright by the camera's own
 * note of how it was held, at most {@value #LONGEST_SIDE} pixels on the longer side, and without
 * metadata, so that neither place nor camera is published with it. When it was taken is kept as a
 * value.
 *
 * <pre>{@code
 * NormalisedPhoto photo = PhotoNormaliser.normalise(bytes, "IMG_0412.JPG");
 * }</pre>
 *
 * <p>How large a picture is, is read from its header before its pixels are: what would not fit into
 * memory is refused unread.
 */
public final class PhotoNormaliser {
  /** Greatest width or height of what comes out. */
  public static final int LONGEST_SIDE = 2400;

  /** The most pixels of a picture that is read. */
  public static final long MOST_PIXELS = 50_000_000;

  /** The largest file that is read. */
  public static final int MOST_BYTES = 100 << 20;

  private static final long MOST_DECODED_BYTES = 4 * MOST_PIXELS;
  private static final float QUALITY = 0.88f;
  private static final int LONGEST_NAME = 60;

  private PhotoNormaliser() {}

  /**
   * Normalises a picture.
   *
   * @param original the file's bytes
   * @param fileName what the file is called, for messages only; it is never used as a path and its
   *     ending does not count
   * @return the picture as the notebook keeps it
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when it is no
   *     JPEG, PNG or WebP, is damaged or too large
   */
  public static NormalisedPhoto normalise(byte[] original, String fileName) {
    String name = "The photo " + shown(fileName);
    if (original.length == 0) {
      throw refused(name + " is empty.", "Copy it again from the camera.");
    }
    if (original.length > MOST_BYTES) {
      throw tooLarge(name + " has more than " + (MOST_BYTES >> 20) + " MB.");
    }
    PhotoFormat format = PhotoFormat.of(original);
    if (!format.isReadable()) {
      throw refused(
          name + " is " + format.inWords() + ", not " + PhotoFormat.WANTED + ".", format.remedy());
    }
    BufferedImage image = read(original, format, name);
    CameraNotes notes = CameraNotes.of(original);
    double factor =
        Math.min(1, LONGEST_SIDE / (double) Math.max(image.getWidth(), image.getHeight()));
    Pixels pixels =
        Pixels.shrunk(image, scaled(image.getWidth(), factor), scaled(image.getHeight(), factor))
            .upright(notes.orientation());
    return new NormalisedPhoto(
        JpegWriter.write(pixels, QUALITY),
        pixels.width(),
        pixels.height(),
        notes.taken(),
        notes.zone());
  }

  static int scaled(int side, double factor) {
    return Math.max(1, (int) Math.round(side * factor));
  }

  private static BufferedImage read(byte[] original, PhotoFormat format, String name) {
    try (PictureReader reader = new PictureReader(original, format)) {
      long pixels = (long) reader.width() * reader.height();
      if (pixels > MOST_PIXELS || reader.decodedBytes() > MOST_DECODED_BYTES) {
        throw tooLarge(
            name + " has " + reader.width() + " × " + reader.height() + " pixels, which is more"
                + " than " + MOST_PIXELS / 1_000_000 + " million"
                + (pixels > MOST_PIXELS ? "." : " of 8 bits a colour would take."));
      }
      if (reader.isForPrinting()) {
        throw refused(
            name + " is a JPEG in the four colours of printing (CMYK).",
            "Save it again as a JPEG in RGB, then add that.");
      }
      return reader.read(1);
    } catch (PictureReader.Damaged e) {
      throw refused(
          name + " is damaged or cut off, or of a sort of " + format.name()
              + " that cannot be read.",
          "Copy it again from the camera, or save it again as an ordinary JPEG.");
    }
  }

  /** A name for a message: in one line, shortened, without what a terminal would obey. */
  private static String shown(String fileName) {
    StringBuilder out = new StringBuilder();
    fileName
        .codePoints()
        .limit(LONGEST_NAME + 1L)
        .map(c -> Character.isISOControl(c) || isInvisible(c) ? '?' : c)
        .forEach(out::appendCodePoint);
    boolean cut = out.codePointCount(0, out.length()) > LONGEST_NAME;
    String text = cut ? out.substring(0, out.offsetByCodePoints(0, LONGEST_NAME)) + "…" : out + "";
    return "\"" + text + "\"";
  }

  private static boolean isInvisible(int codePoint) {
    int type = Character.getType(codePoint);
    return type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }

  private static IllegalArgumentException tooLarge(String sentence) {
    return refused(sentence, "Save it smaller; " + LONGEST_SIDE + " pixels are kept at most.");
  }

  private static IllegalArgumentException refused(String sentence, String remedy) {
    return new IllegalArgumentException(sentence + "\n" + remedy);
  }
}
