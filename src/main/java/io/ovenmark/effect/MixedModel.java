package io.ovenmark.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.TDistribution;
import org.ojalgo.matrix.decomposition.Eigenvalue;
import org.ojalgo.matrix.store.MatrixStore;
import org.ojalgo.matrix.store.R064Store;

/**
 * A linear model with a chance part for each bake, for few observations and many candidates:
 *
 * <pre>
 * outcome of a piece = mean + Σ effect × candidate + chance of its bake + chance of the piece
 * </pre>
 *
 * Both chances are normal. Each effect has a normal prior around zero, of one width for all when a
 * candidate goes over the whole range in which it was tried, so that what the bakes do not tell
 * apart is shared out and what they do not tell at all stays near zero with a wide interval (ridge
 * regression in Bayes' reading: Hoerl and Kennard 1970; Lindley and Smith 1972). The width of the
 * prior and the share of the bakes' chance are not chosen but averaged over a grid, each pair by
 * how well it predicts the outcome (its marginal likelihood); effects and the pieces' variance are
 * integrated in closed form. The pieces of one tray share their bake's chance, so they do not count
 * as so many independent observations.
 *
 * <p>With a flat prior and without the bakes' chance this is ordinary least squares.
 */
final class MixedModel {
  /** Ratios of the standard deviations of bakes to pieces, evenly spaced in their logarithm. */
  private static final double[] BAKES = {0.05, 0.18, 0.32, 0.56, 1, 1.8, 3.2, 5.6, 10, 18};

  /** Ratios of the prior's width to the pieces' standard deviation, evenly spaced likewise. */
  private static final double[] WIDTHS = {0.1, 0.18, 0.32, 0.56, 1, 1.8, 3.2, 5.6, 10, 18, 32, 56};

  private static final double PRIOR_WIDTH = 3;
  private static final double INTERVAL = 0.95;

  /** How many observations the resolution of the measurement counts for. */
  private static final double ADDED = 1;

  private final int count;
  private final int unknowns;
  private final double[] ranges;
  private final double[][] inside;
  private final Map<Integer, Block> between = new TreeMap<>();
  private final int bakes;

  /** Sums over all bakes with the same number of pieces, of their means. */
  private record Block(int[] count, double[] sum, double[][] products) {
    Block(int size) {
      this(new int[1], new double[size], new double[size][size]);
    }
  }

  /**
   * What is known of the effects.
   *
   * @param effects one for each candidate, a change by one unit of it
   * @param pieceDeviation standard deviation of a piece's chance
   * @param bakeDeviation standard deviation of a bake's chance
   */
  record Fit(List<Estimate> effects, double pieceDeviation, double bakeDeviation) {
    Fit {
      effects = List.copyOf(effects);
    }
  }

  /**
   * An effect.
   *
   * @param mean its expectation
   * @param deviation its standard deviation
   * @param low the lower end of the interval of 90 %
   * @param high the upper end
   * @param sureOfSign probability that it has the sign of its mean
   */
  record Estimate(double mean, double deviation, double low, double high, double sureOfSign) {}

  /** Given one pair of variance ratios: effects as scaled, their variances, the evidence. */
  private record Given(
      double[] mean, double[] variance, double noise, double share, double logWeight) {}

