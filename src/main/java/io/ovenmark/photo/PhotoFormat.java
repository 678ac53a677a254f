package io.ovenmark.photo;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** What a file is by its first bytes, whatever it is called. */
enum PhotoFormat {
  JPEG("a JPEG picture", true),
  PNG("a PNG picture", true),
  WEBP("a WebP picture", true),
  MOVING_WEBP("a moving WebP picture", false),
  HEIC("a HEIC picture", false),
  AVIF("an AVIF picture", false),
  FILM("a film or a sound", false),
  GIF("a GIF picture", false),
  TIFF("a TIFF picture or a camera's raw file", false),
  PDF("a PDF document", false),
  TEXT("a text file", false),
  OTHER("no picture of a known kind", false);

  /** The formats that are read, for messages. */
  static final String WANTED = "JPEG, PNG or WebP";

  private static final int LOOKED_AT = 512;

  /** ISO/IEC 23008-12, annex B, and the brands of its registry. */
  private static final List<String> HEIC_BRANDS =
      List.of("heic", "heix", "heim", "heis", "hevc", "hevx", "hevm", "hevs", "mif1", "msf1");

  private static final List<String> AVIF_BRANDS = List.of("avif", "avis");

  /** Where a WebP file of the extended kind keeps its flags, and the one of moving pictures. */
  private static final int WEBP_FLAGS_AT = 20;

  private static final int WEBP_MOVES = 0x02;

  private final String words;
  private final boolean readable;

  PhotoFormat(String words, boolean readable) {
    this.words = words;
    this.readable = readable;
  }

  /** What it is in words. */
  String inWords() {
    return words;
  }

  /** Whether it can be read here. */
  boolean isReadable() {
    return readable;
  }

  /** What to do with one that cannot be read. */
  String remedy() {
    return switch (this) {
      case HEIC, AVIF ->
          "Set the camera to its most compatible format (JPEG), or save a copy as JPEG, and add"
              + " that.";
      case MOVING_WEBP, GIF, FILM -> "Save one still of it as JPEG or PNG, then add that.";
      case TEXT, OTHER -> "Choose the picture itself.";
      default -> "Save it as JPEG or PNG, then add it again.";
    };
  }

  static PhotoFormat of(byte[] bytes) {
    if (startsWith(bytes, 0, "\u00ff\u00d8\u00ff")) {
      return JPEG;
    }
    if (startsWith(bytes, 0, "\u0089PNG\r\n\u001a\n")) {
      return PNG;
    }
    if (startsWith(bytes, 4, "ftyp")) {
      return HEIC_BRANDS.stream().anyMatch(brand -> startsWith(bytes, 8, brand))
          ? HEIC
          : AVIF_BRANDS.stream().anyMatch(brand -> startsWith(bytes, 8, brand)) ? AVIF : FILM;
    }
    if (startsWith(bytes, 0, "RIFF") && startsWith(bytes, 8, "WEBP")) {
      return moves(bytes) ? MOVING_WEBP : WEBP;
    }
    if (startsWith(bytes, 0, "GIF8")) {
      return GIF;
    }
    if (startsWith(bytes, 0, "II*\0") || startsWith(bytes, 0, "MM\0*")) {
      return TIFF;
    }
    if (startsWith(bytes, 0, "%PDF")) {
      return PDF;
    }
    return isText(bytes) ? TEXT : OTHER;
  }

  private static boolean moves(byte[] webp) {
    return startsWith(webp, 12, "VP8X")
        && webp.length > WEBP_FLAGS_AT
        && (webp[WEBP_FLAGS_AT] & WEBP_MOVES) != 0;
  }

  private static boolean startsWith(byte[] bytes, int at, String magic) {
    byte[] wanted = magic.getBytes(StandardCharsets.ISO_8859_1);
    return bytes.length >= at + wanted.length
        && Arrays.equals(bytes, at, at + wanted.length, wanted, 0, wanted.length);
  }

  private static boolean isText(byte[] bytes) {
    for (int i = 0; i < Math.min(bytes.length, LOOKED_AT); i++) {
      boolean control = bytes[i] >= 0 && bytes[i] < ' ';
      if (control && bytes[i] != '\n' && bytes[i] != '\r' && bytes[i] != '\t') {
        return false;
      }
    }
    return true;
  }
}
