package io.ovenmark.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pieces worth baking: those expected to take away most of the variance of the joint chance,
 * summed over the map. That sum weighs cells by how steeply the chance moves there, which is at the
 * edge of the window. For a response with covariance V, an observation at x of weight w takes
 * (cᵀVx)²w/(1 + w xᵀVx) from the variance at a cell c; summed over cells it is xᵀV A V x with one 3
 * × 3 matrix A = Σ s²ccᵀ for all candidates, so no candidate walks the map. After a piece is chosen
 * the covariances are those with it baked, so that the next one lies elsewhere. Only settings that
 * may come out well are candidates: at the corners of a map a piece would tell most about a
 * straight line, but nobody needs to bake one raw or black to learn where the edge is.
 */
final class NextBakes {
  private static final int MOST = 3;
  private static final double LEAST_SHARE = 0.02;
  private static final double OF_THE_BEST = 0.4;

  private final MapMaker maker;
  private final List<Response> responses;
  private final Axes axes;
  private final OvenRange range;

  NextBakes(MapMaker maker, List<Response> responses, Axes axes, OvenRange range) {
    this.maker = maker;
    this.responses = responses;
    this.axes = axes;
    this.range = range;
  }

  List<NextBake> find() {
    List<double[][]> weights = new ArrayList<>();
    List<Posterior> posteriors = new ArrayList<>();
    double all = 0;
    List<MapMaker.Place> places = maker.places();
    for (int i = 0; i < responses.size(); i++) {
      weights.add(weights(i, places));
      posteriors.add(responses.get(i).posterior());
    }
    for (MapMaker.Place place : places) {
      all += maker.variance(place);
    }
    List<NextBake> chosen = new ArrayList<>();
    while (chosen.size() < MOST && all > 0) {
      Optional<NextBake> next = best(weights, posteriors, all, chosen);
      if (next.isEmpty() || share(next.get()) < (chosen.size() < 2 ? 1e-9 : LEAST_SHARE)) {
        break;
      }
      chosen.add(next.get());
      double[] row = axes.row(next.get().celsius(), next.get().minutes());
      for (int i = 0; i < responses.size(); i++) {
        posteriors.set(i, posteriors.get(i).after(row, responses.get(i).weight(row)));
      }
    }
    return chosen;
  }

  /** Σ s²ccᵀ over the cells of the map. */
  private static double[][] weights(int response, List<MapMaker.Place> places) {
    double[][] sum = new double[Axes.COEFFICIENTS][Axes.COEFFICIENTS];
    for (MapMaker.Place place : places) {
      double[] row = place.row();
      double slope = place.slope(response);
      for (int i = 0; i < row.length; i++) {
        for (int j = 0; j < row.length; j++) {
          sum[i][j] += slope * slope * row[i] * row[j];
        }
      }
    }
    return sum;
  }

  private Optional<NextBake> best(
      List<double[][]> weights, List<Posterior> posteriors, double all, List<NextBake> chosen) {
    double hopeless = OF_THE_BEST * maker.best().chance();
    double most = 0;
    NextBake found = null;
    for (double celsius : range.settings()) {
      for (double minutes : range.times()) {
        if (chosen.stream().anyMatch(each -> isNear(each, celsius, minutes))) {
          continue;
        }
        double[] row = axes.row(celsius, minutes);
        if (maker.place(row).joint() < hopeless) {
          continue;
        }
        double sum = 0;
        double greatest = -1;
        int settles = 0;
        for (int i = 0; i < responses.size(); i++) {
          double taken = taken(responses.get(i), posteriors.get(i), weights.get(i), row);
          sum += taken;
          if (taken > greatest) {
            greatest = taken;
            settles = i;
          }
        }
        if (sum > most) {
          most = sum;
          found = bake(celsius, minutes, responses.get(settles), row, sum / all);
        }
      }
    }
    return Optional.ofNullable(found);
  }

  private static double taken(
      Response response, Posterior posterior, double[][] weights, double[] row) {
    double[] along = posterior.times(row);
    double weight = response.weight(row);
    double sum = 0;
    for (int i = 0; i < along.length; i++) {
      sum += along[i] * Posterior.product(weights[i], along);
    }
    return response.noiseVariance() * sum * weight
        / (1 + weight * Posterior.product(row, along));
  }

  private static NextBake bake(
      double celsius, double minutes, Response response, double[] row, double share) {
    double chance = response.chance(row);
    double deviation =
        response.steepness(row)
            * Math.sqrt(response.noiseVariance() * response.posterior().variance(row));
    double[] between = MapMaker.between(chance, deviation);
    return new NextBake(
        celsius,
        minutes,
        Optional.of(
            new NextBake.Settled(
                response.limit(), chance, between[0], between[1], Math.min(1, share))));
  }

  private static double share(NextBake bake) {
    return bake.settles().map(NextBake.Settled::share).orElse(0.0);
  }

  /** Two pieces less than about one step apart would tell the same. */
  private static boolean isNear(NextBake one, double celsius, double minutes) {
    double time = Math.log(one.minutes() / minutes) / Axes.LOG_STEP;
    double heat = (one.celsius() - celsius) / Axes.CELSIUS_STEP;
    return Math.hypot(time, heat) < 1;
  }
}
