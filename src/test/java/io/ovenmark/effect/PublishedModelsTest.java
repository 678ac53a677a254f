package io.ovenmark.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The linear model with a flat prior against published figures. */
class PublishedModelsTest {
  /** The part of a figure that may be lost: a ten-millionth. */
  private static final double PERCENT = 1e-5;

  /**
   * NIST Statistical Reference Datasets, Linear Regression, Longley: certified coefficients,
   * standard deviations and residual standard deviation. The data are famous for columns that
   * nearly depend on each other.
   */
  private static final double[][] LONGLEY = {
    {15.0618722713733, 84.9149257747669},
    {-0.0358191792925910, 0.0334910077722432},
    {-2.02022980381683, 0.488399681651699},
    {-1.03322686717359, 0.214274163161675},
    {-0.0511041056535807, 0.226073200069370},
    {1829.15146461355, 455.478499142212}
  };

  private static final double LONGLEY_INTERCEPT = -3482258.63459582;
  private static final double LONGLEY_RESIDUAL = 304.854073561965;

  private static List<double[]> rows(String resource) throws IOException {
    try (InputStream in = PublishedModelsTest.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> Character.isDigit(line.charAt(0)))
          .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray())
          .toList();
    }
  }

  @Test
  void longleyIsMet() throws IOException {
    List<double[]> rows = rows("/published/longley.csv");
    assertThat(rows).hasSize(16);
    double[] outcome = rows.stream().mapToDouble(row -> row[0]).toArray();
    List<double[]> candidates = new ArrayList<>();
    for (int k = 1; k <= 6; k++) {
      int column = k;
      candidates.add(rows.stream().mapToDouble(row -> row[column]).toArray());
    }
    MixedModel.Fit fit =
        new MixedModel(IntStream.range(0, 16).toArray(), candidates, outcome).leastSquares();
    double intercept = Arrays.stream(outcome).average().orElseThrow();
    for (int k = 0; k < 6; k++) {
      MixedModel.Estimate estimate = fit.effects().get(k);
      assertThat(estimate.mean()).isCloseTo(LONGLEY[k][0], withinPercentage(PERCENT));
      assertThat(estimate.deviation()).isCloseTo(LONGLEY[k][1], withinPercentage(PERCENT));
      intercept -= estimate.mean() * Arrays.stream(candidates.get(k)).average().orElseThrow();
    }
    assertThat(intercept).isCloseTo(LONGLEY_INTERCEPT, withinPercentage(PERCENT));
    assertThat(fit.pieceDeviation()).isCloseTo(LONGLEY_RESIDUAL, withinPercentage(PERCENT));
  }

  /**
   * The one-way analysis of variance of the NIST/SEMATECH e-Handbook of Statistical Methods,
   * 7.4.3.3: three levels, five values each; sum of squares for error 17.452 with 12 degrees of
   * freedom, between levels 27.897 with 2, F 9.59 (the values were read in a copy of the example;
   * the figures are from memory and follow from the values).
   */
  @Test
  void theOneWayAnalysisOfVarianceOfTheHandbookIsMet() {
    double[] values = {
      6.9, 5.4, 5.8, 4.6, 4.0, 8.3, 6.8, 7.8, 9.2, 6.5, 8.0, 10.5, 8.1, 6.9, 9.3
    };
    double[] second = IntStream.range(0, 15).mapToDouble(i -> i / 5 == 1 ? 1 : 0).toArray();
    double[] third = IntStream.range(0, 15).mapToDouble(i -> i / 5 == 2 ? 1 : 0).toArray();
    MixedModel.Fit fit =
        new MixedModel(IntStream.range(0, 15).toArray(), List.of(second, third), values)
            .leastSquares();
    double error = fit.pieceDeviation() * fit.pieceDeviation();
    assertThat(error * 12).isCloseTo(17.452, offset(5e-4));
    double mean = Arrays.stream(values).average().orElseThrow();
    double total = Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum();
    assertThat(total - error * 12).isCloseTo(27.897, offset(5e-4));
    assertThat((total - error * 12) / 2 / error).isCloseTo(9.59, offset(5e-3));
    assertThat(fit.effects().get(0).mean()).isCloseTo(7.72 - 5.34, offset(1e-9));
    assertThat(fit.effects().get(1).mean()).isCloseTo(8.56 - 5.34, offset(1e-9));
  }
}
