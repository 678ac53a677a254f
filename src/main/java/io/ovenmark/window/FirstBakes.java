package io.ovenmark.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The pieces to bake while there is no map yet: they bring in another heat and another time. */
final class FirstBakes {
  private static final double FURTHER_CELSIUS = 15;
  private static final double FURTHER_TIME = 1.2;
  private static final double SAME_TIME = 1.05;
  private static final int MOST = 3;

  private FirstBakes() {}

  /** The corners about the middle of what was baked that have no piece yet. */
  static List<NextBake> beside(List<Axes.Point> points, boolean fahrenheit) {
    if (points.isEmpty()) {
      return List.of();
    }
    Axes axes = Axes.about(points);
    double middle = Math.exp(axes.centreLog());
    double further = fahrenheit ? 25 / 1.8 : FURTHER_CELSIUS;
    double heat = points.get(points.size() - 1).ovenCelsius();
    double[][] corners = {
      {heat - further, middle * FURTHER_TIME},
      {heat, middle / FURTHER_TIME},
      {heat - further, middle},
      {heat, middle * FURTHER_TIME},
      {heat + further, middle / FURTHER_TIME}
    };
    List<NextBake> found = new ArrayList<>();
    for (double[] corner : corners) {
      double minutes = Math.max(1, Math.rint(corner[1]));
      boolean baked =
          points.stream()
              .anyMatch(
                  point ->
                      Math.abs(point.ovenCelsius() - corner[0]) < 1
                          && Math.abs(Math.log(point.along() / minutes)) < Math.log(SAME_TIME));
      if (!baked && found.size() < MOST) {
        found.add(new NextBake(corner[0], minutes, Optional.empty()));
      }
    }
    return found;
  }
}
