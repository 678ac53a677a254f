package io.ovenmark.demo;

import java.util.Optional;

/** What a piece looks like, for drawing it. */
public enum PieceShape {
  /** A round bun. */
  ROUND("round", 90, 40),
  /** A flat rectangle, such as a crispbread; the width is the longer side. */
  RECTANGLE("rectangle", 68, 3),
  /** A muffin in a paper cup. */
  CUP("cup", 70, 45);

  private final String word;
  private final double usualWidth;
  private final double usualHeight;

  PieceShape(String word, double usualWidth, double usualHeight) {
    this.word = word;
    this.usualWidth = usualWidth;
    this.usualHeight = usualHeight;
  }

  /**
   * Finds a shape by its word.
   *
   * @param word such as {@code round}
   * @return the shape, empty when there is none
   */
  public static Optional<PieceShape> withWord(String word) {
    for (PieceShape shape : values()) {
      if (shape.word.equals(word)) {
        return Optional.of(shape);
      }
    }
    return Optional.empty();
  }

  /** Width in millimetres to draw where none of the tray was measured. */
  double usualWidth() {
    return usualWidth;
  }

  /** Height in millimetres to draw where none of the tray was measured. */
  double usualHeight() {
    return usualHeight;
  }
}
