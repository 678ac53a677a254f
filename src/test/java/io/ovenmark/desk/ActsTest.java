package io.ovenmark.desk;

import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.ovenmark.change.Choice;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.VariantWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said before an act, and what happens when the notebook moved since. */
class ActsTest {
  private static final Address BUN = Address.latest(Kitchen.BUN, Optional.empty());
  private static final Optional<String> OUTDATED = Optional.of("0".repeat(40));

  @TempDir Path temporary;
  private Kitchen kitchen;
  private Desk desk;

  @BeforeEach
  void begin() {
    kitchen = new Kitchen(temporary);
    desk = kitchen.desk();
  }

  @AfterEach
  void end() {
    kitchen.assertSound();
    kitchen.close();
  }

  private String commits() {
    return kitchen.repository().git("rev-list", "--all", "--count").strip();
  }

  private Refusal refusedAsMoved(Runnable act) {
    String before = commits();
    Refusal refusal = refuses(Refusal.Reason.CONFLICT, act::run);
    assertThat(commits()).isEqualTo(before);
    assertThat(refusal.hint()).isNotEmpty();
    return refusal;
  }

  private Optional<String> newest(Address line) {
    return Optional.of(desk.notebook().newest(line).commit().hex());
  }

  @Test
  void restoringIsLookedAtBeforeItIsDone() {
    RestoreRevision verb = new RestoreRevision(desk);
    String before = commits();
    WriteViews.RestorePreview look = verb.preview(BUN.at(1), BUN);
    assertThat(commits()).isEqualTo(before);
    assertThat(look.same()).isFalse();
    assertThat(look.changes())
        .extracting(Views.ChangeView::sentence)
        .containsExactly("Water 188 g → 180 g (−8 g).");
    assertThat(look.note()).isEqualTo("Back to seeded-lupin-bun@1");
    assertThat(look.newest().revision()).isEqualTo(2);
    WriteViews.RevisionWritten written =
        verb.call(
            BUN.at(1), BUN, look.note(), Optional.of(look.newest().commit()), kitchen.by());
    assertThat(written.outcome()).isEqualTo("committed");
    assertThat(written.revision().revision()).isEqualTo(3);
    assertThat(written.changes()).isEqualTo(look.changes());
    assertThat(verb.preview(BUN.at(1), BUN).same()).isTrue();
  }

  @Test
  void restoringOverARevisionThatNobodyLookedAtIsRefused() {
    Optional<String> seen = newest(BUN);
    kitchen.revise(BUN, Kitchen.bun(195), "Softer still");
    Refusal refusal =
        refusedAsMoved(
            () -> new RestoreRevision(desk).call(BUN.at(1), BUN, "Back", seen, kitchen.by()));
    assertThat(refusal.getMessage())
        .contains("seeded-lupin-bun@3", "Softer still", "by " + kitchen.by().author().name());
    assertThat(desk.notebook().formula(desk.notebook().newest(BUN)).line("water").orElseThrow()
            .amount()
            .toString())
        .isEqualTo("195 g");
  }

  @Test
  void publishingIsLookedAtBeforeItIsDone() {
    PublishRevision verb = new PublishRevision(desk);
    WriteViews.Published look = verb.preview(BUN.at(2));
    assertThat(look.tag()).isNull();
    assertThat(kitchen.repository().git("tag")).isEmpty();
    assertThat(look.cautions()).anyMatch(words -> words.startsWith("Contains lupin"));
    refusedAsMoved(() -> verb.call(BUN.at(2), "Winter bun", OUTDATED, kitchen.by()));
    assertThat(kitchen.repository().git("tag")).isEmpty();
    WriteViews.Published published =
        verb.call(BUN.at(2), "Winter bun", Optional.of(look.revision().commit()), kitchen.by());
    assertThat(published.tag()).isEqualTo("published/seeded-lupin-bun/2");
    assertThat(published.note()).isEqualTo("Winter bun");
  }

  @Test
  void forkingFromARevisionThatMovedIsRefused() {
    ForkVariant verb = new ForkVariant(desk);
    refusedAsMoved(
        () -> verb.call(BUN, "egg-free", Optional.empty(), "Why", OUTDATED, kitchen.by()));
    assertThat(desk.notebook().lines(Kitchen.BUN)).hasSize(1);
    verb.call(BUN, "egg-free", Optional.empty(), "Why", newest(BUN), kitchen.by());
    assertThat(desk.notebook().lines(Kitchen.BUN)).hasSize(2);
  }

  private Address eggFree() {
    String goal =
        "{\"name\": \"No egg\", \"limits\": [], \"without\": {\"allergens\": [\"eggs\"]}}";
    new RecordWriter(desk.notebook())
        .saveGoal(
            GoalCodec.read("no-egg", "no-egg", goal.getBytes(StandardCharsets.UTF_8)),
            Optional.empty(),
            "Goal",
            kitchen.by());
    new ForkVariant(desk)
        .call(BUN, "egg-free", Optional.of("no-egg"), "Begin egg-free", kitchen.by());
    Address variant = Address.latest(Kitchen.BUN, Optional.of("egg-free"));
    edit(variant, "No egg", edit -> edit.remove("egg-whole"));
    return variant;
  }

  private interface Edit {
    FormulaEdit of(FormulaEdit edit);
  }

  private void edit(Address line, String note, Edit edit) {
    Notebook notebook = desk.notebook();
    FormulaEdit start = new FormulaEdit(notebook.formula(notebook.newest(line)));
    kitchen.revise(line, edit.of(start).formula(), note);
  }

