package io.ovenmark.paste;

import static java.util.Objects.requireNonNull;

/**
 * Something that a person has to settle before a pasted line can be relied on.
 *
 * @param kind what it is about
 * @param message one sentence that says what is open
 * @param hint one sentence that says what to do
 */
public record Doubt(Kind kind, String message, String hint) {
  /** What a doubt is about. */
  public enum Kind {
    /** Which food is meant, or that none is known. */
    FOOD,
    /** How much is meant. */
    AMOUNT,
    /** How a number or a unit is to be read; without that there is no amount. */
    AMBIGUOUS,
    /** The line as a whole. */
    LINE
  }

  /** Checks that nothing is null. */
  public Doubt {
    requireNonNull(kind, "kind");
    requireNonNull(message, "message");
    requireNonNull(hint, "hint");
  }

  static Doubt amount(String message, String hint) {
    return new Doubt(Kind.AMOUNT, message, hint);
  }

  static Doubt ambiguous(String message, String hint) {
    return new Doubt(Kind.AMBIGUOUS, message, hint);
  }

  static Doubt food(String message, String hint) {
    return new Doubt(Kind.FOOD, message, hint);
  }

  static Doubt line(String message, String hint) {
    return new Doubt(Kind.LINE, message, hint);
  }

  /** A doubt about an amount from what a value type refused: a sentence, a line break, a remedy. */
  static Doubt amount(IllegalArgumentException e) {
    String[] parts = String.valueOf(e.getMessage()).split("\n", 2);
    return amount(parts[0], parts.length > 1 ? parts[1] : "Correct the amount.");
  }
}
