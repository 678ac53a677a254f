package io.ovenmark.window;

import java.util.List;
import org.ojalgo.matrix.decomposition.QR;
import org.ojalgo.matrix.store.MatrixStore;
import org.ojalgo.matrix.store.R064Store;

/**
 * Coefficients with the matrix of their (co)variances in units of the noise: what a least-squares
 * problem leaves. Rows of a prior are rows like those of the data. Solved by ojAlgo's Householder
 * QR of the matrix with its columns scaled to length 1, and one step of refinement.
 */
final class Posterior {
  private final double[] mean;
  private final double[][] covariance;

  private Posterior(double[] mean, double[][] covariance) {
    this.mean = mean;
    this.covariance = covariance;
  }

  /**
   * Solves a problem.
   *
   * @param rows the rows, of one length
   * @param values what stands on the right
   * @throws IllegalArgumentException when the rows do not settle every coefficient
   */
  static Posterior solve(List<double[]> rows, double[] values) {
    int many = rows.size();
    int width = many == 0 ? 0 : rows.get(0).length;
    double[] scale = new double[width];
    for (double[] row : rows) {
      for (int i = 0; i < width; i++) {
        scale[i] += row[i] * row[i];
      }
    }
    R064Store matrix = R064Store.FACTORY.make(many, width);
    for (int i = 0; i < width; i++) {
      scale[i] = scale[i] > 0 ? Math.sqrt(scale[i]) : 1;
      for (int r = 0; r < many; r++) {
        matrix.set(r, i, rows.get(r)[i] / scale[i]);
      }
    }
    R064Store right = R064Store.FACTORY.column(values);
    QR<Double> qr = QR.R064.make(matrix);
    if (width == 0 || many < width || !qr.decompose(matrix) || !qr.isSolvable()) {
      throw new IllegalArgumentException(
          "The points do not settle every coefficient.\nGive more that differ.");
    }
    MatrixStore<Double> solution = qr.getSolution(right);
    MatrixStore<Double> rest = right.subtract(matrix.multiply(solution));
    MatrixStore<Double> refined = solution.add(qr.getSolution(rest));
    MatrixStore<Double> inverse = qr.getInverse();
    double[] mean = new double[width];
    double[][] covariance = new double[width][width];
    for (int i = 0; i < width; i++) {
      mean[i] = refined.doubleValue(i, 0) / scale[i];
      for (int j = 0; j < width; j++) {
        double sum = 0;
        for (int r = 0; r < many; r++) {
          sum += inverse.doubleValue(i, r) * inverse.doubleValue(j, r);
        }
        covariance[i][j] = sum / (scale[i] * scale[j]);
      }
    }
    return new Posterior(mean, covariance);
  }

  /** The coefficients. */
  double[] mean() {
    return mean.clone();
  }

  /** The value at a row. */
  double at(double[] row) {
    return product(mean, row);
  }

  /** The variance of a coefficient, in units of the noise. */
  double variance(int coefficient) {
    return covariance[coefficient][coefficient];
  }

  /** The variance of the value at a row, in units of the noise. */
  double variance(double[] row) {
    return product(row, times(row));
  }

  /** The covariances of the value at a row with each coefficient. */
  double[] times(double[] row) {
    double[] result = new double[mean.length];
    for (int i = 0; i < result.length; i++) {
      result[i] = product(covariance[i], row);
    }
    return result;
  }

  /** The same after one more point at a row, whatever will be found there. */
  Posterior after(double[] row, double weight) {
    double[] along = times(row);
    double share = weight / (1 + weight * product(row, along));
    double[][] next = new double[mean.length][mean.length];
    for (int i = 0; i < mean.length; i++) {
      for (int j = 0; j < mean.length; j++) {
        next[i][j] = covariance[i][j] - share * along[i] * along[j];
      }
    }
    return new Posterior(mean, next);
  }

  static double product(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
