package io.ovenmark.notebook.store;

import static io.ovenmark.notebook.store.RepositoryFixture.bytes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.notebook.store.StoreException.Reason;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Contents that are kept without being stored anew, and the files that differ between commits. */
class KeptContentsTest {
  private static final String BUN = "formulas/seeded-lupin-bun.json";
  private static final String PHOTO = "photos/seeded-lupin-bun/tray.jpg";

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private GitStore store;
  private CommitId first;
  private CommitId second;

  @BeforeEach
  void createANotebookOfTwoCommits() {
    fixture = new RepositoryFixture(temporary);
    store = fixture.create();
    first =
        fixture.commit(
            store,
            fixture
                .change(store, "main", "Start")
                .put(BUN, bytes("1\n"))
                .put("pantry/salt.json", bytes("salt\n"))
                .put(PHOTO, bytes("picture")));
    second =
        fixture.commit(
            store,
            fixture
                .change(store, "main", "Go on")
                .put(BUN, bytes("2\n"))
                .put("goals/low-carb.json", bytes("goal\n"))
                .delete(PHOTO));
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private BlobId blob(String text) {
    return store.hash(bytes(text));
  }

  @Test
  void aKeptContentIsWrittenToTheCommitAndToTheFileOnDisk() {
    fixture.commit(
        store,
        fixture
            .change(store, "main", "Back")
            .keep(PHOTO, blob("picture"))
            .keep(BUN, blob("1\n")));

    assertThat(fixture.onDisk(PHOTO)).contains("picture");
    assertThat(fixture.git("show", "main:" + BUN)).isEqualTo("1");
    fixture.assertClean(store);
  }

  @Test
  void aContentIsKeptOnABranchThatIsNotOnDisk() {
    store.createBranch("side", first, RepositoryFixture.AUTHOR, fixture.tick());

    fixture.commit(
        store, fixture.change(store, "side", "Copy").keep("photos/copy.jpg", blob("picture")));

    assertThat(fixture.git("show", "side:photos/copy.jpg")).isEqualTo("picture");
    fixture.assertClean(store);
  }

  @Test
  void aContentThatTheRepositoryLacksOrThatIsNoFileIsRefused() {
    String head = fixture.git("rev-parse", "main");
    for (BlobId unknown : List.of(blob("never stored"), new BlobId(second.hex()))) {
      Write write = fixture.change(store, "main", "Keep").keep(PHOTO, unknown);
      assertThatThrownBy(() -> store.write(write))
          .isInstanceOfSatisfying(
              StoreException.class, e -> assertThat(e.reason()).isEqualTo(Reason.MISSING));
    }
    assertThat(fixture.git("rev-parse", "main")).isEqualTo(head);
    fixture.assertClean(store);
  }

  @Test
  void theLastWordForAPathCounts() {
    Write write =
        fixture
            .change(store, "main", "Words")
            .keep("a.json", blob("1\n"))
            .put("a.json", bytes("put\n"))
            .put("b.json", bytes("put\n"))
            .keep("b.json", blob("1\n"))
            .keep(BUN, blob("1\n"))
            .delete(BUN);
    fixture.commit(store, write);

    assertThat(fixture.onDisk("a.json")).contains("put\n");
    assertThat(fixture.onDisk("b.json")).contains("1\n");
    assertThat(fixture.onDisk(BUN)).isEmpty();
  }

  @Test
  void aKeptPathMustBeSafeAndNoFolder() {
    for (String path : List.of("../x", ".git/config", "a\\b", "")) {
      Write write = fixture.change(store, "main", "Bad").keep(path, blob("1\n"));
      assertThatThrownBy(() -> store.write(write))
          .isInstanceOfSatisfying(
              StoreException.class, e -> assertThat(e.reason()).isEqualTo(Reason.PATH_OUTSIDE));
    }
    Write both =
        fixture.change(store, "main", "Bad").put("a", bytes("1")).keep("a/b", blob("1\n"));
    assertThatThrownBy(() -> store.write(both))
        .isInstanceOfSatisfying(
            StoreException.class, e -> assertThat(e.reason()).isEqualTo(Reason.NOT_A_FILE));
  }

  @Test
  void keepingWhatIsThereAlreadyIsNoChange() {
    assertThat(store.write(fixture.change(store, "main", "Same").keep(BUN, blob("2\n"))))
        .isEqualTo(new WriteOutcome.Unchanged());
  }

  @Test
  void theDifferencesOfTwoCommitsAreTheirChangedFiles() {
    assertThat(store.differences(Optional.of(first), second))
        .hasSize(3)
        .containsEntry(BUN, new Difference(Optional.of(blob("1\n")), Optional.of(blob("2\n"))))
        .containsEntry(
            "goals/low-carb.json", new Difference(Optional.empty(), Optional.of(blob("goal\n"))))
        .containsEntry(PHOTO, new Difference(Optional.of(blob("picture")), Optional.empty()));
    assertThat(store.differences(Optional.of(second), first))
        .containsEntry(PHOTO, new Difference(Optional.empty(), Optional.of(blob("picture"))));
    assertThat(store.differences(Optional.of(first), first)).isEmpty();
    assertThat(store.differences(Optional.empty(), first).keySet())
        .containsExactly(BUN, "pantry/salt.json", PHOTO);
  }

  @Test
  void linksAndModesAloneAreNoDifferences() throws Exception {
    Path file = fixture.directory().resolve(BUN);
    assertThat(file.toFile().setExecutable(true)).isTrue();
    Files.createSymbolicLink(fixture.directory().resolve("link.json"), file);
    fixture.git("add", "-A");
    fixture.git("commit", "-qm", "Odd");

    CommitId third = store.head("main").orElseThrow();
    assertThat(store.differences(Optional.of(second), third)).isEmpty();
  }
}
