package io.ovenmark.photo;

import java.awt.image.BufferedImage;

/** Makes a smaller picture of one that the notebook keeps. */
public final class Thumbnail {
  private static final float QUALITY = 0.82f;

  private Thumbnail() {}

  /**
   * Makes a picture smaller; one that is no wider than wanted is only written again.
   *
   * @param jpeg a picture, JPEG or PNG
   * @param width greatest width in pixels, 1 to {@value PhotoNormaliser#LONGEST_SIDE}
   * @return a JPEG of that width or less, the sides in the same proportion
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when it cannot
   *     be read or the width is out of range
   */
  public static byte[] of(byte[] jpeg, int width) {
    if (width < 1 || width > PhotoNormaliser.LONGEST_SIDE) {
      throw new IllegalArgumentException(
          "A picture cannot be " + width + " pixels wide.\n"
              + "Use 1 to " + PhotoNormaliser.LONGEST_SIDE + ".");
    }
    PhotoFormat format = PhotoFormat.of(jpeg);
    if (!format.isReadable()) {
      throw unreadable();
    }
    try (PictureReader reader = new PictureReader(jpeg, format)) {
      if ((long) reader.width() * reader.height() > PhotoNormaliser.MOST_PIXELS) {
        throw unreadable();
      }
      BufferedImage image = reader.read(1);
      double factor = Math.min(1, width / (double) image.getWidth());
      int high = PhotoNormaliser.scaled(image.getHeight(), factor);
      int wide = PhotoNormaliser.scaled(image.getWidth(), factor);
      return JpegWriter.write(Pixels.shrunk(image, wide, high), QUALITY);
    } catch (PictureReader.Damaged e) {
      throw unreadable();
    }
  }

  private static IllegalArgumentException unreadable() {
    return new IllegalArgumentException(
        "The picture cannot be read.\nFind out what is wrong with: ovenmark check");
  }
}
