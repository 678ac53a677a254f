package io.ovenmark.bake;

import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quoting;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the measures of a piece. An inch is 25.4 mm exactly (NIST SP 811, Appendix B). */
final class PieceMeasure {
  private static final BigDecimal MILLIMETRES_PER_INCH = new BigDecimal("25.4");
  private static final int MINUTES_PER_HOUR = 60;
  private static final Pattern TEMPERATURE =
      Pattern.compile("[-−]?\\d+(?:\\.\\d+)?\\s*(?:°|º|deg)?\\s*[CcFf]");
  private static final Pattern MINUTES =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*(?:min|mins|minutes?|m|'|′)");
  private static final Pattern HOURS =
      Pattern.compile(
          "(\\d{1,6}(?:\\.\\d{1,6})?)\\s*(?:h|hrs?|hours?)"
              + "(?:\\s*(\\d{1,6})\\s*(?:min|mins|minutes?|m)?)?");
  private static final Pattern LENGTH =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*(mm|cm|in|\")");
  private static final Pattern NUMBER = Pattern.compile("[-−+]?\\d{1,9}(?:\\.\\d{1,9})?");

  private PieceMeasure() {}

  /** Which field a bare word states by its unit; empty when it states none. */
  static Optional<String> bareField(String word) {
    if (TEMPERATURE.matcher(word).matches()) {
      return Optional.of("oven");
    }
    if (readMinutes(word).isPresent()) {
      return Optional.of("time");
    }
    return isNumber(word) ? Optional.of("") : Optional.empty();
  }

  static boolean isNumber(String word) {
    return NUMBER.matcher(word).matches();
  }

  static double minutes(String value) {
    OptionalDouble minutes = readMinutes(value);
    if (minutes.isEmpty()) {
      throw PieceWord.bad(
          "The time " + Quoting.quote(value) + " is not understood.",
          "Write it as in 24min or 1h10min.");
    }
    return minutes.getAsDouble();
  }

  private static OptionalDouble readMinutes(String text) {
    Matcher matcher = MINUTES.matcher(text);
    if (matcher.matches()) {
      return OptionalDouble.of(Double.parseDouble(matcher.group(1)));
    }
    matcher = HOURS.matcher(text);
    if (matcher.matches()) {
      double rest = matcher.group(2) == null ? 0 : Double.parseDouble(matcher.group(2));
      return OptionalDouble.of(Double.parseDouble(matcher.group(1)) * MINUTES_PER_HOUR + rest);
    }
    return OptionalDouble.empty();
  }

  static double grams(String value) {
    return Amount.parse(value)
        .grams()
        .map(BigDecimal::doubleValue)
        .orElseThrow(
            () ->
                PieceWord.bad(
                    Quoting.quote(value) + " is not a mass.", "Write it as in 95g or 3.4oz."));
  }

  static double millimetres(String value) {
    Matcher matcher = LENGTH.matcher(value.toLowerCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw PieceWord.bad(
          "The length " + Quoting.quote(value) + " is not understood.",
          "Write it as in 88mm, 8.8cm or 3.5in.");
    }
    BigDecimal number = new BigDecimal(matcher.group(1));
    return switch (matcher.group(2)) {
      case "mm" -> number.doubleValue();
      case "cm" -> number.movePointRight(1).doubleValue();
      default -> number.multiply(MILLIMETRES_PER_INCH).doubleValue();
    };
  }

  static double number(String value) {
    if (!isNumber(value)) {
      throw PieceWord.bad(
          Quoting.quote(value) + " is not a number.",
          "Write digits with a point for decimals, and commas between several, as in 7,8.5,6.");
    }
    return Double.parseDouble(value.replace('−', '-'));
  }
}
