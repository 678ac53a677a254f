package io.ovenmark.measure;

import java.math.BigDecimal;
import java.util.OptionalDouble;

/**
 * A number that may be known only in part: exactly, from below, from above, between two bounds, or
 * not at all. Unknown is not zero: it is carried through every sum and quotient by interval
 * arithmetic, so a result never looks more certain than its parts.
 *
 * <table>
 * <caption>Rules</caption>
 * <tr><td>known 3 + unknown (of something that cannot be negative)</td><td>at least 3</td></tr>
 * <tr><td>known 3 − unknown (of something that cannot be negative)</td><td>at most 3</td></tr>
 * <tr><td>unknown × 0</td><td>known 0</td></tr>
 * <tr><td>anything ÷ a quantity that may be 0</td><td>no upper bound</td></tr>
 * </table>
 *
 * <p>A result beyond the range of a double is unbounded on that side; no result is ever NaN. {@link
 * #UNKNOWN} is "0 or more"; {@link #ANYTHING} may also be negative, as the difference of two
 * unknowns is. Both are shown as "unknown". A value type: equal when both bounds are.
 */
public final class Quantity {
  /** Zero, exactly. */
  public static final Quantity ZERO = new Quantity(0, 0);

  /** Not known, but not negative: a mass, a nutrient. */
  public static final Quantity UNKNOWN = new Quantity(0, Double.POSITIVE_INFINITY);

  /** Not known at all, of either sign: a difference. */
  public static final Quantity ANYTHING =
      new Quantity(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  private final double low;
  private final double high;

  private Quantity(double low, double high) {
    this.low = Math.min(low, Double.MAX_VALUE) + 0.0;
    this.high = Math.max(high, -Double.MAX_VALUE) + 0.0;
  }

  /**
   * An exactly known number.
   *
   * @param value a finite number
   * @return the quantity
   * @throws IllegalArgumentException when not finite
   */
  public static Quantity known(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value must be finite, was " + value);
    }
    return new Quantity(value, value);
  }

  /**
   * A number or nothing.
   *
   * @param value the number; empty means {@link #UNKNOWN}
   * @return the quantity
   */
  public static Quantity of(OptionalDouble value) {
    return value.isPresent() ? known(value.getAsDouble()) : UNKNOWN;
  }

  /**
   * A number known from below.
   *
   * @param low the lower bound, finite
   * @return the quantity
   */
  public static Quantity atLeast(double low) {
    return between(low, Double.POSITIVE_INFINITY);
  }

  /**
   * A number that is not negative and known from above.
   *
   * @param high the upper bound, not negative
   * @return the quantity
   */
  public static Quantity atMost(double high) {
    return between(0, high);
  }

  /**
   * A number between two bounds, both included.
   *
   * @param low lower bound, may be negative infinity
   * @param high upper bound, not below the lower, may be infinity
   * @return the quantity
   * @throws IllegalArgumentException when the bounds are reversed or not numbers, or when the lower
   *     is infinity or the upper negative infinity
   */
  public static Quantity between(double low, double high) {
    if (!(low <= high) || low == Double.POSITIVE_INFINITY || high == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException("not a lower and an upper bound: " + low + ", " + high);
    }
    return new Quantity(low, high);
  }

  /**
   * The lower bound.
   *
   * @return the bound, may be negative infinity
   */
  public double low() {
    return low;
  }

  /**
   * The upper bound.
   *
   * @return the bound, may be infinity
   */
  public double high() {
    return high;
  }

  /**
   * Whether the number is known exactly.
   *
   * @return true when both bounds are the same finite number
   */
  public boolean isKnown() {
    return low == high && Double.isFinite(low);
  }

  /**
   * Whether nothing useful is known.
   *
   * @return true for {@link #UNKNOWN}, {@link #ANYTHING} and their like
   */
  public boolean isUnknown() {
    return high == Double.POSITIVE_INFINITY && (low == 0 || low == Double.NEGATIVE_INFINITY);
  }

  /**
   * The number, if known exactly.
   *
   * @return the value, empty when only bounds are known
   */
  public OptionalDouble value() {
    return isKnown() ? OptionalDouble.of(low) : OptionalDouble.empty();
  }

