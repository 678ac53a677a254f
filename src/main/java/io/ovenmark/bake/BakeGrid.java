package io.ovenmark.bake;

import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a grid of oven settings, {@code 190, 200 °C × 14, 16, 18 min}: one piece for each
 * temperature with each time, in letters from a, all times of the first temperature first. The two
 * lists may stand in either order, with ×, x, *, "for" or "at" between them and commas, spaces,
 * "and" or "or" between their values. A number without a unit has the unit of the next value that
 * states one, else of the last one before it.
 */
public final class BakeGrid {
  private static final String EXAMPLE = "Write it as in: 190,200 C x 14,16,18 min";
  private static final Pattern BETWEEN =
      Pattern.compile(
          "\\s*[×*]\\s*|\\s+(?:[xX]|by|for|at)\\s+|(?<=[CcFf°º'\\dns])\\s?[xX]\\s?(?=\\d)");
  private static final Pattern COMMA =
      Pattern.compile(
          "\\s*[,;&]\\s*|\\s+(?:and|or)\\s+|(?<=\\d)\\s+(?=\\d)"
              + "|(?<=[CcFfnsm])\\s+(?=\\d+\\s*(?:°|º|[CcFf]\\b|min))");
  private static final Pattern RANGE =
      Pattern.compile("(\\d[^,×*]{0,3}?)\\s*(?:[-–—−…]|\\.{2,}|\\bto\\b)\\s*(\\d[\\d.]*)");
  private static final Pattern TIME =
      Pattern.compile("(?i).*\\d\\s*(?:min\\w*|m|h|hrs?|hours?|'|′)");

  private BakeGrid() {}

  /**
   * Reads a grid whose values state their units.
   *
   * @param text temperatures and times
   * @return the pieces
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static List<Piece> read(String text) {
    return read(text, Optional.empty());
  }

  /**
   * Reads a grid beside which units stand: a list without any unit has degrees of that scale, or
   * minutes.
   *
   * @param text temperatures and times
   * @param units the units beside the field
   * @return the pieces
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static List<Piece> read(String text, TypedUnits units) {
    return read(text, Optional.of(units));
  }

  private static List<Piece> read(String text, Optional<TypedUnits> units) {
    String tidy = text.replaceAll("[\\s\\u00a0\\u2009\\u202f]+", " ").strip();
    refuseRange(tidy);
    String[] sides = BETWEEN.split(tidy, -1);
    if (sides.length == 1 && !tidy.isEmpty()) {
      boolean time = TIME.matcher(tidy).matches();
      throw PieceWord.bad(
          "The grid " + Quoting.quote(text) + " names no " + (time ? "temperature" : "time")
              + ", or no x between the two.",
          EXAMPLE);
    }
    if (sides.length != 2) {
      throw PieceWord.bad("The grid " + Quoting.quote(text) + " is not understood.", EXAMPLE);
    }
    boolean timesFirst =
        TIME.matcher(sides[0]).matches() && !TIME.matcher(sides[1]).matches();
    List<Temperature> temperatures =
        values(
            text,
            sides[timesFirst ? 1 : 0],
            units.map(TypedUnits::temperature).orElse(""),
            Temperature::parse);
    List<Double> times =
        values(
            text,
            sides[timesFirst ? 0 : 1],
            units.isPresent() ? "min" : "",
            PieceMeasure::minutes);
    return pieces(text, temperatures, times);
  }

  private static List<Piece> pieces(
      String text, List<Temperature> temperatures, List<Double> times) {
    if ((long) temperatures.size() * times.size() > PieceText.MOST_PIECES) {
      throw PieceWord.bad(
          "The grid " + Quoting.quote(text) + " has more than " + PieceText.MOST_PIECES
              + " pieces.",
          "Record it as several bakes.");
    }
    List<String> pieces = new ArrayList<>();
    for (Temperature temperature : temperatures) {
      for (double minutes : times) {
        pieces.add("oven='" + temperature + "' time=" + minutes + "min");
      }
    }
    return PieceText.read(List.of(), pieces);
  }

  private static void refuseRange(String text) {
    Matcher range = RANGE.matcher(text);
    if (range.find()) {
      throw PieceWord.bad(
          Quoting.quote(range.group()) + " does not say which values lie between.",
          "Write each of them, as in 190, 195, 200 C.");
    }
  }

  private static <T> List<T> values(
      String text, String list, String bare, Function<String, T> read) {
    String[] parts = COMMA.split(list.strip(), -1);
    List<T> values = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      String value = parts[i].strip();
      T one = read.apply(PieceMeasure.isNumber(value) ? value + unit(parts, i, bare) : value);
      if (values.contains(one)) {
        throw PieceWord.bad(
            "\"" + value + "\" stands twice in the grid " + Quoting.quote(text) + ".",
            "Keep one of them.");
      }
      values.add(one);
    }
    return values;
  }

  /** The unit of the next value that states one, else of the last before, else the bare one. */
  private static String unit(String[] parts, int at, String bare) {
    for (int i = at + 1; i < parts.length; i++) {
      if (!ownUnit(parts[i]).isEmpty()) {
        return ownUnit(parts[i]);
      }
    }
    for (int i = at - 1; i >= 0; i--) {
      if (!ownUnit(parts[i]).isEmpty()) {
        return ownUnit(parts[i]);
      }
    }
    return bare;
  }

  private static String ownUnit(String part) {
    String rest = part.replaceFirst("^\\s*[0-9.]*", "").strip();
    return rest.matches("[^0-9]*") ? rest : "min";
  }
}
