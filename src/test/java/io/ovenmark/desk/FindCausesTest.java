package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.lever.Wish;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindCausesTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");
  private static final String DENSE = "dense";

  @TempDir Path temporary;
  private LupinBench bench;

  @BeforeEach
  void open() {
    bench = new LupinBench(temporary);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private FindCauses verb() {
    return new FindCauses(bench.desk());
  }

  private CauseViews.InquiryView ask(Address address, String finding) {
    return verb().call(address, CauseOrder.of(finding)).inquiry();
  }

  private Refusal refused(Runnable asked) {
    Refusal[] refusal = new Refusal[1];
    assertThatThrownBy(asked::run)
        .isInstanceOfSatisfying(Refusal.class, thrown -> refusal[0] = thrown);
    return refusal[0];
  }

  @Test
  void listsTheFindingsWithHowTheyStand() {
    CauseViews.CauseSheet sheet = verb().call(BUN, new CauseOrder(null, null, null));

    assertThat(sheet.inquiry()).isNull();
    assertThat(sheet.findings())
        .extracting(CauseViews.FindingRow::word, CauseViews.FindingRow::standing)
        .containsExactly(
            tuple(DENSE, "gone"),
            tuple("dark base", "gone"),
            tuple("good oven spring", "always"));
    assertThat(sheet.others()).contains("hollow").doesNotContain(DENSE, "even crumb");
  }

  @Test
  void saysWhatChangedWhenItWentAndHowToTellItApart() {
    CauseViews.InquiryView dense = ask(BUN, "Dense");

    assertThat(dense.standing()).isEqualTo("gone");
    assertThat(dense.turns()).hasSize(1);
    assertThat(dense.turns().get(0).fromAddress()).isEqualTo("seeded-lupin-bun@2");
    assertThat(dense.turns().get(0).toAddress()).isEqualTo("seeded-lupin-bun@3");
    assertThat(dense.turns().get(0).confounded()).isTrue();
    assertThat(dense.turns().get(0).sentence()).endsWith("Dough and oven changed together.");
    assertThat(dense.causes().get(0).standing()).isEqualTo("likely");
    assertThat(dense.causes())
        .filteredOn(each -> each.gauge().equals("liquid_ratio"))
        .singleElement()
        .satisfies(each -> assertThat(each.way()).isEqualTo("lower"));
    assertThat(dense.plans().get(0).title()).isEqualTo("Dough or oven");
    assertThat(dense.plans().get(0).design()).isEqualTo("2×2");
    assertThat(dense.tray()).isEqualTo(6);
  }

  @Test
  void onlyBakesUpToTheRevisionCount() {
    assertThat(ask(BUN.at(2), DENSE).standing()).isEqualTo("always");
    assertThat(ask(BUN.at(2), DENSE).bakes()).hasSize(1);
    assertThat(ask(BUN.at(1), DENSE).standing()).isEqualTo("not_baked");
  }

  @Test
  void aVariantHasTheBakesOfTheMainLineBeforeItsFork() {
    CauseViews.InquiryView dense = ask(Address.parse("seeded-lupin-bun/egg-free"), DENSE);

    assertThat(dense.bakes())
        .extracting(CauseViews.BakeRow::address)
        .containsExactly("seeded-lupin-bun@2", "seeded-lupin-bun@3");
  }

  @Test
  void everyWishIsOneThatLeversReadAndAnswer() {
    for (FindingVocabulary finding : FindingVocabulary.values()) {
      for (CauseViews.CauseView cause : ask(BUN, finding.word()).causes()) {
        if (cause.wish() != null) {
          assertThat(Wish.read(cause.wish()).isValue()).as(cause.wish()).isTrue();
          assertThat(new FindLevers(bench.desk()).call(BUN, LeverOrder.of(cause.wish())).summary())
              .isNotBlank();
        }
      }
    }
  }

  @Test
  void aSettingOfAPlanBecomesADraftWithItsDoughAndOven() {
    CauseViews.PlanView plan = ask(BUN, DENSE).plans().get(0);
    CauseViews.SettingView open = plan.settings().get(2);
    DraftViews.DraftView draft =
        verb().setting(BUN, CauseOrder.of(DENSE), 1, 3, bench.fixture().by());

    assertThat(open.levels()).hasSize(2);
    String text = new String(draft.document().utf8(), StandardCharsets.UTF_8);
    assertThat(text).contains("\"2 large\"", "205 °C").doesNotContain("sesame-seeds");
    assertThat(draft.note()).startsWith("Plan against dense, setting 3 of 4: ");
  }

  @Test
  void whatIsDoneAgainstACauseBecomesADraft() {
    CauseViews.InquiryView hollow = ask(BUN, "hollow");
    CauseViews.CauseView oven = hollow.causes().get(0);
    DraftViews.DraftView draft =
        verb().remedy(BUN, CauseOrder.of("hollow"), oven.number(), bench.fixture().by());

    assertThat(oven.gauge()).isEqualTo("oven_temperature_c");
    assertThat(oven.draft()).isTrue();
    assertThat(oven.target()).isEqualTo(200);
    String text = new String(draft.document().utf8(), StandardCharsets.UTF_8);
    assertThat(text).contains("200 °C");
    assertThat(draft.note()).isEqualTo("Against hollow: a cooler start");
  }

  @Test
  void anUnfinishedCrumbWithEggIsCautionedFirst() {
    assertThat(verb().call(BUN, CauseOrder.of("gummy crumb")).cautions().get(0))
        .contains("71 °C (160 °F)", "local food codes");
    assertThat(verb().call(BUN, CauseOrder.of("dry")).cautions().get(0))
        .doesNotContain("not be done");
  }

  @Test
  void anAnswerIsSaidInTheUnitsOfItsReader() {
    Desk fahrenheit =
        bench.desk().shownIn(ShownUnits.of(Optional.of("oz"), Optional.of("F")));
    CauseViews.InquiryView dense =
        new FindCauses(fahrenheit).call(BUN, CauseOrder.of(DENSE)).inquiry();

    assertThat(dense.plans().get(0).settings().get(0).oven()).contains("°F");
    assertThat(dense.plans().get(0).doughs().get(0).lines().get(0).entered()).contains("oz");
    assertThat(dense.plans().get(0).settings().get(0).temperatureC()).isEqualTo(200);
  }

  @Test
  void aSizeIsAsAsked() {
    CauseViews.InquiryView dense =
        verb().call(BUN, new CauseOrder(DENSE, "3", " 4 ")).inquiry();

    assertThat(List.of(dense.pieces(), dense.tray())).containsExactly(3, 4);
    assertThat(dense.plans().get(0).all().pieces()).isEqualTo(12);
  }

  @Test
  void refusesWhatItCannotDo() {
    assertThat(refused(() -> verb().call(BUN, new CauseOrder(DENSE, "two", null))).where())
        .isEqualTo("pieces");
    assertThat(refused(() -> verb().call(BUN, new CauseOrder(DENSE, "0", null))).getMessage())
        .isEqualTo("The pieces of a setting cannot be 0.");
    assertThat(refused(() -> verb().call(BUN, new CauseOrder(DENSE, null, "999"))).hint())
        .isEqualTo("Use a number from 1 to 200.");
    assertThat(
            refused(() -> verb().setting(BUN, CauseOrder.of(DENSE), 9, 1, bench.fixture().by()))
                .where())
        .isEqualTo("plan");
    assertThat(
            refused(() -> verb().setting(BUN, CauseOrder.of(DENSE), 1, 5, bench.fixture().by()))
                .hint())
        .isEqualTo("They are numbered 1 to 4.");
    assertThat(
            refused(() -> verb().remedy(BUN, CauseOrder.of(DENSE), 0, bench.fixture().by()))
                .where())
        .isEqualTo("cause");
    assertThat(
            refused(
                    () ->
                        verb()
                            .remedy(
                                BUN,
                                new CauseOrder(" ", null, null),
                                1,
                                bench.fixture().by()))
                .getMessage())
        .isEqualTo("No finding is named.");
    CauseViews.CauseView core =
        ask(BUN, "fell").causes().stream()
            .filter(each -> each.gauge().equals("core_c"))
            .findFirst()
            .orElseThrow();
    assertThat(
            refused(
                    () ->
                        verb()
                            .remedy(
                                BUN, CauseOrder.of("fell"), core.number(), bench.fixture().by()))
                .hint())
        .startsWith("What helps: bake until the core");
    assertThat(refused(() -> verb().call(BUN.at(99), CauseOrder.of(DENSE))).reason())
        .isEqualTo(Refusal.Reason.NOT_FOUND);
  }
}
