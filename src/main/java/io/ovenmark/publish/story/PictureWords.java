package io.ovenmark.publish.story;

import java.util.Locale;

/** Small matters of wording. */
final class PictureWords {
  private PictureWords() {}

  /** A sentence with a full stop, unless it ends by itself. */
  static String ended(String text) {
    String words = text.replaceAll("\\s+", " ").strip();
    return words.isEmpty() || words.matches("(?s).*[.!?…؟]$") ? words : words + ".";
  }

  /** With a capital. */
  static String capital(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.offsetByCodePoints(0, 1);
    return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
  }
}
