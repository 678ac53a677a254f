package io.ovenmark.publish.story;

import java.awt.Color;

/**
 * How a text is set.
 *
 * @param size of a letter, in pixels
 * @param bold whether in the bold face
 * @param colour its colour
 */
record TextStyle(double size, boolean bold, Color colour) {
  /** Below this nobody reads it on a small screen. */
  static final double SMALLEST = 26;

  private static final double LARGE = 48;

  static TextStyle plain(double size) {
    return new TextStyle(size, false, Palette.INK);
  }

  static TextStyle quiet(double size) {
    return new TextStyle(size, false, Palette.QUIET);
  }

  static TextStyle bold(double size) {
    return new TextStyle(size, true, Palette.INK);
  }

  TextStyle in(Color other) {
    return new TextStyle(size, bold, other);
  }

  /** From one line to the next, in pixels: closer in large type. */
  double leading() {
    return Math.round(size * (size >= LARGE ? 1.18 : 1.32));
  }
}
