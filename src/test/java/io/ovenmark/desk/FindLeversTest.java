package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.goal.Limit;
import io.ovenmark.lever.Wish;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
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

class FindLeversTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");

  @TempDir Path temporary;
  private LupinBench bench;
  private FindLevers verb;

  @BeforeEach
  void begin() {
    bench = new LupinBench(temporary);
    verb = new FindLevers(bench.desk());
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private By by() {
    return bench.fixture().by();
  }

  private static LeverOrder order(List<String> want, String pieces, String readable) {
    return new LeverOrder(want, null, null, null, null, null, pieces, readable);
  }

  private static LeverViews.AnswerView single(LeverViews.LeverSheet sheet, String line) {
    return sheet.answers().stream()
        .filter(answer -> line.equals(answer.line()))
        .findFirst()
        .orElseThrow();
  }

  /** By hand: dry 170 g, liquid 150 + 188 = 338 g; at 1.9 liquid is 323 g, water 173 g. */
  @Test
  void answersAreWorkedOutAndSaidInWords() {
    LeverViews.LeverSheet sheet = verb.call(BUN, LeverOrder.of("liquid ratio 1.9"));

    assertThat(sheet.address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(sheet.granted()).isFalse();
    assertThat(sheet.asked().pieces()).isEqualTo("fixed");
    assertThat(sheet.asked().wishes().get(0).nowText()).isEqualTo("1.99");
    LeverViews.AnswerView water = single(sheet, "water");
    assertThat(water.lines().get(0).toG()).isCloseTo(173, within(1e-9));
    assertThat(water.lines().get(0).weigh()).isEqualTo("173 g");
    assertThat(water.sentence()).isEqualTo("Water 188 → 173 g (−7.98 %).");
    assertThat(water.also())
        .startsWith("Also moves: batch mass 508 → 493 g, dough a piece 84.7 → 82.2 g");
    assertThat(water.note()).isEqualTo("Liquid ratio 1.99 → 1.9: water 188 g → 173 g");
    assertThat(water.wishes().get(0).granted()).isTrue();
    assertThat(sheet.summary()).contains("changes of one line do it; water 188 → 173 g (−7.98 %)");
    assertThat(sheet.ways()).startsWith("Drying by less water takes 15 g from the batch");
    assertThat(sheet.cautions()).anyMatch(caution -> caution.contains("71 °C"));
  }

  @Test
  void anAnswerBecomesTheNextRevision() {
    LeverOrder order = LeverOrder.of("liquid ratio 1.9");

    WriteViews.RevisionWritten written =
        verb.apply(BUN, order, 1, Optional.empty(), by());

    assertThat(written.outcome()).isEqualTo("committed");
    assertThat(written.revision().address()).isEqualTo("seeded-lupin-bun@4");
    assertThat(written.revision().note())
        .isEqualTo("Liquid ratio 1.99 → 1.9: water 188 g → 173 g");
    assertThat(new ShowFormula(bench.desk()).call(BUN).ratios().figures().get("liquid_ratio").low())
        .isCloseTo(1.9, within(1e-9));
    assertThat(verb.call(BUN, order).granted()).isTrue();
  }

  @Test
  void aNoteOfOnesOwnIsTaken() {
    assertThat(
            verb.apply(BUN, LeverOrder.of("liquid ratio 1.9"), 1, Optional.of("Drier"), by())
                .revision()
                .note())
        .isEqualTo("Drier");
  }

  @Test
  void anAnswerAboutAnOlderRevisionIsRefused() {
    assertThatThrownBy(
            () ->
                verb.apply(
                    BUN.at(2), LeverOrder.of("liquid ratio 1.9"), 1, Optional.empty(), by()))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> {
              assertThat(refusal.reason()).isEqualTo(Refusal.Reason.CONFLICT);
              assertThat(refusal.getMessage())
                  .contains("about seeded-lupin-bun@2, but seeded-lupin-bun@3");
            });
    assertThat(bench.desk().notebook().newest(BUN).number()).isEqualTo(3);
  }

  @Test
  void aNumberThatIsNotThereIsRefused() {
    assertThatThrownBy(
            () ->
                verb.apply(BUN, LeverOrder.of("liquid ratio 1.9"), 99, Optional.empty(), by()))
        .hasMessage("There is no answer 99.");
    assertThatThrownBy(
            () -> verb.document(BUN, LeverOrder.of("liquid ratio at most 9"), 1))
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.hint()).contains("nothing to change"));
  }

  @Test
  void anAnswerBecomesADraftWithItsNote() {
    DraftViews.DraftView draft =
        verb.draft(BUN, LeverOrder.of("liquid ratio 1.9"), 1, Optional.empty(), by());

    assertThat(draft.base().address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(draft.note()).isEqualTo("Liquid ratio 1.99 → 1.9: water 188 g → 173 g");
    assertThat(draft.document().text()).contains("\"173 g\"").contains("sesame-seeds");
    assertThat(new KeepDrafts(bench.desk()).all().drafts()).hasSize(1);
    assertThat(bench.desk().notebook().newest(BUN).number()).isEqualTo(3);
  }

  /** What a person saw and what the answer would be by now are told apart. */
  @Test
  void anAnswerThatSaysSomethingElseByNowBecomesNoDraft() {
    LeverOrder order = LeverOrder.of("liquid ratio 1.9");
    String seen = verb.call(BUN, order).answers().get(0).note();

    assertThat(verb.draft(BUN, order, 1, Optional.of(seen), by()).note()).isEqualTo(seen);
    assertThatThrownBy(
            () -> verb.draft(BUN, order, 1, Optional.of(seen.replace("173", "172")), by()))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> assertThat(refusal.reason()).isEqualTo(Refusal.Reason.CONFLICT))
        .hasMessageContaining("answer 1 is now “" + seen + "”");
    assertThat(new KeepDrafts(bench.desk()).all().drafts()).hasSize(1);
  }

  /** Whatever is offered can be asked for, and a figure offered as it is asks for nothing new. */
  @Test
  void whatIsOfferedCanBeAskedFor() {
    LeverViews.LeverStart start = new OfferWishes(bench.desk()).call(BUN);

    assertThat(start.address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(start.lines()).extracting(LeverViews.LineOffer::line).contains("water");
    assertThat(start.wishes())
        .extracting(LeverViews.WishOffer::wish)
        .contains("liquid ratio 1.99", "at most 4 g net carbohydrate a piece");
    for (LeverViews.WishOffer offer : start.wishes()) {
      LeverViews.WishView asked =
          verb.call(BUN, LeverOrder.of(offer.wish())).asked().wishes().get(0);
      assertThat(asked.nowText()).as(offer.wish()).isEqualTo(offer.nowText());
      assertThat(asked.granted() || !offer.fromGoal()).isEqualTo(
          offer.granted() || !offer.fromGoal());
    }
  }

  /** The value proposed in place of an impossible one is possible, and the next digit is not. */
  @ParameterizedTest
  @CsvSource({
    "liquid ratio 1.2, 0.001",
    "liquid ratio at most 1.2, 0.001",
    "liquid ratio at least 3, -0.01",
    "protein a piece at least 60 g, -0.1",
    "dough a piece 20 g, 0.1",
  })
  void whatIsProposedInsteadCanBeDone(String wish, double nearer) {
    LeverViews.LeverSheet sheet = verb.call(BUN, limited(wish));
    LeverViews.NearestView nearest = sheet.impossible().nearest().get(0);

    LeverViews.LeverSheet instead = verb.call(BUN, limited(nearest.instead()));
    assertThat(instead.impossible()).as(nearest.instead()).isNull();
    Limit limit = Wish.read(nearest.instead()).limit();
    double value = limit.atMost().orElseGet(() -> limit.atLeast().orElseThrow());
    assertThat(Math.signum(value - nearest.together())).isIn(Math.signum(nearer), 0.0);
    assertThat(value).isCloseTo(nearest.together(), within(Math.abs(nearer) + 1e-6));
  }

  private static LeverOrder limited(String wish) {
    return new LeverOrder(
        List.of(wish), null, null, null, List.of("15 %"), null, null, null);
  }

  @Test
  void theDocumentIsTheWholeFormulaWithWhatIsWeighed() {
    JsonText document =
        verb.document(BUN, order(List.of("liquid ratio 1.9"), null, "5 g"), 1);

    assertThat(document.text()).contains("\"175 g\"", "\"low-carb-bun\"", "rest 15 min");
  }

  @Test
  void theFormulasGoalMayBeTheWish() {
    bench.bun().set("lupin-flour=30 g").revise("Less flour");
    LeverViews.LeverSheet sheet = verb.call(BUN, LeverOrder.of("goal"));

    assertThat(sheet.asked().wishes())
        .extracting(LeverViews.WishView::wish)
        .containsExactly(
            "at most 4 g net carbohydrate a piece", "at least 8 g protein a piece");
    assertThat(sheet.asked().wishes().get(1).granted()).isFalse();
    assertThat(sheet.answers()).isNotEmpty();
    for (LeverViews.AnswerView answer : sheet.answers()) {
      assertThat(answer.goalMet()).isTrue();
    }
    assertThatThrownBy(
            () -> verb.call(Address.parse("sesame-crispbread"), LeverOrder.of("goal")))
        .hasMessage("The formula has no goal with limits on figures.");
  }

  @Test
  void anImpossibleWishSaysWhyAndHowNear() {
    LeverViews.LeverSheet sheet =
        verb.call(
            BUN,
            new LeverOrder(
                List.of("liquid ratio 1"),
                List.of("lupin-flour", "psyllium-husk", "sesame-seeds"),
                List.of("water=100 g", "egg-whole=2 large"),
                null,
                null,
                null,
                null,
                null));

    assertThat(sheet.answers()).isEmpty();
    assertThat(sheet.impossible().because())
        .contains("water at least 100 g", "whole egg at least 100 g", "liquid ratio 1");
    assertThat(sheet.summary()).startsWith("It cannot be done: these contradict each other: ");
    LeverViews.NearestView nearest = sheet.impossible().nearest().get(0);
    assertThat(nearest.alone()).isCloseTo(200 / 170., within(1e-9));
    assertThat(nearest.sentence())
        .isEqualTo("liquid ratio 1: 1.18 is the nearest within the limits");
  }

  @Test
  void limitsAreReadInAnyMeasureAndAsShares() {
    LeverViews.LeverSheet sheet =
        verb.call(
            BUN,
            new LeverOrder(
                List.of("liquid ratio 1.9"),
                List.of("psyllium-husk"),
                List.of("egg-whole=3 large"),
                List.of("water=0.2 kg"),
                List.of("lupin-flour=10 %", "30%"),
                "fixed",
                "free",
                "1 g"));

    assertThat(sheet.asked().limits())
        .containsExactly(
            "whole egg at least 150 g",
            "water at most 200 g",
            "lupin flour within ± 10 %",
            "every line within ± 30 %");
    assertThat(sheet.asked().batch()).isEqualTo("fixed");
    assertThat(sheet.asked().pieces()).isEqualTo("free");
    assertThat(sheet.asked().readableG()).isEqualTo(1);
    assertThat(sheet.answers()).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "taste 7 | | | | is not a figure",
        "liquid ratio 1.9 | caraway=5 g | | | There is no line \"caraway\"",
        "liquid ratio 1.9 | water | | | A limit names a line and an amount.",
        "liquid ratio 1.9 | water=wet | | | is not understood",
        "liquid ratio 1.9 | water=3 large | | | weighs is not known",
        "liquid ratio 1.9 | | water=much | | How far a line may change is a percentage.",
        "liquid ratio 1.9 | | | loose | The batch can be free or fixed",
        "dough a piece 95 | | | | ",
      })
  void whatIsNotUnderstoodIsRefused(
      String want, String atMost, String within, String batch, String message) {
    LeverOrder order =
        new LeverOrder(
            List.of(want),
            null,
            null,
            atMost == null ? null : List.of(atMost),
            within == null ? null : List.of(within),
            batch,
            null,
            null);
    if (message == null) {
      assertThat(verb.call(BUN, order).answers()).isNotEmpty();
      return;
    }
    assertThatThrownBy(() -> verb.call(BUN, order))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(message);
  }

  @Test
  void withoutAWishThereIsNothingToDo() {
    assertThatThrownBy(() -> verb.call(BUN, LeverOrder.of()))
        .isInstanceOf(Refusal.class)
        .hasMessage("Nothing was asked for.");
  }

  @Test
  void theNextRevisionTakesTheFoodsOfToday() {
    bench.relabelFlour();

    LeverViews.LeverSheet sheet =
        verb.call(BUN.at(3), LeverOrder.of("net carbohydrate a piece at most 1 g"));
    assertThat(sheet.remarks())
        .anyMatch(remark -> remark.startsWith("Worked out with today's foods"));
  }

  @Test
  void aFileEditedByHandIsAskedAboutButNotCommittedByAnAnswer() {
    String path = "formulas/seeded-lupin-bun.json";
    bench.fixture().edit(path, bench.fixture().onDisk(path).replace("188 g", "200 g"));
    Address edited = Address.parse("seeded-lupin-bun@edited");
    LeverOrder order = LeverOrder.of("liquid ratio 1.9");

    LeverViews.LeverSheet sheet = verb.call(edited, order);
    assertThat(single(sheet, "water").lines().get(0).fromG()).isEqualTo(200);
    assertThat(sheet.commit()).isNull();
    assertThatThrownBy(() -> verb.apply(edited, order, 1, Optional.empty(), by()))
        .hasMessage("The file edited by hand is not a revision yet.");
    assertThat(verb.draft(edited, order, 1, Optional.empty(), by()).base().address())
        .isEqualTo("seeded-lupin-bun@3");
  }

  @Test
  void aVariantIsAskedAboutLikeAnyLineOfHistory() {
    Address variant = Address.parse("seeded-lupin-bun/egg-free");

    LeverViews.LeverSheet sheet = verb.call(variant, LeverOrder.of("liquid ratio 1.2"));
    assertThat(sheet.variant()).isEqualTo("egg-free");
    assertThat(sheet.answers()).noneMatch(answer -> "egg-whole".equals(answer.line()));
    assertThat(
            verb.apply(variant, LeverOrder.of("liquid ratio 1.2"), 1, Optional.empty(), by())
                .revision()
                .address())
        .isEqualTo("seeded-lupin-bun/egg-free@6");
  }

  @Test
  void theOrderOfLinesAndEverythingElseStays() {
    verb.apply(BUN, LeverOrder.of("liquid ratio 1.9"), 2, Optional.empty(), by());

    Formula before = bench.desk().notebook().formula(bench.desk().notebook().revision(BUN.at(3)));
    Formula after = bench.desk().notebook().formula(bench.desk().notebook().revision(BUN.at(4)));
    assertThat(after.withLines(before.lines())).isEqualTo(before);
    assertThat(after.lines()).extracting("id").isEqualTo(
        before.lines().stream().map(line -> line.id()).toList());
  }
}
