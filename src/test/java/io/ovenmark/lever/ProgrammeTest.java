package io.ovenmark.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The solver of the combined change against published programmes and against an exhaustive search.
 * A programme with a Hessian H is brought to the form "nearest point" by H = LLᵀ and y = Lᵀx, so
 * that it is solved in the same way as a formula's.
 */
class ProgrammeTest {
  private static final double NONE = Double.POSITIVE_INFINITY;

  private static Row atLeast(double bound, double... coefficients) {
    return new Row(coefficients, bound, NONE);
  }

  private static Row atMost(double bound, double... coefficients) {
    return new Row(coefficients, -NONE, bound);
  }

  private static Row equal(double value, double... coefficients) {
    return new Row(coefficients, value, value);
  }

  /**
   * Nocedal and Wright, Numerical Optimization, 2nd ed., Springer 2006, example 16.4 (from memory):
   * minimise (x1 − 1)² + (x2 − 2.5)² with x1 − 2 x2 + 2 ≥ 0, −x1 − 2 x2 + 6 ≥ 0, −x1 + 2 x2 + 2 ≥
   * 0, x ≥ 0; solution (1.4, 1.7). Derived again: there the first condition holds with equality and
   * the gradient (0.8, −1.6) is 0.8 times its normal (1, −2), the other conditions hold with room.
   */
  @Test
  void theExampleOfInequalitiesHasItsPublishedSolution() {
    double[] x =
        new Programme(
                2,
                List.of(
                    atLeast(-2, 1, -2),
                    atLeast(-6, -1, -2),
                    atLeast(-2, -1, 2),
                    Row.bounds(2, 0, 0, NONE),
                    Row.bounds(2, 1, 0, NONE)))
            .nearest(new double[] {1, 2.5}, new double[] {1, 1})
            .orElseThrow();

    assertThat(x[0]).isCloseTo(1.4, within(1e-9));
    assertThat(x[1]).isCloseTo(1.7, within(1e-9));
    double[] gradient = {2 * (x[0] - 1), 2 * (x[1] - 2.5)};
    assertThat(gradient[0]).isCloseTo(0.8 * 1, within(1e-9));
    assertThat(gradient[1]).isCloseTo(0.8 * -2, within(1e-9));
    assertThat(x[0] - 2 * x[1] + 2).isCloseTo(0, within(1e-9));
  }

  /**
   * The same book, example 16.2 (from memory): Hessian ((6,2,1),(2,5,2),(1,2,4)), linear part (−8,
   * −3, −3), x1 + x3 = 3, x2 + x3 = 0; solution (2, −1, 1), multipliers (3, −2). Derived again: Hx
   * + c = Aᵀλ there.
   */
  @Test
  void theExampleOfEquationsHasItsPublishedSolution() {
    double[][] hessian = {{6, 2, 1}, {2, 5, 2}, {1, 2, 4}};
    double[] linear = {-8, -3, -3};

    double[] x =
        solved(hessian, linear, List.of(equal(3, 1, 0, 1), equal(0, 0, 1, 1))).orElseThrow();

    assertThat(x).containsExactly(new double[] {2, -1, 1}, within(1e-8));
    assertThat(gradient(hessian, linear, x))
        .containsExactly(new double[] {3, -2, 3 - 2}, within(1e-8));
  }

