package io.ovenmark.compare;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * What one cause did to a figure.
 *
 * @param cause what sort of cause
 * @param text in words, such as {@code water −22 g} or {@code pieces 6 → 7}
 * @param line id of the line in the later formula, or in the earlier when it was removed; empty
 *     when the cause is no line
 * @param delta its share of the figure's difference, in the figure's unit, never 0
 */
public record Contribution(Cause cause, String text, Optional<String> line, double delta) {

  /** Sorts of causes, in the order in which they are told for one line and after the lines. */
  public enum Cause {
    /** The mass of a line. */
    AMOUNT,
    /** Another food in a line. */
    FOOD,
    /** The same food with other data. */
    FOOD_DATA,
    /** The number of pieces. */
    PIECES,
    /** The dough mass of a piece. */
    DOUGH_PER_PIECE,
    /** The loss on handling. */
    HANDLING_LOSS,
    /** The loss in the oven, as weighed. */
    BAKING_LOSS,
    /** Another rule for energy or net carbohydrate. */
    RULE,
    /** A figure that cannot fall below 0 was cut off there. */
    CUT_OFF
  }

  /** Checks that nothing is null. */
  public Contribution {
    requireNonNull(cause, "cause");
    requireNonNull(text, "text");
    requireNonNull(line, "line");
  }
}
