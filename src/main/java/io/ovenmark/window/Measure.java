package io.ovenmark.window;

import java.util.OptionalDouble;

/** What is measured of a piece and can be limited. */
public enum Measure {
  /** Temperature in the centre when taken out, °C. */
  CORE("core", 1.5),
  /** Crust from 0 (raw) to 4 (burnt). */
  CRUST("crust", 0.3),
  /** Thermal dose of the core, minutes at the reference temperature; fitted as its logarithm. */
  COOKING_VALUE("cooking value", 0.25);

  private final String word;
  private final double usualNoise;

  Measure(String word, double usualNoise) {
    this.word = word;
    this.usualNoise = usualNoise;
  }

  /**
   * What it is called.
   *
   * @return such as {@code cooking value}
   */
  public String word() {
    return word;
  }

  /** The scatter between like pieces that is supposed before any data; common practice. */
  double usualNoise() {
    return usualNoise;
  }

  /** The figure of a piece. */
  OptionalDouble of(BakedPiece piece) {
    return switch (this) {
      case CORE -> piece.coreCelsius();
      case CRUST -> piece.crustShade();
      case COOKING_VALUE -> piece.dose();
    };
  }

  /** The figure as it is fitted. */
  double fitted(double value) {
    return this == COOKING_VALUE ? Math.log(Math.max(value, 1e-9)) : value;
  }
}