  /**
   * Hock and Schittkowski, Test Examples for Nonlinear Programming Codes, Springer 1981, problem 35
   * (from memory): 9 − 8x1 − 6x2 − 4x3 + 2x1² + 2x2² + x3² + 2x1x2 + 2x1x3 with x1 + x2 + 2x3 ≤ 3,
   * x ≥ 0; solution (4/3, 7/9, 4/9), value 1/9. Derived again: the gradient is −2/9 times (1, 1,
   * 2).
   */
  @Test
  void problem35HasItsPublishedSolution() {
    double[][] hessian = {{4, 2, 2}, {2, 4, 0}, {2, 0, 2}};
    double[] linear = {-8, -6, -4};

    double[] x =
        solved(
                hessian,
                linear,
                List.of(
                    atMost(3, 1, 1, 2),
                    Row.bounds(3, 0, 0, NONE),
                    Row.bounds(3, 1, 0, NONE),
                    Row.bounds(3, 2, 0, NONE)))
            .orElseThrow();

    assertThat(x).containsExactly(new double[] {4 / 3., 7 / 9., 4 / 9.}, within(1e-8));
    assertThat(9 + value(hessian, linear, x)).isCloseTo(1 / 9., within(1e-8));
    assertThat(gradient(hessian, linear, x))
        .containsExactly(new double[] {-2 / 9., -2 / 9., -4 / 9.}, within(1e-8));
  }

  /**
   * The same collection, problem 76 (from memory): x1² + x2²/2 + x3² + x4²/2 − x1x3 + x3x4 − x1 −
   * 3x2 + x3 − x4 with x1 + 2x2 + x3 + x4 ≤ 5, 3x1 + x2 + 2x3 − x4 ≤ 4, x2 + 4x3 ≥ 1.5, x ≥ 0;
   * value −4.681818181. Derived again: at (3/11, 23/11, 0, 6/11) the first condition holds with
   * equality, the gradient is −5/11 times its normal but for x3, which is 0 and would have to
   * become negative.
   */
  @Test
  void problem76HasItsPublishedSolution() {
    double[][] hessian = {{2, 0, -1, 0}, {0, 1, 0, 0}, {-1, 0, 2, 1}, {0, 0, 1, 1}};
    double[] linear = {-1, -3, 1, -1};
    List<Row> rows = new ArrayList<>();
    rows.add(atMost(5, 1, 2, 1, 1));
    rows.add(atMost(4, 3, 1, 2, -1));
    rows.add(atLeast(1.5, 0, 1, 4, 0));
    for (int i = 0; i < 4; i++) {
      rows.add(Row.bounds(4, i, 0, NONE));
    }

    double[] x = solved(hessian, linear, rows).orElseThrow();

    assertThat(value(hessian, linear, x)).isCloseTo(-4.681818181, within(1e-8));
    assertThat(x)
        .containsExactly(new double[] {3 / 11., 23 / 11., 0, 6 / 11.}, within(1e-8));
    double[] gradient = gradient(hessian, linear, x);
    assertThat(gradient[0]).isCloseTo(-5 / 11., within(1e-8));
    assertThat(gradient[1]).isCloseTo(-10 / 11., within(1e-8));
    assertThat(gradient[2]).isGreaterThan(-5 / 11.);
    assertThat(gradient[3]).isCloseTo(-5 / 11., within(1e-8));
  }

  @Test
  void randomProgrammesHaveTheSolutionOfAnExhaustiveSearch() {
    Random random = new Random(20261103);
    int possible = 0;
    int impossible = 0;
    for (int trial = 0; trial < 400; trial++) {
      int unknowns = 2 + random.nextInt(4);
      List<Row> rows = new ArrayList<>();
      int conditions = 1 + random.nextInt(4);
      for (int i = 0; i < conditions; i++) {
        double[] coefficients = new double[unknowns];
        for (int j = 0; j < unknowns; j++) {
          coefficients[j] = random.nextInt(4) == 0 ? 0 : random.nextGaussian();
        }
        coefficients[random.nextInt(unknowns)] = 1;
        double bound = random.nextGaussian() * 2;
        rows.add(
            switch (random.nextInt(3)) {
              case 0 -> equal(bound, coefficients);
              case 1 -> atLeast(bound, coefficients);
              default -> atMost(bound, coefficients);
            });
      }
      for (int i = 0; i < unknowns; i++) {
        rows.add(Row.bounds(unknowns, i, 0, NONE));
      }
      double[] target = new double[unknowns];
      double[] weights = new double[unknowns];
      for (int i = 0; i < unknowns; i++) {
        target[i] = random.nextDouble() * 2;
        weights[i] = 1;
      }

      Optional<double[]> ours = new Programme(unknowns, rows).nearest(target, weights);
      Optional<double[]> searched = ActiveSets.nearest(target, rows);

      assertThat(ours.isPresent()).as("trial " + trial).isEqualTo(searched.isPresent());
      assertThat(new Programme(unknowns, rows).isPossible()).isEqualTo(searched.isPresent());
      if (searched.isPresent()) {
        possible++;
        assertThat(ours.get())
            .as("trial " + trial)
            .containsExactly(searched.get(), within(1e-6));
      } else {
        impossible++;
      }
    }
    assertThat(possible).isGreaterThan(100);
    assertThat(impossible).isGreaterThan(50);
  }

