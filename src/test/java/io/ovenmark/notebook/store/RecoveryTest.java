package io.ovenmark.notebook.store;

import static io.ovenmark.notebook.store.RepositoryFixture.bytes;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.store.Pending.FileChange;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Builds by hand what a writer leaves that dies between two of its steps. */
class RecoveryTest {
  private static final String BUN = "formulas/seeded-lupin-bun.json";
  private static final String CRISPBREAD = "formulas/sesame-crispbread.json";
  private static final String MUFFIN = "formulas/cocoa-sunflower-muffin.json";

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private GitStore store;
  private Path git;
  private Path own;

  @BeforeEach
  void createANotebook() throws IOException {
    fixture = new RepositoryFixture(temporary);
    store = fixture.create();
    git = fixture.directory().resolve(".git");
    own = git.resolve("ovenmark");
    fixture.commit(
        store,
        fixture
            .change(store, "main", "Start")
            .put(BUN, bytes("bun\n"))
            .put(CRISPBREAD, bytes("crispbread\n")));
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  /** How far the dead writer came. */
  private enum Death {
    LOCKED,
    WRITTEN_DOWN,
    MOVED,
    FIRST_FILE,
    ALL_FILES,
    INDEX,
    UNLOCKED
  }

  /** Dies on the way from the present head to a commit that changes, adds and deletes a file. */
  private CommitId die(Death death) throws IOException {
    CommitId before = store.head("main").orElseThrow();
    Files.copy(git.resolve("index"), git.resolve("index-before"));
    CommitId after =
        fixture.commit(
            store,
            fixture
                .change(store, "main", "Dies")
                .put(BUN, bytes("2\n"))
                .put(MUFFIN, bytes("muffin\n"))
                .delete(CRISPBREAD));
    Path index = git.resolve("index-before");
    if (death.compareTo(Death.INDEX) < 0) {
      Files.delete(git.resolve("index"));
      Files.move(index, git.resolve("index"));
    } else {
      Files.delete(index);
    }
    if (death.compareTo(Death.ALL_FILES) < 0) {
      Files.delete(fixture.directory().resolve(MUFFIN));
      fixture.edit(CRISPBREAD, "crispbread\n");
    }
    if (death.compareTo(Death.FIRST_FILE) < 0) {
      fixture.edit(BUN, "bun\n");
    }
    if (death.compareTo(Death.MOVED) < 0) {
      Files.writeString(git.resolve("refs/heads/main"), before.hex() + "\n");
    }
    if (death.compareTo(Death.WRITTEN_DOWN) >= 0) {
      new Pending(
              "refs/heads/main",
              ObjectId.fromString(after.hex()),
              List.of(
                  new FileChange(MUFFIN, Optional.empty(), blob("muffin\n")),
                  new FileChange(BUN, blob("bun\n"), blob("2\n")),
                  new FileChange(CRISPBREAD, blob("crispbread\n"), Optional.empty())))
          .write(own);
    }
    if (death.compareTo(Death.UNLOCKED) < 0) {
      Files.createFile(own.resolve("index.token"));
      Files.createLink(git.resolve("index.lock"), own.resolve("index.token"));
    }
    Files.writeString(own.resolve("write.lock"), "held\n");
    Files.writeString(own.resolve("work.part"), "half");
    Files.writeString(git.resolve("objects/noz123.tmp"), "half");
    return death.compareTo(Death.MOVED) < 0 ? before : after;
  }

  private Optional<BlobId> blob(String content) {
    return Optional.of(store.hash(bytes(content)));
  }

  @ParameterizedTest
  @EnumSource(Death.class)
  void openingFinishesOrTakesBackWhatWasBegun(Death death) throws IOException {
    CommitId head = die(death);

    GitStore next = fixture.open();

    assertThat(next.head("main")).contains(head);
    fixture.assertClean(next);
    try (var files = Files.list(own)) {
      assertThat(files).containsExactly(own.resolve("write.lock"));
    }
    assertThat(git.resolve("objects/noz123.tmp")).doesNotExist();
    fixture.put(next, "main", BUN, "3\n");
    fixture.assertClean(next);
  }

  @ParameterizedTest
  @EnumSource(Death.class)
  void aStoreThatWasOpenAllTheTimeDoesSoBeforeItsNextWrite(Death death) throws IOException {
    CommitId head = die(death);
    assertThat(store.handEdits("")).isEmpty();
    fixture.put(store, "main", BUN, "3\n");

    assertThat(store.facts(store.head("main").orElseThrow()).parents()).containsExactly(head);
    fixture.assertClean(store);
  }

  @Test
  void aFileEditedAfterTheDeathIsLeft() throws IOException {
    die(Death.MOVED);
    fixture.edit(BUN, "edited\n");

    assertThat(fixture.open().handEdits("")).extracting(HandEdit::path).containsExactly(BUN);

    assertThat(fixture.onDisk(BUN)).contains("edited\n");
    assertThat(fixture.onDisk(MUFFIN)).contains("muffin\n");
  }

  @Test
  void aCommitOfNativeGitAfterTheDeathIsKept() throws IOException {
    die(Death.MOVED);
    Files.delete(git.resolve("index.lock"));
    fixture.git("reset", "-q", "--hard");
    fixture.edit(BUN, "native\n");
    fixture.git("commit", "-qam", "Native");

    GitStore next = fixture.open();

    assertThat(fixture.onDisk(BUN)).contains("native\n");
    fixture.assertClean(next);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void theDeadWritersLockOnTheBranchIsTakenAway(boolean withId) throws IOException {
    CommitId head = store.head("main").orElseThrow();
    String target = "d670460b4b4aece5915caf5c68d12f560a9fe3e4";
    new Pending("refs/heads/main", ObjectId.fromString(target), List.of()).write(own);
    Path lock = git.resolve("refs/heads/main.lock");
    Files.writeString(lock, withId ? target + "\n" : "");

    try (GitStore next = GitStore.open(fixture.directory(), Duration.ofMillis(50))) {
      assertThat(lock).doesNotExist();
      assertThat(next.head("main")).contains(head);
      fixture.put(next, "main", BUN, "3\n");
      fixture.assertClean(next);
    }
  }

  @Test
  void aLockOnTheBranchThatIsNotTheDeadWritersStays() throws IOException {
    String target = "d670460b4b4aece5915caf5c68d12f560a9fe3e4";
    new Pending("refs/heads/main", ObjectId.fromString(target), List.of()).write(own);
    Path lock = git.resolve("refs/heads/main.lock");
    Files.writeString(lock, "e69de29bb2d1d6434b8b29ae775ad8c2e48c5391\n");

    try (GitStore next = GitStore.open(fixture.directory(), Duration.ofMillis(50))) {
      assertThat(next.head("main")).isPresent();
      assertThat(lock).exists();
    }
  }

  @Test
  void anIndexLockThatIsNotTheDeadWritersStaysAndTheFilesFollowLater() throws IOException {
    die(Death.MOVED);
    Files.delete(git.resolve("index.lock"));
    Files.createFile(git.resolve("index.lock"));
    try (GitStore next = GitStore.open(fixture.directory(), Duration.ofMillis(50))) {
      assertThat(git.resolve("index.lock")).exists();
      assertThat(next.handEdits("")).isEmpty();
      Files.delete(git.resolve("index.lock"));
      assertThat(next.handEdits("")).isEmpty();
      fixture.assertClean(next);
    }
  }

  @Test
  void theLocksOfADeletedBranchAreTakenAway() throws IOException {
    CommitId head = store.head("main").orElseThrow();
    store.createBranch("side", head, RepositoryFixture.AUTHOR, fixture.tick());
    new Pending("refs/heads/side", ObjectId.zeroId(), List.of()).write(own);
    Files.createFile(git.resolve("refs/heads/side.lock"));
    Files.writeString(git.resolve("packed-refs.lock"), "# pack-refs");

    try (GitStore next = GitStore.open(fixture.directory(), Duration.ofMillis(50))) {
      assertThat(next.deleteBranch("side", head, RepositoryFixture.AUTHOR, fixture.tick()))
          .isTrue();
      fixture.assertClean(next);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "ovenmark pending 1\n",
        "ovenmark pending 1\nrefs/heads/main\n12\nend\n",
        "ovenmark pending 1\nrefs/heads/main\nd670460b4b4aece5915caf5c68d12f560a9fe3e4\n- x",
        "ovenmark pending 1\nrefs/heads/main\nd670460b4b4aece5915caf5c68d12f560a9fe3e4\n-\nend\n"
      })
  void aNoteThatIsNotWholeIsThrownAway(String note) throws IOException {
    Files.writeString(own.resolve("pending"), note);

    GitStore next = fixture.open();

    fixture.put(next, "main", BUN, "2\n");
    fixture.assertClean(next);
  }
}
