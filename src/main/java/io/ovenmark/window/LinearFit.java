package io.ovenmark.window;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Bayesian linear regression with the conjugate normal-inverse-gamma prior: given the noise σ², the
 * coefficients are normal about the prior's mean with variance σ² ÷ precision, and σ² is inverse
 * gamma (shape, rate). With data X, y the posterior has the mean m = (XᵀX + P)⁻¹(Xᵀy + P m₀), shape
 * a₀ + n/2 and rate b₀ + ½(|y − Xm|² + (m − m₀)ᵀP(m − m₀)); the next value at x is Student's t
 * about xᵀm with 2a degrees of freedom and scale² b/a (1 + xᵀ(XᵀX + P)⁻¹x). (Bishop, Pattern
 * Recognition and Machine Learning, 2006, exercises 3.12 and 3.13; from memory.) It is a ridge fit
 * whose noise is estimated along. A vanishing prior gives ordinary least squares.
 */
public final class LinearFit {
  private final Posterior posterior;
  private final double shape;
  private final double rate;

  /**
   * What is supposed before there are data.
   *
   * @param mean of the coefficients
   * @param precision of each coefficient in units of 1/σ²; 0 supposes nothing
   * @param shape of the inverse gamma distribution of σ²
   * @param rate of the same
   */
  public record Prior(List<Double> mean, List<Double> precision, double shape, double rate) {
    /** Checks and copies. */
    public Prior {
      mean = List.copyOf(mean);
      precision = List.copyOf(precision);
      if (mean.size() != precision.size() || precision.stream().anyMatch(p -> !(p >= 0))) {
        throw new IllegalArgumentException(
            "A prior has a mean and a precision, at least 0, for each coefficient.\nState both.");
      }
    }

    /**
     * Supposes nothing: ordinary least squares, with the usual n − p degrees of freedom.
     *
     * @param coefficients how many
     * @return the prior of density 1/σ²
     */
    public static Prior vanishing(int coefficients) {
      List<Double> zeros = Collections.nCopies(coefficients, 0.0);
      return new Prior(zeros, zeros, -coefficients / 2.0, 0);
    }
  }

  /**
   * The distribution of the next value.
   *
   * @param location its centre
   * @param scale its scale, 0 or more
   * @param degreesOfFreedom of Student's t
   */
  public record Next(double location, double scale, double degreesOfFreedom) {
    /**
     * The chance of a value below a bound.
     *
     * @param bound the bound
     * @return 0 to 1
     */
    public double chanceBelow(double bound) {
      if (scale == 0) {
        return bound > location ? 1 : 0;
      }
      return TDistribution.of(degreesOfFreedom).cumulativeProbability((bound - location) / scale);
    }

    /** The density at a value. */
    double density(double value) {
      return scale == 0
          ? 0
          : TDistribution.of(degreesOfFreedom).density((value - location) / scale) / scale;
    }
  }

  private LinearFit(Posterior posterior, double shape, double rate) {
    this.posterior = posterior;
    this.shape = shape;
    this.rate = rate;
  }

  /**
   * Fits.
   *
   * @param rows a row for each point, with as many members as there are coefficients
   * @param values the value of each point
   * @param prior what is supposed before
   * @return the fit
   * @throws IllegalArgumentException when points and prior together do not settle every coefficient
   */
  public static LinearFit of(List<double[]> rows, double[] values, Prior prior) {
    List<double[]> all = new ArrayList<>(rows);
    double[] right = Arrays.copyOf(values, values.length + prior.mean().size());
    int filled = values.length;
    for (int i = 0; i < prior.mean().size(); i++) {
      double root = Math.sqrt(prior.precision().get(i));
      if (root > 0) {
        double[] row = new double[prior.mean().size()];
        row[i] = root;
        all.add(row);
        right[filled++] = root * prior.mean().get(i);
      }
    }
    right = Arrays.copyOf(right, filled);
    Posterior posterior = Posterior.solve(all, right);
    double squares = 0;
    for (int i = 0; i < filled; i++) {
      double rest = right[i] - posterior.at(all.get(i));
      squares += rest * rest;
    }
    return new LinearFit(
        posterior, prior.shape() + values.length / 2.0, prior.rate() + squares / 2);
  }

  /**
   * The coefficients.
   *
   * @return their posterior means
   */
  public List<Double> coefficients() {
    return Arrays.stream(posterior.mean()).boxed().toList();
  }

  /**
   * How sure a coefficient is.
   *
   * @param coefficient from 0
   * @return the scale of its Student's t distribution; with a vanishing prior its standard error
   */
  public double standardError(int coefficient) {
    return Math.sqrt(noiseVariance() * posterior.variance(coefficient));
  }

  /**
   * The scatter about the fit.
   *
   * @return the root of rate ÷ shape; with a vanishing prior the residual standard deviation
   */
  public double noise() {
    return Math.sqrt(noiseVariance());
  }

  /**
   * What the next value at a row may be.
   *
   * @param row the row
   * @return its distribution
   */
  public Next next(double[] row) {
    double variance = noiseVariance() * (1 + posterior.variance(row));
    return new Next(posterior.at(row), Math.sqrt(variance), 2 * shape);
  }

  double noiseVariance() {
    return rate / shape;
  }

  Posterior posterior() {
    return posterior;
  }
}
