package io.ovenmark.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MixedModelTest {
  private static final Offset<Double> EXACT = within(1e-9);

  /** So many bakes of so many pieces, with candidates that move between trays or within them. */
  private record Simulated(int[] bake, List<double[]> candidates, double[] truth, double[] outcome) {
    MixedModel.Fit fit() {
      return new MixedModel(bake, candidates, outcome).fit(0.1);
    }
  }

  private static Simulated simulated(
      Random random, int bakes, int pieces, int candidates, double width, double bakeChance) {
    int count = bakes * pieces;
    int[] bake = IntStream.range(0, count).map(i -> i / pieces).toArray();
    List<double[]> columns = new ArrayList<>();
    double[] truth = new double[candidates];
    for (int k = 0; k < candidates; k++) {
      double[] column = new double[count];
      // The first two are oven settings, the others what a dough is made of; some move together.
      double level = 0;
      for (int i = 0; i < count; i++) {
        if (k < 2) {
          column[i] = random.nextInt(3);
        } else {
          if (i % pieces == 0 && random.nextInt(3) == 0) {
            level = random.nextInt(4);
          }
          column[i] = level;
        }
      }
      if (Arrays.stream(column).distinct().count() == 1) {
        column[0] += 1;
      }
      columns.add(column);
      truth[k] = width * random.nextGaussian();
    }
    double[] outcome = new double[count];
    double chance = 0;
    for (int i = 0; i < count; i++) {
      chance = i % pieces == 0 ? bakeChance * random.nextGaussian() : chance;
      outcome[i] = 40 + chance + random.nextGaussian();
      for (int k = 0; k < candidates; k++) {
        double[] column = columns.get(k);
        double range =
            Arrays.stream(column).max().getAsDouble() - Arrays.stream(column).min().getAsDouble();
        outcome[i] += truth[k] * column[i] / range;
      }
    }
    for (int k = 0; k < candidates; k++) {
      double[] column = columns.get(k);
      truth[k] /=
          Arrays.stream(column).max().getAsDouble() - Arrays.stream(column).min().getAsDouble();
    }
    return new Simulated(bake, columns, truth, outcome);
  }

  /** Histories whose effects and chances are of several sizes: 90 % of the truth is inside. */
  @ParameterizedTest
  @CsvSource({"0.3, 0.5", "2, 0.3", "2, 1", "5, 0.5", "5, 2", "0, 1", "0, 0", "1, 3"})
  void theTruthLiesInTheIntervalAboutAsOftenAsStated(double width, double bakeChance) {
    Random random = new Random(20260314);
    int inside = 0;
    int all = 0;
    for (int round = 0; round < 80; round++) {
      Simulated made = simulated(random, 5 + round % 8, 3, 9, width, bakeChance);
      List<MixedModel.Estimate> effects = made.fit().effects();
      for (int k = 0; k < effects.size(); k++) {
        all++;
        inside +=
            effects.get(k).low() <= made.truth()[k] && made.truth()[k] <= effects.get(k).high()
                ? 1
                : 0;
      }
    }
    // Where effects are next to nothing the prior is right to be surer than the bakes.
    assertThat((double) inside / all).isBetween(0.86, width < 0.5 ? 1.0 : 0.94);
  }

  /** Where all that may be is nothing, ten in a hundred at most seem to be something. */
  @Test
  void fewEffectsStandOutWhereThereAreNone() {
    Random random = new Random(7);
    int out = 0;
    int all = 0;
    for (int round = 0; round < 80; round++) {
      for (MixedModel.Estimate each : simulated(random, 9, 3, 9, 0, 1).fit().effects()) {
        all++;
        out += each.low() > 0 || each.high() < 0 ? 1 : 0;
      }
    }
    assertThat((double) out / all).isLessThan(0.1);
  }

  @Test
  void aLargeEffectIsFoundWithItsSize() {
    int[] bake = {0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5};
    double[] water = {0, 0, 10, 10, 0, 0, 20, 20, 10, 10, 20, 20};
    double[] height = {45, 46, 40, 41, 46, 45, 36, 35, 41, 40, 36, 35};
    MixedModel.Estimate effect =
        new MixedModel(bake, List.of(water), height).fit(1).effects().get(0);
    assertThat(effect.mean()).isCloseTo(-0.5, within(0.03));
    assertThat(effect.high()).isNegative();
    assertThat(effect.sureOfSign()).isGreaterThan(0.99);
  }

  @Test
  void addingAConstantMovesNoEffect() {
    Simulated made = simulated(new Random(3), 7, 3, 6, 2, 1);
    double[] higher = Arrays.stream(made.outcome()).map(value -> value + 1000).toArray();
    List<MixedModel.Estimate> moved =
        new MixedModel(made.bake(), made.candidates(), higher).fit(0.1).effects();
    same(made.fit().effects(), moved, 1, 1e-6);
  }

  @Test
  void anotherUnitOfAChangeOnlyChangesTheUnitOfItsEffect() {
    Simulated made = simulated(new Random(4), 7, 3, 6, 2, 1);
    List<double[]> ounces =
        made.candidates().stream()
            .map(each -> Arrays.stream(each).map(value -> 5 + value / 28.349523125).toArray())
            .toList();
    same(
        made.fit().effects(),
        new MixedModel(made.bake(), ounces, made.outcome()).fit(0.1).effects(),
        1 / 28.349523125,
        1e-6);
  }

  @Test
  void theOrderOfBakesAndPiecesDoesNotMatter() {
    Simulated made = simulated(new Random(5), 6, 3, 5, 2, 1);
    int count = made.outcome().length;
    // Backwards: the last bake is numbered first.
    int[] bake = IntStream.range(0, count).map(i -> 5 - made.bake()[count - 1 - i]).toArray();
    List<double[]> candidates =
        made.candidates().stream()
            .map(each -> IntStream.range(0, count).mapToDouble(i -> each[count - 1 - i]).toArray())
            .toList();
    double[] outcome =
        IntStream.range(0, count).mapToDouble(i -> made.outcome()[count - 1 - i]).toArray();
    same(
        made.fit().effects(),
        new MixedModel(bake, candidates, outcome).fit(0.1).effects(),
        1,
        1e-8);
  }

  /** Of two that always moved together neither is credited with more than the other. */
  @Test
  void whatCannotBeToldApartIsSharedEvenly() {
    int[] bake = {0, 1, 2, 3, 4, 5};
    double[] one = {0, 1, 0, 1, 1, 0};
    double[] outcome = {40, 50, 41, 49, 50, 40};
    MixedModel.Fit both = new MixedModel(bake, List.of(one, one.clone()), outcome).fit(1);
    assertThat(both.effects().get(0).mean())
        .isCloseTo(both.effects().get(1).mean(), EXACT)
        .isBetween(3.5, 5.0);
  }

  /** Four pieces of one tray say less of a dough than four trays do. */
  @Test
  void piecesOfOneTrayDoNotCountAsSoManyBakes() {
    double[] chance = {0, 3, -2, 0, 2, -1, -3, 2, 1, -2};
    double[] water = new double[40];
    double[] height = new double[40];
    Random random = new Random(11);
    for (int i = 0; i < 40; i++) {
      water[i] = i / 4 % 2;
      height[i] = 40 + 10 * water[i] + chance[i / 4] + 0.5 * random.nextGaussian();
    }
    int[] trays = IntStream.range(0, 40).map(i -> i / 4).toArray();
    int[] bakes = IntStream.range(0, 40).toArray();
    double clustered =
        new MixedModel(trays, List.of(water), height).fit(0.5).effects().get(0).deviation();
    double single =
        new MixedModel(bakes, List.of(water), height).fit(0.5).effects().get(0).deviation();
    assertThat(clustered).isGreaterThan(1.5 * single);
  }

  private static void same(
      List<MixedModel.Estimate> one, List<MixedModel.Estimate> other, double unit, double off) {
    assertThat(other).hasSameSizeAs(one);
    for (int k = 0; k < one.size(); k++) {
      assertThat(other.get(k).mean() * unit).isCloseTo(one.get(k).mean(), within(off));
      assertThat(other.get(k).low() * unit).isCloseTo(one.get(k).low(), within(off));
      assertThat(other.get(k).high() * unit).isCloseTo(one.get(k).high(), within(off));
    }
  }
}
