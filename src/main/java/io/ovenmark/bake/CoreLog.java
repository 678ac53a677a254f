package io.ovenmark.bake;

import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Core temperatures logged through a bake, as a person notes them: {@code 4 min 45 °C, 8 min 78 °C,
 * 12 min 96 °C}. Commas or semicolons stand between the points; every temperature names its scale.
 */
public final class CoreLog {
  /** The most points of one piece. */
  public static final int MOST_POINTS = 500;

  private static final String EXAMPLE = "Write it as in: 4 min 45 °C, 8 min 78 °C, 12 min 96 °C";
  private static final Pattern POINT =
      Pattern.compile(
          "([0-9]{1,4}(?:\\.[0-9]{1,6})?)\\s*(?:min(?:s|utes?)?|m|'|′)\\s*(?:at|:|=)?\\s*"
              + "([-−]?[0-9].*)");

  private CoreLog() {}

  /**
   * Reads a log.
   *
   * @param text the points; blank for none
   * @return the points in the order of time
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static List<CorePoint> read(String text) {
    List<CorePoint> points = new ArrayList<>();
    for (String part : text.replaceAll("[\\s\u00a0\u202f]+", " ").split("[,;]")) {
      if (!part.isBlank()) {
        points.add(point(part.strip()));
      }
    }
    checkOrder(points);
    return List.copyOf(points);
  }

  private static CorePoint point(String part) {
    Matcher matcher = POINT.matcher(part);
    if (!matcher.matches()) {
      throw PieceWord.bad(
          "The logged core temperature " + Quoting.quote(part) + " is not understood.", EXAMPLE);
    }
    String heat = matcher.group(2).strip();
    if (PieceMeasure.isNumber(heat)) {
      throw PieceWord.bad(
          "The logged core temperature " + Quoting.quote(part) + " names no scale.", EXAMPLE);
    }
    return new CorePoint(Double.parseDouble(matcher.group(1)), Temperature.parse(heat));
  }

  /**
   * Checks that time goes on from point to point.
   *
   * @param points the points
   * @throws IllegalArgumentException with a sentence and a remedy
   */
  static void checkOrder(List<CorePoint> points) {
    for (int i = 1; i < points.size(); i++) {
      if (!(points.get(i).minutes() > points.get(i - 1).minutes())) {
        throw PieceWord.bad(
            "The logged core temperatures go back in time, from "
                + minutes(points.get(i - 1)) + " to " + minutes(points.get(i)) + ".",
            "Write the points in the order of time, each time once.");
      }
    }
    if (points.size() > MOST_POINTS) {
      throw PieceWord.bad(
          "The core is logged at " + points.size() + " points, more than " + MOST_POINTS + ".",
          "Keep one for every minute or so.");
    }
  }

  /**
   * Writes a log as it is read.
   *
   * @param points the points
   * @return the text; empty for none
   */
  public static String text(List<CorePoint> points) {
    return points.stream()
        .map(point -> minutes(point) + " " + point.temperature())
        .collect(Collectors.joining(", "));
  }

  private static String minutes(CorePoint point) {
    return TypedMeasure.text(OptionalDouble.of(point.minutes())) + " min";
  }
}
