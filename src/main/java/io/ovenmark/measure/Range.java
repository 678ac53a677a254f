package io.ovenmark.measure;

import java.math.BigDecimal;
import java.util.OptionalDouble;

/**
 * The numbers that a field may hold; beyond them a slip of the keyboard is more likely than a true
 * figure.
 *
 * @param least least number, finite
 * @param most greatest number, finite, not below the least
 */
public record Range(double least, double most) {
  /** Checks the order of the limits. */
  public Range {
    if (!(least <= most) || Double.isInfinite(least) || Double.isInfinite(most)) {
      throw new IllegalArgumentException("not a range: " + least + ", " + most);
    }
  }

  /**
   * Checks a number.
   *
   * @param what the figure's name for the message, such as {@code The baking time}
   * @param value the number
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when the
   *     number lies outside or is not a number
   */
  public void check(String what, double value) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          what
              + " "
              + (Double.isFinite(value) ? plain(value) : "that was given")
              + " is out of range.\nUse a number from "
              + plain(least)
              + " to "
              + plain(most)
              + ".");
    }
  }

  /**
   * Checks a number when there is one.
   *
   * @param what the figure's name for the message
   * @param value the number; empty is always right
   * @throws IllegalArgumentException as {@link #check(String, double)}
   */
  public void check(String what, OptionalDouble value) {
    value.ifPresent(number -> check(what, number));
  }

  private static String plain(double value) {
    BigDecimal number = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    return Math.abs(number.scale()) > 20 ? number.toString() : number.toPlainString();
  }
}
