package io.ovenmark.desk;

import static io.ovenmark.desk.ShareBench.BUN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import io.ovenmark.desk.ShareFormula.Choice;
import io.ovenmark.notebook.NotebookFixture;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.RepositoryFixture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bundles that native Git was made to write and that no notebook would. */
class HostileBundlesTest {
  private static final String FILE = "100644";
  private static final String FOLDER = "40000";
  private static final String LEADS_OUT =
      "It holds a file whose name leads out of the notebook or into Git's own folder.";

  @TempDir static Path shared;
  @TempDir Path temporary;
  private static Path good;
  private NotebookFixture fixture;
  private Desk desk;
  private HostileBundle hostile;
  private Path file;

  @BeforeAll
  static void share() throws IOException {
    good = shared.resolve("bun.bundle");
    try (ShareBench bench = new ShareBench(Files.createDirectories(shared.resolve("own")))) {
      new ShareFormula(bench.desk())
          .bundle(BUN, Choice.USUAL, good, bench.fixture().by(), Progress.UNWATCHED);
    }
  }

  @AfterAll
  static void forget() throws IOException {
    Files.delete(good);
  }

  @BeforeEach
  void begin() throws IOException {
    fixture = new NotebookFixture(Files.createDirectories(temporary.resolve("own")));
    fixture.formula("salt-water").line("water", "100 g").line("salt", "2 g").revise("Own begin");
    desk = new Desk(fixture.open());
    hostile = new HostileBundle(fixture.repository(), good, temporary.resolve("clone"));
    file = temporary.resolve("hostile.bundle");
  }

  @AfterEach
  void end() {
    desk.close();
    fixture.close();
  }

  /** One sentence for a person; not a byte is written. */
  private void assertRefused(Path bundle, String... words) {
    String refs = fixture.git("for-each-ref");
    String objects = fixture.git("cat-file", "--batch-check", "--batch-all-objects");
    for (boolean look : new boolean[] {true, false}) {
      Throwable thrown =
          catchThrowable(
              () -> {
                TakeIn verb = new TakeIn(desk);
                if (look) {
                  verb.look(bundle, TakeIn.Choice.NONE, Progress.UNWATCHED);
                } else {
                  verb.call(bundle, TakeIn.Choice.NONE, fixture.by(), Progress.UNWATCHED);
                }
              });
      assertThat(thrown).isNotNull();
      Refusal refusal = Refusals.of(thrown).orElseThrow(() -> new AssertionError(thrown));
      assertThat(refusal.getMessage()).contains(words).doesNotContain("\n").hasSizeLessThan(220);
    }
    assertThat(fixture.git("for-each-ref")).isEqualTo(refs);
    assertThat(fixture.git("cat-file", "--batch-check", "--batch-all-objects"))
        .isEqualTo(objects);
    assertThat(desk.notebook().ownFolder().resolve("sharing")).isEmptyDirectory();
    assertThat(temporary.resolve("own/evil.json")).doesNotExist();
    fixture.assertClean();
  }

  @ParameterizedTest
  @ValueSource(strings = {"..", ".", ".git", ".GIT", "git~1", "/etc", "a/b", "../evil.json", "con"})
  void namesThatLeadElsewhereAreRefused(String name) {
    String evil = hostile.blob("{}\n");
    assertRefused(hostile.bundleOf(hostile.treeWith("", FILE, name, evil), file), LEADS_OUT);
    String within = hostile.treeWith("formulas", FILE, name, evil);
    assertRefused(
        hostile.bundleOf(hostile.treeWith("", FOLDER, "formulas", within), file), LEADS_OUT);
  }

  @Test
  void aFolderOfGitsOwnIsRefused() {
    String script = hostile.blob("#!/bin/sh\ntouch evil.json\n");
    String hook = hostile.tree("100755", "post-checkout", script);
    String git = hostile.tree(FOLDER, "hooks", hook);

    assertRefused(hostile.bundleOf(hostile.treeWith("", FOLDER, ".git", git), file), LEADS_OUT);
  }

  @ParameterizedTest
  @CsvSource({
    "120000, a symbolic link",
    "160000, a submodule",
  })
  void linksAndSubmodulesAreRefusedWhereverTheyAre(String mode, String what) {
    String id = mode.equals("160000") ? hostile.head() : hostile.blob("/etc/passwd");
    String within = hostile.treeWith("formulas", mode, "linked.json", id);

    assertRefused(
        hostile.bundleOf(hostile.treeWith("", FOLDER, "formulas", within), file),
        "It holds " + what + " (formulas/linked.json), which a notebook never does.");
  }

