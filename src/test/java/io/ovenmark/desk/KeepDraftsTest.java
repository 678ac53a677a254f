package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepDraftsTest {
  private static final JsonText HALF_TYPED =
      new JsonText("{\"name\":\"Lup\",\"lines\":[{\"food\":\"wat\",\"amount\":\"18\"}]}");

  @TempDir Path folder;
  private Kitchen kitchen;
  private KeepDrafts verb;

  @BeforeEach
  void open() {
    kitchen = new Kitchen(folder);
    verb = new KeepDrafts(kitchen.desk());
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private DraftViews.DraftView begin(String base) {
    return verb.begin(Optional.empty(), Optional.of(base), kitchen.by());
  }

  @Test
  void aDraftOfARevisionBeginsAsItsFormulaStands() {
    DraftViews.DraftView draft = begin(Kitchen.BUN);
    assertThat(draft.base().address()).isEqualTo("seeded-lupin-bun@2");
    assertThat(FormulaCodec.read("draft", draft.document().utf8())).isEqualTo(Kitchen.bun(188));
    assertThat(draft.newer()).isEmpty();
    assertThat(draft.saved()).isNull();
    assertThat(begin("seeded-lupin-bun@1").newer())
        .extracting(WriteViews.RevisionView::address)
        .containsExactly("seeded-lupin-bun@2");
  }

  @Test
  void aNewFormulaBeginsWithWhatWasTypedOrWithNothing() {
    DraftViews.DraftView typed = verb.begin(Optional.of(HALF_TYPED), Optional.empty(), kitchen.by());
    assertThat(typed.base()).isNull();
    assertThat(typed.document()).isEqualTo(HALF_TYPED);
    assertThat(verb.begin(Optional.empty(), Optional.empty(), kitchen.by()).document().text())
        .isEqualTo("{\"name\":\"\"}");
  }

  @Test
  void whatIsKeptIsThereForAnotherProgram() {
    DraftViews.DraftView draft = begin(Kitchen.BUN);
    KeepDrafts.Typed typed = new KeepDrafts.Typed(HALF_TYPED, "lup", "Sof");
    DraftViews.DraftKept kept = verb.keep(draft.id(), draft.version(), typed, kitchen.by());
    assertThat(kept.version()).isEqualTo(2);
    DraftViews.DraftView found = new KeepDrafts(kitchen.open()).show(draft.id());
    assertThat(found.document()).isEqualTo(HALF_TYPED);
    assertThat(found.note()).isEqualTo("Sof");
    assertThat(found.shortName()).isEqualTo("lup");
    assertThat(found.base()).isEqualTo(draft.base());
  }

  @Test
  void aDraftKeptElsewhereMeanwhileIsNotOverwritten() {
    DraftViews.DraftView draft = begin(Kitchen.BUN);
    KeepDrafts.Typed typed = new KeepDrafts.Typed(HALF_TYPED, "", "");
    verb.keep(draft.id(), 1, typed, kitchen.by());
    assertThatThrownBy(() -> verb.keep(draft.id(), 1, typed, kitchen.by()))
        .isInstanceOfSatisfying(
            Refusal.class, e -> assertThat(e.reason()).isEqualTo(Refusal.Reason.CONFLICT));
    assertThatThrownBy(() -> verb.discard(draft.id(), 1)).isInstanceOf(Refusal.class);
  }

  @Test
  void theListSaysWhatEachDraftChanges() {
    begin(Kitchen.BUN);
    verb.begin(Optional.of(HALF_TYPED), Optional.empty(), kitchen.by());
    assertThat(verb.all().drafts())
        .extracting(DraftViews.DraftEntry::name, DraftViews.DraftEntry::base)
        .containsExactlyInAnyOrder(
            tuple("Lup", null),
            tuple("Seeded lupin bun", "seeded-lupin-bun@2"));
  }

  @Test
  void whatWasThrownAwayCanBeBegunAgain() {
    DraftViews.DraftView draft = begin(Kitchen.BUN);
    DraftViews.DraftView thrown = verb.discard(draft.id(), draft.version());
    assertThat(verb.all().drafts()).isEmpty();
    assertThatThrownBy(() -> verb.show(draft.id())).hasMessageContaining("no such draft");
    assertThat(
            verb.begin(
                    Optional.of(thrown.document()),
                    Optional.of(thrown.base().address()),
                    kitchen.by())
                .document())
        .isEqualTo(draft.document());
  }

  @Test
  void aDraftOfAVariantKnowsItsLine() {
    Address variant = Address.parse("seeded-lupin-bun/egg-free");
    new ForkVariant(kitchen.desk())
        .call(Address.parse(Kitchen.BUN), "egg-free", Optional.empty(), "No egg", kitchen.by());
    DraftViews.DraftView draft = begin(variant.toString());
    assertThat(draft.base().variant()).isEqualTo("egg-free");
    assertThat(verb.all().drafts().get(0).variant()).isEqualTo("egg-free");
  }

  @Test
  void aDraftOfNothingIsRefused() {
    assertThatThrownBy(() -> begin("no-such-bun")).hasMessageContaining("no formula");
  }
}
