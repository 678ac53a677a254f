package io.ovenmark.lever;

import static java.util.Objects.requireNonNull;

import io.ovenmark.goal.Limit;
import io.ovenmark.goal.LimitText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A figure and what it shall come to: a value, at least, at most, or a range.
 *
 * @param limit the bounds; the same twice for a value
 */
public record Wish(Limit limit) {
  /**
   * How far a figure may be off a wish, as a share of the wished value or of 1 when that is more.
   */
  public static final double TOLERANCE = 1e-6;

  private static final Pattern BASIS =
      Pattern.compile("\\s+(?:per|a|an|each)\\s+(piece|batch|100 ?g dough|100 ?g baked)\\b");
  private static final String NUMBER = "(\\d{1,9}(?:\\.\\d{1,9})?)\\s*(g|mg|kcal|%)?";
  private static final Pattern VALUE_LAST =
      Pattern.compile("(\\D+?)(?:\\s*=|\\s+(?:of|to|at|is|exactly))?\\s*" + NUMBER);
  private static final Pattern VALUE_FIRST = Pattern.compile(NUMBER + "\\s+([a-z]\\D*)");
  private static final Pattern TWICE = Pattern.compile("at least (.+?) and at most \\1(?=$| )");

  /** Checks that there is a limit. */
  public Wish {
    requireNonNull(limit, "limit");
  }

  /**
   * Reads a wish: {@code liquid ratio 0.80}, {@code net carbohydrate a piece at most 3 g}, {@code
   * dough a piece 95 g}, {@code 12 g protein per piece}, {@code dough moisture 52 to 55 %}, and
   * whatever {@link LimitText} reads.
   *
   * @param text what was written
   * @return the wish
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Wish read(String text) {
    String plain = text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    Matcher basis = BASIS.matcher(plain);
    String figure = plain;
    String ending = "";
    if (basis.find()) {
      figure = (plain.substring(0, basis.start()) + plain.substring(basis.end())).strip();
      ending = " per " + basis.group(1).replace("100g", "100 g");
    }
    String bounds = twice(figure) + ending;
    try {
      return new Wish(LimitText.read(bounds));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          String.valueOf(e.getMessage())
              .replace(Quoting.quote(bounds), Quoting.quote(text))
              .replace("The limit \"", "The wish \"")
              .replace("in the limit \"", "in the wish \"")
              .replace(
                  "Write it as in \"net_carbohydrate_g <= 4 per piece\"",
                  "Write it as in \"liquid ratio 0.85\", \"net carbohydrate a piece at most 3 g\""),
          e);
    }
  }

  /** A single value as a range from itself to itself. */
  private static String twice(String figure) {
    Matcher last = VALUE_LAST.matcher(figure);
    boolean bounded = figure.matches(".*(<|>|≤|≥|at most|at least|up to|no more|no less).*");
    if (!bounded && last.matches()) {
      return range(last.group(1), last.group(2), last.group(3));
    }
    Matcher first = VALUE_FIRST.matcher(figure);
    return !bounded && first.matches()
        ? range(first.group(3), first.group(1), first.group(2))
        : figure;
  }

  private static String range(String name, String number, String unit) {
    String value = unit == null ? number : number + " " + unit;
    return name.strip() + " " + value + " to " + value;
  }

  /**
   * The figure.
   *
   * @return which
   */
  public Figure figure() {
    return limit.figure();
  }

  /**
   * For what it is stated.
   *
   * @return the basis
   */
  public Basis basis() {
    return limit.basis();
  }

  /**
   * The least value that keeps the wish.
   *
   * @return the bound, negative infinity for none
   */
  public double least() {
    return limit.atLeast().orElse(Double.NEGATIVE_INFINITY);
  }

  /**
   * The greatest value that keeps the wish.
   *
   * @return the bound, infinity for none
   */
  public double most() {
    return limit.atMost().orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * Whether one value is wished.
   *
   * @return false for at least, at most and a range
   */
  public boolean isValue() {
    return least() == most();
  }

  /**
   * The figure of a worksheet.
   *
   * @param sheet the worksheet
   * @return the quantity, possibly known in part
   */
  public Quantity of(Worksheet sheet) {
    return sheet.figure(figure(), basis());
  }

  /**
   * Whether a worksheet keeps the wish, whatever is unknown turns out to be.
   *
   * @param sheet the worksheet
   * @return false also when that depends on something unknown
   */
  public boolean isMet(Worksheet sheet) {
    Quantity figure = of(sheet);
    double slack = TOLERANCE * Math.max(1, Math.abs(Double.isFinite(most()) ? most() : least()));
    return figure.low() >= least() - slack && figure.high() <= most() + slack;
  }

  /**
   * The wish in words.
   *
   * @param units how masses of the bench are shown
   * @return such as {@code liquid ratio 0.8} or {@code at most 3 g net carbohydrate a piece}
   */
  public String inWords(ShownUnits units) {
    return TWICE.matcher(limit.inWords(units)).replaceFirst("$1");
  }
}