  /**
   * Takes the observations in.
   *
   * @param bake the bake of each piece, from 0
   * @param candidates for each candidate its values, one for each piece, not all the same
   * @param outcome of each piece
   */
  MixedModel(int[] bake, List<double[]> candidates, double[] outcome) {
    count = outcome.length;
    unknowns = candidates.size();
    List<double[]> columns = new ArrayList<>();
    ranges = new double[unknowns];
    for (int k = 0; k < unknowns; k++) {
      double[] values = candidates.get(k);
      double low = values[0];
      double high = values[0];
      for (double value : values) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
      ranges[k] = high - low;
      columns.add(centred(values, ranges[k]));
    }
    columns.add(centred(outcome, 1));
    List<List<Integer>> trays = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      while (trays.size() <= bake[i]) {
        trays.add(new ArrayList<>());
      }
      trays.get(bake[i]).add(i);
    }
    trays.removeIf(List::isEmpty);
    bakes = trays.size();
    inside = new double[unknowns + 1][unknowns + 1];
    trays.forEach(pieces -> take(pieces, columns));
  }

  private static double[] centred(double[] values, double range) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    double[] scaled = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      scaled[i] = (values[i] - sum / values.length) / range;
    }
    return scaled;
  }

  private void take(List<Integer> pieces, List<double[]> columns) {
    int size = columns.size();
    double[] mean = new double[size];
    for (int k = 0; k < size; k++) {
      for (int i : pieces) {
        mean[k] += columns.get(k)[i] / pieces.size();
      }
    }
    for (int i : pieces) {
      for (int k = 0; k < size; k++) {
        double off = columns.get(k)[i] - mean[k];
        for (int l = 0; l <= k; l++) {
          inside[k][l] += off * (columns.get(l)[i] - mean[l]);
        }
      }
    }
    Block block = between.computeIfAbsent(pieces.size(), each -> new Block(size));
    block.count[0]++;
    for (int k = 0; k < size; k++) {
      block.sum[k] += mean[k];
      for (int l = 0; l <= k; l++) {
        block.products[k][l] += mean[k] * mean[l];
      }
    }
  }

  /**
   * Ordinary least squares: no prior, and pieces as if each were a bake of its own.
   *
   * @return the fit; intervals and probabilities by Student's t
   */
  Fit leastSquares() {
    Moments moments = new Moments(0);
    double[] free = new double[unknowns];
    Given given = moments.given(0, free, count - 1.0 - unknowns, 0, 0);
    List<Estimate> effects = new ArrayList<>();
    for (int k = 0; k < unknowns; k++) {
      effects.add(
          estimate(
              given.mean[k] / ranges[k],
              Math.sqrt(given.variance[k]) / ranges[k],
              count - 1.0 - unknowns));
    }
    return new Fit(effects, Math.sqrt(given.noise), 0);
  }

  /**
   * The model with its prior.
   *
   * @param resolution what the outcome can be measured to at best, more than 0; counts as much as
   *     one observation of the pieces' chance, so that few bakes that agree by luck do not seem
   *     certain
   * @return the fit
   */
  Fit fit(double resolution) {
    List<Given> all = new ArrayList<>();
    double best = Double.NEGATIVE_INFINITY;
    double freedom = count - 1.0 + ADDED;
    for (double ratio : BAKES) {
      Moments moments = new Moments(ratio * ratio);
      double[] precision = new double[unknowns];
      for (double width : WIDTHS) {
        Arrays.fill(precision, 1 / (width * width));
        double prior =
            Math.log(ratio / (1 + ratio * ratio))
                + Math.log(width / (1 + width * width / (PRIOR_WIDTH * PRIOR_WIDTH)));
        Given given =
            moments.given(ratio, precision, freedom, ADDED * resolution * resolution, prior);
        all.add(given);
        best = Math.max(best, given.logWeight);
      }
    }
    return mixed(all, best, freedom);
  }

  private Fit mixed(List<Given> all, double best, double freedom) {
    double total = 0;
    double[] mean = new double[unknowns];
    double noise = 0;
    double share = 0;
    for (Given given : all) {
      double weight = Math.exp(given.logWeight - best);
      total += weight;
      noise += weight * given.noise;
      share += weight * given.share;
      for (int k = 0; k < unknowns; k++) {
        mean[k] += weight * given.mean[k];
      }
    }
    double[] variance = new double[unknowns];
    for (Given given : all) {
      double weight = Math.exp(given.logWeight - best) / total;
      for (int k = 0; k < unknowns; k++) {
        double off = given.mean[k] - mean[k] / total;
        variance[k] += weight * (given.variance[k] * freedom / (freedom - 2) + off * off);
      }
    }
    double tails = Math.max(3, bakes - 1.0);
    List<Estimate> effects = new ArrayList<>();
    for (int k = 0; k < unknowns; k++) {
      double scale = Math.sqrt(variance[k] * (tails - 2) / tails);
      effects.add(estimate(mean[k] / total / ranges[k], scale / ranges[k], tails));
    }
    return new Fit(effects, Math.sqrt(noise / total), Math.sqrt(share / total));
  }

  private static Estimate estimate(double mean, double scale, double freedom) {
    TDistribution student = TDistribution.of(freedom);
    double reach = student.inverseCumulativeProbability(INTERVAL) * scale;
    double sure = scale > 0 ? student.cumulativeProbability(Math.abs(mean) / scale) : 1;
    return new Estimate(mean, scale, mean - reach, mean + reach, sure);
  }

  /** Sums of squares and products with the means of bakes weighed by how sure they are. */
  private final class Moments {
    private final double[][] products;
    private final double[] levels;
    private final double[] turned;
    private final MatrixStore<Double> directions;
    private final double logBakes;

    /** The variance of bakes in pieces' variances. */
    Moments(double ratio) {
      int size = unknowns + 1;
      products = new double[size][size];
      double[] sum = new double[size];
      double weights = 0;
      double logs = 0;
      for (Map.Entry<Integer, Block> entry : between.entrySet()) {
        int pieces = entry.getKey();
        Block block = entry.getValue();
        double weight = pieces / (1 + pieces * ratio);
        weights += weight * block.count[0];
        logs += block.count[0] * Math.log(1 + pieces * ratio);
        for (int k = 0; k < size; k++) {
          sum[k] += weight * block.sum[k];
          for (int l = 0; l <= k; l++) {
            products[k][l] += weight * block.products[k][l];
          }
        }
      }
      for (int k = 0; k < size; k++) {
        for (int l = 0; l <= k; l++) {
          products[k][l] += inside[k][l] - sum[k] * sum[l] / weights;
        }
      }
      logBakes = logs + Math.log(weights);
      R064Store matrix = R064Store.FACTORY.make(unknowns, unknowns);
      for (int k = 0; k < unknowns; k++) {
        for (int l = 0; l < unknowns; l++) {
          matrix.set(k, l, products[Math.max(k, l)][Math.min(k, l)]);
        }
      }
      Eigenvalue<Double> parts = Eigenvalue.R064.make(matrix, true);
      parts.decompose(matrix);
      directions = parts.getV();
      levels = new double[unknowns];
      turned = new double[unknowns];
      for (int j = 0; j < unknowns; j++) {
        levels[j] = Math.max(0, parts.getD().doubleValue(j, j));
        for (int k = 0; k < unknowns; k++) {
          turned[j] += directions.doubleValue(k, j) * products[unknowns][k];
        }
      }
    }

    /** The posterior under one width of the prior, which has one precision for all effects. */
    Given given(
        double bakeRatio, double[] precision, double freedom, double added, double prior) {
      double rest = products[unknowns][unknowns];
      double logs = 0;
      double[] mean = new double[unknowns];
      double[] spread = new double[unknowns];
      for (int j = 0; j < unknowns; j++) {
        double level = levels[j] + precision[j];
        double part = turned[j] / level;
        rest -= turned[j] * part;
        logs += precision[j] > 0 ? Math.log(level / precision[j]) : 0;
        for (int k = 0; k < unknowns; k++) {
          double direction = directions.doubleValue(k, j);
          mean[k] += direction * part;
          spread[k] += direction * direction / level;
        }
      }
      double squares = Math.max(0, rest) + added;
      double noise = squares / freedom;
      double[] variance = new double[unknowns];
      for (int k = 0; k < unknowns; k++) {
        variance[k] = noise * spread[k];
      }
      double logWeight =
          prior - logBakes / 2 - logs / 2 - freedom / 2 * Math.log(Math.max(squares, 1e-300));
      return new Given(
          mean, variance, noise, noise * bakeRatio * bakeRatio, logWeight);
    }
  }
}
