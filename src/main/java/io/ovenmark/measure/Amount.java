package io.ovenmark.measure;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount as a person wrote it: {@code 150 g}, {@code 1 1/2 cups}, {@code ½ tsp}, {@code 3 large}.
 * The text is kept; the number and the unit are read from it. A measure that is not a {@link
 * MeasureUnit} (such as "large" or "slice") is a household measure of the food. A value type: two
 * amounts are equal when number and measure are, however they are written ({@code 0.5 tsp} equals
 * {@code ½ tsp}). {@code toString} is what {@link #parse} reads.
 */
public final class Amount {
  /** The greatest number that an amount may carry; more is taken for a slip of the keyboard. */
  public static final BigDecimal GREATEST = new BigDecimal("1000000");

  private static final Map<Character, String> FRACTIONS =
      Map.ofEntries(
          Map.entry('½', "1/2"),
          Map.entry('⅓', "1/3"),
          Map.entry('⅔', "2/3"),
          Map.entry('¼', "1/4"),
          Map.entry('¾', "3/4"),
          Map.entry('⅕', "1/5"),
          Map.entry('⅖', "2/5"),
          Map.entry('⅗', "3/5"),
          Map.entry('⅘', "4/5"),
          Map.entry('⅙', "1/6"),
          Map.entry('⅚', "5/6"),
          Map.entry('⅛', "1/8"),
          Map.entry('⅜', "3/8"),
          Map.entry('⅝', "5/8"),
          Map.entry('⅞', "7/8"));

  private static final Pattern SHAPE =
      Pattern.compile(
          "(?<sign>[-−+]?)(?:(?<whole>\\d+)\\s+(?=\\d+\\s*/))?"
              + "(?<number>\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d+)?|\\.\\d+)"
              + "(?:\\s*/\\s*(?<under>\\d+))?\\s*(?<unit>\\p{L}[^\\d]*)?");

  private final String text;
  private final BigDecimal number;
  private final String measure;
  private final Optional<MeasureUnit> unit;

  private Amount(String text, BigDecimal number, String measure) {
    this.text = text;
    this.number = number;
    this.unit = MeasureUnit.named(measure);
    this.measure = unit.map(MeasureUnit::symbol).orElse(measure);
  }

  /**
   * So many grams.
   *
   * @param grams the mass
   * @return the amount
   */
  public static Amount grams(BigDecimal grams) {
    return parse(grams.stripTrailingZeros().toPlainString() + " g");
  }

  /**
   * Reads an amount.
   *
   * @param text number, fraction or mixed number, then a unit or household measure
   * @return the amount
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when there is
   *     no number, no measure, a negative or an absurd number
   */
  public static Amount parse(String text) {
    requireNonNull(text, "text");
    String shown = text.strip().replaceAll("\\s+", " ");
    Matcher matcher = SHAPE.matcher(spellFractions(shown));
    if (!matcher.matches()) {
      String hint =
          shown.matches(".*\\d,\\d.*")
              ? "Write decimals with a point and no thousands separators, such as \"1.5 g\"."
              : "Write a number and a unit, such as \"150 g\", \"1 1/2 tsp\" or \"3 large\".";
      throw bad("The amount \"" + shorten(shown) + "\" is not understood.", hint);
    }
    BigDecimal number = number(matcher, shown);
    if (matcher.group("sign").matches("[-−]") && number.signum() != 0) {
      throw bad("The amount \"" + shorten(shown) + "\" is negative.", "Use 0 or more.");
    }
    if (number.compareTo(GREATEST) > 0) {
      throw bad(
          "The amount \"" + shorten(shown) + "\" is absurdly large.",
          "The most that can be written is 1000000 of a unit.");
    }
    if (matcher.group("unit") == null) {
      throw bad(
          "The amount \"" + shorten(shown) + "\" has no unit.",
          "Add g, ml, tsp or a measure of the food such as \"large\".");
    }
    String measure = matcher.group("unit").strip();
    String digits = shown.endsWith(measure) ? shown.substring(0, shown.length() - measure.length())
        : shown;
    return new Amount(digits.strip() + " " + measure, number, measure);
  }

  private static BigDecimal number(Matcher matcher, String shown) {
    BigDecimal number;
    try {
      number = new BigDecimal(matcher.group("number"));
    } catch (NumberFormatException e) {
      throw bad("The amount \"" + shorten(shown) + "\" is not a number.", "Correct the number.");
    }
    if (number.precision() - number.scale() > 12) {
      return GREATEST.multiply(BigDecimal.TEN);
    }
    if (number.scale() > 12) {
      throw bad(
          "The amount \"" + shorten(shown) + "\" has too many decimals.", "Round it sensibly.");
    }
    if (matcher.group("under") != null) {
      BigDecimal under = new BigDecimal(matcher.group("under"));
      if (under.signum() == 0) {
        throw bad("The amount \"" + shorten(shown) + "\" divides by zero.", "Correct the fraction.");
      }
      number = number.divide(under, MathContext.DECIMAL64);
    }
    if (matcher.group("whole") != null) {
      number = number.add(new BigDecimal(matcher.group("whole")));
    }
    return number;
  }

  private static String spellFractions(String text) {
    StringBuilder out = new StringBuilder();
    for (char c : text.replace('⁄', '/').toCharArray()) {
      String fraction = FRACTIONS.get(c);
      if (fraction == null) {
        out.append(c);
      } else {
        out.append(out.length() > 0 && Character.isDigit(out.charAt(out.length() - 1)) ? " " : "");
        out.append(fraction);
      }
    }
    return out.toString();
  }

  private static String shorten(String text) {
    return text.length() <= 40 ? text : text.substring(0, 40) + "…";
  }

  private static IllegalArgumentException bad(String message, String hint) {
    return new IllegalArgumentException(message + "\n" + hint);
  }

  /**
   * The number.
   *
   * @return 0 or more
   */
  public BigDecimal number() {
    return number;
  }

  /**
   * The unit.
   *
   * @return a unit of mass or volume; empty for a household measure
   */
  public Optional<MeasureUnit> unit() {
    return unit;
  }

  /**
   * The measure as a word: the unit's symbol or the household measure as written.
   *
   * @return such as {@code g} or {@code large}
   */
  public String measure() {
    return measure;
  }

  /**
   * The mass, when the amount was written as one.
   *
   * @return grams; empty for volumes and household measures
   */
  public Optional<BigDecimal> grams() {
    return unit.filter(u -> u.kind() == MeasureUnit.Kind.MASS)
        .map(u -> number.multiply(BigDecimal.valueOf(u.base())));
  }

  /**
   * The volume, when the amount was written as one.
   *
   * @return millilitres; empty for masses and household measures
   */
  public Optional<BigDecimal> millilitres() {
    return unit.filter(u -> u.kind() == MeasureUnit.Kind.VOLUME)
        .map(u -> number.multiply(BigDecimal.valueOf(u.base())));
  }

  /**
   * Whether it is written in the very same characters, where {@link #equals} asks for the same
   * number and measure only.
   *
   * @param other another amount
   * @return true when the texts are the same
   */
  public boolean writtenAs(Amount other) {
    return text.equals(other.text);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Amount that
        && number.compareTo(that.number) == 0
        && measure.equals(that.measure);
  }

  @Override
  public int hashCode() {
    return number.stripTrailingZeros().hashCode() * 31 + measure.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
