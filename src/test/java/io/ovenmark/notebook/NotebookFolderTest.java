package io.ovenmark.notebook;

import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Refusal.Reason;
import io.ovenmark.notebook.store.RepositoryFixture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NotebookFolderTest {
  private static final NotebookSettings SETTINGS = NotebookSettings.titled("Saltmarsh bench");

  @TempDir Path temporary;
  private RepositoryFixture repository;
  private Path folder;

  @BeforeEach
  void isolate() {
    repository = new RepositoryFixture(temporary);
    folder = repository.directory();
  }

  private By by() {
    return new By(RepositoryFixture.AUTHOR, repository.tick());
  }

  private Notebook create(Path place) {
    return Notebook.create(place, SETTINGS, by());
  }

  @AfterEach
  void close() {
    repository.close();
  }

  @Test
  void aNewNotebookHoldsItsSettingsAndIsAnOrdinaryRepository() throws IOException {
    try (Notebook notebook = create(folder)) {
      assertThat(notebook.latest().settings()).isEqualTo(SETTINGS);
      assertThat(notebook.latest().formulas()).isEmpty();
      assertThat(notebook.folder()).isEqualTo(folder);
    }
    assertThat(repository.git("log", "--format=%s %an")).isEqualTo("Begin the notebook Bench Hand");
    assertThat(repository.git("ls-files")).isEqualTo("notebook.json");
    assertThat(repository.git("branch", "--show-current")).isEqualTo("main");
    assertThat(repository.git("status", "--porcelain")).isEmpty();
    assertThat(repository.git("fsck", "--strict")).isEmpty();
    assertThat(Files.readString(folder.resolve("notebook.json"))).contains("Saltmarsh bench");
  }

  @Test
  void isNotMadeTwice() {
    create(folder).close();

    refuses(Reason.EXISTS, () -> create(folder));
    assertThat(repository.git("rev-list", "--count", "main")).isEqualTo("1");
  }

  @Test
  void filesThatAreThereAlreadyAreNeitherTouchedNorCommitted() {
    repository.edit("shopping.txt", "lupin flour\n");
    repository.edit("notebook.json", "{\"something\": \"else\"}\n");

    create(folder).close();

    assertThat(repository.onDisk("shopping.txt")).contains("lupin flour\n");
    assertThat(repository.onDisk("notebook.json")).contains("{\"something\": \"else\"}\n");
    assertThat(repository.git("ls-files", "--with-tree=HEAD")).isEqualTo("notebook.json");
    try (Notebook notebook = Notebook.open(folder)) {
      assertThat(notebook.latest().settings().title()).isEqualTo("Saltmarsh bench");
    }
  }

  @Test
  void aRepositoryWithCommitsBecomesANotebookByOneMore() {
    Path project = repository.directory();
    repository.edit("readme.txt", "bench\n");
    repository.git("init", "-q", "-b", "main");
    repository.git("add", "readme.txt");
    repository.git("commit", "-qm", "Before");

    create(project).close();

    assertThat(repository.git("log", "--format=%s")).isEqualTo("Begin the notebook\nBefore");
    assertThat(repository.git("ls-files")).isEqualTo("notebook.json\nreadme.txt");
    assertThat(repository.git("status", "--porcelain")).isEmpty();
  }

  @Test
  void aRepositoryWithoutACommitBeginsOnMainWhateverItsBranchWasCalled() {
    repository.edit("readme.txt", "bench\n");
    repository.git("init", "-q", "-b", "trunk");
    repository.git("add", "readme.txt");

    create(folder).close();

    assertThat(repository.git("branch", "--show-current")).isEqualTo("main");
    assertThat(repository.git("status", "--porcelain")).isEqualTo("A  readme.txt");
    assertThat(repository.git("ls-tree", "--name-only", "main")).isEqualTo("notebook.json");
  }

  @Test
  void aRepositoryWithoutABranchMainIsRefusedWithTheWayOut() {
    repository.edit("readme.txt", "bench\n");
    repository.git("init", "-q", "-b", "trunk");
    repository.git("add", "readme.txt");
    repository.git("commit", "-qm", "Before");

    Refusal refusal = refuses(Reason.NOT_A_NOTEBOOK, () -> create(folder));

    assertThat(refusal.hint()).endsWith("git branch -m trunk main");
    repository.git("branch", "-m", "trunk", "main");
    create(folder).close();
    assertThat(repository.git("status", "--porcelain")).isEmpty();
  }

  @Test
  void aFolderWithinANotebookIsNoNotebookButItsNotebookIsNamed() throws IOException {
    create(folder).close();
    Path inside = Files.createDirectories(folder.resolve("formulas/old"));

    assertThat(refuses(Reason.NOT_A_NOTEBOOK, () -> Notebook.open(inside)).hint())
        .endsWith("--notebook " + folder);
    refuses(Reason.NOT_A_NOTEBOOK, () -> create(inside));
    assertThat(inside).isEmptyDirectory();
  }

  @Test
  void aFileOrAMissingFolderIsNoNotebook() throws IOException {
    Path file = Files.writeString(repository.home().resolve("file"), "x");

    refuses(Reason.NOT_A_NOTEBOOK, () -> Notebook.open(folder.resolve("missing")));
    refuses(Reason.NOT_A_NOTEBOOK, () -> Notebook.open(file));
    refuses(Reason.NOT_A_NOTEBOOK, () -> create(file));
    assertThat(folder).doesNotExist();
  }

  @Test
  void isFoundThroughALink() throws IOException {
    create(folder).close();
    Path link = Files.createSymbolicLink(folder.resolveSibling("link"), folder);

    try (Notebook notebook = Notebook.open(link)) {
      NotebookSettings other = NotebookSettings.titled("Other title");
      NotebookSettings before = notebook.latest().settings();
      Address main = Address.latest("any", Optional.empty());
      new RecordWriter(notebook).saveSettings(main, other, before, "Title", by());
      assertThat(notebook.latest().settings()).isEqualTo(other);
    }
    assertThat(repository.git("status", "--porcelain")).isEmpty();
  }

  @Test
  void aBareRepositoryIsRefused() {
    create(folder).close();
    Path bare = folder.resolveSibling("bare.git");
    repository.git("clone", "-q", "--bare", ".", bare.toString());

    assertThat(refuses(Reason.NOT_A_NOTEBOOK, () -> Notebook.open(bare)).hint()).contains("Clone");
    refuses(Reason.NOT_A_NOTEBOOK, () -> create(bare));
  }

  @Test
  void aFurtherWorkTreeIsTheSameNotebook() {
    create(folder).close();
    Path tree = folder.resolveSibling("tree");
    repository.git("worktree", "add", "-q", "-b", "bench", tree.toString());

    try (Notebook notebook = Notebook.open(tree)) {
      assertThat(notebook.latest().settings()).isEqualTo(SETTINGS);
      assertThat(notebook.lineOnDisk("seeded-lupin-bun")).isEmpty();
    }
  }

  @Test
  void aRepositoryWithoutACommitIsNoNotebookYet() {
    repository.edit("readme.txt", "bench\n");
    repository.git("init", "-q");

    assertThat(refuses(Reason.NOT_A_NOTEBOOK, () -> Notebook.open(folder)).hint())
        .contains("ovenmark new");
  }

  @Test
  void aNewerFormatIsRefusedInOneSentenceHoweverTheRestIsWritten() {
    create(folder).close();
    repository.edit("notebook.json", "{\"format\": 2, \"title\": {\"en\": \"Bench\"}}\n");
    repository.git("commit", "-qam", "Format 2");

    Refusal refusal = refuses(Reason.NOT_A_NOTEBOOK, () -> Notebook.open(folder));

    assertThat(refusal)
        .hasMessage("The notebook is of format 2, this program reads up to 1.");
    assertThat(refusal.hint()).isEqualTo("Use a newer Ovenmark.");
  }

  @Test
  void damagedSettingsAreNamedWithTheirPlace() {
    create(folder).close();
    repository.edit("notebook.json", "{\n  \"format\": 1,\n  \"energy\": \"stars\"\n}\n");
    repository.git("commit", "-qam", "Stars");

    assertThatThrownBy(() -> Notebook.open(folder))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            e ->
                assertThat(e.problems().get(0).where())
                    .isEqualTo("notebook.json:3:13, field energy"));
  }
}