  @Test
  void boundsThatCrossAreImpossible() {
    List<Row> rows = List.of(Row.bounds(1, 0, 2, NONE), Row.bounds(1, 0, -NONE, 1));

    assertThat(new Programme(1, rows).isPossible()).isFalse();
    assertThat(new Programme(1, rows).nearest(new double[] {1}, new double[] {1})).isEmpty();
  }

  @Test
  void aRowOfNothingIsKeptOnlyByZero() {
    assertThat(new Programme(2, List.of(equal(0, 0, 0))).isPossible()).isTrue();
    assertThat(new Programme(2, List.of(atLeast(1, 0, 0))).isPossible()).isFalse();
  }

  @Test
  void theLeastSumLiesInACorner() {
    List<Row> rows =
        List.of(
            atMost(4, 1, 1), Row.bounds(2, 0, 0, 3), Row.bounds(2, 1, 0, NONE));

    double[] x = new Programme(2, rows).least(new double[] {-2, -1}).orElseThrow();

    assertThat(x).containsExactly(new double[] {3, 1}, within(1e-9));
  }

  /** Minimises ½xᵀHx + cᵀx as the nearest point in y = Lᵀx. */
  private static Optional<double[]> solved(
      double[][] hessian, double[] linear, List<Row> rows) {
    int n = linear.length;
    double[][] l = cholesky(hessian);
    double[] target = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = -linear[i];
      for (int j = 0; j < i; j++) {
        sum -= l[i][j] * target[j];
      }
      target[i] = sum / l[i][i];
    }
    List<Row> turned = new ArrayList<>();
    for (Row row : rows) {
      double[] coefficients = new double[n];
      for (int i = 0; i < n; i++) {
        double sum = row.coefficients()[i];
        for (int j = 0; j < i; j++) {
          sum -= l[i][j] * coefficients[j];
        }
        coefficients[i] = sum / l[i][i];
      }
      turned.add(new Row(coefficients, row.low(), row.high()));
    }
    double[] weights = new double[n];
    Arrays.fill(weights, 0.5);
    return new Programme(n, turned)
        .nearest(target, weights)
        .map(
            y -> {
              double[] x = new double[n];
              for (int i = n - 1; i >= 0; i--) {
                double sum = y[i];
                for (int j = i + 1; j < n; j++) {
                  sum -= l[j][i] * x[j];
                }
                x[i] = sum / l[i][i];
              }
              return x;
            });
  }

  private static double[][] cholesky(double[][] a) {
    int n = a.length;
    double[][] l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = a[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
      }
    }
    return l;
  }

  private static double[] gradient(double[][] hessian, double[] linear, double[] x) {
    double[] gradient = linear.clone();
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < x.length; j++) {
        gradient[i] += hessian[i][j] * x[j];
      }
    }
    return gradient;
  }

  private static double value(double[][] hessian, double[] linear, double[] x) {
    double[] gradient = gradient(hessian, linear, x);
    double value = 0;
    for (int i = 0; i < x.length; i++) {
      value += (gradient[i] + linear[i]) * x[i] / 2;
    }
    return value;
  }
}
