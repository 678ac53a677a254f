package io.ovenmark.window;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Why there is no map yet.
 *
 * @param what {@code pieces}, {@code temperature}, {@code time}, {@code together}, {@code dose} or
 *     {@code limit}
 * @param sentence what is missing
 * @param remedy what to do
 */
public record Missing(String what, String sentence, String remedy) {
  /** So few pieces leave no room for a scatter about three coefficients. */
  static final int LEAST_PIECES = 4;

  private static final double SAME_CELSIUS = 1;
  private static final double SAME_TIME = 1.02;

  /** What the pieces lack for a map. */
  static List<Missing> in(
      List<Axes.Point> points, int pieces, List<WindowLimit> limits, Axis axis) {
    List<Missing> missing = new ArrayList<>();
    if (points.size() < LEAST_PIECES) {
      missing.add(few(points.size(), pieces, axis));
    }
    if (limits.isEmpty()) {
      missing.add(
          new Missing(
              "limit",
              "No limit is stated, and the pieces propose none.",
              "State one, such as: core at least 71 °C; crust 2 to 3; no gummy crumb."));
    }
    if (points.size() >= 2) {
      variation(points, axis, missing);
    }
    for (WindowLimit limit : limits) {
      long known = points.stream().filter(p -> limit.isKept(p.piece()).isPresent()).count();
      if (known < Math.min(LEAST_PIECES, points.size()) || (known == 0 && !points.isEmpty())) {
        missing.add(unknown(limit, known, points));
      }
    }
    return missing;
  }

  private static Missing few(int points, int pieces, Axis axis) {
    String what =
        axis == Axis.MINUTES ? "oven temperature and time" : "a logged core and oven temperature";
    String some = points == 1 ? "1 piece has " : points + " pieces have ";
    return new Missing(
        axis == Axis.MINUTES ? "pieces" : "dose",
        (points == 0 ? "No piece has " : some) + what
            + (pieces > points ? ", of " + pieces + " baked" : "")
            + "; a map needs at least " + LEAST_PIECES + ".",
        axis == Axis.MINUTES
            ? "Bake some more, at two heats and two times, or take in pieces of other doughs."
            : "Log the core of some pieces, such as: 4 min 45 °C, 8 min 78 °C, 12 min 96 °C.");
  }

  private static void variation(List<Axes.Point> points, Axis axis, List<Missing> missing) {
    double coolest = points.stream().mapToDouble(Axes.Point::ovenCelsius).min().orElseThrow();
    double hottest = points.stream().mapToDouble(Axes.Point::ovenCelsius).max().orElseThrow();
    double shortest = points.stream().mapToDouble(Axes.Point::along).min().orElseThrow();
    double longest = points.stream().mapToDouble(Axes.Point::along).max().orElseThrow();
    boolean oneHeat = hottest - coolest < SAME_CELSIUS;
    boolean oneTime = longest / shortest < SAME_TIME;
    if (oneHeat) {
      missing.add(
          new Missing(
              "temperature",
              "All pieces were baked at one oven temperature.",
              "Bake some 10 to 15 °C (20 to 30 °F) hotter or cooler."));
    }
    if (oneTime) {
      missing.add(
          new Missing(
              "time",
              axis == Axis.MINUTES
                  ? "All pieces were baked for one time."
                  : "All cores had one thermal dose.",
              "Bake some a fifth longer and some a fifth shorter."));
    }
    if (!oneHeat && !oneTime && points.size() >= 3 && isOnALine(points)) {
      missing.add(
          new Missing(
              "together",
              "Heat and time always changed together, so nothing tells which of the two did what.",
              "Bake one hot and long, or cool and short."));
    }
  }

  /** Whether all points lie on one line of the map. */
  private static boolean isOnALine(List<Axes.Point> points) {
    Axes axes = Axes.about(points);
    double squares = 0;
    double others = 0;
    double both = 0;
    for (Axes.Point point : points) {
      double[] row = axes.row(point);
      squares += row[1] * row[1];
      others += row[2] * row[2];
      both += row[1] * row[2];
    }
    return both * both > 0.999 * squares * others;
  }

  private static Missing unknown(WindowLimit limit, long known, List<Axes.Point> points) {
    String of = known == 0 ? "no piece" : known == 1 ? "1 piece" : known + " pieces";
    String pieces =
        points.stream()
            .filter(point -> limit.isKept(point.piece()).isEmpty())
            .limit(6)
            .map(point -> point.piece().piece() + " of " + point.piece().bake())
            .collect(Collectors.joining(", "));
    if (limit instanceof WindowLimit.Measured measured) {
      String word =
          measured.measure() == Measure.CRUST
              ? "shade of the crust"
              : measured.measure().word();
      return new Missing(
          "limit",
          "“" + limit.text() + "” cannot be judged: the " + word + " is known of " + of + ".",
          measured.measure() == Measure.COOKING_VALUE
              ? "Log cores through a bake, or leave the limit out."
              : "Add it to " + pieces + ", or leave the limit out.");
    }
    return new Missing(
        "limit",
        "“" + limit.text() + "” cannot be judged: what was seen is noted of " + of + ".",
        "Note findings, a liking or a verdict of " + pieces + ", or leave the limit out.");
  }
}
