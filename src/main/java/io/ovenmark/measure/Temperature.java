package io.ovenmark.measure;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A temperature as a person wrote it, {@code 205 °C} or {@code 400 °F}. Equal when the number and
 * the scale are. Conversion: t(°C) = (t(°F) − 32) ÷ 1.8 (NIST SP 811, Appendix B).
 */
public final class Temperature {
  private static final Pattern SHAPE =
      Pattern.compile("([-−]?\\d+(?:\\.\\d+)?)\\s*(?:°|º|deg(?:rees)?)?\\s*([CcFf])");
  private static final int COLDEST = -60;
  private static final int HOTTEST = 600;

  private final BigDecimal number;
  private final boolean fahrenheit;

  private Temperature(BigDecimal number, boolean fahrenheit) {
    this.number = number;
    this.fahrenheit = fahrenheit;
  }

  /**
   * Reads a temperature.
   *
   * @param text such as {@code 205C}, {@code 205 °C}, {@code 400 °F}
   * @return the temperature
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Temperature parse(String text) {
    requireNonNull(text, "text");
    Matcher matcher = SHAPE.matcher(text.strip());
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "The temperature \"" + text.strip() + "\" is not understood.\n"
              + "Write a number and the scale, such as \"205 °C\" or \"400 °F\".");
    }
    BigDecimal number = new BigDecimal(matcher.group(1).replace('−', '-'));
    Temperature result =
        new Temperature(number, matcher.group(2).toUpperCase(Locale.ROOT).equals("F"));
    if (!(result.celsius() >= COLDEST && result.celsius() <= HOTTEST)) {
      throw new IllegalArgumentException(
          "The temperature \"" + text.strip() + "\" is out of range.\n"
              + "Use one from " + COLDEST + " to " + HOTTEST + " °C.");
    }
    return result;
  }

  /**
   * So many degrees Celsius.
   *
   * @param degrees the number
   * @return the temperature
   */
  public static Temperature celsius(double degrees) {
    return new Temperature(BigDecimal.valueOf(degrees).stripTrailingZeros(), false);
  }

  /**
   * The temperature in degrees Celsius.
   *
   * @return °C, unrounded
   */
  public double celsius() {
    double degrees = number.doubleValue();
    return fahrenheit ? (degrees - 32) / 1.8 : degrees;
  }

  /**
   * The temperature in degrees Fahrenheit.
   *
   * @return °F, unrounded
   */
  public double fahrenheit() {
    return fahrenheit ? number.doubleValue() : number.doubleValue() * 1.8 + 32;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Temperature that
        && fahrenheit == that.fahrenheit
        && number.compareTo(that.number) == 0;
  }

  @Override
  public int hashCode() {
    return number.stripTrailingZeros().hashCode() * 2 + (fahrenheit ? 1 : 0);
  }

  /** As it was written, in one form: {@code 205 °C}. */
  @Override
  public String toString() {
    return number.stripTrailingZeros().toPlainString() + (fahrenheit ? " °F" : " °C");
  }
}
