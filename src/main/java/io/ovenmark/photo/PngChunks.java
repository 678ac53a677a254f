package io.ovenmark.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * Leaves out of a PNG what is not wanted (PNG specification, 3rd edition, section 5): texts and
 * profiles are compressed, and what they unfold to is bounded by nothing.
 */
final class PngChunks {
  private static final int SIGNATURE = 8;
  private static final int FRAME = 12;
  private static final Set<String> PIXELS = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");
  private static final Set<String> CAMERA = Set.of("IHDR", "eXIf", "IEND");

  private PngChunks() {}

  /**
   * What the pixels need.
   *
   * @param png a file that begins as a PNG does
   * @return a PNG of the same pixels; cut off where the file is
   */
  static byte[] forPixels(byte[] png) {
    return only(png, PIXELS);
  }

  /**
   * What the camera noted.
   *
   * @param png a file that begins as a PNG does
   * @return a PNG without pixels
   */
  static byte[] forCameraNotes(byte[] png) {
    return only(png, CAMERA);
  }

  private static byte[] only(byte[] png, Set<String> wanted) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(png.length);
    out.write(png, 0, SIGNATURE);
    int at = SIGNATURE;
    while (at + FRAME <= png.length) {
      long length = ByteBuffer.wrap(png, at, 4).getInt() & 0xffffffffL;
      String type = new String(png, at + 4, 4, StandardCharsets.ISO_8859_1);
      int end = (int) Math.min(png.length, at + FRAME + length);
      if (wanted.contains(type)) {
        out.write(png, at, end - at);
      }
      at = end;
    }
    return out.toByteArray();
  }
}