  @Test
  void aLinkInAnEarlierCommitIsRefusedToo() {
    String within =
        hostile.treeWith("photos", "120000", "linked.jpg", hostile.blob("/etc/passwd"));
    String before = hostile.treeWith("", FOLDER, "photos", within);
    String now = hostile.treeWith("", FILE, "README.md", hostile.blob("All is well\n"));
    hostile.bundleOf(before, file);

    assertRefused(hostile.bundleOf(now, file), "a symbolic link (photos/linked.jpg)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"run.sh", "formulas.json", ".gitmodules", "src"})
  void whatIsNoPartOfANotebookIsRefused(String name) {
    String evil = hostile.blob("echo\n");
    boolean folder = name.equals("src");
    String id = folder ? hostile.tree(FILE, "main.c", evil) : evil;

    assertRefused(
        hostile.bundleOf(hostile.treeWith("", folder ? FOLDER : FILE, name, id), file), name);
  }

  @Test
  void namesThatDifferInCapitalsAloneAreRefused() {
    String evil = hostile.tree(FILE, "bun.json", hostile.blob("{}"));

    assertRefused(
        hostile.bundleOf(hostile.treeWith("", FOLDER, "Formulas", evil), file),
        "two files whose names are one");
  }

  @Test
  void aFileWhereAFolderShouldBeIsRefused() {
    String tree = hostile.treeWith("", FILE, "bakes", hostile.blob("no folder\n"));

    assertRefused(
        hostile.bundleOf(tree, file), "It holds bakes, which is no part of a notebook.");
  }

  @Test
  void whatPeoplePutBesideANotebookDoesNotComeInAndDoesNoHarm() {
    String tree = hostile.treeWith("", FILE, "README.md", hostile.blob("Our bun\n"));
    hostile.bundleOf(tree, file);

    new TakeIn(desk).call(file, TakeIn.Choice.NONE, fixture.by(), Progress.UNWATCHED);

    assertThat(fixture.directory().resolve("README.md")).doesNotExist();
    assertThat(desk.notebook().latest().formulas()).contains(BUN);
    fixture.assertClean();
  }

  @Test
  void aBlobThatUnpacksToTooMuchIsRefused() {
    String zeros = hostile.blob(new byte[(64 << 20) + 1]);
    String within = hostile.treeWith("photos", FILE, "large.jpg", zeros);

    assertRefused(
        hostile.bundleOf(hostile.treeWith("", FOLDER, "photos", within), file),
        "larger than the 64 MB");
  }

  @Test
  void aFormulaThatIsTooLargeOrDoesNotReadIsRefusedByName() {
    String path = "formulas/" + BUN + ".json";
    String large =
        hostile.blob(
            "{\"name\": \"Bun\", \"reference\": \"wheat-bun\", \"description\": \""
                + "x".repeat(1 << 20)
                + "\"}");
    assertRefused(bundleWithFormula(large), "larger than the 1 MB");
    assertRefused(bundleWithFormula(hostile.blob("{\"name\": \"Bun\",")), "cannot be read", path);
    assertRefused(bundleWithFormula(hostile.blob("\0\1\2")), "cannot be read", path);
    assertRefused(bundleWithFormula(hostile.blob("[]")), "cannot be read", path);
  }

  private Path bundleWithFormula(String blob) {
    String within = hostile.treeWith("formulas", FILE, BUN + ".json", blob);
    return hostile.bundleOf(hostile.treeWith("", FOLDER, "formulas", within), file);
  }

  @ParameterizedTest
  @ValueSource(strings = {"pantry/lupin-flour.json", "notebook.json", "goals/low-carb-bun.json"})
  void otherFilesThatDoNotReadAreRefusedByName(String path) {
    String blob = hostile.blob("{\"name\": ");
    int slash = path.indexOf('/');
    String tree =
        slash < 0
            ? hostile.treeWith("", FILE, path, blob)
            : hostile.treeWith(
                "",
                FOLDER,
                path.substring(0, slash),
                hostile.treeWith(path.substring(0, slash), FILE, path.substring(slash + 1), blob));

    assertRefused(hostile.bundleOf(tree, file), "cannot be read", path);
  }

  @Test
  void theHistoryOfSomethingElseIsRefused() throws IOException {
    RepositoryFixture git = fixture.repository();
    Path other = Files.createDirectories(temporary.resolve("other"));
    git.gitIn(other, "init", "-q", "-b", "main");
    Files.writeString(other.resolve("main.c"), "int main() {}\n");
    git.gitIn(other, "add", ".");
    git.gitIn(other, "commit", "-q", "-m", "A program");
    git.gitIn(other, "bundle", "create", "-q", file.toString(), "main");

    assertRefused(file, "It is no notebook: its main line has no notebook.json.");
  }

  @Test
  void aBundleThatEndsTooEarlyIsRefusedWhereverItEnds() throws IOException {
    byte[] whole = Files.readAllBytes(good);
    for (int parts = 1; parts < 8; parts++) {
      Files.write(file, Arrays.copyOf(whole, whole.length * parts / 8));
      assertRefused(file, "The bundle cannot be taken in.");
    }
  }
}
