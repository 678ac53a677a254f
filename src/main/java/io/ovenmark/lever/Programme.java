package io.ovenmark.lever;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * A mathematical programme: unknowns under linear conditions, and what is to be least. The solver
 * is ojAlgo's: an active-set method for the convex quadratic programme, the simplex method for the
 * linear one.
 */
final class Programme {
  /** Bounds that cross by no more than this are one value. */
  private static final double SAME = 1e-9;

  private final int unknowns;
  private final List<Row> rows;

  Programme(int unknowns, List<Row> rows) {
    this.unknowns = unknowns;
    this.rows = List.copyOf(rows);
  }

  /**
   * The point nearest to another within the conditions: the least weighted sum of squares.
   *
   * @param target the point to be near to
   * @param weights of the squares; an unknown of weight 0 is free to follow
   * @return the point; empty when the conditions contradict each other
   */
  Optional<double[]> nearest(double[] target, double[] weights) {
    return optimum(
        model -> {
          Expression squares = model.newExpression("squares").weight(1.0);
          for (int i = 0; i < unknowns; i++) {
            if (weights[i] > 0) {
              squares.set(i, i, weights[i]);
              squares.set(i, -2 * weights[i] * target[i]);
            }
          }
        });
  }

  /**
   * The point at which a weighted sum is least.
   *
   * @param weights of the sum
   * @return the point; empty when the conditions contradict each other or there is no least
   */
  Optional<double[]> least(double[] weights) {
    return optimum(
        model -> {
          Expression sum = model.newExpression("sum").weight(1.0);
          for (int i = 0; i < unknowns; i++) {
            sum.set(i, weights[i]);
          }
        });
  }

  /** Whether any point keeps all conditions. */
  boolean isPossible() {
    return solve(model -> {}).filter(result -> result.getState().isFeasible()).isPresent();
  }

  private interface Aim {
    void addTo(ExpressionsBasedModel model);
  }

  private Optional<double[]> optimum(Aim aim) {
    return solve(aim).filter(result -> result.getState().isOptimal()).map(this::point);
  }

  private Optional<Optimisation.Result> solve(Aim aim) {
    double[] low = new double[unknowns];
    double[] high = new double[unknowns];
    Arrays.fill(low, Double.NEGATIVE_INFINITY);
    Arrays.fill(high, Double.POSITIVE_INFINITY);
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Variable[] variables = new Variable[unknowns];
    for (int i = 0; i < unknowns; i++) {
      variables[i] = model.newVariable("x" + i);
    }
    int number = 0;
    for (Row row : rows) {
      int only = row.onlyUnknown();
      if (only >= 0) {
        double factor = row.coefficients()[only];
        double one = row.low() / factor;
        double other = row.high() / factor;
        low[only] = Math.max(low[only], Math.min(one, other));
        high[only] = Math.min(high[only], Math.max(one, other));
      } else if (row.scale() > 0) {
        add(model, "r" + number++, row);
      } else if (row.low() > SAME || row.high() < -SAME) {
        return Optional.empty();
      }
    }
    for (int i = 0; i < unknowns; i++) {
      if (low[i] > high[i]) {
        if (low[i] - high[i] > SAME * Math.max(1, Math.abs(low[i]))) {
          return Optional.empty();
        }
        high[i] = low[i];
      }
      if (Double.isFinite(low[i])) {
        variables[i].lower(low[i]);
      }
      if (Double.isFinite(high[i])) {
        variables[i].upper(high[i]);
      }
    }
    aim.addTo(model);
    return Optional.of(model.minimise());
  }

  /** A condition with its greatest coefficient brought to 1. */
  private static void add(ExpressionsBasedModel model, String name, Row row) {
    double scale = row.scale();
    Expression expression = model.newExpression(name);
    for (int i = 0; i < row.coefficients().length; i++) {
      if (row.coefficients()[i] != 0) {
        expression.set(i, row.coefficients()[i] / scale);
      }
    }
    if (row.low() == row.high()) {
      expression.level(row.low() / scale);
      return;
    }
    if (Double.isFinite(row.low())) {
      expression.lower(row.low() / scale);
    }
    if (Double.isFinite(row.high())) {
      expression.upper(row.high() / scale);
    }
  }

  private double[] point(Optimisation.Result result) {
    double[] point = new double[unknowns];
    for (int i = 0; i < unknowns; i++) {
      point[i] = result.doubleValue(i);
    }
    return point;
  }
}
