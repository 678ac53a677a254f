package io.ovenmark.measure;

import java.util.Optional;

/**
 * The units in which a reader wants weighed masses, and the temperatures of ovens and cores. It
 * concerns what is shown and never what is kept. What was written in the wanted system already is
 * shown as it was written; nutrients stay in grams, as on labels of food.
 *
 * <pre>{@code
 * ShownUnits units = ShownUnits.of(Optional.of("oz"), Optional.of("F"));
 * units.mass(Quantity.known(94.6))             → 3.34 oz
 * units.amount(Amount.parse("180 g"))          → 6.35 oz
 * units.amount(Amount.parse("1 tsp"))          → 1 tsp
 * units.heat(Temperature.parse("190 °C"))      → 374 °F
 * }</pre>
 */
public final class ShownUnits {
  /** Masses that are worked out in grams; amounts and temperatures as they were written. */
  public static final ShownUnits AS_WRITTEN = new ShownUnits(Optional.empty(), Optional.empty());

  private static final String OUNCE = "oz";
  private static final String FAHRENHEIT = "F";

  private final Optional<String> mass;
  private final Optional<String> degrees;

  private ShownUnits(Optional<String> mass, Optional<String> degrees) {
    this.mass = mass;
    this.degrees = degrees;
  }

  /**
   * The wanted units.
   *
   * @param mass {@code g} or {@code oz}; empty for as written
   * @param degrees {@code C} or {@code F}; empty for as written
   * @return the units
   * @throws IllegalArgumentException for anything else, with a sentence and, after a line break, a
   *     remedy
   */
  public static ShownUnits of(Optional<String> mass, Optional<String> degrees) {
    if (mass.filter(unit -> !unit.equals("g") && !unit.equals(OUNCE)).isPresent()) {
      throw new IllegalArgumentException(
          "Masses cannot be shown in " + Quoting.quote(mass.get()) + ".\nUse g or oz.");
    }
    if (degrees.filter(unit -> !unit.equals("C") && !unit.equals(FAHRENHEIT)).isPresent()) {
      throw new IllegalArgumentException(
          "Temperatures cannot be shown in " + Quoting.quote(degrees.get()) + ".\nUse C or F.");
    }
    return new ShownUnits(mass, degrees);
  }

  /**
   * The unit in which masses are shown that are worked out.
   *
   * @return {@code g} or {@code oz}
   */
  public String massUnit() {
    return mass.orElse("g");
  }

  /**
   * Grams in the unit in which they are shown.
   *
   * @param grams grams, may be known in part
   * @return the number of {@link #massUnit}
   */
  public Quantity inMassUnit(Quantity grams) {
    return inOunces() ? grams.dividedBy(MeasureUnit.OUNCE.base()) : grams;
  }

  /**
   * A mass in words.
   *
   * @param grams grams, may be known in part
   * @return such as {@code 94.6 g}, {@code at least 3.34 oz} or {@code unknown}
   */
  public String mass(Quantity grams) {
    return FigureText.of(inMassUnit(grams), massUnit());
  }

  /**
   * A difference of masses in words.
   *
   * @param grams grams of either sign, may be known in part
   * @return such as {@code +22 g} or {@code −0.776 oz}
   */
  public String massDifference(Quantity grams) {
    return FigureText.signed(inMassUnit(grams)) + " " + massUnit();
  }

  /**
   * A mass before and after, in words.
   *
   * @param from grams before
   * @param to grams after
   * @return such as {@code 95 → 90 g}
   */
  public String massChange(Quantity from, Quantity to) {
    return FigureText.change(inMassUnit(from), inMassUnit(to), massUnit());
  }

  /**
   * A mass that is kept as a number of grams.
   *
   * @param digits grams in plain digits
   * @return those digits with their unit, or the number of ounces that they are
   */
  public String grams(String digits) {
    return inOunces()
        ? mass(Quantity.known(Double.parseDouble(digits)))
        : digits + " " + massUnit();
  }

  /**
   * Whether an amount is shown as it was written.
   *
   * @param amount the amount
   * @return false for a mass in units of the other system
   */
  public boolean keeps(Amount amount) {
    return mass.isEmpty()
        || amount.unit()
            .filter(unit -> unit.kind() == MeasureUnit.Kind.MASS)
            .map(unit -> isAvoirdupois(unit) == inOunces())
            .orElse(true);
  }

  /**
   * An amount in words.
   *
   * @param amount the amount
   * @return as written, unless it is a mass in units of the other system
   */
  public String amount(Amount amount) {
    return keeps(amount)
        ? amount.toString()
        : mass(Quantity.known(amount.grams().orElseThrow().doubleValue()));
  }

  /**
   * A temperature in words.
   *
   * @param temperature the temperature
   * @return such as {@code 190 °C}; as written unless that is in the other scale; with a real minus
   *     sign
   */
  public String heat(Temperature temperature) {
    String written = temperature.toString().replace("-", FigureText.MINUS);
    if (degrees.isEmpty() || written.endsWith(degrees.get())) {
      return written;
    }
    double number =
        degrees.get().equals(FAHRENHEIT) ? temperature.fahrenheit() : temperature.celsius();
    return FigureText.number(number) + " °" + degrees.get();
  }

  /**
   * The same for a temperature that stands in a text.
   *
   * @param text such as {@code 190 °C}
   * @return the text as {@link #heat(Temperature)} has it
   * @throws IllegalArgumentException when it is no temperature
   */
  public String heat(String text) {
    return heat(Temperature.parse(text));
  }

  /**
   * The unit in which temperatures are shown that are worked out.
   *
   * @return {@code °C} or {@code °F}
   */
  public String degreeUnit() {
    return "°" + degrees.orElse("C");
  }

  /**
   * A temperature that is worked out, in the unit in which it is shown.
   *
   * @param celsius degrees Celsius
   * @return the number of {@link #degreeUnit}
   */
  public double inDegrees(double celsius) {
    return degrees.filter(FAHRENHEIT::equals).isPresent()
        ? Temperature.celsius(celsius).fahrenheit()
        : celsius;
  }

  private boolean inOunces() {
    return mass.filter(OUNCE::equals).isPresent();
  }

  private static boolean isAvoirdupois(MeasureUnit unit) {
    return unit == MeasureUnit.OUNCE || unit == MeasureUnit.POUND;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ShownUnits that
        && mass.equals(that.mass)
        && degrees.equals(that.degrees);
  }

  @Override
  public int hashCode() {
    return 31 * mass.hashCode() + degrees.hashCode();
  }

  @Override
  public String toString() {
    return mass.orElse("as written") + ", " + degrees.map(unit -> "°" + unit).orElse("as written");
  }
}
