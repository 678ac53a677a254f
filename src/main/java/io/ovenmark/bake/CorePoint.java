package io.ovenmark.bake;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Temperature;

/**
 * The temperature in the centre of a piece at one moment of its bake.
 *
 * @param minutes since it went into the oven, from 0 to two days
 * @param temperature in the centre
 * @param extras unknown fields
 */
public record CorePoint(double minutes, Temperature temperature, Extras extras) {
  /** Checks the time. */
  public CorePoint {
    Piece.MINUTES.check("The time of a logged core temperature", minutes);
    requireNonNull(temperature, "temperature");
    requireNonNull(extras, "extras");
  }

  /**
   * A point without unknown fields.
   *
   * @param minutes since it went into the oven
   * @param temperature in the centre
   */
  public CorePoint(double minutes, Temperature temperature) {
    this(minutes, temperature, Extras.NONE);
  }
}
