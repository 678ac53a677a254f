package io.ovenmark.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.bake.Bake;
import io.ovenmark.notebook.store.RepositoryFixture;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept of the bakes never hides what somebody else has written since. */
class BakesAnewTest {
  private static final String FORMULA = "seeded-lupin-bun";
  private static final String FIRST = "bakes/seeded-lupin-bun/2026-03-01-1.json";
  private static final String SECOND = "bakes/seeded-lupin-bun/2026-03-02-1.json";

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private Notebook notebook;

  @BeforeEach
  void createANotebookWithABake() {
    fixture = new RepositoryFixture(temporary);
    By by = new By(RepositoryFixture.AUTHOR, fixture.tick());
    notebook =
        Notebook.create(fixture.directory(), NotebookSettings.titled("Saltmarsh bench"), by);
    commit(FIRST, bake("2026-03-01", "first"));
  }

  @AfterEach
  void close() {
    notebook.close();
    fixture.close();
  }

  private static String bake(String day, String note) {
    return """
        {
          "address": "seeded-lupin-bun@1",
          "blob": "0123456789abcdef0123456789abcdef01234567",
          "time": "%sT10:00+01:00",
          "note": "%s",
          "pieces": [],
          "findings": [],
          "photos": []
        }
        """
        .formatted(day, note);
  }

  private void commit(String path, String content) {
    fixture.edit(path, content);
    fixture.git("add", "-A");
    fixture.git("commit", "-q", "-m", "By native Git");
  }

  private List<String> notes() {
    return notebook.bakes(FORMULA).stream().map(Bake::note).flatMap(Optional::stream).toList();
  }

  @Test
  void aBakeAddedChangedOrDeletedByNativeGitIsSeenAtOnce() {
    assertThat(notes()).containsExactly("first");

    commit(SECOND, bake("2026-03-02", "second"));
    assertThat(notes()).containsExactly("first", "second");

    commit(FIRST, bake("2026-03-01", "first, mended"));
    assertThat(notes()).containsExactly("first, mended", "second");

    fixture.git("rm", "-q", "-r", "bakes");
    fixture.git("commit", "-q", "-m", "All gone");
    assertThat(notes()).isEmpty();
    assertThat(notebook.bakeProblems(FORMULA)).isEmpty();
  }

  @Test
  void aDamagedBakeIsToldOfUntilItIsMendedAndNoLonger() {
    commit(SECOND, "{");
    assertThat(notes()).containsExactly("first");
    assertThat(notebook.bakeProblems(FORMULA)).hasSize(1);
    assertThat(notebook.bakeProblems(FORMULA)).hasSize(1);

    commit(SECOND, bake("2026-03-02", "second"));
    assertThat(notes()).containsExactly("first", "second");
    assertThat(notebook.bakeProblems(FORMULA)).isEmpty();
  }

  @Test
  void aVariantAddsItsOwnAndTheMainLineGoesFirstWhereBothHaveOne() {
    fixture.git("checkout", "-q", "-b", "variant/seeded-lupin-bun/egg-free");
    commit(FIRST, bake("2026-03-01", "first, of the variant"));
    commit(SECOND, bake("2026-03-02", "second, of the variant"));
    assertThat(notes()).containsExactly("first", "second, of the variant");

    fixture.git("checkout", "-q", "main");
    assertThat(notes()).containsExactly("first", "second, of the variant");
    fixture.git("branch", "-q", "-D", "variant/seeded-lupin-bun/egg-free");
    assertThat(notes()).containsExactly("first");
  }

  @Test
  void aBakeOfTheSameFolderContentBelongsToTheFormulaAskedFor() {
    commit("bakes/sesame-crispbread/2026-03-01-1.json", bake("2026-03-01", "first"));

    assertThat(notebook.bakes(FORMULA)).extracting(Bake::formula).containsExactly(FORMULA);
    assertThat(notebook.bakes("sesame-crispbread"))
        .extracting(Bake::formula)
        .containsExactly("sesame-crispbread");
  }
}
