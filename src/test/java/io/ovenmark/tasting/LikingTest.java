package io.ovenmark.tasting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.statistics.inference.TTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ojalgo.matrix.decomposition.QR;
import org.ojalgo.matrix.store.MatrixStore;
import org.ojalgo.matrix.store.R064Store;

class LikingTest {
  private static List<List<Double>> random(int tasters, int samples, int seed) {
    Random random = new Random(seed);
    List<List<Double>> rows = new ArrayList<>();
    for (int i = 0; i < tasters; i++) {
      List<Double> row = new ArrayList<>();
      for (int j = 0; j < samples; j++) {
        row.add((double) (1 + random.nextInt(9)));
      }
      rows.add(row);
    }
    return rows;
  }

  private static List<List<OptionalDouble>> known(List<List<Double>> rows) {
    return rows.stream().map(row -> row.stream().map(OptionalDouble::of).toList()).toList();
  }

  /** Sum of squares left by a linear model of tasters and, when wanted, of samples. */
  private static double left(List<List<Double>> rows, boolean withSamples) {
    int tasters = rows.size();
    int samples = rows.get(0).size();
    R064Store model =
        R064Store.FACTORY.make(tasters * samples, tasters + (withSamples ? samples - 1 : 0));
    R064Store scores = R064Store.FACTORY.make(tasters * samples, 1);
    for (int i = 0; i < tasters; i++) {
      for (int j = 0; j < samples; j++) {
        int at = i * samples + j;
        scores.set(at, 0, rows.get(i).get(j));
        model.set(at, i, 1);
        if (withSamples && j > 0) {
          model.set(at, tasters + j - 1, 1);
        }
      }
    }
    QR<Double> qr = QR.R064.make(model);
    qr.decompose(model);
    MatrixStore<Double> rest = scores.subtract(model.multiply(qr.getSolution(scores)));
    return Math.pow(rest.norm(), 2);
  }

  /** F by comparing two linear models that another library fits. */
  @ParameterizedTest
  @CsvSource({"5, 2", "8, 3", "12, 5"})
  void fIsThatOfTwoNestedLinearModels(int tasters, int samples) {
    List<List<Double>> rows = random(tasters, samples, tasters);
    Blocks blocks = Blocks.of(rows);
    double error = left(rows, true) / blocks.errorFreedom();
    double expected = (left(rows, false) - left(rows, true)) / blocks.samplesFreedom() / error;

    assertThat(blocks.f().orElseThrow()).isCloseTo(expected, within(1e-8));
  }

  @Test
  void withTwoSamplesItIsThePairedTestOfTheLibrary() {
    List<List<Double>> rows = random(9, 2, 4);
    double[] first = rows.stream().mapToDouble(row -> row.get(0)).toArray();
    double[] second = rows.stream().mapToDouble(row -> row.get(1)).toArray();
    TTest.Result expected = TTest.withDefaults().pairedTest(first, second);
    Blocks blocks = Blocks.of(rows);

    assertThat(blocks.p()).isCloseTo(expected.getPValue(), within(1e-12));
    assertThat(blocks.f().orElseThrow())
        .isCloseTo(Math.pow(expected.getStatistic(), 2), within(1e-9));
  }

  /** Scores 5, 6, 7, 8: mean 6.5, deviation 1.290994, t(3) 3.182446: ±2.054260. */
  @Test
  void theIntervalOfAMeanByHand() {
    Liking.One one =
        Liking.of(known(List.of(List.of(5.0), List.of(6.0), List.of(7.0), List.of(8.0))), 1)
            .samples()
            .get(0);

    assertThat(one.mean()).hasValue(6.5);
    assertThat(one.deviation().orElseThrow()).isCloseTo(1.290994, within(1e-6));
    assertThat(one.lowest().orElseThrow()).isCloseTo(6.5 - 2.054260, within(1e-5));
    assertThat(one.highest().orElseThrow()).isCloseTo(6.5 + 2.054260, within(1e-5));
    assertThat(one.counts()).containsExactly(0, 0, 0, 0, 1, 1, 1, 1, 0);
  }

  @Test
  void whoLeftASampleOutCountsForTheOthersOnly() {
    List<List<OptionalDouble>> rows = new ArrayList<>(known(random(6, 2, 8)));
    rows.add(List.of(OptionalDouble.of(9), OptionalDouble.empty()));
    Liking liking = Liking.of(rows, 2);

    assertThat(liking.samples().get(0).scored()).isEqualTo(7);
    assertThat(liking.samples().get(1).scored()).isEqualTo(6);
    assertThat(liking.blocks().orElseThrow().tasters()).isEqualTo(6);
  }

  @Test
  void fewAnswersLeaveWhatTheyCannotTellUnknown() {
    Liking none = Liking.of(List.of(), 2);
    Liking.One single = Liking.of(known(List.of(List.of(7.0))), 1).samples().get(0);

    assertThat(none.samples()).allMatch(one -> one.mean().isEmpty());
    assertThat(none.blocks()).isEmpty();
    assertThat(single.mean()).hasValue(7);
    assertThat(single.lowest()).isEmpty();
  }

  @Test
  void tastersWhoDifferInLevelOnlyLeaveNoErrorToCompareWith() {
    Blocks apart = Blocks.of(List.of(List.of(5.0, 7.0), List.of(6.0, 8.0), List.of(4.0, 6.0)));
    Blocks alike = Blocks.of(List.of(List.of(5.0, 5.0), List.of(6.0, 6.0)));

    assertThat(apart.f()).isEmpty();
    assertThat(apart.p()).isZero();
    assertThat(alike.p()).isEqualTo(1);
    assertThat(alike.pairs()).noneMatch(Blocks.Pair::apart);
  }
}
