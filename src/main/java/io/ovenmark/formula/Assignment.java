package io.ovenmark.formula;

import static io.ovenmark.formula.EditMessages.quoted;
import static io.ovenmark.formula.EditMessages.refuse;

import io.ovenmark.measure.Amount;
import io.ovenmark.measure.MeasureUnit;
import io.ovenmark.measure.Slug;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One assignment, cut into its parts, and the reading of its value.
 *
 * @param path what stands before the sign, stripped
 * @param sign 0 for {@code =}, 1 for {@code +=}, -1 for {@code -=}
 * @param value what stands after the sign, stripped
 */
record Assignment(String path, int sign, String value) {
  private static final Pattern PERCENT = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,9})?) ?%");
  private static final Pattern NUMBER =
      Pattern.compile("([-−]?)(\\d{1,9}(?:\\.\\d{1,9})?) ?([a-z%]*)");
  private static final int DECIMALS = 6;

  static Assignment parse(String text) {
    int equals = text.indexOf('=');
    if (equals < 1) {
      throw refuse(
          quoted(text) + " is not an assignment.",
          "Write a field, an equals sign and a value, such as \"water=188 g\".");
    }
    char last = text.charAt(equals - 1);
    int sign = last == '+' ? 1 : last == '-' || last == '−' ? -1 : 0;
    String path = text.substring(0, sign == 0 ? equals : equals - 1).strip();
    return new Assignment(path, sign, text.substring(equals + 1).strip());
  }

  /** The value of a field that can only be set, not raised or lowered. */
  String set() {
    if (sign != 0) {
      throw refuse(
          "The field " + quoted(path) + " holds no amount to raise or lower.",
          "Write it with a plain equals sign.");
    }
    return value;
  }

  Optional<String> text() {
    return Optional.of(set()).filter(text -> !text.isEmpty());
  }

  Optional<String> slug() {
    return text().map(Assignment::slug);
  }

  static String slug(String text) {
    if (!Slug.isSlug(text)) {
      throw refuse(
          quoted(text) + " cannot be a short name.",
          "Use lower-case letters a-z, digits and single hyphens, such as \"lupin-flour\".");
    }
    return text;
  }

  boolean flag() {
    return switch (set().toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default ->
          throw refuse(
              "The field " + quoted(path) + " is yes or no, not " + quoted(value) + ".",
              "Write yes or no.");
    };
  }

  /** An amount within the limits of a formula's file. */
  static Amount amount(String text) {
    Amount amount = Amount.parse(text);
    if (amount.grams().filter(g -> g.compareTo(FormulaCodec.GREATEST_GRAMS) > 0).isPresent()) {
      throw refuse(
          "The amount " + quoted(text) + " is more than a tonne.",
          "Check the number and the unit.");
    }
    return amount;
  }

  /** The amount to write: the value, or the current amount raised or lowered by it. */
  Amount amount(Amount current) {
    if (value.isEmpty()) {
      throw refuse(
          "The line of " + quoted(path) + " needs an amount.",
          "Write one such as \"180 g\", or remove the line.");
    }
    if (sign == 0) {
      return amount(value);
    }
    BigDecimal next = current.number().add(step(current).multiply(BigDecimal.valueOf(sign)));
    if (next.signum() < 0) {
      throw refuse(
          "Taking " + quoted(value) + " from " + current + " leaves less than nothing.",
          "Take " + current + " at most, or remove the line.");
    }
    BigDecimal rounded = next.setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    return amount(rounded.toPlainString() + " " + current.measure());
  }

  private BigDecimal step(Amount current) {
    Matcher percent = PERCENT.matcher(value);
    if (percent.matches()) {
      return current.number().multiply(new BigDecimal(percent.group(1)).movePointLeft(2));
    }
    Amount step = amount(value);
    if (step.measure().equals(current.measure())) {
      return step.number();
    }
    Optional<MeasureUnit> from = step.unit();
    Optional<MeasureUnit> to = current.unit();
    if (from.isPresent() && to.isPresent() && from.get().kind() == to.get().kind()) {
      BigDecimal base = step.number().multiply(BigDecimal.valueOf(from.get().base()));
      return base.divide(
          BigDecimal.valueOf(to.get().base()), DECIMALS + 2, RoundingMode.HALF_UP);
    }
    throw refuse(
        "The line of " + quoted(path) + " is written " + current + ", which " + quoted(value)
            + " does not fit.",
        "Use \"" + current.measure() + "\" or a percentage such as \"10 %\".");
  }

  /** A number within limits; empty text clears the field. */
  OptionalDouble number(
      OptionalDouble current, String unit, double least, double most, boolean whole) {
    if (sign == 0 && value.isEmpty()) {
      return OptionalDouble.empty();
    }
    Matcher matcher = NUMBER.matcher(value.toLowerCase(Locale.ROOT));
    if (!matcher.matches() || !(matcher.group(3).isEmpty() || fits(matcher.group(3), unit))) {
      throw refuse(
          "The value " + quoted(value) + " of " + quoted(path) + " is not understood.",
          "Write a number" + (unit.isEmpty() ? "" : ", with or without \"" + unit + "\"")
              + ", decimals with a point.");
    }
    BigDecimal next = new BigDecimal(matcher.group(2));
    if (!matcher.group(1).isEmpty()) {
      next = next.negate();
    }
    if (sign != 0) {
      if (current.isEmpty()) {
        throw refuse(
            "The field " + quoted(path) + " is not stated, so it cannot be raised or lowered.",
            "Set it with a plain equals sign.");
      }
      next =
          new BigDecimal(Double.toString(current.getAsDouble()))
              .add(next.multiply(BigDecimal.valueOf(sign)));
    }
    double result = next.doubleValue() + 0.0;
    if (!(result >= least && result <= most) || whole && result != Math.rint(result)) {
      throw refuse(
          "The field " + quoted(path) + " cannot be " + next.stripTrailingZeros().toPlainString()
              + ".",
          "Use a " + (whole ? "whole " : "") + "number from " + plain(least) + " to " + plain(most)
              + ".");
    }
    return OptionalDouble.of(result);
  }

  private static boolean fits(String written, String unit) {
    return !unit.isEmpty() && (written.equals(unit) || written.equals(unit + "s")
        || unit.equals("min") && written.matches("minutes?"));
  }

  private static String plain(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }
}
