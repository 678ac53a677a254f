package io.ovenmark.measure;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * An amount as a person wrote it: {@code 150 g}, {@code 1 1/2 cups}, {@code ½ tsp}, {@code 3
 * large}. The text is kept; the number and the unit are read from it. A measure that is not a
 * {@link MeasureUnit} (such as "large" or "slice") is a household measure of the food. A value
 * type: two amounts are equal when number and measure are, however they are written ({@code 0.5
 * tsp} equals {@code ½ tsp}). {@code toString} is what {@link #parse} reads.
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

  private static final String FRACTION_SIGNS =
      FRACTIONS.keySet().stream().map(String::valueOf).collect(Collectors.joining());
  private static final Pattern SPLIT =
      Pattern.compile(
          "(?<number>[-−+]?[0-9., /⁄" + FRACTION_SIGNS + "]*(?:[eE][+-]?[0-9]+)?)(?<unit>.*)");
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<sign>[-−+]?)(?:(?<whole>[0-9]+) (?=[0-9]+ ?/))?"
              + "(?<number>[0-9]+(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]+)?|\\.[0-9]+)"
              + "(?: ?/ ?(?<under>[0-9]+))?");
  private static final Pattern UNIT = Pattern.compile("\\p{L}[^0-9()]*(?:\\([^()]*\\)[^0-9()]*)?");
  private static final int LONGEST = 120;
  private static final int MOST_DIGITS = 12;

  private final String text;
  private final BigDecimal number;
  private final String measure;
  private final Optional<MeasureUnit> unit;
  private final boolean read;

  private Amount(String text, BigDecimal number, String measure) {
    this.text = text;
    this.number = number;
    this.unit = MeasureUnit.named(measure);
    this.measure = unit.map(MeasureUnit::symbol).orElse(measure);
    this.read = true;
  }

  private Amount(String typed) {
    this.text = typed;
    this.number = BigDecimal.ZERO;
    this.measure = "";
    this.unit = Optional.empty();
    this.read = false;
  }

  /**
   * So many grams.
   *
   * @param grams the mass, rounded here to 12 decimals
   * @return the amount
   * @throws IllegalArgumentException when it is negative or absurdly large
   */
  public static Amount grams(BigDecimal grams) {
    BigDecimal rounded =
        grams.scale() > MOST_DIGITS ? grams.setScale(MOST_DIGITS, RoundingMode.HALF_EVEN) : grams;
    if ((long) rounded.precision() - rounded.scale() > MOST_DIGITS) {
      throw absurd(rounded.toString() + " g");
    }
    return parse(rounded.stripTrailingZeros().toPlainString() + " g");
  }

  /**
   * Reads an amount.
   *
   * @param text number, fraction or mixed number, then a unit or household measure; digits in the
   *     measure must stand in brackets, as in {@code 1 can (400 ml)}
   * @return the amount
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when there
   *     is no number, no measure, a negative or an absurd number
   */
  public static Amount parse(String text) {
    requireNonNull(text, "text");
    String shown = Quoting.tidy(text);
    if (shown.length() > LONGEST) {
      throw bad("The amount " + Quoting.quote(text) + " is too long.", "Put remarks in the note.");
    }
    Matcher parts = SPLIT.matcher(shown);
    String digits = parts.matches() ? parts.group("number").strip() : "";
    String measure = parts.matches() ? parts.group("unit").strip() : "";
    Matcher matcher = NUMBER.matcher(spellFractions(digits));
    if (!matcher.matches() || !(measure.isEmpty() || UNIT.matcher(measure).matches())) {
      throw notUnderstood(shown, digits, measure);
    }
    BigDecimal number = number(matcher, shown);
    if (isMinus(matcher.group("sign")) && number.signum() != 0) {
      throw bad("The amount " + Quoting.quote(shown) + " is negative.", "Use 0 or more.");
    }
    if (number.compareTo(GREATEST) > 0) {
      throw absurd(shown);
    }
    if (measure.isEmpty()) {
      throw bad(
          "The amount " + Quoting.quote(shown) + " has no unit.",
          "Add g, ml, tsp or a measure of the food such as \"large\".");
    }
    return new Amount(digits + " " + measure, number, measure);
  }

  /**
   * An amount that cannot be read yet, because somebody is still typing it. Nothing is known of it,
   * so it weighs an unknown mass and not zero; it is in drafts only and is never written to a file.
   *
   * @param typed what stands there so far; may be blank
   * @return the amount; {@code toString} is what was typed
   */
  public static Amount unread(String typed) {
    String shown = Quoting.tidy(typed);
    String kept = shown.length() > LONGEST ? shown.substring(0, LONGEST) + "…" : shown;
    return new Amount(kept.isEmpty() ? "not stated" : kept);
  }

  private static IllegalArgumentException notUnderstood(
      String shown, String digits, String measure) {
    String hint = "Write a number and a unit, such as \"150 g\", \"1 1/2 tsp\" or \"3 large\".";
    if (digits.indexOf(',') > 0) {
      hint = "Write decimals with a point and no thousands separators, such as \"1.5 g\".";
    } else if (NUMBER.matcher(spellFractions(digits)).matches()
        && measure.chars().anyMatch(c -> c >= '0' && c <= '9')) {
      hint = "Write one number and one unit; use two lines, or add the two up.";
    }
    return bad("The amount " + Quoting.quote(shown) + " is not understood.", hint);
  }

  private static boolean isMinus(String sign) {
    return sign.equals("-") || sign.equals("−");
  }

  private static BigDecimal number(Matcher matcher, String shown) {
    BigDecimal number;
    try {
      number = new BigDecimal(matcher.group("number"));
    } catch (NumberFormatException e) {
      throw absurd(shown);
    }
    if ((long) number.precision() - number.scale() > MOST_DIGITS) {
      throw absurd(shown);
    }
    if (number.scale() > MOST_DIGITS) {
      throw bad(
          "The amount " + Quoting.quote(shown) + " has too many decimals.",
          "Round it to " + MOST_DIGITS + " decimals or fewer.");
    }
    if (matcher.group("under") != null) {
      BigDecimal under = new BigDecimal(matcher.group("under"));
      if (under.signum() == 0) {
        throw bad(
            "The amount " + Quoting.quote(shown) + " divides by zero.", "Correct the fraction.");
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

  private static IllegalArgumentException absurd(String shown) {
    return bad(
        "The amount " + Quoting.quote(shown) + " is absurdly large or small.",
        "The most that can be written is " + GREATEST.toPlainString() + " of a unit.");
  }

  private static IllegalArgumentException bad(String message, String hint) {
    return new IllegalArgumentException(message + "\n" + hint);
  }

  /**
   * Whether it could be read; all are but {@link #unread} ones.
   *
   * @return false when nothing is known but what was typed
   */
  public boolean isRead() {
    return read;
  }

  /**
   * The number.
   *
   * @return 0 or more
   * @throws IllegalStateException when the amount could not be read
   */
  public BigDecimal number() {
    if (!read) {
      throw new IllegalStateException("nothing is known of the amount " + Quoting.quote(text));
    }
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
   * @return such as {@code g} or {@code large}; empty text when the amount could not be read
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
        && read == that.read
        && (read || text.equals(that.text))
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
