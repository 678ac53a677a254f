package io.ovenmark.notebook.store;

import java.util.HexFormat;
import java.util.Locale;

/** What the ids of commits and blobs have in common. */
final class HexId {
  static final int LENGTH = 40;
  static final int ABBREVIATED_LENGTH = 10;

  private HexId() {}

  static String check(String what, String hex) {
    if (hex == null || hex.length() != LENGTH || !isHex(hex)) {
      throw new IllegalArgumentException(what + " takes 40 hexadecimal digits, not " + hex);
    }
    return hex.toLowerCase(Locale.ROOT);
  }

  static boolean isHex(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (!HexFormat.isHexDigit(text.charAt(i))) {
        return false;
      }
    }
    return !text.isEmpty();
  }
}
