package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.cause.Factorial;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Main effects and interactions of two-level designs against worked examples. */
class FactorialEffectsTest {
  private static final int SPEED = 1;
  private static final int RATE = 2;
  private static final int GRIT = 4;
  private static final int DIRECTION = 8;
  private static final int BATCH = 16;

  /**
   * NIST/SEMATECH e-Handbook of Statistical Methods, 5.4.7.1 "Full factorial example", strength of
   * ceramic (CERAMIC.DAT), 2^5 settings in Yates' order: table speed, down feed rate, wheel grit,
   * direction, batch. Data and sums of squares as an analysis in R repeats them
   * (robertandrewstevens/DOE, pri471_.md).
   */
  private static final List<Double> CERAMIC =
      List.of(
          680.45, 722.48, 702.14, 666.93, 703.67, 642.14, 692.98, 669.26, //
          491.58, 475.52, 478.76, 568.23, 444.72, 410.37, 428.51, 491.47, //
          607.34, 620.80, 610.55, 638.04, 585.19, 586.17, 601.67, 608.31, //
          442.90, 434.41, 417.66, 510.84, 392.11, 343.22, 385.52, 446.73);

  @Test
  void sumsOfSquaresOfTheCeramicExperimentAreThoseOfTheHandbook() {
    Map<Integer, Integer> published =
        Map.ofEntries(
            Map.entry(SPEED, 894),
            Map.entry(RATE, 3497),
            Map.entry(GRIT, 12664),
            Map.entry(DIRECTION, 315133),
            Map.entry(BATCH, 33654),
            Map.entry(SPEED | RATE, 4873),
            Map.entry(SPEED | GRIT, 1839),
            Map.entry(SPEED | DIRECTION, 1637),
            Map.entry(SPEED | BATCH, 465),
            Map.entry(RATE | GRIT, 307),
            Map.entry(RATE | DIRECTION, 1973),
            Map.entry(RATE | BATCH, 199),
            Map.entry(GRIT | DIRECTION, 3158),
            Map.entry(GRIT | BATCH, 29),
            Map.entry(DIRECTION | BATCH, 1329),
            Map.entry(SPEED | RATE | GRIT, 357),
            Map.entry(SPEED | RATE | DIRECTION, 5896),
            Map.entry(GRIT | DIRECTION | BATCH, 32));
    Factorial design = Factorial.full(5);

    published.forEach(
        (word, squares) -> {
          double effect = design.effect(word, CERAMIC);
          assertThat(design.settings() / 4.0 * effect * effect).isCloseTo(squares, within(0.5));
        });
  }

  /**
   * The same handbook, the case of an eddy current probe (1.3.5.18 and 5.6.1): turns, winding
   * distance, gauge; data and effects from memory, each effect verified by hand from the data.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 3.1025", "2, -0.8675", "4, 0.2125", "3, 0.1275", "5, 0.2475", "6, 0.2975", "7, 0.1425"
  })
  void effectsOfTheEddyCurrentProbe(int word, double effect) {
    List<Double> responses = List.of(1.70, 4.57, 0.55, 3.39, 1.51, 4.59, 0.67, 4.29);

    assertThat(Factorial.full(3).effect(word, responses)).isCloseTo(effect, within(1e-12));
  }

  /**
   * Jain, The Art of Computer Systems Performance Analysis, 1991, chapter 17: memory, cache and
   * processors, throughput in MIPS; an effect there, q, is half of one here (numbers as
   * course notes of Virginia Tech, CS 5014, repeat them).
   */
  @ParameterizedTest
  @CsvSource({"1, 10", "2, 5", "4, 20", "3, 5", "5, 2", "6, 3", "7, 1"})
  void effectsOfTheWorkstation(int word, double half) {
    List<Double> responses = List.of(14.0, 22.0, 10.0, 34.0, 46.0, 58.0, 50.0, 86.0);

    assertThat(Factorial.full(3).effect(word, responses)).isEqualTo(2 * half);
  }

  @Test
  void theHalfOfTheCeramicExperimentGivesEachEffectTogetherWithItsAlias() {
    Factorial full = Factorial.full(5);
    Factorial half = Factorial.half(5);
    List<Double> responses = new ArrayList<>();
    for (int setting = 0; setting < half.settings(); setting++) {
      int same = 0;
      for (int factor = 0; factor < 5; factor++) {
        same |= half.isHigh(setting, factor) ? 1 << factor : 0;
      }
      responses.add(CERAMIC.get(same));
    }

    for (int word : half.words()) {
      assertThat(half.effect(word, responses))
          .isCloseTo(
              full.effect(word, CERAMIC) + full.effect(half.alias(word).orElseThrow(), CERAMIC),
              within(1e-9));
    }
  }
}
