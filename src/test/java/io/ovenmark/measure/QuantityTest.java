package io.ovenmark.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.BinaryOperator;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
  private static final double INFINITE = Double.POSITIVE_INFINITY;
  private static final Quantity UNKNOWN = Quantity.UNKNOWN;
  private static final Quantity ANYTHING = Quantity.ANYTHING;
  private static final Quantity ZERO = Quantity.ZERO;

  private static Quantity known(double value) {
    return Quantity.known(value);
  }

  private static Quantity between(double low, double high) {
    return Quantity.between(low, high);
  }

  /** The table of the class comment, and its neighbours. */
  static Stream<Arguments> rules() {
    Quantity some = between(2, 4);
    return Stream.of(
        Arguments.of("3 + unknown", known(3).plus(UNKNOWN), Quantity.atLeast(3)),
        Arguments.of("3 − unknown", known(3).minus(UNKNOWN), between(-INFINITE, 3)),
        Arguments.of("unknown × 0", UNKNOWN.times(0), ZERO),
        Arguments.of("unknown × known 0", UNKNOWN.times(ZERO), ZERO),
        Arguments.of("0 × anything", ZERO.times(ANYTHING), ZERO),
        Arguments.of("3 ÷ unknown", known(3).dividedBy(UNKNOWN), UNKNOWN),
        Arguments.of("3 ÷ [0, 2]", known(3).dividedBy(between(0, 2)), Quantity.atLeast(1.5)),
        Arguments.of("3 ÷ 0", known(3).dividedBy(0), UNKNOWN),
        Arguments.of("0 ÷ 0", ZERO.dividedBy(ZERO), UNKNOWN),
        Arguments.of("−3 ÷ 0", known(-3).dividedBy(0), ANYTHING),
        Arguments.of("3 + 4", known(3).plus(known(4)), known(7)),
        Arguments.of("3 − 4", known(3).minus(known(4)), known(-1)),
        Arguments.of("unknown − unknown", UNKNOWN.minus(UNKNOWN), ANYTHING),
        Arguments.of("unknown + unknown", UNKNOWN.plus(UNKNOWN), UNKNOWN),
        Arguments.of("anything + 3", ANYTHING.plus(known(3)), ANYTHING),
        Arguments.of("[2, 4] × 3", some.times(3), between(6, 12)),
        Arguments.of("[2, 4] × −3", some.times(-3), between(-12, -6)),
        Arguments.of("unknown × −1", UNKNOWN.times(-1), between(-INFINITE, 0)),
        Arguments.of("[2, 4] × [2, 4]", some.times(some), between(4, 16)),
        Arguments.of("[−1, 4] × [2, 3]", between(-1, 4).times(between(2, 3)), between(-3, 12)),
        Arguments.of("[2, 4] ÷ 2", some.dividedBy(2), between(1, 2)),
        Arguments.of("[2, 4] ÷ −2", some.dividedBy(-2), between(-2, -1)),
        Arguments.of("[2, 4] ÷ [1, 2]", some.dividedBy(between(1, 2)), between(1, 4)),
        Arguments.of("[2, 4] ÷ at least 2", some.dividedBy(Quantity.atLeast(2)), between(0, 2)),
        Arguments.of("[−4, 2] ÷ [1, 2]", between(-4, 2).dividedBy(between(1, 2)), between(-4, 2)),
        Arguments.of("2 ÷ [−1, 1]", known(2).dividedBy(between(-1, 1)), ANYTHING),
        Arguments.of("49 ÷ 49", known(49).dividedBy(49), known(1)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void keepsItsRules(String rule, Quantity result, Quantity expected) {
    assertThat(result).isEqualTo(expected).hasSameHashCodeAs(expected);
  }

  static Stream<Arguments> shown() {
    return Stream.of(
        Arguments.of(known(3.1), "3.1"),
        Arguments.of(known(-0.0), "0"),
        Arguments.of(known(1e21), "1000000000000000000000"),
        Arguments.of(UNKNOWN, "unknown"),
        Arguments.of(ANYTHING, "unknown"),
        Arguments.of(Quantity.atLeast(3.1), "at least 3.1"),
        Arguments.of(Quantity.atLeast(-2), "at least -2"),
        Arguments.of(Quantity.atMost(4), "at most 4"),
        Arguments.of(between(-INFINITE, -1), "at most -1"),
        Arguments.of(between(1, 2.5), "between 1 and 2.5"));
  }

  @ParameterizedTest
  @MethodSource("shown")
  void showsItselfInWords(Quantity quantity, String words) {
    assertThat(quantity).hasToString(words);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesNumbersThatAreNone(double value) {
    assertThatIllegalArgumentException().isThrownBy(() -> known(value));
    assertThatIllegalArgumentException().isThrownBy(() -> UNKNOWN.times(value));
    assertThatIllegalArgumentException().isThrownBy(() -> UNKNOWN.dividedBy(value));
  }

  @Test
  void refusesBoundsThatAreNone() {
    assertThatIllegalArgumentException().isThrownBy(() -> between(2, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> between(Double.NaN, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> between(1, Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> Quantity.atLeast(INFINITE));
    assertThatIllegalArgumentException().isThrownBy(() -> between(-INFINITE, -INFINITE));
    assertThatIllegalArgumentException().isThrownBy(() -> Quantity.atMost(-1));
  }

  @Test
  void tellsKnownFromUnknown() {
    assertThat(Quantity.of(OptionalDouble.of(3)).value()).hasValue(3);
    assertThat(Quantity.of(OptionalDouble.empty())).isEqualTo(UNKNOWN);
    assertThat(Quantity.atLeast(3).value()).isEmpty();
    assertThat(Quantity.atLeast(3).isUnknown()).isFalse();
    assertThat(Quantity.atLeast(0).isUnknown()).isTrue();
    assertThat(UNKNOWN.isKnown()).isFalse();
    assertThat(ZERO.isUnknown()).isFalse();
    assertThat(known(0.0)).isEqualTo(known(-0.0)).hasSameHashCodeAs(known(-0.0));
  }

  @Test
  void aPartIsNoMoreThanItsWholeAndAMassNotNegative() {
    assertThat(UNKNOWN.noMoreThan(known(5))).isEqualTo(between(0, 5));
    assertThat(between(6, 9).noMoreThan(known(5))).isEqualTo(known(5));
    assertThat(known(3).noMoreThan(UNKNOWN)).isEqualTo(known(3));
    assertThat(ANYTHING.notNegative()).isEqualTo(UNKNOWN);
    assertThat(between(-3, 2).notNegative()).isEqualTo(between(0, 2));
    assertThat(known(-3).notNegative()).isEqualTo(ZERO);
    assertThat(known(3).notNegative()).isEqualTo(known(3));
  }

  @Test
  void anOverflowIsUnboundedNeverNaN() {
    Quantity huge = known(1e308).times(10);
    assertThat(huge.isKnown()).isFalse();
    assertThat(huge.low()).isEqualTo(Double.MAX_VALUE);
    assertThat(huge.high()).isEqualTo(INFINITE);
    assertThat(huge.minus(huge).low()).isEqualTo(-INFINITE);
    assertThat(huge.minus(huge).high()).isEqualTo(INFINITE);
    assertThat(known(1e300).dividedBy(known(1e-300)).isKnown()).isFalse();
    assertThat(huge.dividedBy(huge).high()).isEqualTo(INFINITE);
  }

  @Test
  void everyResultContainsWhatItsPartsCouldGive() {
    Random random = new Random(1975);
    for (int round = 0; round < 20_000; round++) {
      Quantity a = any(random, true);
      Quantity b = any(random, true);
      Quantity divisor = any(random, false);
      double x = within(a, random);
      double y = within(b, random);
      double z = within(divisor, random);
      contains(a, b, x, y, Quantity::plus, Double::sum);
      contains(a, b, x, y, Quantity::minus, (p, q) -> p - q);
      contains(a, b, x, y, Quantity::times, (p, q) -> p * q);
      if (z != 0) {
        contains(a, divisor, x, z, Quantity::dividedBy, (p, q) -> p / q);
      }
      double factor = random.nextInt(4) == 0 ? 0 : random.nextGaussian() * 10;
      contains(a, b, x, y, (p, q) -> p.times(factor), (p, q) -> p * factor);
      if (factor != 0) {
        contains(a, b, x, y, (p, q) -> p.dividedBy(factor), (p, q) -> p / factor);
      }
      contains(a, b, x, y, (p, q) -> p.notNegative(), (p, q) -> Math.max(0, p));
    }
  }

  @Test
  void knownNumbersStayKnown() {
    Random random = new Random(1976);
    for (int round = 0; round < 5_000; round++) {
      double x = random.nextInt(5) == 0 ? 0 : random.nextGaussian() * 100;
      double y = random.nextGaussian() * 100;
      assertThat(known(x).plus(known(y)).value()).hasValue(x + y + 0.0);
      assertThat(known(x).minus(known(y)).value()).hasValue(x - y + 0.0);
      assertThat(known(x).times(known(y)).value()).hasValue(x * y + 0.0);
      assertThat(known(x).times(y).value()).hasValue(x * y + 0.0);
      if (y > 0) {
        assertThat(known(x).dividedBy(known(y)).value()).hasValue(x / y + 0.0);
        assertThat(known(x).dividedBy(y).value()).hasValue(x / y + 0.0);
      }
    }
  }

  @Test
  void knowingMoreNeverWidensAResult() {
    Random random = new Random(1977);
    for (int round = 0; round < 5_000; round++) {
      Quantity wide = any(random, true);
      Quantity narrow = known(within(wide, random));
      Quantity other = any(random, false);
      assertInside(narrow.plus(other), wide.plus(other));
      assertInside(narrow.minus(other), wide.minus(other));
      assertInside(narrow.times(other), wide.times(other));
      assertInside(narrow.dividedBy(other), wide.dividedBy(other));
      assertInside(narrow.noMoreThan(other), wide.noMoreThan(other));
    }
  }

  private static void assertInside(Quantity inner, Quantity outer) {
    assertThat(inner.low()).isGreaterThanOrEqualTo(outer.low());
    assertThat(inner.high()).isLessThanOrEqualTo(outer.high());
  }

  private static void contains(
      Quantity a,
      Quantity b,
      double x,
      double y,
      BinaryOperator<Quantity> operation,
      DoubleBinaryOperator pointwise) {
    Quantity result = operation.apply(a, b);
    assertThat(pointwise.applyAsDouble(x, y) + 0.0)
        .as("%s and %s at %s and %s", a, b, x, y)
        .isBetween(result.low(), result.high());
  }

  private static Quantity any(Random random, boolean signed) {
    double shift = signed ? -20 : 0;
    double one = random.nextInt(5) == 0 ? 0 : random.nextDouble() * 40 + shift;
    double two = random.nextInt(5) == 0 ? one : random.nextDouble() * 40 + shift;
    return switch (random.nextInt(8)) {
      case 0 -> UNKNOWN;
      case 1 -> signed ? ANYTHING : UNKNOWN;
      case 2 -> Quantity.atLeast(one);
      case 3 -> Quantity.atMost(Math.abs(one));
      case 4 -> known(one);
      default -> between(Math.min(one, two), Math.max(one, two));
    };
  }

  private static double within(Quantity quantity, Random random) {
    double low = Double.isInfinite(quantity.low()) ? -1e6 : quantity.low();
    double high = Double.isInfinite(quantity.high()) ? Math.max(low, 1e6) : quantity.high();
    return switch (random.nextInt(4)) {
      case 0 -> low;
      case 1 -> high;
      default -> Math.min(high, low + (high - low) * random.nextDouble());
    };
  }
}
