package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.change.Choice;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Draft;
import io.ovenmark.notebook.Drafts;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SaveDraftTest {
  private static final Address LINE = Address.parse(Kitchen.BUN);

  @TempDir Path folder;
  private Kitchen kitchen;

  @BeforeEach
  void open() {
    kitchen = new Kitchen(folder);
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private KeepDrafts drafts() {
    return new KeepDrafts(kitchen.desk());
  }

  /** A draft on the newest revision, in which one text was typed in the place of another. */
  private DraftViews.DraftView draft(String typed, String instead) {
    DraftViews.DraftView begun =
        drafts().begin(Optional.empty(), Optional.of(Kitchen.BUN), kitchen.by());
    assertThat(begun.document().text()).contains(typed);
    JsonText document = new JsonText(begun.document().text().replace(typed, instead));
    drafts().keep(begun.id(), 1, new KeepDrafts.Typed(document, "", ""), kitchen.by());
    return drafts().show(begun.id());
  }

  private WriteViews.RevisionWritten save(DraftViews.DraftView draft, Choices choices) {
    return new SaveDraft(kitchen.desk())
        .call(
            new SaveDraft.Request(
                draft.id(), draft.version(), "Wetter", Optional.empty(), choices),
            kitchen.by());
  }

  private String amountOfWater() {
    return kitchen
        .desk()
        .notebook()
        .formula(kitchen.desk().notebook().newest(LINE))
        .line("water")
        .orElseThrow()
        .amount()
        .toString();
  }

  @Test
  void aDraftBecomesTheNextRevisionAndIsGone() {
    DraftViews.DraftView draft = draft("188 g", "202 g");
    WriteViews.RevisionWritten written = save(draft, Choices.NONE);
    assertThat(written.outcome()).isEqualTo("committed");
    assertThat(written.revision().address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(written.base().address()).isEqualTo("seeded-lupin-bun@2");
    assertThat(written.revision().note()).isEqualTo("Wetter");
    assertThat(written.mergedWith()).isEmpty();
    assertThat(amountOfWater()).isEqualTo("202 g");
    assertThat(drafts().all().drafts()).isEmpty();
    kitchen.assertSound();
  }

  @Test
  void aDraftThatChangesNothingStays() {
    DraftViews.DraftView draft = draft("188 g", "188 g");
    assertThat(save(draft, Choices.NONE).outcome()).isEqualTo("unchanged");
    assertThat(drafts().all().drafts()).hasSize(1);
  }

  @Test
  void whatDoesNotTouchIsMerged() {
    DraftViews.DraftView draft = draft("120 g", "130 g");
    kitchen.revise(LINE, Kitchen.bun(170), "Drier");
    WriteViews.RevisionWritten written = save(draft, Choices.NONE);
    assertThat(written.outcome()).isEqualTo("committed");
    assertThat(written.mergedWith())
        .extracting(WriteViews.RevisionView::address)
        .containsExactly("seeded-lupin-bun@3");
    assertThat(amountOfWater()).isEqualTo("170 g");
    assertThat(written.changes())
        .extracting(Views.ChangeView::sentence)
        .containsExactly("Lupin flour, sweet lupin 120 g → 130 g (+10 g).");
  }

  @Test
  void whatBothChangedIsAskedAndNothingIsLost() {
    DraftViews.DraftView draft = draft("188 g", "202 g");
    kitchen.revise(LINE, Kitchen.bun(170), "Drier");
    WriteViews.RevisionWritten asked = save(draft, Choices.NONE);
    assertThat(asked.outcome()).isEqualTo("conflict");
    assertThat(asked.conflicts())
        .singleElement()
        .satisfies(
            conflict -> {
              assertThat(conflict.field()).isEqualTo("lines.water.amount");
              assertThat(conflict.base()).isEqualTo("188 g");
              assertThat(conflict.ours()).isEqualTo("202 g");
              assertThat(conflict.theirs()).isEqualTo("170 g");
            });
    assertThat(amountOfWater()).isEqualTo("170 g");
    DraftViews.DraftView still = drafts().show(draft.id());
    assertThat(still.document()).isEqualTo(draft.document());
    assertThat(still.saved()).isNull();
    assertThat(still.newer()).hasSize(1);

    Choices ours = new Choices(Map.of("lines.water.amount", Choice.OURS), Optional.empty());
    assertThat(save(still, ours).outcome()).isEqualTo("committed");
    assertThat(amountOfWater()).isEqualTo("202 g");
    assertThat(drafts().all().drafts()).isEmpty();
  }

  @Test
  void theOthersSideCanBeTakenToo() {
    DraftViews.DraftView draft = draft("188 g", "202 g");
    kitchen.revise(LINE, Kitchen.bun(170), "Drier");
    Choices theirs = new Choices(Map.of("lines.water.amount", Choice.THEIRS), Optional.empty());
    assertThat(save(draft, theirs).outcome()).isEqualTo("unchanged");
    assertThat(amountOfWater()).isEqualTo("170 g");
  }

  @Test
  void aNewFormulaIsFiledUnderTheNameAskedForOrOneFromItsName() {
    JsonText typed =
        new JsonText(
            "{\"name\":\"Cocoa bun\",\"lines\":[{\"food\":\"water\",\"amount\":\"100 g\"},"
                + "{\"food\":\"\",\"amount\":\"\"}],\"yield\":{\"pieces\":\"4\"}}");
    DraftViews.DraftView one = drafts().begin(Optional.of(typed), Optional.empty(), kitchen.by());
    WriteViews.RevisionWritten first = save(one, Choices.NONE);
    assertThat(first.revision().address()).isEqualTo("cocoa-bun@1");
    DraftViews.DraftView two = drafts().begin(Optional.of(typed), Optional.empty(), kitchen.by());
    assertThatThrownBy(() -> save(two, Choices.NONE))
        .isInstanceOfSatisfying(
            Refusal.class, e -> assertThat(e.reason()).isEqualTo(Refusal.Reason.EXISTS));
    DraftViews.DraftView still = drafts().show(two.id());
    assertThat(still.saved()).as("the other's revision is not this draft's").isNull();
    SaveDraft.Request named =
        new SaveDraft.Request(
            still.id(), still.version(), "Again", Optional.of("other-bun"), Choices.NONE);
    assertThat(new SaveDraft(kitchen.desk()).call(named, kitchen.by()).revision().address())
        .isEqualTo("other-bun@1");
    assertThat(drafts().all().drafts()).isEmpty();
  }

  @Test
  void whatIsHalfTypedIsRefusedFieldByField() {
    DraftViews.DraftView draft = draft("188 g", "188");
    assertThatThrownBy(() -> save(draft, Choices.NONE))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal ->
                assertThat(refusal.problems())
                    .singleElement()
                    .satisfies(
                        problem -> assertThat(problem.field()).isEqualTo("lines[1].amount")));
    assertThat(drafts().show(draft.id()).version()).isEqualTo(draft.version());
  }

  @Test
  void aBlankNoteOrAVersionOfBeforeIsRefused() {
    DraftViews.DraftView draft = draft("188 g", "202 g");
    assertThatThrownBy(
            () ->
                new SaveDraft(kitchen.desk())
                    .call(
                        new SaveDraft.Request(
                            draft.id(), draft.version(), " ", Optional.empty(), Choices.NONE),
                        kitchen.by()))
        .isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> save(draft, Choices.NONE))
        .as("the attempt before made another version of it")
        .isInstanceOfSatisfying(
            Refusal.class, e -> assertThat(e.reason()).isEqualTo(Refusal.Reason.CONFLICT));
    assertThat(save(drafts().show(draft.id()), Choices.NONE).outcome()).isEqualTo("committed");
  }

  @Test
  void aDraftThatAnEndedProgramLeftBehindSaysWhatItBecame() {
    DraftViews.DraftView draft = draft("120 g", "130 g");
    kitchen.revise(LINE, Kitchen.bun(170), "Drier");
    By by = kitchen.by();
    Draft before = new Drafts(kitchen.desk().notebook()).find(draft.id()).orElseThrow();
    DraftContent marked =
        DraftContent.read(before.content())
            .orElseThrow()
            .with(
                new DraftContent.Saving(LINE.line(), by.time().toEpochSecond(), "Wetter"));
    save(draft, Choices.NONE);
    Draft left = new Drafts(kitchen.desk().notebook()).begin("formula", marked.json(), by);
    assertThat(drafts().show(left.id()).saved())
        .as("committed at another time, so it is somebody else's")
        .isNull();

    DraftViews.DraftView again = draft("130 g", "140 g");
    By later = kitchen.by();
    String content =
        DraftContent.read(
                new Drafts(kitchen.desk().notebook()).find(again.id()).orElseThrow().content())
            .orElseThrow()
            .with(
                new DraftContent.Saving(LINE.line(), later.time().toEpochSecond(), "Softer"))
            .json();
    new SaveDraft(kitchen.desk())
        .call(
            new SaveDraft.Request(
                again.id(), again.version(), "Softer", Optional.empty(), Choices.NONE),
            later);
    Draft leftOver = new Drafts(kitchen.desk().notebook()).begin("formula", content, later);
    DraftViews.DraftView shown = drafts().show(leftOver.id());
    assertThat(shown.saved().address()).isEqualTo("seeded-lupin-bun@5");
    assertThatThrownBy(() -> save(shown, Choices.NONE))
        .hasMessageContaining("saved already, as seeded-lupin-bun@5");
  }
}
