package io.ovenmark.change;

import io.ovenmark.formula.Line;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** When two parts of formulas count as the same. */
final class Same {
  private static final BigDecimal PER_BILLION = new BigDecimal("1e-9");

  private Same() {}

  /** Equal, and the amount is written in the same characters. */
  static boolean line(Line a, Line b) {
    return a.equals(b) && a.amount().writtenAs(b.amount());
  }

  /** Both absent, or both there and the same. */
  static boolean line(Optional<Line> a, Optional<Line> b) {
    return a.isPresent() ? b.isPresent() && line(a.get(), b.get()) : b.isEmpty();
  }

  /**
   * The same number and measure, or two masses that differ by no more than a billionth, which is
   * what a fraction such as {@code 1/3 kg} loses in decimals.
   */
  static boolean amountButWriting(Amount a, Amount b) {
    if (a.equals(b)) {
      return true;
    }
    if (a.grams().isEmpty() || b.grams().isEmpty()) {
      return false;
    }
    BigDecimal left = a.grams().get();
    BigDecimal right = b.grams().get();
    return left.subtract(right).abs().compareTo(left.max(right).multiply(PER_BILLION)) <= 0;
  }

  /** Whether one unknown field is absent in both or has the same value. */
  static boolean extra(String name, Extras a, Extras b) {
    return Extras.NONE.with(name, a).equals(Extras.NONE.with(name, b));
  }

  /** The text of an unknown field; empty when it is absent. */
  static Optional<String> extraText(String name, Extras extras) {
    return extras.names().contains(name) ? Optional.of(extras.text(name)) : Optional.empty();
  }

  /** All names that occur in any of the given, sorted. */
  static Set<String> extraNames(Extras... all) {
    Set<String> names = new TreeSet<>();
    for (Extras extras : all) {
      names.addAll(extras.names());
    }
    return names;
  }
}
