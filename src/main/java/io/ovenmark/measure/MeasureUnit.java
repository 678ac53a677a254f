package io.ovenmark.measure;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import tech.units.indriya.unit.Units;

/**
 * A unit of mass or volume that an amount can be written in. Customary units are the United States'
 * as NIST Handbook 44, Appendix C defines them: avoirdupois ounce 28.349523125 g, gallon 3
 * 785.411784 mL and its parts. Household measures such as "large" or "slice" are not units: they
 * belong to a food.
 */
public enum MeasureUnit {
  /** Gram. */
  GRAM("g", Kind.MASS, Units.GRAM, "gram", "grams", "gr"),
  /** Kilogram. */
  KILOGRAM(
      "kg", Kind.MASS, MetricPrefix.KILO(Units.GRAM), "kilo", "kilos", "kilogram", "kilograms"),
  /** Milligram. */
  MILLIGRAM("mg", Kind.MASS, MetricPrefix.MILLI(Units.GRAM), "milligram", "milligrams"),
  /** Avoirdupois ounce, 28.349523125 g. */
  OUNCE("oz", Kind.MASS, Units.GRAM.multiply(28.349523125), "ounce", "ounces"),
  /** Avoirdupois pound, 453.59237 g. */
  POUND("lb", Kind.MASS, Units.GRAM.multiply(453.59237), "lbs", "pound", "pounds"),
  /** Millilitre. */
  MILLILITRE(
      "ml",
      Kind.VOLUME,
      MetricPrefix.MILLI(Units.LITRE),
      "millilitre",
      "millilitres",
      "milliliter",
      "milliliters",
      "cc"),
  /** Centilitre. */
  CENTILITRE("cl", Kind.VOLUME, MetricPrefix.CENTI(Units.LITRE), "centilitre", "centilitres"),
  /** Decilitre. */
  DECILITRE("dl", Kind.VOLUME, MetricPrefix.DECI(Units.LITRE), "decilitre", "decilitres"),
  /** Litre. */
  LITRE("l", Kind.VOLUME, Units.LITRE, "litre", "litres", "liter", "liters"),
  /** US teaspoon, 4.92892159375 mL. */
  TEASPOON("tsp", Kind.VOLUME, millilitres(4.92892159375), "teaspoon", "teaspoons"),
  /** US tablespoon, 14.78676478125 mL. */
  TABLESPOON("tbsp", Kind.VOLUME, millilitres(14.78676478125), "tablespoon", "tablespoons", "tbs"),
  /** US fluid ounce, 29.5735295625 mL. */
  FLUID_OUNCE(
      "fl oz",
      Kind.VOLUME,
      millilitres(29.5735295625),
      "fl. oz",
      "fluid ounce",
      "fluid ounces",
      "floz"),
  /** US cup, 236.5882365 mL. */
  CUP("cup", Kind.VOLUME, millilitres(236.5882365), "cups"),
  /** US liquid pint, 473.176473 mL. */
  PINT("pint", Kind.VOLUME, millilitres(473.176473), "pints", "pt"),
  /** US liquid quart, 946.352946 mL. */
  QUART("quart", Kind.VOLUME, millilitres(946.352946), "quarts", "qt");

  /** What a unit measures. */
  public enum Kind {
    /** Mass, in grams. */
    MASS,
    /** Volume, in millilitres. */
    VOLUME
  }

  private static final Map<String, MeasureUnit> BY_NAME = byName();

  private final String symbol;
  private final Kind kind;
  private final double base;
  private final List<String> otherNames;

  <Q extends Quantity<Q>> MeasureUnit(
      String symbol, Kind kind, Unit<Q> unit, String... otherNames) {
    this.symbol = symbol;
    this.kind = kind;
    this.base =
        kind == Kind.MASS
            ? unit.asType(Mass.class).getConverterTo(Units.GRAM).convert(1.0)
            : unit.asType(Volume.class)
                .getConverterTo(MetricPrefix.MILLI(Units.LITRE))
                .convert(1.0);
    this.otherNames = List.of(otherNames);
  }

  private static Unit<Volume> millilitres(double count) {
    return MetricPrefix.MILLI(Units.LITRE).multiply(count);
  }

  private static Map<String, MeasureUnit> byName() {
    Map<String, MeasureUnit> units = new HashMap<>();
    for (MeasureUnit unit : values()) {
      units.put(unit.symbol, unit);
      unit.otherNames.forEach(name -> units.put(name, unit));
    }
    units.put("T", TABLESPOON);
    return Map.copyOf(units);
  }

  /**
   * Finds a unit by symbol or name, ignoring case and a final full stop; a single capital T is a
   * tablespoon (common practice, no source), a single small t is nothing.
   *
   * @param name such as {@code g}, {@code Tbsp.} or {@code cups}
   * @return the unit; empty when the word is none, as for a household measure
   */
  public static Optional<MeasureUnit> named(String name) {
    String word = Quoting.tidy(name);
    if (word.endsWith(".")) {
      word = word.substring(0, word.length() - 1);
    }
    return Optional.ofNullable(
        BY_NAME.get(word.equals("T") ? word : word.toLowerCase(Locale.ROOT)));
  }

  /**
   * The symbol that is written after a number.
   *
   * @return such as {@code g}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * What the unit measures.
   *
   * @return mass or volume
   */
  public Kind kind() {
    return kind;
  }

  /**
   * How many grams (mass) or millilitres (volume) one of the unit is.
   *
   * @return the factor
   */
  public double base() {
    return base;
  }
}
