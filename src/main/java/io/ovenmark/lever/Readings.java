package io.ovenmark.lever;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** What a scale can show. */
public final class Readings {
  /** The reading of a fine bench scale, in grams. */
  public static final double FINE = 0.1;

  private Readings() {}

  /**
   * Reads what a scale can show: {@code 0.1 g}, {@code 1 g}, {@code 5 g}.
   *
   * @param text with or without the unit; {@code exact} for no rounding
   * @return grams; 0 for exact
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static double read(String text) {
    String plain = text.strip().replaceAll("\\s*g$", "");
    if (plain.equals("exact")) {
      return 0;
    }
    boolean number = plain.matches("\\d{1,3}(\\.\\d{1,3})?");
    double reading = number ? Double.parseDouble(plain) : 0;
    if (!(reading > 0)) {
      throw new IllegalArgumentException(
          "What the scale can show is not understood.\n"
              + "Write it as 0.1 g, 1 g or 5 g, or exact for no rounding.");
    }
    return reading;
  }

  /**
   * The nearest reading.
   *
   * @param grams a mass
   * @param reading what the scale can show, above 0
   * @return a whole number of readings, in decimal digits
   */
  public static double nearest(double grams, double reading) {
    BigDecimal step = BigDecimal.valueOf(reading);
    return BigDecimal.valueOf(grams)
        .divide(step, 0, RoundingMode.HALF_UP)
        .multiply(step)
        .doubleValue();
  }
}
