package io.ovenmark.window;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.measure.Temperature;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a piece must be: {@code core at least 71 °C}, {@code crust 2 to 3}, {@code no gummy crumb},
 * {@code with even crumb}, {@code cooking value at least 6 min}.
 */
public sealed interface WindowLimit {
  /** Whether a piece keeps it; empty when that is unknown. */
  Optional<Boolean> isKept(BakedPiece piece);

  /**
   * The limit in words, as it is read.
   *
   * @return such as {@code crust 2 to 3}
   */
  String text();

  /**
   * The limit in words in the units of a reader.
   *
   * @param units the units
   * @return such as {@code core at least 160 °F}
   */
  default String text(ShownUnits units) {
    return text();
  }

  /**
   * A measure within bounds.
   *
   * @param measure what is measured
   * @param low at least so much; in °C, shades or minutes
   * @param high at most so much
   */
  record Measured(Measure measure, OptionalDouble low, OptionalDouble high)
      implements WindowLimit {
    /** Checks. */
    public Measured {
      if (low.isEmpty() && high.isEmpty()) {
        throw new IllegalArgumentException(
            "The limit on the " + measure.word() + " has no bound.\n" + EXAMPLE);
      }
      if (low.isPresent() && high.isPresent() && low.getAsDouble() >= high.getAsDouble()) {
        throw new IllegalArgumentException(
            "The limit on the " + measure.word() + " leaves nothing between its bounds.\n"
                + EXAMPLE);
      }
    }

    @Override
    public Optional<Boolean> isKept(BakedPiece piece) {
      OptionalDouble value = measure.of(piece);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      double it = value.getAsDouble();
      return Optional.of(
          it >= low.orElse(Double.NEGATIVE_INFINITY)
              && it <= high.orElse(Double.POSITIVE_INFINITY));
    }

    @Override
    public String text() {
      return text(ShownUnits.AS_WRITTEN);
    }

    @Override
    public String text(ShownUnits units) {
      String unit =
          switch (measure) {
            case CORE -> " " + units.degreeUnit();
            case CRUST -> "";
            case COOKING_VALUE -> " min";
          };
      if (low.isPresent() && high.isPresent()) {
        return measure.word() + " " + number(low.getAsDouble(), units) + " to "
            + number(high.getAsDouble(), units) + unit;
      }
      return low.isPresent()
          ? measure.word() + " at least " + number(low.getAsDouble(), units) + unit
          : measure.word() + " at most " + number(high.getAsDouble(), units) + unit;
    }

    private String number(double value, ShownUnits units) {
      return FigureText.number(measure == Measure.CORE ? units.inDegrees(value) : value);
    }
  }

  /**
   * A finding that must be absent, or present.
   *
   * @param word the finding
   * @param present whether it must be there
   */
  record Finding(String word, boolean present) implements WindowLimit {
    @Override
    public Optional<Boolean> isKept(BakedPiece piece) {
      return piece.lookedAt() || piece.findings().contains(word)
          ? Optional.of(piece.findings().contains(word) == present)
          : Optional.empty();
    }

    @Override
    public String text() {
      return (present ? "with " : QUALITIES.contains(word) ? "not " : "no ") + word;
    }
  }

  /** Findings that say how a piece is, not what it has. */
  Set<String> QUALITIES =
      Set.of(
          "dense", "flat", "spread", "pale", "dry", "crumbly", "tough", "eggy", "bitter", "gritty",
          "hollow", "crisp", "tender");

  /** How limits are written. */
  String EXAMPLE =
      "Write it as in: core at least 71 °C; crust 2 to 3; no gummy crumb; with even crumb.";

  /**
   * Reads a limit.
   *
   * @param text the words
   * @return the limit
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  static WindowLimit read(String text) {
    String tidy = text.replaceAll("[\\s\u00a0\u202f]+", " ").strip();
    Matcher finding =
        Pattern.compile("(?i)(no|not|without|with) (.{1,60})").matcher(tidy);
    if (finding.matches()) {
      boolean present = finding.group(1).equalsIgnoreCase("with");
      String word = finding.group(2).strip();
      return new Finding(
          FindingVocabulary.of(word).map(FindingVocabulary::word).orElse(word), present);
    }
    for (Measure measure : Measure.values()) {
      if (tidy.toLowerCase(Locale.ROOT).startsWith(measure.word() + " ")) {
        return measured(text, measure, tidy.substring(measure.word().length()).strip());
      }
    }
    throw new IllegalArgumentException(
        "The limit " + Quoting.quote(text) + " is not understood.\n" + EXAMPLE);
  }

  private static Measured measured(String text, Measure measure, String rest) {
    String bound = "([0-9]{1,4}(?:[.,][0-9]{1,3})?)";
    String unit = " ?(°[CF]|º[CF]|[CFcf]|°[cf]|min|minutes|of 4)?";
    Matcher one =
        Pattern.compile("(?i)(at least|at most|from|up to|≥|≤|>=|<=) ?" + bound + unit)
            .matcher(rest);
    if (one.matches()) {
      OptionalDouble value = OptionalDouble.of(value(text, measure, one.group(2), one.group(3)));
      boolean least = one.group(1).toLowerCase(Locale.ROOT).matches("at least|from|≥|>=");
      return least
          ? new Measured(measure, value, OptionalDouble.empty())
          : new Measured(measure, OptionalDouble.empty(), value);
    }
    Matcher two =
        Pattern.compile("(?i)" + bound + unit + " ?(?:to|-|–|and) ?" + bound + unit).matcher(rest);
    if (two.matches()) {
      String first = two.group(2) == null ? two.group(4) : two.group(2);
      return new Measured(
          measure,
          OptionalDouble.of(value(text, measure, two.group(1), first)),
          OptionalDouble.of(value(text, measure, two.group(3), two.group(4))));
    }
    throw new IllegalArgumentException(
        "The limit " + Quoting.quote(text) + " is not understood.\n" + EXAMPLE);
  }

  private static double value(String text, Measure measure, String number, String unit) {
    String plain = number.replace(',', '.');
    boolean heat = unit != null && unit.toUpperCase(Locale.ROOT).matches("[°º]?[CF]");
    boolean minutes = unit != null && unit.toLowerCase(Locale.ROOT).startsWith("min");
    boolean fits =
        switch (measure) {
          case CORE -> heat;
          case CRUST -> !heat && !minutes;
          case COOKING_VALUE -> !heat && (unit == null || minutes);
        };
    if (!fits) {
      throw new IllegalArgumentException(
          "The limit " + Quoting.quote(text) + " has "
              + (measure == Measure.CORE ? "no scale of temperature" : "another unit") + ".\n"
              + EXAMPLE);
    }
    if (measure == Measure.CRUST && Double.parseDouble(plain) > 4) {
      throw new IllegalArgumentException(
          "The limit " + Quoting.quote(text) + " is off the scale.\nThe crust goes from 0 to 4.");
    }
    return measure == Measure.CORE
        ? Temperature.parse(plain + unit).celsius()
        : Double.parseDouble(plain);
  }
}
