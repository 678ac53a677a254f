package io.ovenmark.publish.label;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * An amount as a label would state it.
 *
 * @param text with its unit, such as {@code 4.5 g} or {@code less than 1 g}
 * @param number the number stated; empty where the text says only that it is less
 * @param lessThan the number that it is less than, where the text says so
 */
public record Declared(String text, Optional<BigDecimal> number, Optional<BigDecimal> lessThan) {
  /** Checks that one of the two numbers is there. */
  public Declared {
    requireNonNull(text, "text");
    if (number.isPresent() == lessThan.isPresent()) {
      throw new IllegalArgumentException("A label states a number or what it is less than.");
    }
  }

  static Declared number(BigDecimal number, String shown, String unit) {
    return new Declared(shown + " " + unit, Optional.of(number), Optional.empty());
  }

  static Declared lessThan(String edge, String words) {
    return new Declared(words, Optional.empty(), Optional.of(new BigDecimal(edge)));
  }
}
