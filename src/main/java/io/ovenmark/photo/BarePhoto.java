package io.ovenmark.photo;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * Sees that a picture tells nothing beside what it shows: no place, no time, no camera, no remark,
 * no second picture behind its end.
 *
 * <pre>{@code
 * Optional<byte[]> bare = BarePhoto.of(bytes);
 * }</pre>
 */
public final class BarePhoto {
  private static final int FIRST_APPLICATION = 0xE0;
  private static final int COLOUR_PROFILE = 0xE2;
  private static final int ADOBE = 0xEE;
  private static final int LAST_APPLICATION = 0xEF;
  private static final int REMARK = 0xFE;
  private static final int START = 0xD8;
  private static final int END = 0xD9;
  private static final int FIRST_RESTART = 0xD0;
  private static final int LAST_RESTART = 0xD7;
  private static final int SCAN = 0xDA;

  private BarePhoto() {}

  /**
   * The picture without anything else.
   *
   * @param bytes the file
   * @return the very same bytes when there is nothing to take out, else a JPEG written anew; empty
   *     when it is no picture that can be read
   */
  public static Optional<byte[]> of(byte[] bytes) {
    if (isBare(bytes)) {
      return Optional.of(bytes);
    }
    try {
      return Optional.of(PhotoNormaliser.normalise(bytes, "photo").jpeg());
    } catch (IllegalArgumentException unreadable) {
      return Optional.empty();
    }
  }

  /** Walks over the segments of a JPEG (ITU-T T.81, annex B). */
  static boolean isBare(byte[] bytes) {
    if (bytes.length < 4 || at(bytes, 0) != 0xFF || at(bytes, 1) != START) {
      return false;
    }
    int at = 2;
    while (at + 1 < bytes.length) {
      int marker = at(bytes, at + 1);
      if (at(bytes, at) != 0xFF || marker == START) {
        return false;
      }
      if (marker == END) {
        return at + 2 == bytes.length;
      }
      if (at + 3 >= bytes.length || tells(bytes, at, marker)) {
        return false;
      }
      at += 2 + (at(bytes, at + 2) << 8) + at(bytes, at + 3);
      if (marker == SCAN) {
        at = endOfScan(bytes, at);
      }
    }
    return false;
  }

  private static boolean tells(byte[] bytes, int at, int marker) {
    return switch (marker) {
      case FIRST_APPLICATION -> !named(bytes, at, "JFIF\0");
      case COLOUR_PROFILE -> !named(bytes, at, "ICC_PROFILE\0");
      case ADOBE -> !named(bytes, at, "Adobe");
      default ->
          marker == REMARK || marker > FIRST_APPLICATION && marker <= LAST_APPLICATION;
    };
  }

  private static boolean named(byte[] bytes, int at, String name) {
    byte[] wanted = name.getBytes(StandardCharsets.ISO_8859_1);
    int start = at + 4;
    return start + wanted.length <= bytes.length
        && Arrays.equals(bytes, start, start + wanted.length, wanted, 0, wanted.length);
  }

  /** The next marker that is neither a stuffed byte nor a restart. */
  private static int endOfScan(byte[] bytes, int from) {
    int at = from;
    while (at + 1 < bytes.length) {
      int next = at(bytes, at + 1);
      boolean inside =
          at(bytes, at) != 0xFF || next == 0 || next >= FIRST_RESTART && next <= LAST_RESTART;
      if (!inside && next != 0xFF) {
        return at;
      }
      at++;
    }
    return bytes.length;
  }

  private static int at(byte[] bytes, int index) {
    return bytes[index] & 0xFF;
  }
}
