package io.ovenmark.notebook.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.RepositoryFixture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryFileTest {
  private static final String BUN = "formulas/seeded-lupin-bun.json";

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private GitStore store;
  private final AtomicLong scanned = new AtomicLong();

  @BeforeEach
  void createANotebook() {
    fixture = new RepositoryFixture(temporary);
    store = fixture.create();
    for (int i = 0; i < 6; i++) {
      fixture.put(store, "main", BUN, i + "\n");
    }
    fixture.put(store, "main", "formulas/other.json", "x\n");
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private IndexedHistory history() {
    scanned.set(0);
    return new IndexedHistory(store, (done, total) -> scanned.set(total));
  }

  @Test
  void isMadeOnceAndThenReadOnlyNewCommitsAreScanned() {
    List<Entry> first = history().formula("main", BUN);
    assertThat(scanned).hasValue(7);

    IndexedHistory second = history();
    assertThat(second.formula("main", BUN)).isEqualTo(first);
    assertThat(scanned).hasValue(0);

    fixture.put(store, "main", BUN, "7\n");
    assertThat(second.formula("main", BUN)).hasSize(7);
    assertThat(scanned).hasValue(1);
    assertThat(history().formula("main", BUN)).hasSize(7);
    assertThat(scanned).hasValue(0);
  }

  @Test
  void cutAtAnyLengthIsMadeAnew() throws IOException {
    List<Entry> entries = history().formula("main", BUN);
    Path file = history().file();
    byte[] whole = Files.readAllBytes(file);
    for (int length = 0; length < whole.length; length += length < 60 ? 1 : 13) {
      Files.write(file, Arrays.copyOf(whole, length));
      assertThat(history().formula("main", BUN)).isEqualTo(entries);
      assertThat(scanned).hasValue(7);
      assertThat(file).hasBinaryContent(whole);
    }
    Files.write(file, Arrays.copyOf(whole, whole.length + 1));
    assertThat(history().formula("main", BUN)).isEqualTo(entries);
    assertThat(scanned).hasValue(7);
  }

  @Test
  void withAnyByteChangedIsMadeAnew() throws IOException {
    List<Entry> entries = history().formula("main", BUN);
    Path file = history().file();
    byte[] whole = Files.readAllBytes(file);
    for (int at = 0; at < whole.length; at += 7) {
      byte[] changed = whole.clone();
      changed[at] ^= 0x55;
      Files.write(file, changed);
      assertThat(history().formula("main", BUN)).isEqualTo(entries);
      assertThat(scanned).hasValue(7);
    }
  }

  @Test
  void ofAnotherNotebookDoesNoHarm() throws IOException {
    Path file = history().file();
    history().formula("main", BUN);
    Path strange = Files.createDirectories(temporary.resolve("strange"));
    try (GitStore other = GitStore.create(strange)) {
      fixture.put(other, "main", BUN, "strange\n");
      Files.copy(file, new IndexedHistory(other).file());
      assertThat(new IndexedHistory(other).formula("main", BUN))
          .isEqualTo(new PlainWalk(other).formula("main", BUN))
          .hasSize(1);
    }
  }

  @Test
  void thatCannotBeWrittenStaysInMemory() throws IOException {
    Path file = history().file();
    Files.createDirectories(file.resolve("in the way"));

    IndexedHistory history = history();

    assertThat(history.formula("main", BUN)).hasSize(6);
    assertThat(history.formula("main", "formulas/other.json")).hasSize(1);
    assertThat(file).isDirectory();
    try (var files = Files.list(file.getParent())) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrder("history", "write.lock");
    }
  }

  @Test
  void inAFolderThatMayOnlyBeReadStaysInMemory() throws IOException {
    Path folder = fixture.directory().resolve(".git/ovenmark");
    assertThat(folder.toFile().setWritable(false)).isTrue();
    try {
      assumeThat(Files.isWritable(folder)).as("root may write anywhere").isFalse();
      assertThat(fixture.open().handEdits("")).isEmpty();
      assertThat(history().formula("main", BUN)).hasSize(6);
    } finally {
      assertThat(folder.toFile().setWritable(true)).isTrue();
    }
  }

  @Test
  void leftHalfWrittenByADeadProgramIsTakenAway() throws IOException {
    Path half = history().file().resolveSibling("history-999999999-1.part");
    Files.writeString(half, "half");

    assertThat(history().formula("main", BUN)).hasSize(6);

    assertThat(half).doesNotExist();
  }

  @Test
  void sharedByThreadsAndByIndexesIsAlwaysWhole() throws Exception {
    List<Thread> threads = new ArrayList<>();
    List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());
    IndexedHistory shared = new IndexedHistory(store);
    for (int t = 0; t < 4; t++) {
      Thread thread =
          new Thread(
              () -> {
                for (int i = 0; i < 40; i++) {
                  assertThat(shared.formula("main", BUN)).hasSizeGreaterThanOrEqualTo(6);
                  IndexedHistory own = new IndexedHistory(store);
                  assertThat(own.formula("main", BUN)).hasSizeGreaterThanOrEqualTo(6);
                }
              });
      thread.setUncaughtExceptionHandler((dead, fault) -> faults.add(fault));
      threads.add(thread);
      thread.start();
    }
    for (int i = 0; i < 40; i++) {
      fixture.put(store, "main", BUN, "more " + i + "\n");
    }
    for (Thread thread : threads) {
      thread.join();
    }
    assertThat(faults).isEmpty();
    assertThat(shared.formula("main", BUN))
        .isEqualTo(new PlainWalk(store).formula("main", BUN))
        .hasSize(46);
    assertThat(history().formula("main", BUN)).hasSize(46);
  }

  @Test
  void ofALinkedWorkTreeIsTheSame() {
    history().formula("main", BUN);
    CommitId head = store.head("main").orElseThrow();
    store.createBranch("variant/a/b", head, RepositoryFixture.AUTHOR, fixture.tick());
    fixture.git("worktree", "add", "-q", "../linked", "variant/a/b");
    try (GitStore linked = GitStore.open(fixture.directory().resolveSibling("linked"))) {
      IndexedHistory history = new IndexedHistory(linked, (done, total) -> scanned.set(total));
      scanned.set(0);
      assertThat(history.file()).isEqualTo(history().file());
      assertThat(history.formula("variant/a/b", BUN)).hasSize(6);
      assertThat(scanned).hasValue(0);
    }
  }
}
