package io.ovenmark.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MembersTest {
  /** 2.0E-3 and 2.2E-322 are doubles of which Java before 19 wrote a digit too many. */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "150, 150",
    "0.1, 0.1",
    "1e23, 1E+23",
    "2e23, 2E+23",
    "2.0E-3, 0.002",
    "4.9E-324, 4.9E-324",
    "2.2E-322, 2.2E-322",
    "1.7976931348623157E308, 1.7976931348623157E+308"
  })
  void writesTheShortestDecimal(double value, String decimal) {
    BigDecimal found = Members.decimal(value);
    assertThat(found.precision()).isLessThanOrEqualTo(new BigDecimal(decimal).precision());
    assertThat(found.doubleValue()).isEqualTo(value + 0.0);
  }

  @Test
  void everyDoubleComesBackAsItWas() {
    Random random = new Random(17);
    for (int round = 0; round < 20_000; round++) {
      double value = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(value)) {
        BigDecimal decimal = Members.decimal(value);
        assertThat(decimal.doubleValue()).isEqualTo(value);
        assertThat(decimal.precision()).isLessThanOrEqualTo(17);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesWhatJsonCannotHold(double value) {
    assertThatThrownBy(() -> Members.decimal(value)).isInstanceOf(NumberFormatException.class);
  }

  @Test
  void takesAKeptFieldOverOrDropsIt() {
    Extras one = extras("{\"a\": 1, \"b\": 2}");
    Extras other = extras("{\"b\": 3}");
    assertThat(one.with("b", other)).isEqualTo(extras("{\"a\": 1, \"b\": 3}"));
    assertThat(one.with("a", other)).isEqualTo(extras("{\"b\": 2}"));
    assertThat(other.with("b", one.with("b", Extras.NONE)).isEmpty()).isTrue();
    assertThat(Extras.of(Map.of())).isSameAs(Extras.NONE);
  }

  @Test
  void comparesKeptFieldsByValueNotByOrderOrPosition() {
    Extras one = extras("{\"a\": 1.0, \"b\": [true]}");
    Extras other = extras("{\n \"b\": [ true ],\n \"a\": 1}");
    assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
    assertThat(one).isNotEqualTo(extras("{\"a\": 1, \"b\": [false]}"));
  }

  private static Extras extras(String text) {
    return Fields.of("a.json", text.getBytes(UTF_8)).extras();
  }
}
