package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.window.LinearFit;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The regression of the bake window with a vanishing prior is ordinary least squares. Data and
 * certified values: NIST/ITL Statistical Reference Datasets, linear least squares (Norris, Pontius,
 * Longley, Wampler1). The tolerances are what double precision leaves on data of their condition.
 */
class LeastSquaresTest {
  private record Data(List<double[]> predictors, double[] values) {}

  private static Data data(String name) {
    List<double[]> predictors = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    String path = "/published/" + name + ".csv";
    try (InputStream in = LeastSquaresTest.class.getResourceAsStream(path)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      text.lines()
          .filter(line -> !line.startsWith("#") && !line.startsWith("y"))
          .forEach(
              line -> {
                String[] cells = line.split(",");
                values.add(Double.parseDouble(cells[0]));
                double[] row = new double[cells.length - 1];
                for (int i = 0; i < row.length; i++) {
                  row[i] = Double.parseDouble(cells[i + 1]);
                }
                predictors.add(row);
              });
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return new Data(predictors, values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** A polynomial in the one predictor. */
  private static LinearFit polynomial(Data data, int degree) {
    List<double[]> rows = new ArrayList<>();
    for (double[] predictor : data.predictors()) {
      double[] row = new double[degree + 1];
      for (int i = 0; i <= degree; i++) {
        row[i] = Math.pow(predictor[0], i);
      }
      rows.add(row);
    }
    return LinearFit.of(rows, data.values(), LinearFit.Prior.vanishing(degree + 1));
  }

  private static void check(LinearFit fit, int at, double value, double error, double tolerance) {
    assertThat(fit.coefficients().get(at) / value - 1).isCloseTo(0, within(tolerance));
    assertThat(fit.standardError(at) / error - 1).isCloseTo(0, within(tolerance));
  }

  @Test
  void norrisIsAsCertified() {
    Data norris = data("norris");
    assertThat(norris.values()).hasSize(36);
    LinearFit fit = polynomial(norris, 1);

    check(fit, 0, -0.262323073774029, 0.232818234301152, 1e-11);
    check(fit, 1, 1.00211681802045, 0.429796848199937e-3, 1e-12);
    assertThat(fit.noise()).isCloseTo(0.884796396144373, within(1e-12));
  }

  @Test
  void pontiusIsAsCertified() {
    Data pontius = data("pontius");
    assertThat(pontius.values()).hasSize(40);
    LinearFit fit = polynomial(pontius, 2);

    check(fit, 0, 0.673565789473684e-3, 0.107938612033077e-3, 1e-8);
    check(fit, 1, 0.732059160401003e-6, 0.157817399981659e-9, 1e-8);
    check(fit, 2, -0.316081871345029e-14, 0.486652849992036e-16, 1e-8);
    assertThat(fit.noise()).isCloseTo(0.205177424076185e-3, within(1e-12));
  }

  @Test
  void longleyIsAsCertified() {
    Data longley = data("longley");
    List<double[]> rows = new ArrayList<>();
    for (double[] predictor : longley.predictors()) {
      double[] row = new double[predictor.length + 1];
      row[0] = 1;
      System.arraycopy(predictor, 0, row, 1, predictor.length);
      rows.add(row);
    }
    LinearFit fit = LinearFit.of(rows, longley.values(), LinearFit.Prior.vanishing(7));

    check(fit, 0, -3482258.63459582, 890420.383607373, 1e-8);
    check(fit, 1, 15.0618722713733, 84.9149257747669, 1e-8);
    check(fit, 2, -0.0358191792925910, 0.0334910077722432, 1e-8);
    check(fit, 3, -2.02022980381683, 0.488399681651699, 1e-8);
    check(fit, 4, -1.03322686717359, 0.214274163161675, 1e-8);
    check(fit, 5, -0.0511041056535807, 0.226073200069370, 1e-8);
    check(fit, 6, 1829.15146461355, 455.478499142212, 1e-8);
    assertThat(fit.noise() / 304.854073561965 - 1).isCloseTo(0, within(1e-9));
  }

  @Test
  void wampler1IsAsCertified() {
    Data wampler = data("wampler1");
    assertThat(wampler.values()).hasSize(21);
    LinearFit fit = polynomial(wampler, 5);

    for (int i = 0; i <= 5; i++) {
      assertThat(fit.coefficients().get(i)).isCloseTo(1, within(1e-8));
      assertThat(fit.standardError(i)).isCloseTo(0, within(1e-6));
    }
    assertThat(fit.noise()).isCloseTo(0, within(1e-6));
  }
}
