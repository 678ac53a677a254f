package io.ovenmark.pantry;

import io.ovenmark.measure.Quantity;

/**
 * An amount of a food turned into mass.
 *
 * @param grams the mass; {@link Quantity#UNKNOWN} when it could not be resolved
 * @param approximate true when it was worked out from a volume or a household measure
 * @param how in words: what it was worked out from, or why it is unresolved
 */
public record Resolved(Quantity grams, boolean approximate, String how) {

  /**
   * Whether the mass is known.
   *
   * @return false for a volume without household weight or density
   */
  public boolean isResolved() {
    return grams.isKnown();
  }
}
