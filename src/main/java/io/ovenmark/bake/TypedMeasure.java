package io.ovenmark.bake;

import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.Temperature;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Reads one measure as it is typed into its own field, where a number may stand without its unit,
 * and writes measures back in the same units. Ounces are avoirdupois, 28.349523125 g exactly (NIST
 * SP 811, Appendix B.8). A comma counts as the point of a decimal when one or two digits follow it,
 * for that is what the keys of many phones give; {@code 1,234} is refused.
 */
final class TypedMeasure {
  private static final BigDecimal GRAMS_PER_OUNCE = new BigDecimal("28.349523125");
  private static final Pattern BARE = Pattern.compile("[-−+]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)");
  private static final Pattern DECIMAL_COMMA =
      Pattern.compile("(?<![\\d,.])(\\d+),(\\d{1,2})(?!\\d)");
  private static final Pattern CLOCK = Pattern.compile("\\d+:\\d{2}.*");
  private static final MathContext SHOWN = new MathContext(5);

  private TypedMeasure() {}

  static Optional<Temperature> temperature(String text, TypedUnits units) {
    return stated(text)
        .map(each -> withUnit(each, units.temperature()))
        .map(each -> Temperature.parse(each.replaceFirst("^\\+", "")));
  }

  static OptionalDouble minutes(String text) {
    Optional<String> stated = stated(text);
    if (stated.filter(each -> CLOCK.matcher(each).matches()).isPresent()) {
      throw PieceWord.bad(
          "The time " + Quoting.quote(text) + " may mean hours or minutes.",
          "Write it as in 24 or 1 h 10 min.");
    }
    return number(stated, each -> PieceMeasure.minutes(withUnit(each, "min")));
  }

  static OptionalDouble grams(String text, TypedUnits units) {
    return number(stated(text), each -> mass(withUnit(each, units.mass())));
  }

  private static double mass(String text) {
    try {
      return PieceMeasure.grams(text);
    } catch (IllegalArgumentException e) {
      String sentence = String.valueOf(e.getMessage()).split("\n", 2)[0];
      throw PieceWord.bad(
          sentence.replace("The amount", "The mass"), "Write it as in 95 or 3.4 oz.");
    }
  }

  static OptionalDouble millimetres(String text) {
    return number(stated(text), each -> PieceMeasure.millimetres(withUnit(each, "mm")));
  }

  static OptionalDouble plain(String text) {
    return number(stated(text), PieceMeasure::number);
  }

  private interface Reader {
    double read(String text);
  }

  private static OptionalDouble number(Optional<String> text, Reader reader) {
    return text.isPresent() ? OptionalDouble.of(reader.read(text.get())) : OptionalDouble.empty();
  }

  private static Optional<String> stated(String text) {
    String tidy = text.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
    return Optional.of(DECIMAL_COMMA.matcher(tidy).replaceAll("$1.$2")).filter(s -> !s.isEmpty());
  }

  private static String withUnit(String text, String unit) {
    return BARE.matcher(text).matches() ? text.replaceFirst("\\.$", "") + " " + unit : text;
  }

  /** Grams as a number of the form's unit, in five figures. */
  static String mass(OptionalDouble grams, TypedUnits units) {
    return text(grams, units.mass().equals("oz") ? GRAMS_PER_OUNCE : BigDecimal.ONE);
  }

  static String text(OptionalDouble value) {
    return text(value, BigDecimal.ONE);
  }

  private static String text(OptionalDouble value, BigDecimal unit) {
    if (value.isEmpty()) {
      return "";
    }
    BigDecimal exact = new BigDecimal(Double.toString(value.getAsDouble()));
    BigDecimal shown = unit.equals(BigDecimal.ONE) ? exact : exact.divide(unit, SHOWN);
    return shown.stripTrailingZeros().toPlainString();
  }

  /** A temperature as it was noted, without its scale where that is the form's. */
  static String temperature(Optional<Temperature> temperature, TypedUnits units) {
    String scale = " °" + units.temperature();
    return temperature
        .map(Temperature::toString)
        .map(text -> text.endsWith(scale) ? text.replace(scale, "") : text)
        .orElse("");
  }
}
