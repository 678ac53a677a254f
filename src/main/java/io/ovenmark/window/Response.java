package io.ovenmark.window;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** A limit with what was fitted for it: the chance that a piece at a setting keeps it. */
abstract sealed class Response {
  /** Slopes of a measure may be so many times its scatter for a step; a ridge. */
  private static final double SLOPE_IN_NOISE = 4;

  private static final double VAGUE = 1e-6;
  private static final double PRIOR_SHAPE = 1;

  /** Prior deviations of the log odds: at the middle of the pieces, for a step of time and oven. */
  private static final double[] ODDS = {2.5, 1.5, 1.5};

  private final WindowLimit limit;
  private final int known;
  private final int kept;
  private final Posterior posterior;

  private Response(WindowLimit limit, int known, int kept, Posterior posterior) {
    this.limit = limit;
    this.known = known;
    this.kept = kept;
    this.posterior = posterior;
  }

  /** A way to break the limit, and its chance at a row. */
  record Failing(String words, ToDoubleFunction<double[]> chance) {}

  /** Fits what a limit is about. */
  static Response of(WindowLimit limit, List<Axes.Point> points, Axes axes) {
    List<double[]> rows = new ArrayList<>();
    List<Axes.Point> known = new ArrayList<>();
    int kept = 0;
    for (Axes.Point point : points) {
      if (limit.isKept(point.piece()).isPresent()) {
        known.add(point);
        rows.add(axes.row(point));
        kept += limit.isKept(point.piece()).get() ? 1 : 0;
      }
    }
    if (limit instanceof WindowLimit.Measured measured) {
      Measure measure = measured.measure();
      double[] values =
          known.stream()
              .mapToDouble(point -> measure.fitted(measure.of(point.piece()).getAsDouble()))
              .toArray();
      double precision = 1 / (SLOPE_IN_NOISE * SLOPE_IN_NOISE);
      LinearFit.Prior prior =
          new LinearFit.Prior(
              List.of(Arrays.stream(values).average().orElse(0), 0.0, 0.0),
              List.of(VAGUE, precision, precision),
              PRIOR_SHAPE,
              PRIOR_SHAPE * measure.usualNoise() * measure.usualNoise());
      return new OfMeasure(measured, known.size(), kept, LinearFit.of(rows, values, prior));
    }
    WindowLimit.Finding finding = (WindowLimit.Finding) limit;
    List<Boolean> seen =
        known.stream()
            .map(point -> point.piece().findings().contains(finding.word()))
            .toList();
    return new OfFinding(finding, known.size(), kept, OddsFit.of(rows, seen, ODDS));
  }

  WindowLimit limit() {
    return limit;
  }

  /** Of how many pieces it is known. */
  int known() {
    return known;
  }

  /** How many of those keep it. */
  int kept() {
    return kept;
  }

  Posterior posterior() {
    return posterior;
  }

  /** The chance that a piece keeps it. */
  abstract double chance(double[] row);

  /** How the chance moves with the fitted value, in absolute terms. */
  abstract double steepness(double[] row);

  /** The variance of one observation of the fitted value where its weight is 1. */
  abstract double noiseVariance();

  /** How much one more piece at a row tells, in units of the noise. */
  abstract double weight(double[] row);

  /** The ways to break it. */
  abstract List<Failing> failing();

  /** What one step of time or oven does, with its standard deviation. */
  LimitFit.Effect effect(int coefficient) {
    return new LimitFit.Effect(
        posterior.mean()[coefficient],
        Math.sqrt(noiseVariance() * posterior.variance(coefficient)));
  }

  /** A measure. */
  static final class OfMeasure extends Response {
    private final WindowLimit.Measured limit;
    private final LinearFit fit;
    private final double low;
    private final double high;

    OfMeasure(WindowLimit.Measured limit, int known, int kept, LinearFit fit) {
      super(limit, known, kept, fit.posterior());
      this.limit = limit;
      this.fit = fit;
      Measure measure = limit.measure();
      this.low =
          limit.low().isPresent()
              ? measure.fitted(limit.low().getAsDouble())
              : Double.NEGATIVE_INFINITY;
      this.high =
          limit.high().isPresent()
              ? measure.fitted(limit.high().getAsDouble())
              : Double.POSITIVE_INFINITY;
    }

    double noise() {
      return fit.noise();
    }

    @Override
    double chance(double[] row) {
      LinearFit.Next next = fit.next(row);
      double below = Double.isFinite(high) ? next.chanceBelow(high) : 1;
      return Math.max(0, below - (Double.isFinite(low) ? next.chanceBelow(low) : 0));
    }

    @Override
    double steepness(double[] row) {
      LinearFit.Next next = fit.next(row);
      double atLow = Double.isFinite(low) ? next.density(low) : 0;
      return Math.abs(atLow - (Double.isFinite(high) ? next.density(high) : 0));
    }

    @Override
    double noiseVariance() {
      return fit.noiseVariance();
    }

    @Override
    double weight(double[] row) {
      return 1;
    }

    @Override
    List<Failing> failing() {
      List<Failing> ways = new ArrayList<>();
      String word = limit.measure().word();
      boolean isCrust = limit.measure() == Measure.CRUST;
      if (Double.isFinite(low)) {
        ways.add(new Failing(word + (isCrust ? " too pale" : " too low"), row -> fit.next(row).chanceBelow(low)));
      }
      if (Double.isFinite(high)) {
        ways.add(new Failing(word + (isCrust ? " too dark" : " too high"), row -> 1 - fit.next(row).chanceBelow(high)));
      }
      return ways;
    }
  }

  /** A finding. */
  static final class OfFinding extends Response {
    private final WindowLimit.Finding limit;
    private final OddsFit fit;

    OfFinding(WindowLimit.Finding limit, int known, int kept, OddsFit fit) {
      super(limit, known, kept, fit.posterior());
      this.limit = limit;
      this.fit = fit;
    }

    @Override
    double chance(double[] row) {
      double seen = fit.chance(row);
      return limit.present() ? seen : 1 - seen;
    }

    @Override
    double steepness(double[] row) {
      double seen = fit.chance(row);
      return seen * (1 - seen);
    }

    @Override
    double noiseVariance() {
      return 1;
    }

    @Override
    double weight(double[] row) {
      double seen = fit.chance(row);
      return seen * (1 - seen);
    }

    @Override
    List<Failing> failing() {
      return limit.present()
          ? List.of(new Failing("no " + limit.word(), row -> 1 - fit.chance(row)))
          : List.of(new Failing(limit.word(), fit::chance));
    }
  }
}
