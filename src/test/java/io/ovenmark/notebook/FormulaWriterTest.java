package io.ovenmark.notebook;

import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.ovenmark.change.Conflict;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Refusal.Reason;
import io.ovenmark.notebook.store.HandEdit;
import io.ovenmark.notebook.store.RepositoryFixture;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.FoodCodec;
import io.ovenmark.pantry.Nutrient;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaWriterTest {
  private static final String BUN = "seeded-lupin-bun";
  private static final String FILE = "formulas/seeded-lupin-bun.json";
  private static final Address LINE = Address.latest(BUN, Optional.empty());

  @TempDir Path temporary;
  private NotebookFixture fixture;
  private FormulaWriter writer;
  private Revision first;

  @BeforeEach
  void beginABun() {
    fixture = new NotebookFixture(temporary);
    writer = new FormulaWriter(fixture.notebook());
    first =
        fixture
            .formula(BUN)
            .line("lupin-flour", "120 g")
            .line("psyllium-husk", "20 g")
            .line("water", "180 g")
            .line("salt", "4 g")
            .set("yield.pieces=6")
            .revise("Begin")
            .newest();
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private Formula edited(Revision base, String... assignments) {
    FormulaEdit edit = new FormulaEdit(fixture.notebook().formula(base));
    for (String assignment : assignments) {
      edit = edit.set(assignment);
    }
    return edit.formula();
  }

  private ReviseOutcome.Saved saved(ReviseOutcome outcome) {
    assertThat(outcome).isInstanceOf(ReviseOutcome.Saved.class);
    return (ReviseOutcome.Saved) outcome;
  }

  private ReviseOutcome.Saved revise(Revision base, String note, String... assignments) {
    return saved(writer.revise(base, edited(base, assignments), note, fixture.by()));
  }

  private String amount(String line) {
    Revision newest = fixture.notebook().newest(LINE);
    return fixture.notebook().formula(newest).line(line).orElseThrow().amount().toString();
  }

  @Test
  void aNewFormulaIsItsFirstRevisionAndBringsItsFoodsIntoThePantry() {
    assertThat(first.address()).hasToString("seeded-lupin-bun@1");
    assertThat(first.note()).isEqualTo("Begin");
    assertThat(first.author()).isEqualTo(RepositoryFixture.AUTHOR);
    assertThat(fixture.notebook().latest().foods())
        .containsExactly("lupin-flour", "psyllium-husk", "salt", "water");
    byte[] food = FoodCodec.write(BuiltInPantry.find("lupin-flour").orElseThrow());
    assertThat(fixture.onDisk("pantry/lupin-flour.json"))
        .isEqualTo(new String(food, StandardCharsets.UTF_8));
    assertThat(fixture.commits("main")).isEqualTo(2);
    fixture.assertClean();
  }

  @Test
  void aFoodThatThePantryHasIsNotCopiedAgain() {
    fixture.relabel("lupin-flour", Nutrient.PROTEIN, 41);
    String before = fixture.tree("main").get("pantry/lupin-flour.json");

    ReviseOutcome.Saved saved = revise(first, "Wetter", "water=188 g");
    ReviseOutcome.Saved second =
        writer.create(
            "sesame-crispbread",
            fixture.formula("x").line("lupin-flour", "50 g").line("sesame-seeds", "50 g").formula(),
            "Begin",
            fixture.by());

    assertThat(saved.foodsAdded()).isEmpty();
    assertThat(second.foodsAdded()).containsExactly("sesame-seeds");
    assertThat(fixture.tree("main")).containsEntry("pantry/lupin-flour.json", before);
    fixture.assertClean();
  }

  @Test
  void aFormulaIsNotMadeTwice() {
    refuses(Reason.EXISTS, () -> writer.create(BUN, Formula.named("Bun"), "Again", fixture.by()));
    assertThat(fixture.commits("main")).isEqualTo(2);
  }

  @Test
  void foodsThatNobodyKnowsAreRefusedByNameWithWhatMayBeMeant() {
    Formula formula =
        fixture.formula("x").line("lupin-flower", "1 g").line("moon-dust", "1 g").formula();

    Refusal refusal =
        refuses(Reason.INVALID, () -> writer.create("x", formula, "Begin", fixture.by()));

    assertThat(refusal).hasMessage("The pantry has no foods \"lupin-flower\", \"moon-dust\".");
    assertThat(refusal.where()).isEqualTo("lupin-flower");
    assertThat(refusal.hint()).contains("lupin");
    assertThat(fixture.commits("main")).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\n\n"})
  void aRevisionWithoutANoteIsRefused(String note) {
    Formula wetter = edited(first, "water=188 g");
    refuses(Reason.INVALID, () -> writer.revise(first, wetter, note, fixture.by()));
    refuses(Reason.INVALID, () -> writer.create("x", wetter, note, fixture.by()));
    assertThat(fixture.commits("main")).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Bun", "../bun", "a b", "main.lock", "λ"})
  void aNameThatIsNoSlugIsRefused(String slug) {
    refuses(
        Reason.INVALID,
        () -> writer.create(slug, Formula.named("Bun"), "Begin", fixture.by()));
  }

  @Test
  void revisingMakesTheNextRevision() {
    ReviseOutcome.Saved saved = revise(first, "Wetter\n\nThe crumb was dry.", "water=188 g");

    assertThat(saved.revision().address()).hasToString("seeded-lupin-bun@2");
    assertThat(saved.revision().note()).isEqualTo("Wetter");
    assertThat(saved.revision().details()).isEqualTo("The crumb was dry.");
    assertThat(saved.merged()).isFalse();
    assertThat(saved.leftAsEditedByHand()).isEmpty();
    assertThat(fixture.notebook().revisions(LINE)).hasSize(2);
    assertThat(fixture.notebook().before(saved.revision())).contains(first);
    assertThat(fixture.notebook().before(first)).isEmpty();
    assertThat(fixture.onDisk(FILE)).contains("188 g");
    fixture.assertClean();
  }

  @Test
  void whatAPersonWritesInTheFormOfTrailersStaysInTheDetails() {
    ReviseOutcome.Saved saved =
        revise(first, "Wetter\n\nTried twice.\n\nWhy: dry crumb\nRoom: 24 °C", "water=188 g");

    assertThat(saved.revision().details()).isEqualTo("Tried twice.\n\nWhy: dry crumb\nRoom: 24 °C");
  }

  @Test
  void theSameFormulaAgainIsNoRevision() {
    ReviseOutcome outcome = writer.revise(first, edited(first), "Nothing", fixture.by());

    assertThat(outcome).isEqualTo(new ReviseOutcome.SameAsLatest(first));
    assertThat(fixture.commits("main")).isEqualTo(2);
  }

  @Test
  void aHeadMovedByAnotherFormulaIsBuiltUpon() {
    fixture.formula("sesame-crispbread").line("sesame-seeds", "200 g").revise("Begin crispbread");

    ReviseOutcome.Saved saved = revise(first, "Wetter", "water=188 g");

    assertThat(saved.merged()).isFalse();
    assertThat(fixture.git("log", "--format=%s"))
        .isEqualTo("Wetter\nBegin crispbread\nBegin\nBegin the notebook");
    assertThat(fixture.notebook().latest().formulas())
        .containsExactly(BUN, "sesame-crispbread");
    fixture.assertClean();
  }

  @Test
  void twoRevisionsOfDifferentLinesAreMergedByMeaningAndThatIsSaid() {
    revise(first, "Wetter", "water=188 g");

    ReviseOutcome.Saved saved = revise(first, "Saltier", "salt=5 g");

    assertThat(saved.merged()).isTrue();
    assertThat(saved.revision().number()).isEqualTo(3);
    assertThat(amount("water")).isEqualTo("188 g");
    assertThat(amount("salt")).isEqualTo("5 g");
    fixture.assertClean();
  }

  @Test
  void twoRevisionsOfOneLineDivergeAndNothingIsWritten() {
    Revision second = revise(first, "Wetter", "water=188 g").revision();
    String head = fixture.git("rev-parse", "main");

    ReviseOutcome outcome =
        writer.revise(first, edited(first, "water=170 g", "salt=5 g"), "Drier", fixture.by());

    assertThat(outcome)
        .isInstanceOfSatisfying(
            ReviseOutcome.Diverged.class,
            diverged -> {
              assertThat(diverged.latest()).isEqualTo(second);
              assertThat(diverged.merge().conflicts())
                  .extracting(Conflict::path, Conflict::base, Conflict::ours, Conflict::theirs)
                  .containsExactly(
                      tuple(
                          "lines.water.amount",
                          Optional.of("180 g"),
                          Optional.of("170 g"),
                          Optional.of("188 g")));
            });
    assertThat(fixture.git("rev-parse", "main")).isEqualTo(head);
    assertThat(amount("water")).isEqualTo("188 g");
    fixture.assertClean();
  }

  @Test
  void theSameChangeTwiceIsNoSecondRevision() {
    Revision second = revise(first, "Wetter", "water=188 g").revision();

    ReviseOutcome outcome =
        writer.revise(first, edited(first, "water=188 g"), "Wetter", fixture.by());

    assertThat(outcome).isEqualTo(new ReviseOutcome.SameAsLatest(second));
  }

  @Test
  void aFormulaThatWasDeletedMeanwhileIsAConflict() {
    fixture.git("rm", "-q", FILE);
    fixture.git("commit", "-qm", "Gone");

    refuses(
        Reason.CONFLICT,
        () -> writer.revise(first, edited(first, "water=188 g"), "Wetter", fixture.by()));
    refuses(Reason.NOT_FOUND, () -> fixture.notebook().newest(LINE));
    assertThat(fixture.notebook().revision(LINE.at(1))).isEqualTo(first);
    refuses(Reason.NOT_FOUND, () -> fixture.notebook().revision(LINE.at(2)));
  }

  @Test
  void aFormulaMadeAgainContinuesItsNumbering() {
    fixture.git("rm", "-q", FILE);
    fixture.git("commit", "-qm", "Gone");

    ReviseOutcome.Saved again =
        writer.create(BUN, edited(first), "Bring it back", fixture.by());

    assertThat(again.revision().address()).hasToString("seeded-lupin-bun@3");
    assertThat(fixture.notebook().revisions(LINE)).extracting(Revision::number)
        .containsExactly(1, 3);
    assertThat(fixture.notebook().before(again.revision())).contains(first);
  }

  @Test
  void aFileEditedByHandIsLeftAndReported() {
    fixture.edit(FILE, fixture.onDisk(FILE).replace("\"4 g\"", "\"6 g\""));

    ReviseOutcome.Saved saved = revise(first, "Wetter", "water=188 g");

    assertThat(saved.leftAsEditedByHand()).containsExactly(FILE);
    assertThat(fixture.onDisk(FILE)).contains("6 g").contains("180 g");
    assertThat(fixture.notebook().handEdits().get(BUN).kind()).isEqualTo(HandEdit.Kind.CHANGED);
  }

  @Test
  void anEditByHandIsCommittedToTheByte() {
    String text = fixture.onDisk(FILE).replace("180 g", "0.188 kg") + "\n\n";
    fixture.edit(FILE, text);

    ReviseOutcome.Saved saved = saved(writer.commitEdited(BUN, "Wetter", fixture.by()));

    assertThat(saved.revision().number()).isEqualTo(2);
    assertThat(saved.leftAsEditedByHand()).isEmpty();
    assertThat(fixture.onDisk(FILE)).isEqualTo(text);
    assertThat(amount("water")).isEqualTo("0.188 kg");
    fixture.assertClean();
    refuses(Reason.INVALID, () -> writer.commitEdited(BUN, "Wetter", fixture.by()));
  }

  @Test
  void anEditByHandThatIsRevisedToWhatItSaysIsNoEditAnyMore() {
    fixture.edit(FILE, fixture.onDisk(FILE).replace("180 g", "188 g"));

    ReviseOutcome.Saved saved = revise(first, "Wetter", "water=188 g");

    assertThat(saved.leftAsEditedByHand()).isEmpty();
    fixture.assertClean();
  }

  @Test
  void aRevisionCommittedByHandInOtherWordsIsTheSameWhenRevisedToTheSame() {
    fixture.edit(FILE, fixture.onDisk(FILE) + "\n\n");
    fixture.git("commit", "-qam", "Blank lines");
    Revision second = fixture.notebook().newest(LINE);

    assertThat(writer.revise(second, edited(second), "Nothing", fixture.by()))
        .isEqualTo(new ReviseOutcome.SameAsLatest(second));
  }

  @Test
  void aNewFileOnDiskBecomesAFormula() {
    fixture.edit(
        "formulas/sesame-crispbread.json",
        "{\"name\": \"Crispbread\",\n"
            + "\"lines\": [{\"food\": \"sesame-seeds\", \"amount\": \"90 g\"}]}");

    ReviseOutcome.Saved saved =
        saved(writer.commitEdited("sesame-crispbread", "Begin", fixture.by()));

    assertThat(saved.revision().address()).hasToString("sesame-crispbread@1");
    assertThat(saved.foodsAdded()).containsExactly("sesame-seeds");
    fixture.assertClean();
  }

  @Test
  void aDamagedFileOnDiskIsNotCommitted() {
    fixture.edit(FILE, "{\"name\": \"Bun\", \"lines\": [}");

    assertThatThrownBy(() -> writer.commitEdited(BUN, "Oops", fixture.by()))
        .isInstanceOf(UnreadableException.class)
        .hasMessageStartingWith(FILE + ":1:");
    assertThat(fixture.commits("main")).isEqualTo(2);
  }

  @Test
  void aDeletedFileIsNotCommittedAsARevision() throws Exception {
    Files.delete(fixture.directory().resolve(FILE));

    assertThat(refuses(Reason.INVALID, () -> writer.commitEdited(BUN, "Gone", fixture.by())).hint())
        .endsWith("git checkout -- " + FILE);
  }

  @Test
  void anEditOnAnotherFormulasVariantIsNotTakenForThisOne() {
    fixture.formula("sesame-crispbread").line("sesame-seeds", "90 g").revise("Begin");
    fixture.formula("sesame-crispbread").fork("thin", null);
    fixture.git("checkout", "-q", "variant/sesame-crispbread/thin");
    fixture.edit(FILE, fixture.onDisk(FILE).replace("180 g", "190 g"));

    refuses(Reason.INVALID, () -> writer.commitEdited(BUN, "Wetter", fixture.by()));
  }

  @Test
  void anEditOfACheckedOutVariantBecomesItsRevision() {
    fixture.formula(BUN).fork("egg-free", null);
    fixture.git("checkout", "-q", "variant/seeded-lupin-bun/egg-free");
    fixture.edit(FILE, fixture.onDisk(FILE).replace("180 g", "190 g"));

    ReviseOutcome.Saved saved = saved(writer.commitEdited(BUN, "Wetter", fixture.by()));

    assertThat(saved.revision().address()).hasToString("seeded-lupin-bun/egg-free@2");
    assertThat(amount("water")).isEqualTo("180 g");
    fixture.assertClean();
  }

  @Test
  void anEarlierRevisionIsTakenBackToTheByteWithATrailer() {
    fixture.edit(FILE, fixture.onDisk(FILE) + "\n");
    fixture.git("commit", "-qam", "By hand");
    Revision second = fixture.notebook().newest(LINE);
    revise(second, "Wetter", "water=188 g");

    ReviseOutcome.Saved saved =
        saved(writer.restore(second, LINE, "Drier was better", fixture.by()));

    assertThat(saved.revision().number()).isEqualTo(4);
    assertThat(saved.revision().blob()).isEqualTo(second.blob());
    assertThat(saved.revision().trailers())
        .containsEntry(FormulaWriter.RESTORES, "seeded-lupin-bun@2 " + second.commit().hex());
    assertThat(saved.revision().details()).isEmpty();
    assertThat(fixture.git("log", "-1", "--format=%(trailers:key=Restores,valueonly)"))
        .startsWith("seeded-lupin-bun@2");
    fixture.assertClean();
  }

  @Test
  void restoringIntoARevisionThatIsNotTheNewestAnyMoreWritesNothing() {
    Revision second = revise(first, "Wetter", "water=188 g").revision();
    Revision third = revise(second, "Salt", "salt=3 g").revision();

    Refusal refusal =
        refuses(
            Refusal.Reason.CONFLICT,
            () -> writer.restoreInto(first, second, "Back", fixture.by()));

    assertThat(refusal.where()).isEqualTo(third.address().toString());
    assertThat(fixture.notebook().newest(LINE)).isEqualTo(third);
    assertThat(saved(writer.restoreInto(first, third, "Back", fixture.by())).revision().blob())
        .isEqualTo(first.blob());
  }

  @Test
  void theBakesOfARestoredRevisionAreFoundAgain() {
    fixture.bake(first, List.of(NotebookFixture.piece("a", 200, 25, 60, 52, 40)));
    Revision second = revise(first, "Wetter", "water=188 g").revision();
    Revision third = saved(writer.restore(first, LINE, "Back", fixture.by())).revision();

    assertThat(fixture.notebook().bakes(BUN))
        .singleElement()
        .satisfies(
            bake -> {
              assertThat(bake.blob()).isEqualTo(third.blob().hex()).isEqualTo(first.blob().hex());
              assertThat(bake.blob()).isNotEqualTo(second.blob().hex());
            });
  }

  @Test
  void aRestoredRevisionBringsBackAFoodThatWasThrownOut() {
    fixture.formula(BUN).line("egg-whole", "1 large").revise("Egg");
    fixture.relabel("egg-whole", Nutrient.PROTEIN, 13);
    Revision third = fixture.formula(BUN).set("water=188 g").revise("Wetter").newest();
    String label = fixture.tree("main").get("pantry/egg-whole.json");
    fixture.git("rm", "-q", "pantry/egg-whole.json");
    fixture.git("commit", "-qm", "No egg");
    Formula eggless = fixture.notebook().formula(first);
    saved(writer.revise(third, eggless, "Without egg", fixture.by()));

    ReviseOutcome.Saved saved = saved(writer.restore(third, LINE, "Egg again", fixture.by()));

    assertThat(saved.foodsAdded()).containsExactly("egg-whole");
    assertThat(fixture.tree("main")).containsEntry("pantry/egg-whole.json", label);
  }

  @Test
  void aDamagedFormulaLeavesOthersReadableAndIsRepairedByRevisingIt() {
    fixture.formula("sesame-crispbread").line("sesame-seeds", "200 g").revise("Begin");
    fixture.edit(FILE, "{\"name\": \"Bun\",\n  \"lines\": [");
    fixture.git("commit", "-qam", "Broken by hand");
    Notebook notebook = fixture.notebook();
    Revision broken = notebook.newest(LINE);

    assertThatThrownBy(() -> notebook.formula(broken)).isInstanceOf(UnreadableException.class);
    assertThat(notebook.formula(notebook.revision(Address.parse("sesame-crispbread"))).name())
        .isEqualTo("Sesame crispbread");
    ReviseOutcome.Saved saved =
        saved(writer.revise(broken, edited(first, "water=188 g"), "Repaired", fixture.by()));

    assertThat(saved.revision().number()).isEqualTo(3);
    assertThat(saved.revision().blob())
        .isEqualTo(notebook.blobOf(FormulaCodec.write(edited(first, "water=188 g"))));
    fixture.assertClean();
  }

  @Test
  void aCommitOfOtherFilesCountsForNoFormula() {
    revise(first, "Wetter", "water=188 g");
    fixture.edit("readme.txt", "not a formula\n");
    fixture.git("add", "readme.txt");
    fixture.git("commit", "-qm", "Readme");

    assertThat(revise(fixture.notebook().newest(LINE), "Saltier", "salt=5 g").revision().number())
        .isEqualTo(3);
    fixture.assertClean();
  }
}
