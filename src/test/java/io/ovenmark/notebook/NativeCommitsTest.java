package io.ovenmark.notebook;

import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.notebook.Refusal.Reason;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What native Git does to a notebook is read as it is meant. */
class NativeCommitsTest {
  private static final String BUN = "seeded-lupin-bun";
  private static final String FILE = "formulas/seeded-lupin-bun.json";
  private static final Address MAIN = Address.latest(BUN, Optional.empty());
  private static final Address EGG_FREE = Address.latest(BUN, Optional.of("egg-free"));

  @TempDir Path temporary;
  private NotebookFixture fixture;
  private Notebook notebook;

  @BeforeEach
  void beginABunOfTwoRevisions() {
    fixture = new NotebookFixture(temporary);
    notebook = fixture.notebook();
    fixture
        .formula(BUN)
        .line("lupin-flour", "120 g")
        .line("water", "180 g")
        .revise("Begin")
        .set("water=188 g")
        .revise("Wetter");
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private void commitByHand(String from, String to, String note) {
    fixture.edit(FILE, fixture.onDisk(FILE).replace(from, to));
    fixture.git("commit", "-qam", note);
  }

  @Test
  void aFormulaThatIsRenamedKeepsItsNumbering() {
    fixture.git("mv", FILE, "formulas/lupin-bun.json");
    fixture.git("commit", "-qm", "Rename");
    Address renamed = Address.parse("lupin-bun");

    assertThat(notebook.revisions(renamed)).extracting(Revision::note)
        .containsExactly("Begin", "Wetter", "Rename");
    assertThat(notebook.revision(renamed.at(1)).path()).isEqualTo(FILE);
    assertThat(notebook.formula(notebook.revision(renamed.at(1))).line("water").orElseThrow()
            .amount())
        .hasToString("180 g");
    refuses(Reason.NOT_FOUND, () -> notebook.newest(MAIN));
    assertThat(notebook.isKnown(BUN)).isTrue();
    fixture.formula("lupin-bun").set("water=190 g").revise("Wetter still");
    assertThat(notebook.newest(renamed).number()).isEqualTo(4);
    fixture.assertClean();
  }

  @Test
  void aRevisionIsFoundByItsCommitOnWhicheverLineItStands() {
    Revision first = notebook.revision(MAIN.at(1));
    Revision variant =
        fixture.formula(BUN).fork("egg-free", null).set("water=170 g").revise("Drier").newest();

    assertThat(notebook.revision(MAIN.atCommit(first.commit().hex()))).isEqualTo(first);
    assertThat(notebook.revision(MAIN.atCommit(first.commit().hex().substring(0, 8))))
        .isEqualTo(first);
    assertThat(notebook.revision(MAIN.atCommit(variant.commit().hex()))).isEqualTo(variant);
    assertThat(notebook.revision(EGG_FREE.atCommit(first.commit().hex())).address())
        .hasToString("seeded-lupin-bun/egg-free@1");
    refuses(Reason.NOT_FOUND, () -> notebook.revision(MAIN.atCommit("0000000")));
    refuses(
        Reason.NOT_FOUND,
        () -> notebook.revision(Address.parse("seeded-lupin-bun/vegan@" + first.commit())));
  }

  @Test
  void aCommitAloneMeansTheFormulaItChanged() {
    Revision second = notebook.newest(MAIN);
    Revision variant =
        fixture.formula(BUN).fork("egg-free", null).set("water=170 g").revise("Drier").newest();
    String id = second.commit().hex();

    assertThat(notebook.addressOfCommit(id)).contains(MAIN.atCommit(id));
    assertThat(notebook.addressOfCommit(id.substring(0, 7).toUpperCase(Locale.ROOT)))
        .contains(MAIN.atCommit(id.substring(0, 7)));
    assertThat(notebook.addressOfCommit(variant.commit().hex()))
        .contains(EGG_FREE.atCommit(variant.commit().hex()));
    assertThat(notebook.addressOfCommit(id.substring(0, 6))).isEmpty();
    assertThat(notebook.addressOfCommit("0000000")).isEmpty();
    assertThat(notebook.addressOfCommit("seeded-lupin-bun")).isEmpty();
    assertThat(notebook.addressOfCommit(fixture.git("rev-parse", "main~2"))).isEmpty();
  }

  @Test
  void aCommitThatChangedSeveralFormulasMeansNoneOfThem() {
    fixture.formula("sesame-crispbread").line("sesame-seeds", "90 g").revise("Begin");
    fixture.edit("formulas/sesame-crispbread.json", "{\"name\": \"Crispbread\"}\n");
    commitByHand("188 g", "190 g", "Both");

    assertThat(notebook.addressOfCommit(fixture.git("rev-parse", "main"))).isEmpty();
  }

  @Test
  void aCommitThatCarriedOverMeansTheVariantsFormula() {
    fixture.formula(BUN).fork("egg-free", null).set("water=170 g").revise("Drier");
    fixture.formula("sesame-crispbread").line("sesame-seeds", "90 g").revise("Begin");
    fixture.formula(BUN).line("salt", "4 g").revise("Salt");
    new VariantWriter(notebook).carry(EGG_FREE, Map.of(), "Carry", fixture.by());
    String merge = notebook.newest(EGG_FREE).commit().hex();

    assertThat(notebook.addressOfCommit(merge)).contains(EGG_FREE.atCommit(merge));
  }

  @Test
  void revisionsOfAMergedBranchGoByTheirCommits() {
    fixture.git("checkout", "-q", "-b", "tryout");
    commitByHand("188 g", "195 g", "Much wetter");
    String side = fixture.git("rev-parse", "HEAD");
    fixture.git("checkout", "-q", "main");
    fixture.formula("sesame-crispbread").line("sesame-seeds", "90 g").revise("Begin");
    fixture.git("merge", "-q", "-m", "Join", "tryout");

    assertThat(notebook.revisions(MAIN)).extracting(Revision::note)
        .containsExactly("Begin", "Wetter", "Join");
    Revision found = notebook.revision(MAIN.atCommit(side));
    assertThat(found.address()).hasToString("seeded-lupin-bun@" + side);
    assertThat(found.number()).isEqualTo(3);
    assertThat(notebook.revision(found.address())).isEqualTo(found);
    assertThat(notebook.before(found)).contains(notebook.revision(MAIN.at(2)));
    refuses(
        Reason.INVALID,
        () -> new RecordWriter(notebook).publish(found, "For the menu", fixture.by()));
  }

  @Test
  void branchesWithNamesThatNoVariantCanHaveAreNoVariants() {
    fixture.git("branch", "variant/seeded-lupin-bun/Egg_Free");
    fixture.git("branch", "variant/seeded-lupin-bun/a/b");
    fixture.git("branch", "variant/seeded-lupin-bun/12");
    fixture.git("branch", "variant/seeded-lupin-bun/egg-free");

    assertThat(notebook.variants(BUN)).containsExactly("egg-free");
    assertThat(notebook.bakes(BUN)).isEmpty();
  }

  @Test
  void aCloneReadsTheVariantsItFetchedAndWritesToBranchesOfItsOwn() {
    fixture.formula(BUN).fork("egg-free", null).set("water=170 g").revise("Drier");
    Path clone = temporary.resolve("clone");
    fixture.git("clone", "-q", ".", clone.toString());

    try (Notebook there = Notebook.open(clone)) {
      assertThat(there.variants(BUN)).containsExactly("egg-free");
      Revision variant = there.newest(EGG_FREE);
      assertThat(variant).isEqualTo(notebook.newest(EGG_FREE));
      assertThat(there.forkNumber(EGG_FREE)).isEqualTo(2);
      assertThat(fixture.repository().gitIn(clone, "branch", "--format=%(refname:short)"))
          .isEqualTo("main");
      refuses(
          Reason.EXISTS,
          () ->
              new VariantWriter(there)
                  .fork(there.newest(MAIN), "egg-free", Optional.empty(), "Mine", fixture.by()));

      var wetter =
          new FormulaEdit(there.formula(variant)).set("water=175 g").formula();
      new FormulaWriter(there).revise(variant, wetter, "Wetter", fixture.by());

      assertThat(there.newest(EGG_FREE).number()).isEqualTo(4);
      assertThat(there.before(there.newest(EGG_FREE))).contains(variant);
    }
    assertThat(notebook.newest(EGG_FREE).number()).isEqualTo(3);
    assertThat(fixture.repository().gitIn(clone, "fsck", "--strict")).isEmpty();
    fixture.repository().gitIn(clone, "push", "-q", "origin", "variant/seeded-lupin-bun/egg-free");
    assertThat(notebook.newest(EGG_FREE).note()).isEqualTo("Wetter");
  }

  @Test
  void garbageCollectionAndPackedRefsChangeNothing() {
    fixture.formula(BUN).fork("egg-free", null).set("water=170 g").revise("Drier");
    new RecordWriter(notebook).publish(notebook.newest(MAIN), "For the menu", fixture.by());
    var before = notebook.revisions(EGG_FREE);

    fixture.git("gc", "-q", "--prune=now");

    try (Notebook again = fixture.open()) {
      assertThat(again.revisions(EGG_FREE)).isEqualTo(before);
      assertThat(again.published(BUN)).hasSize(1);
      assertThat(again.variants(BUN)).containsExactly("egg-free");
    }
    fixture.formula(BUN).set("water=190 g").revise("Wetter still");
    fixture.assertClean();
  }
}
