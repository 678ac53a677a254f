package io.ovenmark.cli;

import java.util.Locale;

/** Makes text safe to send to a terminal. */
final class Printable {
  private Printable() {}

  /** Line breaks and tabs become spaces; other control characters become a visible sign. */
  static String of(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> out.appendCodePoint(shown(c)));
    return out.toString();
  }

  private static int shown(int c) {
    if (c == '\n' || c == '\r' || c == '\t' || c == 0x2028 || c == 0x2029) {
      return ' ';
    }
    if (c < 0x20) {
      return 0x2400 + c;
    }
    if (c == 0x7f) {
      return 0x2421;
    }
    return drives(c) ? 0xfffd : c;
  }

  /** Control characters above ASCII, marks of writing direction, and halves of characters. */
  private static boolean drives(int c) {
    return c >= 0x80 && c <= 0x9f
        || c >= 0x202a && c <= 0x202e
        || c >= 0x2066 && c <= 0x2069
        || c == 0x200e
        || c == 0x200f
        || c == 0x061c
        || c >= 0xd800 && c <= 0xdfff;
  }

  /** Replaces what could drive a terminal within JSON by its escape, which means the same. */
  static String json(String json) {
    StringBuilder out = new StringBuilder(json.length());
    json.codePoints()
        .forEach(
            c -> {
              if (drives(c) || c == 0x7f) {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                out.appendCodePoint(c);
              }
            });
    return out.toString();
  }
}
