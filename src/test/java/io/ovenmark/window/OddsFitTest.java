package io.ovenmark.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OddsFitTest {
  private static final double[] WIDE = {2, 1.5};

  private static List<double[]> rows(double... places) {
    List<double[]> rows = new ArrayList<>();
    for (double place : places) {
      rows.add(new double[] {1, place});
    }
    return rows;
  }

  /** The log of the posterior density, written out anew. */
  private static double height(
      List<double[]> rows, List<Boolean> yes, double[] deviations, double[] at) {
    double sum = 0;
    for (int i = 0; i < rows.size(); i++) {
      double chance = 1 / (1 + Math.exp(-at[0] - at[1] * rows.get(i)[1]));
      sum += Math.log(yes.get(i) ? chance : 1 - chance);
    }
    for (int i = 0; i < 2; i++) {
      sum -= at[i] * at[i] / (2 * deviations[i] * deviations[i]);
    }
    return sum;
  }

  /** With one symmetric pair the intercept is 0 and the slope b solves 2/(1 + eᵇ) = b/σ². */
  @Test
  void aPairIsFittedAsWorkedByHand() {
    double slope = OddsFit.of(rows(-1, 1), List.of(false, true), WIDE).posterior().mean()[1];

    assertThat(2 / (1 + Math.exp(slope))).isCloseTo(slope / 2.25, within(1e-9));
    assertThat(OddsFit.of(rows(-1, 1), List.of(false, true), WIDE).chance(new double[] {1, 0}))
        .isCloseTo(0.5, within(1e-12));
  }

  @Test
  void noPlaceNearbyIsHigher() {
    Random random = new Random(3);
    for (int round = 0; round < 50; round++) {
      List<double[]> rows = new ArrayList<>();
      List<Boolean> yes = new ArrayList<>();
      int many = 4 + random.nextInt(20);
      for (int i = 0; i < many; i++) {
        rows.add(new double[] {1, random.nextGaussian() * 2});
        yes.add(random.nextDouble() < OddsFit.logistic(rows.get(i)[1] - 0.5));
      }
      double[] mean = OddsFit.of(rows, yes, WIDE).posterior().mean();
      double here = height(rows, yes, WIDE, mean);
      for (double[] step : new double[][] {{1e-3, 0}, {-1e-3, 0}, {0, 1e-3}, {0, -1e-3}}) {
        double[] beside = {mean[0] + step[0], mean[1] + step[1]};
        assertThat(height(rows, yes, WIDE, beside)).isLessThan(here);
      }
    }
  }

  /** Against the average over the posterior on a fine grid; Laplace leaves so much with 8 points. */
  @Test
  void chancesAreNearTheExactAverageOverThePosterior() {
    List<double[]> rows = rows(-2, -1, -0.5, 0, 0.5, 1, 1.5, 2);
    List<Boolean> yes = List.of(false, false, true, false, true, true, false, true);
    OddsFit fit = OddsFit.of(rows, yes, WIDE);
    for (double place : new double[] {-2, 0, 1, 2.5}) {
      double all = 0;
      double seen = 0;
      for (double a = -8; a <= 8; a += 0.05) {
        for (double b = -8; b <= 8; b += 0.05) {
          double weight = Math.exp(height(rows, yes, WIDE, new double[] {a, b}));
          all += weight;
          seen += weight / (1 + Math.exp(-a - b * place));
        }
      }
      assertThat(fit.chance(new double[] {1, place})).isCloseTo(seen / all, within(0.05));
    }
  }

  @Test
  void alikeOrDividedAnswersStayFinite() {
    OddsFit never = OddsFit.of(rows(-1, 0, 1, 2), List.of(false, false, false, false), WIDE);
    assertThat(never.chance(new double[] {1, 0})).isBetween(0.01, 0.3);
    OddsFit divided = OddsFit.of(rows(-2, -1, 1, 2), List.of(false, false, true, true), WIDE);
    assertThat(divided.chance(new double[] {1, 2})).isBetween(0.8, 0.99);
    assertThat(divided.chance(new double[] {1, -2})).isBetween(0.01, 0.2);
  }
}
