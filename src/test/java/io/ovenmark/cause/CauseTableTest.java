package io.ovenmark.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.pantry.BuiltInPantry;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class CauseTableTest {
  static Stream<FindingVocabulary> faults() {
    return Arrays.stream(FindingVocabulary.values()).filter(finding -> !finding.merit());
  }

  @ParameterizedTest
  @MethodSource("faults")
  void everyFaultHasCausesThatAreTestedOnFigures(FindingVocabulary fault) {
    assertThat(CauseTable.of(fault)).hasSizeGreaterThanOrEqualTo(3);
    Set<Gauge> gauges = new HashSet<>();
    for (int i = 0; i < CauseTable.of(fault).size(); i++) {
      Cause cause = CauseTable.of(fault).get(i);
      assertThat(cause.finding()).isEqualTo(fault);
      assertThat(cause.rank()).isEqualTo(i + 1);
      assertThat(gauges.add(cause.gauge())).as("one cause a gauge: %s", cause).isTrue();
      assertThat(cause.words()).isNotBlank().doesNotEndWith(".");
      assertThat(cause.against()).isNotBlank().doesNotEndWith(".");
      assertThat(cause.origin()).isNotBlank();
    }
  }

  @Test
  void meritsHaveNone() {
    assertThat(CauseTable.of(FindingVocabulary.EVEN_CRUMB)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Gauge.class)
  void everyGaugeIsTheTestOfSomeCauseAndIsFoundByItsKey(Gauge gauge) {
    assertThat(faults().flatMap(fault -> CauseTable.of(fault).stream()).map(Cause::gauge))
        .contains(gauge);
    assertThat(Gauge.withKey(gauge.key())).contains(gauge);
  }

  @ParameterizedTest
  @EnumSource(Gauge.class)
  void everyShareCountsSomeFoodOfTheBuiltInPantryAndNotWater(Gauge gauge) {
    if (gauge.isShare()) {
      assertThat(BuiltInPantry.all()).anyMatch(food -> gauge.counts(food.slug()));
      assertThat(gauge.counts("water")).isFalse();
    } else {
      assertThat(gauge.counts("water")).isFalse();
    }
  }

  @Test
  void aShareCountsWholeWordsOnly() {
    assertThat(Gauge.EGG.counts("egg-white")).isTrue();
    assertThat(Gauge.EGG.counts("veggie-mix")).isFalse();
    assertThat(Gauge.GELLING.counts("golden-flaxseed-meal")).isTrue();
    assertThat(Gauge.LEAVENING.counts("baking-powder")).isTrue();
    assertThat(Gauge.LEAVENING.counts("cocoa-powder")).isFalse();
  }

  @Test
  void aFaultyLineIsNamed() {
    String good = "dry\toven_minutes\thigher\t10\t\ttoo long\tshorter\t";
    assertThat(CauseTable.read("# words\n\n" + good).get(FindingVocabulary.DRY)).hasSize(1);
    assertThatThrownBy(() -> CauseTable.read(good + "\nsoggy\toven_minutes\thigher\t1\t\ta\tb\t"))
        .hasMessage("line 2: there is no finding \"soggy\"");
    assertThatThrownBy(() -> CauseTable.read(good.replace("oven_minutes", "moon")))
        .hasMessage("line 1: there is no gauge \"moon\"");
    assertThatThrownBy(() -> CauseTable.read(good.replace("higher", "sideways")))
        .hasMessage("line 1: there is no way \"sideways\"");
    assertThatThrownBy(() -> CauseTable.read(good.replace("higher", "other")))
        .hasMessageContaining("only words are simply other");
    assertThatThrownBy(() -> CauseTable.read(good.replace("\t10\t", "\t\t")))
        .hasMessageContaining("above 0");
    assertThatThrownBy(() -> CauseTable.read(good.replace("shorter", " ")))
        .hasMessageContaining("must be stated");
    assertThatThrownBy(() -> CauseTable.read("dry\tcore_c")).hasMessageContaining("8 columns");
  }
}
