package io.ovenmark.pantry;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;

/**
 * What one household measure of a food weighs, such as 1 cup of flour 125 g or 1 large egg 50 g.
 *
 * @param measure the measure's name: a unit ({@code cup}), a unit with a manner ({@code cup,
 *     sifted}) or a word ({@code large}), not blank
 * @param grams mass of one, above 0
 * @param extras unknown fields of its entry
 */
public record HouseholdMeasure(String measure, double grams, Extras extras) {
  /** Checks the parts. */
  public HouseholdMeasure {
    requireNonNull(measure, "measure");
    requireNonNull(extras, "extras");
    if (measure.isBlank() || !(grams > 0) || Double.isInfinite(grams)) {
      throw new IllegalArgumentException("measure must be named and grams above 0");
    }
  }

  /**
   * A measure without unknown fields.
   *
   * @param measure the measure's name, not blank
   * @param grams mass of one, above 0
   */
  public HouseholdMeasure(String measure, double grams) {
    this(measure, grams, Extras.NONE);
  }
}
