package io.ovenmark.window;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Draws the map from what was fitted. Given a setting, limits are taken as independent of each
 * other; pieces that keep one limit mostly keep the others too, so the joint chance is rather too
 * low than too high.
 */
final class MapMaker {
  private static final int ROWS = 49;
  private static final int COLUMNS = 49;
  private static final int MOST_TIMES = 12;
  private static final double ONE_IN_TEN = 1.2815515655446004;
  private static final double CERTAIN = 1e-6;

  private final List<Response> responses;
  private final Axes axes;
  private final OvenRange range;
  private final double[] celsius = new double[ROWS];
  private final double[] along = new double[COLUMNS];
  private WindowMap.Best best;
  private final Place[][] places = new Place[ROWS][COLUMNS];

  /** A place on the map, with each limit's chance and its steepness there. */
  record Place(double[] row, double[] chances, double[] steepness) {
    double joint() {
      double all = 1;
      for (double chance : chances) {
        all *= chance;
      }
      return all;
    }

    /** How the joint chance moves with a response's fitted value. */
    double slope(int response) {
      double others = steepness[response];
      for (int i = 0; i < chances.length; i++) {
        others *= i == response ? 1 : chances[i];
      }
      return others;
    }
  }

  MapMaker(List<Response> responses, Axes axes, OvenRange range) {
    this.responses = List.copyOf(responses);
    this.axes = axes;
    this.range = range;
    for (int i = 0; i < ROWS; i++) {
      celsius[i] =
          range.fromCelsius() + (range.toCelsius() - range.fromCelsius()) * i / (ROWS - 1);
    }
    for (int i = 0; i < COLUMNS; i++) {
      along[i] = range.from() * Math.pow(range.to() / range.from(), (double) i / (COLUMNS - 1));
    }
    for (int r = 0; r < ROWS; r++) {
      for (int c = 0; c < COLUMNS; c++) {
        places[r][c] = place(axes.row(celsius[r], along[c]));
      }
    }
  }

  Place place(double[] row) {
    double[] chances = new double[responses.size()];
    double[] steepness = new double[responses.size()];
    for (int i = 0; i < chances.length; i++) {
      chances[i] = responses.get(i).chance(row);
      steepness[i] = responses.get(i).steepness(row);
    }
    return new Place(row, chances, steepness);
  }

  WindowMap map() {
    double[][] joint = cells(Place::joint);
    List<WindowMap.Failing> failing = new ArrayList<>();
    for (Response response : responses) {
      for (Response.Failing way : response.failing()) {
        double[][] broken = cells(place -> way.chance().applyAsDouble(place.row()));
        List<WindowMap.Span> spans = spans(broken, WindowMap.POSSIBLE);
        failing.add(new WindowMap.Failing(response.limit(), way.words(), spans));
      }
    }
    List<Double> times = thinned(range.times());
    List<List<Double>> chances = new ArrayList<>();
    for (double heat : range.settings()) {
      chances.add(times.stream().map(time -> place(axes.row(heat, time)).joint()).toList());
    }
    return new WindowMap(
        range,
        range.settings(),
        times,
        chances,
        spans(joint, WindowMap.LIKELY),
        spans(joint, WindowMap.POSSIBLE),
        failing,
        best());
  }

  /** So many of the times that they can be read side by side. */
  private static List<Double> thinned(List<Double> times) {
    int step = (times.size() + MOST_TIMES - 1) / MOST_TIMES;
    List<Double> kept = new ArrayList<>();
    for (int i = 0; i < times.size(); i += Math.max(1, step)) {
      kept.add(times.get(i));
    }
    return kept;
  }

  /** All places. */
  List<Place> places() {
    List<Place> all = new ArrayList<>();
    for (Place[] row : places) {
      all.addAll(List.of(row));
    }
    return all;
  }

  private double[][] cells(ToDoubleFunction<Place> chance) {
    double[][] cells = new double[ROWS][COLUMNS];
    for (int r = 0; r < ROWS; r++) {
      for (int c = 0; c < COLUMNS; c++) {
        cells[r][c] = chance.applyAsDouble(places[r][c]);
      }
    }
    return cells;
  }

  /** For each row the stretch about its greatest chance in which the level is reached. */
  private List<WindowMap.Span> spans(double[][] cells, double level) {
    List<WindowMap.Span> spans = new ArrayList<>();
    for (int r = 0; r < ROWS; r++) {
      int peak = 0;
      for (int c = 1; c < COLUMNS; c++) {
        peak = cells[r][c] > cells[r][peak] ? c : peak;
      }
      if (cells[r][peak] >= level) {
        int first = peak;
        int last = peak;
        while (first > 0 && cells[r][first - 1] >= level) {
          first--;
        }
        while (last < COLUMNS - 1 && cells[r][last + 1] >= level) {
          last++;
        }
        spans.add(
            new WindowMap.Span(
                celsius[r],
                first == 0 ? along[0] : crossing(cells[r], first - 1, level),
                last == COLUMNS - 1 ? along[last] : crossing(cells[r], last, level)));
      }
    }
    return spans;
  }

  /** Where between a column and the next the level is crossed. */
  private double crossing(double[] row, int column, double level) {
    double share = (level - row[column]) / (row[column + 1] - row[column]);
    return along[column] * Math.pow(along[column + 1] / along[column], share);
  }

  WindowMap.Best best() {
    if (best == null) {
      best = found();
    }
    return best;
  }

  private WindowMap.Best found() {
    double most = -1;
    double heat = 0;
    double time = 0;
    for (double each : range.settings()) {
      for (double minutes : range.times()) {
        double chance = place(axes.row(each, minutes)).joint();
        if (chance > most) {
          most = chance;
          heat = each;
          time = minutes;
        }
      }
    }
    double[] row = axes.row(heat, time);
    double[] between = between(most, Math.sqrt(variance(place(row))));
    Optional<WindowLimit> weakest =
        responses.stream()
            .min(Comparator.comparingDouble(response -> response.chance(row)))
            .map(Response::limit);
    return new WindowMap.Best(
        heat, time, most, between[0], between[1],
        WindowMap.Sureness.of(between[0], between[1]), weakest);
  }

  /** The variance of the joint chance for what is not known of the coefficients (delta method). */
  double variance(Place place) {
    double sum = 0;
    for (int i = 0; i < responses.size(); i++) {
      double slope = place.slope(i);
      Response response = responses.get(i);
      sum += slope * slope * response.noiseVariance() * response.posterior().variance(place.row());
    }
    return sum;
  }

  /** What a chance lies between, four times in five, worked out on the scale of log odds. */
  static double[] between(double chance, double deviation) {
    double inside = Math.min(1 - CERTAIN, Math.max(CERTAIN, chance));
    double odds = Math.log(inside / (1 - inside));
    double spread = ONE_IN_TEN * deviation / (inside * (1 - inside));
    return new double[] {OddsFit.logistic(odds - spread), OddsFit.logistic(odds + spread)};
  }
}
