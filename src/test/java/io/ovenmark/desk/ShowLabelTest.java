package io.ovenmark.desk;

import static io.ovenmark.notebook.NotebookFixture.piece;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.bake.Piece;
import io.ovenmark.measure.Temperature;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShowLabelTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");

  @TempDir Path temporary;
  private LupinBench bench;
  private ShowLabel verb;

  @BeforeEach
  void begin() {
    bench = new LupinBench(temporary);
    verb = new ShowLabel(bench.desk());
  }

  @AfterEach
  void end() {
    bench.close();
  }

  private static LabelViews.RowView row(LabelViews.LabelSheet sheet, int region, String key) {
    return sheet.regions().get(region).rows().stream()
        .filter(row -> row.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theLossIsThatOfTheBakesOfThatVeryRevision() {
    LabelViews.LabelSheet third = verb.call(BUN.at(3), LabelChoices.USUAL);
    LabelViews.LabelSheet first = verb.call(BUN.at(1), LabelChoices.USUAL);

    assertThat(third.loss().kind()).isEqualTo("measured");
    assertThat(third.loss().percent()).isCloseTo(100 * (1 - 77 / 89.), within(1e-9));
    assertThat(third.loss().words()).contains("13.5 %", "1 weighed piece");
    assertThat(first.loss().kind()).isEqualTo("unknown");
    assertThat(first.loss().percent()).isNull();
    assertThat(first.loss().words()).startsWith("Loss on baking unknown");
    assertThat(row(first, 1, "protein_g").amounts().get("per_100_g_baked").declared()).isNull();
    assertThat(row(first, 1, "protein_g").amounts().get("per_100_g_dough").declared())
        .isNotNull();
  }

  @Test
  void anAllowanceFillsWhatWasNotWeighed() {
    LabelViews.LabelSheet sheet =
        verb.call(BUN.at(1), new LabelChoices("12 %", null, null, List.of("eu")));

    assertThat(sheet.loss().kind()).isEqualTo("entered");
    assertThat(sheet.loss().words()).contains("an allowance that was entered");
    assertThat(sheet.regions()).extracting(LabelViews.RegionView::region).containsExactly("eu");
    LabelViews.RowView protein = row(sheet, 0, "protein_g");
    assertThat(protein.amounts().get("per_100_g_baked").value())
        .isCloseTo(protein.amounts().get("per_100_g_dough").value() / 0.88, within(1e-9));
    assertThat(protein.amounts().get("per_100_g_baked").declared()).isNotNull();
  }

  @Test
  void theNewestIsWorkedOutWithTheFoodsOfToday() {
    bench.relabelFlour();
    LabelViews.LabelSheet now = verb.call(BUN, LabelChoices.USUAL);

    assertThat(now.foodsChangedSince()).isTrue();
    assertThat(now.address()).isEqualTo("seeded-lupin-bun");
    assertThat(verb.call(BUN.at(3), LabelChoices.USUAL).foodsChangedSince()).isFalse();
  }

  @Test
  void whatWasTakenOutTooCoolWithEggIsACaution() {
    Piece cool = piece("a", 200, 25, 89, 80, 40);
    bench.fixture()
        .bake(
            bench.bun().at(3),
            List.of(
                new Piece(
                    "b",
                    cool.temperature(),
                    cool.minutes(),
                    cool.rack(),
                    cool.doughGrams(),
                    cool.bakedGrams(),
                    cool.widthMillimetres(),
                    cool.heightMillimetres(),
                    Optional.of(Temperature.parse("68 °C")),
                    cool.crustShade(),
                    cool.findings(),
                    cool.liking(),
                    cool.attributes(),
                    cool.verdict(),
                    cool.note(),
                    cool.extras())));

    assertThat(verb.call(BUN.at(3), LabelChoices.USUAL).cautions())
        .anyMatch(words -> words.contains("stayed below 71 °C (160 °F)") && words.contains("68"));
    assertThat(verb.call(BUN.at(2), LabelChoices.USUAL).cautions())
        .noneMatch(words -> words.contains("stayed below"));
  }

  @Test
  void everyOutputSaysThatItIsAnAid() {
    LabelViews.LabelSheet sheet = verb.call(BUN, LabelChoices.USUAL);

    assertThat(sheet.aid()).contains("not an approved label", "local law and licensed practice");
    assertThat(sheet.cautions()).isNotEmpty();
  }

  @Test
  void aReferenceAmountSettlesClaimsOfTheUnitedStates() {
    LabelViews.LabelSheet without =
        verb.call(BUN, new LabelChoices(null, null, null, List.of("us")));
    LabelViews.LabelSheet with =
        verb.call(BUN, new LabelChoices(null, null, "bread", List.of("us")));

    assertThat(verdict(without, "Low calorie")).isEqualTo("cannot be told");
    assertThat(verdict(with, "Low calorie")).isEqualTo("would miss");
    assertThat(with.reference().g()).isEqualTo(50);
    assertThat(with.remarks()).anyMatch(words -> words.contains("of the reference amount of 50 g"));
  }

  private static String verdict(LabelViews.LabelSheet sheet, String claim) {
    return sheet.regions().get(0).claims().stream()
        .filter(each -> each.claim().equals(claim))
        .findFirst()
        .orElseThrow()
        .verdict();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a lot | | | us | loss | The loss on baking \"a lot\" is not understood.",
        "100 | | | us | loss | below 100 %",
        "-3 | | | us | loss | is not understood",
        " | guesses | | us | energy | There is no energy rule \"guesses\".",
        " | | buns | us | reference | is no reference amount",
        " | | | mars | regions | The region \"mars\" has no rules here.",
      })
  void whatIsNotUnderstoodIsRefusedWithItsField(
      String loss, String energy, String reference, String region, String where, String message) {
    LabelChoices order = new LabelChoices(loss, energy, reference, List.of(region));
    assertThatThrownBy(() -> verb.call(BUN, order))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> {
              assertThat(refusal.where()).isEqualTo(where);
              assertThat(refusal.hint()).isNotBlank();
            })
        .hasMessageContaining(message);
  }
}
