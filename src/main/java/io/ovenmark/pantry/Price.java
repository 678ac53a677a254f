package io.ovenmark.pantry;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a package of a food costs. Equal amounts are equal prices, however many zeros were written.
 *
 * @param amount money for the package, 0 or more
 * @param currency three-letter code of ISO 4217, such as {@code EUR}
 * @param grams content of the package, above 0
 * @param date the day on which it cost that; empty when not noted
 */
public record Price(
    BigDecimal amount, String currency, double grams, Optional<LocalDate> date) {
  /** Checks the parts. */
  public Price {
    requireNonNull(amount, "amount");
    requireNonNull(currency, "currency");
    requireNonNull(date, "date");
    if (amount.signum() < 0 || !(grams > 0) || !currency.matches("[A-Z]{3}")) {
      throw new IllegalArgumentException(
          "A price needs an amount of 0 or more, a currency and the grams it buys.\n"
              + "Write for example 3.20 EUR for 1000 g.");
    }
    amount = amount.stripTrailingZeros();
    amount = amount.scale() < 0 ? amount.setScale(0) : amount;
  }
}
