package io.ovenmark.pantry;

import io.ovenmark.measure.Amount;
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
   * The mass of an amount that cannot be read yet.
   *
   * @param amount one of {@link Amount#unread}
   * @return an unknown mass
   */
  public static Resolved unread(Amount amount) {
    return new Resolved(
        Quantity.UNKNOWN, true, "the amount \"" + amount + "\" cannot be read yet");
  }

  /**
   * Whether the mass is known.
   *
   * @return false for a volume without household weight or density
   */
  public boolean isResolved() {
    return grams.isKnown();
  }
}
