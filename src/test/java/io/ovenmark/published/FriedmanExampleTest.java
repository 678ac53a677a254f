package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.tasting.Friedman;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.ranking.NaturalRanking;
import org.apache.commons.statistics.ranking.TiesStrategy;
import org.junit.jupiter.api.Test;

/**
 * The example of Friedman's test in Hollander and Wolfe, Nonparametric Statistical Methods (1973),
 * p. 140 ff.: 22 players run to second base after rounding first base in three ways. The same data
 * stand as RoundingTimes in the documentation of friedman.test of the R project, whose output is
 * chi-squared 11.143 on 2 degrees of freedom, p = 0.003805, with rank sums 53, 47 and 32.
 */
class FriedmanExampleTest {
  private static final double[][] TIMES = {
    {5.40, 5.50, 5.55}, {5.85, 5.70, 5.75}, {5.20, 5.60, 5.50}, {5.55, 5.50, 5.40},
    {5.90, 5.85, 5.70}, {5.45, 5.55, 5.60}, {5.40, 5.40, 5.35}, {5.45, 5.50, 5.35},
    {5.25, 5.15, 5.00}, {5.85, 5.80, 5.70}, {5.25, 5.20, 5.10}, {5.65, 5.55, 5.45},
    {5.60, 5.35, 5.45}, {5.05, 5.00, 4.95}, {5.50, 5.50, 5.40}, {5.45, 5.55, 5.50},
    {5.55, 5.55, 5.35}, {5.45, 5.50, 5.55}, {5.50, 5.45, 5.25}, {5.65, 5.60, 5.40},
    {5.70, 5.65, 5.55}, {6.30, 6.30, 6.25}
  };

  private static List<List<Double>> ranks() {
    NaturalRanking ranking = new NaturalRanking(TiesStrategy.AVERAGE);
    List<List<Double>> ranks = new ArrayList<>();
    for (double[] row : TIMES) {
      double[] ranked = ranking.apply(row);
      ranks.add(List.of(ranked[0], ranked[1], ranked[2]));
    }
    return ranks;
  }

  @Test
  void statisticAndApproximateProbabilityAreThePublishedOnes() {
    Friedman test = Friedman.of(ranks());

    assertThat(test.statistic()).isCloseTo(11.142857, within(1e-6));
    assertThat(test.degreesOfFreedom()).isEqualTo(2);
    assertThat(test.chiSquaredP()).isCloseTo(0.003805, within(1e-6));
  }

  @Test
  void rankSumsAreThePublishedOnes() {
    for (int j = 0; j < 3; j++) {
      int sample = j;
      assertThat(ranks().stream().mapToDouble(row -> row.get(sample)).sum())
          .isEqualTo(new double[] {53, 47, 32}[j]);
    }
  }

  /** Exact and approximate probability of 22 rows lie close together. */
  @Test
  void exactProbabilityIsNearTheApproximateOne() {
    Friedman test = Friedman.of(ranks());

    assertThat(test.method()).isEqualTo(Friedman.Method.EXACT);
    assertThat(test.p()).isCloseTo(test.chiSquaredP(), within(0.0015)).isNotEqualTo(0);
  }
}
