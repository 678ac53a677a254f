package io.ovenmark.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LinearFitTest {
  private static List<double[]> rows(double... slopes) {
    List<double[]> rows = new ArrayList<>();
    for (double slope : slopes) {
      rows.add(new double[] {1, slope});
    }
    return rows;
  }

  /**
   * Worked by hand. Rows (1, −1), (1, 0), (1, 1), values 1, 2, 6; prior mean (2, 1), precision (1,
   * 2), shape 3, rate 4. XᵀX = diag(3, 2), so Λ = diag(4, 4); Xᵀy = (9, 5), Pm₀ = (2, 2): m = (11/4,
   * 7/4). Residuals 1 − 1, 2 − 2.75, 6 − 4.5: squares 0 + 0.5625 + 2.25; prior 1 · 0.75² + 2 ·
   * 0.75² = 1.6875; rate 4 + 4.5/2 = 6.25; shape 3 + 3/2 = 4.5. The next value at (1, 2): 6.25, 9
   * degrees of freedom, scale² 6.25/4.5 (1 + 1/4 + 4/4) = 3.125.
   */
  @Test
  void isTheConjugatePosteriorWorkedByHand() {
    LinearFit fit =
        LinearFit.of(
            rows(-1, 0, 1),
            new double[] {1, 2, 6},
            new LinearFit.Prior(List.of(2.0, 1.0), List.of(1.0, 2.0), 3, 4));

    assertThat(fit.coefficients().get(0)).isCloseTo(2.75, within(1e-12));
    assertThat(fit.coefficients().get(1)).isCloseTo(1.75, within(1e-12));
    assertThat(fit.noise()).isCloseTo(Math.sqrt(6.25 / 4.5), within(1e-12));
    assertThat(fit.standardError(1)).isCloseTo(Math.sqrt(6.25 / 4.5 / 4), within(1e-12));
    LinearFit.Next next = fit.next(new double[] {1, 2});
    assertThat(next.location()).isCloseTo(6.25, within(1e-12));
    assertThat(next.scale()).isCloseTo(Math.sqrt(3.125), within(1e-12));
    assertThat(next.degreesOfFreedom()).isEqualTo(9);
  }

  /** t₉ at 0.975 is 2.262157 (any table of Student's t). */
  @Test
  void theNextValueIsStudents() {
    LinearFit.Next next = new LinearFit.Next(10, 2, 9);

    assertThat(next.chanceBelow(10)).isEqualTo(0.5);
    assertThat(next.chanceBelow(10 + 2 * 2.2621571628)).isCloseTo(0.975, within(1e-9));
    assertThat(new LinearFit.Next(10, 0, 9).chanceBelow(11)).isEqualTo(1);
    assertThat(new LinearFit.Next(10, 0, 9).chanceBelow(9)).isZero();
  }

  @Test
  void withoutDataThePriorStands() {
    LinearFit fit =
        LinearFit.of(
            List.of(),
            new double[0],
            new LinearFit.Prior(List.of(2.0, 1.0), List.of(1.0, 2.0), 3, 4));

    assertThat(fit.coefficients()).containsExactly(2.0, 1.0);
    assertThat(fit.noise()).isCloseTo(Math.sqrt(4.0 / 3), within(1e-12));
  }

  @Test
  void withoutAPriorPointsThatDoNotDifferAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                LinearFit.of(
                    rows(1, 1, 1), new double[] {1, 2, 3}, LinearFit.Prior.vanishing(2)))
        .withMessageContaining("do not settle every coefficient");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LinearFit.Prior(List.of(0.0), List.of(-1.0), 1, 1));
  }

  /** Any prior gives way: the more points, the nearer to the line that made them. */
  @Test
  void manyPointsOutweighThePrior() {
    Random random = new Random(7);
    LinearFit.Prior prior = new LinearFit.Prior(List.of(0.0, 0.0), List.of(1.0, 1.0), 1, 1);
    double[] errors = new double[3];
    for (int size = 0; size < 3; size++) {
      int many = (int) Math.pow(10, size + 1);
      double[] slopes = new double[many];
      double[] values = new double[many];
      for (int i = 0; i < many; i++) {
        slopes[i] = random.nextDouble() * 4 - 2;
        values[i] = 5 - 3 * slopes[i] + 0.1 * random.nextGaussian();
      }
      LinearFit fit = LinearFit.of(rows(slopes), values, prior);
      errors[size] = Math.abs(fit.coefficients().get(0) - 5);
    }
    assertThat(errors[2]).isLessThan(errors[1]);
    assertThat(errors[1]).isLessThan(errors[0]);
    assertThat(errors[2]).isLessThan(0.02);
  }
}
