package io.ovenmark.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FactorialTest {
  static Stream<Factorial> designs() {
    return Stream.concat(
        Stream.of(1, 2, 3, 4, 5).map(Factorial::full), Stream.of(3, 4, 5).map(Factorial::half));
  }

  @ParameterizedTest
  @MethodSource("designs")
  void everyFactorStandsAsOftenHighAsLow(Factorial design) {
    for (int word : design.words()) {
      int sum = 0;
      for (int setting = 0; setting < design.settings(); setting++) {
        sum += design.sign(setting, word);
      }
      assertThat(sum).as("balance of %d", word).isZero();
    }
  }

  @ParameterizedTest
  @MethodSource("designs")
  void contrastsThatCanBeToldApartAreOrthogonal(Factorial design) {
    for (int one : design.words()) {
      for (int other : design.words()) {
        int product = 0;
        for (int setting = 0; setting < design.settings(); setting++) {
          product += design.sign(setting, one) * design.sign(setting, other);
        }
        assertThat(product).isEqualTo(one == other ? design.settings() : 0);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("designs")
  void thereIsOneContrastLessThanSettingsAndNoSettingTwice(Factorial design) {
    Set<List<Boolean>> seen = new HashSet<>();
    for (int setting = 0; setting < design.settings(); setting++) {
      int here = setting;
      seen.add(
          Stream.iterate(0, f -> f + 1)
              .limit(design.factors())
              .map(factor -> design.isHigh(here, factor))
              .toList());
    }

    assertThat(seen).hasSize(design.settings());
    assertThat(design.words()).hasSize(design.settings() - 1).doesNotHaveDuplicates();
  }

  /** The resolution is the length of the shortest word that is the same as the mean. */
  @ParameterizedTest
  @MethodSource("designs")
  void theResolutionIsThatOfItsShortestConstantWord(Factorial design) {
    int shortest = Integer.MAX_VALUE;
    for (int word = 1; word < 1 << design.factors(); word++) {
      int sum = 0;
      for (int setting = 0; setting < design.settings(); setting++) {
        sum += design.sign(setting, word);
      }
      if (Math.abs(sum) == design.settings()) {
        shortest = Math.min(shortest, Integer.bitCount(word));
      }
    }

    assertThat(design.resolution().orElse(Integer.MAX_VALUE)).isEqualTo(shortest);
  }

  @ParameterizedTest
  @MethodSource("designs")
  void anAliasHasTheSameSignsEverywhere(Factorial design) {
    for (int word : design.words()) {
      design
          .alias(word)
          .ifPresent(
              alias -> {
                for (int setting = 0; setting < design.settings(); setting++) {
                  assertThat(design.sign(setting, alias)).isEqualTo(design.sign(setting, word));
                }
              });
    }
  }

  @Test
  void upToThreeFactorsAreBakedInFullAndMoreInHalf() {
    assertThat(Factorial.of(3).settings()).isEqualTo(8);
    assertThat(Factorial.of(4).settings()).isEqualTo(8);
    assertThat(Factorial.of(5).settings()).isEqualTo(16);
    assertThat(Factorial.of(5).resolution()).contains(5);
    assertThat(Factorial.of(2).resolution()).isEmpty();
  }

  @Test
  void refusesWhatIsNoDesign() {
    assertThatThrownBy(() -> Factorial.full(0)).hasMessageContaining("1 to 5");
    assertThatThrownBy(() -> Factorial.full(6)).hasMessageContaining("1 to 5");
    assertThatThrownBy(() -> Factorial.half(2)).hasMessageContaining("3 to 5");
    assertThatThrownBy(() -> Factorial.full(2).effect(1, List.of(1.0, 2.0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("4 responses");
  }
}
