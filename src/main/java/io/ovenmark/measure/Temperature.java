package io.ovenmark.measure;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A temperature as a person wrote it, {@code 205 °C} or {@code 400 °F}, from −60 °C to 600 °C.
 * Equal when the number and the scale are. Conversion: t(°C) = (t(°F) − 32) ÷ 1.8 (NIST SP 811,
 * Appendix B).
 */
public final class Temperature {
  private static final Pattern SHAPE =
      Pattern.compile("([-−]?[0-9]+(?:\\.[0-9]+)?) ?(?:°|º|deg(?:rees)?)? ?([CcFf])");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[-−]?[0-9]+,[0-9]");
  private static final int LONGEST = 40;
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
    String shown = Quoting.tidy(text).replace("℃", "°C").replace("℉", "°F");
    Matcher matcher = SHAPE.matcher(shown);
    if (shown.length() > LONGEST || !matcher.matches()) {
      throw new IllegalArgumentException(
          "The temperature "
              + Quoting.quote(text)
              + " is not understood.\n"
              + (DECIMAL_COMMA.matcher(shown).lookingAt()
                  ? "Write decimals with a point, such as \"37.5 °C\"."
                  : "Write a number and the scale, such as \"205 °C\" or \"400 °F\"."));
    }
    BigDecimal number = new BigDecimal(matcher.group(1).replace('−', '-'));
    return checked(new Temperature(number, matcher.group(2).equalsIgnoreCase("F")));
  }

  /**
   * So many degrees Celsius.
   *
   * @param degrees the number
   * @return the temperature
   * @throws IllegalArgumentException when it is not a number or out of the range that {@link
   *     #parse} reads
   */
  public static Temperature celsius(double degrees) {
    if (!Double.isFinite(degrees)) {
      throw new IllegalArgumentException(
          "A temperature must be a number.\nUse one from " + COLDEST + " to " + HOTTEST + " °C.");
    }
    return checked(new Temperature(BigDecimal.valueOf(degrees).stripTrailingZeros(), false));
  }

  private static Temperature checked(Temperature temperature) {
    if (!(temperature.celsius() >= COLDEST && temperature.celsius() <= HOTTEST)) {
      throw new IllegalArgumentException(
          "The temperature "
              + Quoting.quote(temperature.toString())
              + " is out of range.\nUse one from "
              + COLDEST
              + " to "
              + HOTTEST
              + " °C.");
    }
    return temperature;
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
