package io.ovenmark.notebook.store;

import static io.ovenmark.notebook.store.RepositoryFixture.AUTHOR;
import static io.ovenmark.notebook.store.RepositoryFixture.bytes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.notebook.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Native Git reads what is written here, and what native Git writes is read here. */
class NativeGitTest {
  private static final String BUN = "formulas/seeded-lupin-bun.json";
  private static final String CRISPBREAD = "formulas/sesame-crispbread.json";

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private GitStore store;

  @BeforeEach
  void createANotebook() {
    fixture = new RepositoryFixture(temporary);
    store = fixture.create();
    fixture.put(store, "main", BUN, "1\n");
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private CommitId nativeHead(String branch) {
    return new CommitId(fixture.git("rev-parse", branch));
  }

  /** What {@code git log} prints of all commits, made from our facts of the same ones. */
  private void assertLogAgrees() {
    String format = "%H|%P|%an|%ae|%aI|%s";
    String log = fixture.git("log", "--all", "--format=" + format);
    String ours =
        log.lines()
            .map(line -> store.facts(new CommitId(line.substring(0, 40))))
            .map(NativeGitTest::line)
            .collect(Collectors.joining("\n"));
    assertThat(ours).isEqualTo(log);
  }

  private static String line(CommitFacts facts) {
    String parents = facts.parents().stream().map(CommitId::hex).collect(Collectors.joining(" "));
    String time = facts.time().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    return String.join(
        "|",
        facts.id().hex(),
        parents,
        facts.author().name(),
        facts.author().email(),
        time,
        facts.subject());
  }

  @Test
  void logsEveryWriteAsItIsReadHere() {
    fixture.commit(
        store,
        fixture
            .change(store, "main", "Folded\nsubject\n\nBody\n\nMore: body")
            .put(BUN, bytes("2\n"))
            .trailer("Formula", "seeded-lupin-bun")
            .trailer("Based-On", "1"));
    store.createBranch("variant/a/b", store.head("main").orElseThrow(), AUTHOR, fixture.tick());
    fixture.put(store, "variant/a/b", BUN, "3\n");
    CommitId other = fixture.put(store, "main", CRISPBREAD, "4\n");
    fixture.commit(
        store,
        fixture.change(store, "variant/a/b", "Carry").merging(other).put(CRISPBREAD, bytes("4\n")));
    fixture.commit(store, fixture.change(store, "main", "Δ").delete(CRISPBREAD));

    assertLogAgrees();
    assertThat(fixture.git("log", "-1", "--format=%(trailers)", "main~2"))
        .isEqualTo("Based-On: 1\nFormula: seeded-lupin-bun");
    assertThat(fixture.git("reflog", "main").lines()).hasSize(4);
    fixture.assertClean(store);
  }

  @Test
  void commitsAreSeenAtOnce() {
    fixture.edit(BUN, "2\n");
    fixture.git("commit", "-qam", "By hand\n\nWith body\n\nSigned-off-by: A <a@example.org>");

    CommitId head = store.head("main").orElseThrow();
    assertThat(head).isEqualTo(nativeHead("main"));
    assertThat(store.facts(head).trailers()).containsEntry("Signed-off-by", "A <a@example.org>");
    assertThat(store.read(store.blob(head, BUN).orElseThrow())).isEqualTo(bytes("2\n"));
    fixture.put(store, "main", BUN, "3\n");
    fixture.git("commit", "-q", "--amend", "-m", "Amended");
    assertThat(store.head("main")).contains(nativeHead("main"));
    fixture.put(store, "main", BUN, "4\n");
    assertLogAgrees();
    fixture.assertClean(store);
  }

  @Test
  void mergesAndRebasesAreRead() {
    fixture.git("checkout", "-q", "-b", "side");
    fixture.edit(CRISPBREAD, "side\n");
    fixture.git("add", "-A");
    fixture.git("commit", "-qm", "Side");
    fixture.git("checkout", "-q", "main");
    fixture.put(store, "main", BUN, "2\n");
    fixture.git("merge", "-q", "--no-ff", "-m", "Merge", "side");
    CommitId merge = store.head("main").orElseThrow();
    assertThat(store.facts(merge).parents())
        .containsExactly(nativeHead("main^1"), nativeHead("side"));
    assertThat(store.list(merge, "formulas")).containsOnlyKeys(BUN, CRISPBREAD);

    fixture.git("checkout", "-q", "side");
    fixture.put(store, "side", "formulas/x.json", "x\n");
    fixture.git("rebase", "-q", "main");
    assertThat(store.head("side")).contains(nativeHead("side"));
    assertThat(store.mergeBase(nativeHead("side"), merge)).contains(merge);
    fixture.put(store, "side", "formulas/y.json", "y\n");
    assertLogAgrees();
    fixture.assertClean(store);
  }

  @Test
  void collectsGarbageAndRepacksWhileTheStoreIsOpen() {
    for (int i = 0; i < 20; i++) {
      fixture.put(store, "main", BUN, "revision " + i + "\n");
      if (i % 5 == 0) {
        fixture.git("gc", "-q", "--prune=now");
      }
      if (i % 7 == 0) {
        fixture.git("repack", "-q", "-a", "-d", "-f");
        fixture.git("pack-refs", "--all");
      }
    }
    CommitId commit = store.head("main").orElseThrow();
    for (int i = 19; i >= 0; i--) {
      assertThat(store.read(store.blob(commit, BUN).orElseThrow()))
          .isEqualTo(bytes("revision " + i + "\n"));
      commit = store.facts(commit).parents().get(0);
    }
    fixture.assertClean(store);
  }

  @Test
  void clonesTheNotebookAndTheCloneIsOne() {
    fixture.git("clone", "-q", "--no-local", fixture.directory().toString(), "../clone");
    Path clone = fixture.directory().resolveSibling("clone");
    try (GitStore other = GitStore.open(clone)) {
      assertThat(other.head("main")).isEqualTo(store.head("main"));
      assertThat(other.handEdits("")).isEmpty();
      fixture.put(other, "main", BUN, "clone\n");
      assertThat(fixture.gitIn(clone, "status", "--porcelain")).isEmpty();
    }
    fixture.git("pull", "-q", "../clone", "main");
    assertThat(store.head("main")).contains(nativeHead("main"));
    fixture.assertClean(store);
  }

  @Test
  void clonesShallowlyAndTheCloneIsRead() {
    fixture.put(store, "main", BUN, "2\n");
    fixture.git("clone", "-q", "--depth=1", "file://" + fixture.directory(), "../clone");
    Path clone = fixture.directory().resolveSibling("clone");
    try (GitStore other = GitStore.open(clone)) {
      CommitId head = fixture.put(other, "main", BUN, "3\n");
      CommitId end = other.facts(head).parents().get(0);
      assertThat(other.facts(end).parents()).isEmpty();
    }
  }

  @Test
  void aLinkedWorkTreeIsANotebookOfItsOwn() {
    CommitId head = store.head("main").orElseThrow();
    store.createBranch("variant/a/b", head, AUTHOR, fixture.tick());
    fixture.git("worktree", "add", "-q", "../linked", "variant/a/b");
    Path linked = fixture.directory().resolveSibling("linked");
    try (GitStore other = GitStore.open(linked)) {
      assertThat(other.checkedOutBranch()).contains("variant/a/b");
      assertThat(other.gitDirectory()).isEqualTo(store.gitDirectory());
      fixture.put(other, "variant/a/b", BUN, "linked\n");
      assertThat(fixture.gitIn(linked, "status", "--porcelain")).isEmpty();
      assertThat(other.handEdits("")).isEmpty();
      fixture.assertClean(store);

      Write here = fixture.change(store, "variant/a/b", "Away").put(BUN, bytes("x\n"));
      assertRefused(Reason.CHECKED_OUT, () -> store.write(here));
      Write there = fixture.change(other, "main", "Away").put(BUN, bytes("x\n"));
      assertRefused(Reason.CHECKED_OUT, () -> other.write(there));
    }
    fixture.git("worktree", "remove", "../linked");
    fixture.put(store, "variant/a/b", BUN, "x\n");
    fixture.assertClean(store);
  }

  private static void assertRefused(Reason reason, Runnable task) {
    assertThatThrownBy(task::run)
        .isInstanceOfSatisfying(
            StoreException.class,
            e -> assertThat(e.reason()).as(e.getMessage()).isEqualTo(reason));
  }

  @Test
  void aMergeOrRebaseUnderWayIsNotDisturbed() {
    CommitId head = store.head("main").orElseThrow();
    store.createBranch("side", head, AUTHOR, fixture.tick());
    fixture.put(store, "side", BUN, "side\n");
    fixture.put(store, "main", BUN, "main\n");
    Write write = fixture.change(store, "main", "Meanwhile").put(CRISPBREAD, bytes("x\n"));

    assertThat(fixture.tryGit(fixture.directory(), "merge", "side").exit()).isNotZero();
    assertRefused(Reason.OPERATION_IN_PROGRESS, () -> store.write(write));
    fixture.put(store, "other", BUN, "not disturbed\n");
    fixture.git("merge", "--abort");
    assertThat(fixture.tryGit(fixture.directory(), "rebase", "side").exit()).isNotZero();
    assertThat(store.checkedOutBranch()).isEmpty();
    assertRefused(Reason.OPERATION_IN_PROGRESS, () -> store.write(write));
    fixture.git("rebase", "--abort");
    fixture.commit(store, write);
    fixture.assertClean(store);
  }

  @Test
  void aLockOfGitIsWaitedForAndThenNamed() throws IOException {
    Path index = fixture.directory().resolve(".git/index.lock");
    Path ref = fixture.directory().resolve(".git/refs/heads/main.lock");
    Optional<CommitId> head = store.head("main");
    try (GitStore hasty = GitStore.open(fixture.directory(), Duration.ofMillis(50))) {
      for (Path lock : new Path[] {index, ref}) {
        Files.createFile(lock);
        Write write = fixture.change(hasty, "main", "Locked").put(BUN, bytes("2\n"));
        assertThatThrownBy(() -> hasty.write(write))
            .isInstanceOfSatisfying(
                StoreException.class,
                e -> {
                  assertThat(e.reason()).isEqualTo(Reason.LOCKED);
                  assertThat(e.where()).isEqualTo(lock.toString());
                });
        assertThat(lock).exists();
        assertThat(hasty.head("main")).isEqualTo(head);
        assertThat(hasty.handEdits("")).isEmpty();
        Files.delete(lock);
        fixture.assertClean(hasty);
      }
    }
    Files.createFile(index);
    Thread git = new Thread(() -> index.toFile().delete());
    git.start();
    fixture.put(store, "main", BUN, "2\n");
    fixture.assertClean(store);
  }

  @Test
  void anIndexInAFormThatCannotBeReadIsRefusedBeforeAnythingIsWritten() {
    CommitId head = store.head("main").orElseThrow();
    Write write = fixture.change(store, "main", "New").put(BUN, bytes("2\n"));
    fixture.git("update-index", "--split-index");
    assertRefused(Reason.CORRUPT, () -> store.write(write));
    assertThat(store.head("main")).contains(head);
    assertThat(fixture.git("status", "--porcelain")).isEmpty();

    fixture.git("update-index", "--no-split-index", "--index-version", "4");
    fixture.git("update-index", "--force-untracked-cache");
    fixture.commit(store, write);
    fixture.assertClean(store);
  }

  @Test
  void aSettingOfTheUserThatWouldChangeFilesDoesNot() throws IOException {
    Files.writeString(
        fixture.home().resolve(".gitconfig"),
        "[user]\n\tname = B\n\temail = b@example.org\n[core]\n\tautocrlf = true\n"
            + "\teol = crlf\n[commit]\n\tgpgsign = true\n[init]\n\tdefaultBranch = trunk\n");
    try (RepositoryFixture other = new RepositoryFixture(temporary, "other")) {
      GitStore plain = other.create();
      assertThat(plain.checkedOutBranch()).contains("main");
      other.put(plain, "main", BUN, "1\n2\r\n");
      assertThat(other.onDisk(BUN)).contains("1\n2\r\n");
      other.assertClean(plain);
    }
  }
}
