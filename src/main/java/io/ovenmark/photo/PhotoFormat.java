package io.ovenmark.photo;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** What a file is by its first bytes, whatever it is called. */
enum PhotoFormat {
  JPEG("a JPEG picture", "jpeg"),
  PNG("a PNG picture", "png"),
  HEIF("a HEIF or AVIF picture", ""),
  WEBP("a WebP picture", ""),
  GIF("a GIF picture", ""),
  TIFF("a TIFF picture or a camera's raw file", ""),
  PDF("a PDF document", ""),
  TEXT("a text file", ""),
  OTHER("no picture of a known kind", "");

  private static final int LOOKED_AT = 512;

  private final String words;
  private final String reader;

  PhotoFormat(String words, String reader) {
    this.words = words;
    this.reader = reader;
  }

  /** What it is in words. */
  String inWords() {
    return words;
  }

  /** Whether it can be read here. */
  boolean isReadable() {
    return !reader.isEmpty();
  }

  /** The JDK's name of its reader. */
  String reader() {
    return reader;
  }

  static PhotoFormat of(byte[] bytes) {
    if (startsWith(bytes, 0, "\u00ff\u00d8\u00ff")) {
      return JPEG;
    }
    if (startsWith(bytes, 0, "\u0089PNG\r\n\u001a\n")) {
      return PNG;
    }
    if (startsWith(bytes, 4, "ftyp")) {
      return HEIF;
    }
    if (startsWith(bytes, 0, "RIFF") && startsWith(bytes, 8, "WEBP")) {
      return WEBP;
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
