package io.ovenmark.tasting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FriedmanTest {
  private static List<List<Double>> random(int tasters, int samples, boolean ties, int seed) {
    Random random = new Random(seed);
    List<List<Double>> rows = new ArrayList<>();
    for (int i = 0; i < tasters; i++) {
      List<Double> row = new ArrayList<>();
      for (int j = 1; j <= samples; j++) {
        row.add((double) j);
      }
      if (ties && random.nextBoolean()) {
        row.set(0, 1.5);
        row.set(1, 1.5);
      }
      Collections.shuffle(row, random);
      rows.add(row);
    }
    return rows;
  }

  /** Goes through every combination of everybody's orders, one by one. */
  private static double enumerated(List<List<Double>> rows) {
    List<List<List<Double>>> orders = new ArrayList<>();
    rows.forEach(row -> orders.add(orders(row)));
    double observed = spread(rows);
    int[] counts = new int[2];
    enumerate(orders, new ArrayList<>(), observed, counts);
    return (double) counts[0] / counts[1];
  }

  private static void enumerate(
      List<List<List<Double>>> orders, List<List<Double>> rows, double observed, int[] counts) {
    if (rows.size() == orders.size()) {
      counts[0] += spread(rows) >= observed - 1e-9 ? 1 : 0;
      counts[1]++;
      return;
    }
    for (List<Double> order : orders.get(rows.size())) {
      rows.add(order);
      enumerate(orders, rows, observed, counts);
      rows.remove(rows.size() - 1);
    }
  }

  private static List<List<Double>> orders(List<Double> row) {
    if (row.size() <= 1) {
      return List.of(row);
    }
    List<List<Double>> orders = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      List<Double> rest = new ArrayList<>(row);
      double head = rest.remove(i);
      for (List<Double> tail : orders(rest)) {
        List<Double> order = new ArrayList<>(List.of(head));
        order.addAll(tail);
        orders.add(order);
      }
    }
    return orders;
  }

  private static double spread(List<List<Double>> rows) {
    int samples = rows.get(0).size();
    double spread = 0;
    for (int j = 0; j < samples; j++) {
      int sample = j;
      double sum = rows.stream().mapToDouble(row -> row.get(sample)).sum();
      spread += Math.pow(sum - rows.size() * (samples + 1) / 2.0, 2);
    }
    return spread;
  }

  @ParameterizedTest
  @CsvSource({"2, 3", "4, 3", "6, 3", "3, 4", "2, 5", "7, 2"})
  void exactProbabilityIsThatOfGoingThroughAllOrders(int tasters, int samples) {
    for (int seed = 0; seed < 5; seed++) {
      for (boolean ties : new boolean[] {false, true}) {
        List<List<Double>> rows = random(tasters, samples, ties && samples > 2, seed);
        Friedman test = Friedman.of(rows);
        assertThat(test.method()).isEqualTo(Friedman.Method.EXACT);
        assertThat(test.p()).isCloseTo(enumerated(rows), within(1e-12));
      }
    }
  }

  /** By hand: all four rank alike, sums 4, 8, 12; 12·32/(4·3·4) = 8, p = 6 / 6^4. */
  @Test
  void fourOfOneMindByHand() {
    Friedman test = Friedman.of(Collections.nCopies(4, List.of(1.0, 2.0, 3.0)));

    assertThat(test.statistic()).isCloseTo(8, within(1e-12));
    assertThat(test.p()).isCloseTo(1.0 / 216, within(1e-15));
  }

  @Test
  void whoTiesEverythingShowsNothing() {
    Friedman test = Friedman.of(Collections.nCopies(5, List.of(2.0, 2.0, 2.0)));

    assertThat(test.statistic()).isZero();
    assertThat(test.p()).isEqualTo(1);
  }

  @Test
  void manySamplesAreJudgedByPermutationsAlwaysTheSame() {
    List<List<Double>> rows = random(8, 7, false, 3);
    Friedman test = Friedman.of(rows);

    assertThat(test.method()).isEqualTo(Friedman.Method.PERMUTATIONS);
    assertThat(test).isEqualTo(Friedman.of(rows));
    assertThat(test.p()).isCloseTo(test.chiSquaredP(), within(0.05));
  }

  @Test
  void largePanelsAreJudgedByChiSquared() {
    Friedman test = Friedman.of(random(400, 6, false, 5));

    assertThat(test.method()).isEqualTo(Friedman.Method.CHI_SQUARED);
    assertThat(test.p()).isEqualTo(test.chiSquaredP());
  }

  @Test
  void oneSampleCannotBeRanked() {
    assertThatIllegalArgumentException().isThrownBy(() -> Friedman.of(List.of(List.of(1.0))));
  }

  /** z = 1.959964; 1.959964 √(10·3·4/6) = 8.7653. */
  @Test
  void theLeastSignificantDifferenceOfRankSumsByHand() {
    Ranking ranking = Ranking.of(Collections.nCopies(10, List.of(3, 1, 2)), 3);

    assertThat(ranking.rankSums()).containsExactly(30, 10, 20);
    assertThat(ranking.leastDifference()).isCloseTo(8.7653, within(1e-4));
    assertThat(ranking.agreement()).isCloseTo(1, within(1e-12));
    assertThat(ranking.pairs())
        .containsExactly(
            new Ranking.Pair(2, 1, 20, true),
            new Ranking.Pair(3, 1, 10, true),
            new Ranking.Pair(2, 3, 10, true));
  }
}