  /**
   * Adds.
   *
   * @param other the addend
   * @return the sum
   */
  public Quantity plus(Quantity other) {
    return new Quantity(low + other.low, high + other.high);
  }

  /**
   * Subtracts, treating the two as independent.
   *
   * @param other the subtrahend
   * @return the difference
   */
  public Quantity minus(Quantity other) {
    return new Quantity(low - other.high, high - other.low);
  }

  /**
   * Multiplies by an exact number.
   *
   * @param factor a finite number; 0 gives {@link #ZERO} whatever is unknown
   * @return the product
   * @throws IllegalArgumentException when the factor is not finite
   */
  public Quantity times(double factor) {
    if (!Double.isFinite(factor)) {
      throw new IllegalArgumentException("factor must be finite, was " + factor);
    }
    return factor >= 0
        ? new Quantity(product(low, factor), product(high, factor))
        : new Quantity(product(high, factor), product(low, factor));
  }

  /**
   * Multiplies two quantities, treating them as independent.
   *
   * @param other the factor, of either sign
   * @return the product
   */
  public Quantity times(Quantity other) {
    double a = product(low, other.low);
    double b = product(low, other.high);
    double c = product(high, other.low);
    double d = product(high, other.high);
    return new Quantity(
        Math.min(Math.min(a, b), Math.min(c, d)), Math.max(Math.max(a, b), Math.max(c, d)));
  }

  /**
   * Divides by an exact number.
   *
   * @param divisor a finite number; 0 gives {@link #UNKNOWN}, or {@link #ANYTHING} when this may be
   *     negative
   * @return the quotient
   * @throws IllegalArgumentException when the divisor is not finite
   */
  public Quantity dividedBy(double divisor) {
    return dividedBy(known(divisor));
  }

  /**
   * Divides by a quantity that is not negative, treating the two as independent.
   *
   * @param divisor the divisor; where it may be 0 the quotient has no upper bound, and no lower one
   *     either when this may be negative; where it may be both negative and positive the quotient
   *     is {@link #ANYTHING}
   * @return the quotient
   */
  public Quantity dividedBy(Quantity divisor) {
    if (divisor.high < 0) {
      return times(-1).dividedBy(divisor.times(-1));
    }
    if (divisor.low < 0) {
      return ANYTHING;
    }
    if (divisor.high == 0) {
      return low < 0 ? ANYTHING : UNKNOWN;
    }
    return new Quantity(
        quotient(low, low < 0 ? divisor.low : divisor.high, Double.NEGATIVE_INFINITY),
        quotient(high, high < 0 ? divisor.high : divisor.low, Double.POSITIVE_INFINITY));
  }

  private static double quotient(double bound, double divisor, double whenZero) {
    if (divisor == 0) {
      return whenZero;
    }
    return Double.isInfinite(divisor) ? 0 : bound / divisor;
  }

  /**
   * Limits the upper bound, as when a part cannot be more than its whole.
   *
   * @param whole the whole
   * @return this with its bounds no higher than the whole's
   */
  public Quantity noMoreThan(Quantity whole) {
    return high <= whole.high ? this : new Quantity(Math.min(low, whole.high), whole.high);
  }

  /**
   * Cuts off negative values, as for a mass that cannot be negative.
   *
   * @return this with both bounds at least 0
   */
  public Quantity notNegative() {
    return low >= 0 ? this : new Quantity(0, Math.max(0, high));
  }

  private static double product(double a, double b) {
    return a == 0 || b == 0 ? 0 : a * b;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Quantity that && low == that.low && high == that.high;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(low) * 31 + Double.hashCode(high);
  }

  /** For example {@code 3.1}, {@code at least 3.1}, {@code at most 4}, {@code unknown}. */
  @Override
  public String toString() {
    if (isKnown()) {
      return plain(low);
    }
    if (isUnknown()) {
      return "unknown";
    }
    if (high == Double.POSITIVE_INFINITY) {
      return "at least " + plain(low);
    }
    if (low == 0 || low == Double.NEGATIVE_INFINITY) {
      return "at most " + plain(high);
    }
    return "between " + plain(low) + " and " + plain(high);
  }

  private static String plain(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }
}