  @Test
  void aPreviewOfCarryingSaysHowTheGoalWouldStandAndWhatWouldComeIn() {
    Address variant = eggFree();
    edit(BUN, "White of egg", edit -> edit.add("egg-white=30 g").set("water=170 g"));
    CarryOver verb = new CarryOver(desk);
    String before = commits();
    WriteViews.CarryWritten look = verb.preview(variant, Choices.NONE);
    assertThat(commits()).isEqualTo(before);
    assertThat(look.outcome()).isEqualTo("preview");
    assertThat(look.changes())
        .extracting(Views.ChangeView::sentence)
        .anyMatch(sentence -> sentence.contains("188 g → 170 g"));
    assertThat(look.goal().met()).isFalse();
    assertThat(look.notes())
        .containsExactly("It would contain eggs, which the variant does not contain now.");
    VariantWriter.Seen seen =
        new VariantWriter.Seen(look.revision().commit(), look.from().commit());
    WriteViews.CarryWritten carried =
        verb.call(variant, Choices.NONE, Optional.of(seen), "Carry over", kitchen.by());
    assertThat(carried.outcome()).isEqualTo("carried");
    assertThat(carried.goal().met()).isFalse();
  }

  @Test
  void carryingIsRefusedWhenEitherLineMovedAndItsChoicesAreNotReadThen() {
    Address variant = eggFree();
    edit(variant, "More water", edit -> edit.set("water=230 g"));
    edit(BUN, "Less water", edit -> edit.set("water=170 g"));
    CarryOver verb = new CarryOver(desk);
    Choices choices = new Choices(Map.of("lines.water.amount", Choice.THEIRS), Optional.empty());
    WriteViews.CarryWritten open = verb.preview(variant, Choices.NONE);
    assertThat(open.outcome()).isEqualTo("conflict");
    Optional<VariantWriter.Seen> seen =
        Optional.of(new VariantWriter.Seen(open.revision().commit(), open.from().commit()));
    edit(BUN, "As before", edit -> edit.set("water=188 g"));
    Refusal main =
        refusedAsMoved(() -> verb.call(variant, choices, seen, "Carry", kitchen.by()));
    assertThat(main.getMessage()).contains("As before");
    edit(variant, "Salt", edit -> edit.add("salt=2 g"));
    Refusal own = refusedAsMoved(() -> verb.call(variant, choices, seen, "Carry", kitchen.by()));
    assertThat(own.getMessage()).contains("Salt");
  }

  @Test
  void whatAnUndoWouldDoIsSaidAndHappens() {
    UndoLast verb = new UndoLast(desk);
    String before = commits();
    WriteViews.UndoPreview look = verb.preview(Optional.empty());
    assertThat(commits()).isEqualTo(before);
    assertThat(look.note()).isEqualTo("Softer dough");
    assertThat(look.others()).isEmpty();
    assertThat(look.formulas())
        .singleElement()
        .satisfies(
            formula -> {
              assertThat(formula.address()).isEqualTo(Kitchen.BUN);
              assertThat(formula.changes().get(0).sentence())
                  .isEqualTo("Water 188 g → 180 g (−8 g).");
            });
    WriteViews.Undone undone =
        verb.call(Optional.empty(), Optional.of(look.commit()), kitchen.by());
    assertThat(undone.undone()).isEqualTo(look.note());
    assertThat(undone.formulas().get(0).address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(undone.formulas().get(0).changes()).isEqualTo(look.formulas().get(0).changes());
  }

  @Test
  void anUndoOfAnotherChangeThanTheOneLookedAtIsRefused() {
    UndoLast verb = new UndoLast(desk);
    Optional<String> seen = Optional.of(verb.preview(Optional.empty()).commit());
    kitchen.revise(BUN, Kitchen.bun(195), "Softer still");
    refusedAsMoved(() -> verb.call(Optional.empty(), seen, kitchen.by()));
    assertThat(verb.preview(Optional.empty()).note()).isEqualTo("Softer still");
  }

  @Test
  void anUndoSaysWhatElseItTakesAwayAndBringsBack() {
    new NewFormula(desk)
        .call(
            new ReadPasted(desk)
                .formula(
                    "-",
                    "80 g sesame seeds\n3 g salt".getBytes(StandardCharsets.UTF_8),
                    PasteChoices.NONE)
                .formula()
                .withName("Sesame crispbread"),
            Optional.empty(),
            "Begin",
            kitchen.by());
    UndoLast verb = new UndoLast(desk);
    WriteViews.UndoPreview look = verb.preview(Optional.empty());
    assertThat(look.formulas())
        .extracting(WriteViews.UndoneFormula::formula, WriteViews.UndoneFormula::address)
        .containsExactly(tuple("sesame-crispbread", null));
    assertThat(look.others())
        .containsExactly("2 foods are taken away: table salt, sesame seeds.");
    verb.call(Optional.empty(), kitchen.by());
    assertThat(verb.preview(Optional.empty()).others())
        .containsExactly("2 foods are there again: table salt, sesame seeds.");
  }

  @Test
  void aCopyHasTheFormulaItCameFromAsItsReference() {
    WriteViews.Beginning copy = new NewFormula(desk).copyOf(BUN.at(1));
    assertThat(copy.name()).isEqualTo("Seeded lupin bun");
    assertThat(copy.from().address()).isEqualTo("seeded-lupin-bun@1");
    assertThat(copy.formula())
        .contains("\"reference\": \"seeded-lupin-bun\"", "\"amount\": \"180 g\"");
    assertThat(Json.compact(copy)).contains("\"formula\":{");
  }
}
