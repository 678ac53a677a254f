package io.ovenmark.window;

import java.util.OptionalDouble;

/** What runs along the map beside the oven's temperature. */
public enum Axis {
  /** Time in the oven. */
  MINUTES,
  /** Thermal dose of the core, for pieces whose core was logged. */
  DOSE;

  OptionalDouble of(BakedPiece piece) {
    OptionalDouble value = this == MINUTES ? piece.minutes() : piece.dose();
    return value.orElse(0) > 0 ? value : OptionalDouble.empty();
  }
}
