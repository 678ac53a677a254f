package io.ovenmark.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as people read them: three significant figures, a real minus sign, words where a number
 * is known only in part.
 *
 * <pre>{@code
 * FigureText.number(3.4142)                            → 3.41
 * FigureText.signed(-22)                               → −22
 * FigureText.of(Quantity.atLeast(3.149), "g")          → at least 3.14 g
 * FigureText.change(known(3.9), known(3.4), "g")       → 3.9 → 3.4 g
 * }</pre>
 *
 * <p>Whole digits are never rounded away (1234.4 is 1234), zeros after the point are dropped, and
 * what is smaller than {@value #SMALLEST} is 0. A lower bound is rounded down and an upper bound
 * up, so that "at least" and "at most" stay true. Never depends on the default locale.
 */
public final class FigureText {
  /** What is closer to zero than this is shown as 0. */
  public static final double SMALLEST = 5e-7;

  /** The minus sign that is printed, U+2212. */
  public static final String MINUS = "−";

  /** The arrow between a figure before and after. */
  public static final String ARROW = " → ";

  private static final int FIGURES = 3;
  private static final int MOST_FIGURES = 6;

  /** Enough to hide what binary fractions add to a decimal number before a bound is rounded. */
  private static final MathContext EXACT_ENOUGH = new MathContext(12, RoundingMode.HALF_EVEN);

  private FigureText() {}

  /**
   * A number with three significant figures.
   *
   * @param value a finite number
   * @return such as {@code 0.923}, {@code 46}, {@code −1234}
   */
  public static String number(double value) {
    return rounded(value, FIGURES, RoundingMode.HALF_UP);
  }

  /**
   * A difference with its sign.
   *
   * @param value a finite number
   * @return such as {@code +14}, {@code −22} or {@code 0}
   */
  public static String signed(double value) {
    String text = number(value);
    return text.equals("0") || text.startsWith(MINUS) ? text : "+" + text;
  }

  /**
   * A difference that may be known only in part.
   *
   * @param delta the difference
   * @return such as {@code +14}, {@code at most −3}, {@code between −2 and +5}, {@code unknown}
   */
  public static String signed(Quantity delta) {
    if (delta.isKnown()) {
      return signed(delta.low());
    }
    if (delta.low() == Double.NEGATIVE_INFINITY && delta.high() == Double.POSITIVE_INFINITY) {
      return "unknown";
    }
    String low = plus(delta.low(), RoundingMode.FLOOR);
    String high = plus(delta.high(), RoundingMode.CEILING);
    if (delta.high() == Double.POSITIVE_INFINITY) {
      return "at least " + low;
    }
    return delta.low() == Double.NEGATIVE_INFINITY
        ? "at most " + high
        : "between " + low + " and " + high;
  }

  /**
   * A quantity without unit.
   *
   * @param quantity the quantity
   * @return such as {@code 3.1}, {@code at least 3.1}, {@code between 3 and 4}, {@code unknown}
   */
  public static String of(Quantity quantity) {
    return of(quantity, "");
  }

  /**
   * A quantity with its unit.
   *
   * @param quantity the quantity
   * @param unit such as {@code g} or {@code °C}; empty for none
   * @return such as {@code at least 3.1 g}; {@code unknown} stands without unit
   */
  public static String of(Quantity quantity, String unit) {
    String text = words(quantity, FIGURES);
    return unit.isEmpty() || quantity.isUnknown() ? text : text + " " + unit;
  }

  /**
   * A figure before and after. When the two differ but would look the same, figures are added until
   * they do not, up to six.
   *
   * @param from before
   * @param to after
   * @param unit written once at the end; empty for none
   * @return such as {@code 3.9 → 3.4 g}; when they look the same, the one figure
   */
  public static String change(Quantity from, Quantity to, String unit) {
    int figures = FIGURES;
    while (figures < MOST_FIGURES
        && !from.equals(to)
        && words(from, figures).equals(words(to, figures))) {
      figures++;
    }
    String before = words(from, figures);
    String after = words(to, figures);
    if (before.equals(after)) {
      return of(to, unit);
    }
    if (unit.isEmpty()) {
      return before + ARROW + after;
    }
    return to.isUnknown()
        ? before + " " + unit + ARROW + after
        : before + ARROW + after + " " + unit;
  }

  /**
   * Whether two quantities read the same with three significant figures.
   *
   * @param one a quantity
   * @param other another
   * @return true when {@link #of(Quantity)} gives the same text
   */
  public static boolean looksTheSame(Quantity one, Quantity other) {
    return words(one, FIGURES).equals(words(other, FIGURES));
  }

  private static String words(Quantity quantity, int figures) {
    if (quantity.isKnown()) {
      return rounded(quantity.low(), figures, RoundingMode.HALF_UP);
    }
    if (quantity.isUnknown()) {
      return "unknown";
    }
    if (quantity.high() == Double.POSITIVE_INFINITY) {
      return "at least " + rounded(quantity.low(), figures, RoundingMode.FLOOR);
    }
    String high = rounded(quantity.high(), figures, RoundingMode.CEILING);
    if (quantity.low() == 0 || quantity.low() == Double.NEGATIVE_INFINITY) {
      return "at most " + high;
    }
    return "between " + rounded(quantity.low(), figures, RoundingMode.FLOOR) + " and " + high;
  }

  private static String plus(double bound, RoundingMode mode) {
    if (Double.isInfinite(bound)) {
      return "";
    }
    String text = rounded(bound, FIGURES, mode);
    return bound > 0 && !text.equals("0") ? "+" + text : text;
  }

  private static String rounded(double value, int figures, RoundingMode mode) {
    if (Math.abs(value) < SMALLEST) {
      return "0";
    }
    BigDecimal exact = new BigDecimal(Double.toString(value)).round(EXACT_ENOUGH);
    int wholeDigits = exact.precision() - exact.scale();
    BigDecimal shown =
        wholeDigits >= figures
            ? exact.setScale(0, mode)
            : exact.round(new MathContext(figures, mode));
    String text = shown.stripTrailingZeros().toPlainString();
    return text.startsWith("-") ? MINUS + text.substring(1) : text;
  }
}
