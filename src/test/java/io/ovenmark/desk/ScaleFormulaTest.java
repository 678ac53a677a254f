package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleFormulaTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");

  @TempDir static Path temporary;
  private static LupinBench bench;
  private static ScaleFormula verb;

  @BeforeAll
  static void begin() {
    bench = new LupinBench(temporary);
    verb = new ScaleFormula(bench.desk());
  }

  @AfterAll
  static void close() {
    bench.close();
  }

  @Test
  void piecesAreScaledInAmountsThatCanBeMeasured() {
    ScaleViews.ScaleSheet sheet = verb.call(BUN, ScaleOrder.ofPieces("9"));

    assertThat(sheet.address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(sheet.factor()).isCloseTo(1.5, within(1e-12));
    assertThat(sheet.summary())
        .isEqualTo(
            "Scaled to 9 pieces of 84.7 g dough: 1.5 times the formula, a batch of 762 g.");
    assertThat(sheet.lines())
        .extracting(ScaleViews.LineView::measure)
        .containsExactly("180 g", "30 g", "225 g", "282 g", "45 g");
    assertThat(sheet.bakingLossPercent()).isCloseTo((1 - 77 / 89.) * 100, within(1e-9));
    assertThat(sheet.yield().figures().get("baked_per_piece_g").low())
        .isCloseTo(508 / 6. * 77 / 89, within(1e-9));
    assertThat(sheet.cautions()).anyMatch(caution -> caution.contains("71 °C"));
    assertThat(sheet.cost().complete()).isFalse();
  }

  @Test
  void whatIsAtHandDecidesAndWhatIsLeftIsTold() {
    ScaleViews.ScaleSheet sheet =
        verb.call(
            BUN,
            new ScaleOrder(
                null, null, null, null, null, null, null,
                List.of("psyllium-husk=40 g", "egg-whole=5 large"), null, null, null));

    assertThat(sheet.yield().figures().get("pieces").low()).isCloseTo(10, within(1e-9));
    assertThat(sheet.atHand())
        .extracting(ScaleViews.HandView::scarcest)
        .containsExactly(false, true);
    assertThat(sheet.atHand().get(1).leftG()).isCloseTo(0, within(1e-9));
    assertThat(sheet.atHand().get(0).leftG()).isCloseTo(40 - 20 * 10 / 6., within(1e-9));
  }

  @Test
  void aTinIsFilledByDensity() {
    ScaleViews.ScaleSheet sheet =
        verb.call(
            BUN,
            new ScaleOrder(
                "2", null, null, "loaf:25x11x7cm", null, "1.1 g/ml", "60 %", null, "2 %", "12 %",
                "5g"));

    assertThat(sheet.tin().doughG()).isCloseTo(1270.5, within(1e-9));
    assertThat(sheet.tin().volumeMl()).isCloseTo(1925, within(1e-9));
    assertThat(sheet.handlingLossPercent()).isEqualTo(2);
    assertThat(sheet.yield().figures().get("dough_g").low()).isCloseTo(2541, within(1e-9));
    assertThat(sheet.summary()).startsWith("Scaled to 2 tins of 1271 g dough: ");
    assertThat(sheet.remarks()).anyMatch(remark -> remark.contains("by its core"));
  }

  @Test
  void aScaledFormulaMayBecomeADraft() {
    DraftViews.DraftView draft =
        verb.draft(BUN, ScaleOrder.ofPieces("9"), bench.fixture().by());

    assertThat(draft.base().address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(draft.note()).startsWith("Scaled to 9 pieces");
    assertThat(draft.document().text()).contains("\"282 g\"", "\"225 g\"");
    assertThat(verb.document(BUN, ScaleOrder.ofPieces("9")).text().replaceAll("\\s", ""))
        .isEqualTo(draft.document().text().replaceAll("\\s", ""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "many | | | | The value \"many\" is not understood.",
        "5.5 | | | | The number of pieces is not whole.",
        " | 95 ml | | | is not in a unit of mass",
        " | 95 | | | has no unit",
        " | | oval:3cm | | The tin \"oval:3cm\" is not understood.",
        " | | round:20x5cm | | What this dough weighs in a tin is not known",
        " | | | psyllium | What is at hand names an ingredient",
        " | | | psyllium-husk=3 large | weighs is not known",
        " | | | caraway=3 g | The formula has no line or food \"caraway\".",
        " | | | | Nothing was asked for.",
      })
  void whatIsNotUnderstoodIsRefused(
      String pieces, String dough, String tin, String have, String message) {
    ScaleOrder order =
        new ScaleOrder(
            pieces, dough, null, tin, null, null, null,
            have == null ? null : List.of(have), null, null, null);
    assertThatThrownBy(() -> verb.call(BUN, order))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(message);
  }
}
