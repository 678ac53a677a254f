package io.ovenmark.notebook.store;

import static io.ovenmark.notebook.store.RepositoryFixture.bytes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.notebook.store.Pending.FileChange;
import io.ovenmark.notebook.store.Pending.NewRef;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import org.eclipse.jgit.lib.ObjectId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A history from elsewhere on top of a branch: whole or not at all, whatever happens between. */
class IntakeTest {
  private static final String BUN = "formulas/seeded-lupin-bun.json";
  private static final String VARIANT = "variant/seeded-lupin-bun/egg-free";
  private static final String TAG = "published/seeded-lupin-bun/1";

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private GitStore store;

  @BeforeEach
  void begin() {
    fixture = new RepositoryFixture(temporary);
    store = fixture.create();
    fixture.put(store, "main", "formulas/muffin.json", "muffin\n");
  }

  @AfterEach
  void end() {
    fixture.close();
  }

  private static SortedMap<String, Optional<BlobId>> file(String content) {
    return new TreeMap<>(Map.of(BUN, Optional.of(BlobContent.id(bytes(content)))));
  }

  private static final Map<BlobId, byte[]> CONTENTS =
      Map.of(
          BlobContent.id(bytes("1\n")), bytes("1\n"),
          BlobContent.id(bytes("2\n")), bytes("2\n"),
          BlobContent.id(bytes("3\n")), bytes("3\n"));

  private Chronicle.Step step(int parent, String content) {
    return new Chronicle.Step(
        parent,
        List.of(),
        file(content),
        RepositoryFixture.AUTHOR,
        fixture.tick(),
        ids -> "Step " + content.strip());
  }

  private Chronicle chronicle() {
    return new Chronicle(
        List.of(step(Chronicle.BASE, "1\n"), step(0, "2\n"), step(0, "3\n")),
        new TreeMap<>(Map.of("main", 1, VARIANT, 2)),
        List.of(
            new Chronicle.Label(TAG, 0, "Published", RepositoryFixture.AUTHOR, fixture.tick())));
  }

  private WriteOutcome take(GitStore into, Chronicle chronicle, CommitId seen) {
    return new Transfer(into)
        .takeIn(
            chronicle,
            "main",
            seen,
            CONTENTS::get,
            RepositoryFixture.AUTHOR,
            fixture.tick(),
            done -> {});
  }

  @Test
  void branchesTagsAndFilesFollow() {
    CommitId before = store.head("main").orElseThrow();

    assertThat(take(store, chronicle(), before)).isInstanceOf(WriteOutcome.Written.class);

    assertThat(fixture.git("log", "--format=%s", "main"))
        .isEqualTo("Step 2\nStep 1\nPut formulas/muffin.json");
    assertThat(fixture.git("log", "-1", "--format=%s", VARIANT)).isEqualTo("Step 3");
    assertThat(fixture.git("cat-file", "-t", TAG)).isEqualTo("tag");
    assertThat(fixture.onDisk(BUN)).contains("2\n");
    fixture.assertClean(store);
  }

  @Test
  void aMovedBranchGetsNothing() {
    CommitId before = store.head("main").orElseThrow();
    fixture.put(store, "main", "formulas/crispbread.json", "crispbread\n");

    assertThat(take(store, chronicle(), before)).isInstanceOf(WriteOutcome.Moved.class);

    assertThat(store.branches("variant/")).isEmpty();
    assertThat(store.tags("published/")).isEmpty();
    fixture.assertClean(store);
  }

  @Test
  void aTakenNameRefusesAll() {
    CommitId before = store.head("main").orElseThrow();
    store.tag(TAG, before, "Other", RepositoryFixture.AUTHOR, fixture.tick());

    assertThatThrownBy(() -> take(store, chronicle(), before))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("exists already");
    assertThat(store.head("main")).contains(before);
    assertThat(store.branches("variant/")).isEmpty();
  }

  @Test
  void onlyOneOfTwoAtATimeIsWritten() throws InterruptedException {
    CommitId before = store.head("main").orElseThrow();
    Chronicle chronicle = chronicle();
    CountDownLatch start = new CountDownLatch(1);
    List<Object> outcomes = Collections.synchronizedList(new ArrayList<>());
    List<Thread> threads = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      GitStore own = fixture.open();
      Thread thread =
          new Thread(
              () -> {
                try {
                  start.await();
                  outcomes.add(take(own, chronicle, before).getClass());
                } catch (InterruptedException | StoreException e) {
                  outcomes.add(e);
                }
              });
      thread.start();
      threads.add(thread);
    }
    start.countDown();
    for (Thread thread : threads) {
      thread.join();
    }

    assertThat(outcomes).filteredOn(WriteOutcome.Written.class::equals).hasSize(1);
    assertThat(outcomes).filteredOn(WriteOutcome.Moved.class::equals).hasSize(3);
    fixture.assertClean(store);
  }

  /** Dies with so many of the three references moved. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void whoeverComesAfterASuddenDeathFindsAllOrNothing(int moved) throws IOException {
    CommitId before = store.head("main").orElseThrow();
    take(store, chronicle(), before);
    CommitId after = store.head("main").orElseThrow();
    String variant = fixture.git("rev-parse", VARIANT);
    String tag = fixture.git("rev-parse", TAG);
    Path own = fixture.directory().resolve(".git/ovenmark");
    if (moved < 3) {
      fixture.git("update-ref", "-d", "refs/tags/" + TAG);
    }
    if (moved < 2) {
      fixture.git("update-ref", "-d", "refs/heads/" + VARIANT);
    }
    if (moved < 1) {
      fixture.git("reset", "-q", "--hard", before.hex());
    }
    new Pending(
            "refs/heads/main",
            ObjectId.fromString(after.hex()),
            List.of(
                new FileChange(
                    BUN, Optional.empty(), Optional.of(BlobContent.id(bytes("2\n"))))),
            List.of(
                new NewRef("refs/heads/" + VARIANT, ObjectId.fromString(variant)),
                new NewRef("refs/tags/" + TAG, ObjectId.fromString(tag))))
        .write(own);
    Files.write(own.resolve("write.lock"), bytes("held\n"));

    GitStore next = fixture.open();

    assertThat(next.branches("variant/").size()).isEqualTo(moved == 0 ? 0 : 1);
    assertThat(next.tags("published/").size()).isEqualTo(moved == 0 ? 0 : 1);
    assertThat(next.head("main")).contains(moved == 0 ? before : after);
    assertThat(fixture.onDisk(BUN).isPresent()).isEqualTo(moved > 0);
    fixture.assertClean(next);
  }

  /** Dies with so many of the two references moved. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void whatIsPutAsideIsNeverLostByASuddenDeath(int moved) throws IOException {
    take(store, chronicle(), store.head("main").orElseThrow());
    String variant = fixture.git("rev-parse", VARIANT);
    CommitId before = store.head("main").orElseThrow();
    CommitId after = fixture.put(store, "main", "notes.txt", "An undone take-in\n");
    Companion companion =
        new Companion(
            Companion.Kind.BRANCH, VARIANT, new CommitId(variant), Companion.Way.PUT_ASIDE);
    if (moved > 0) {
      fixture.git("update-ref", companion.asideRef(), variant);
    }
    if (moved > 1) {
      fixture.git("update-ref", "-d", companion.ref());
    }
    Path own = fixture.directory().resolve(".git/ovenmark");
    new Pending(
            "refs/heads/main",
            ObjectId.fromString(after.hex()),
            List.of(),
            List.of(new NewRef(companion.asideRef(), ObjectId.fromString(variant))),
            List.of(new NewRef(companion.ref(), ObjectId.fromString(variant))))
        .write(own);
    Files.write(own.resolve("write.lock"), bytes("held\n"));

    GitStore next = fixture.open();

    assertThat(before).isNotEqualTo(after);
    assertThat(next.branches("variant/")).isEmpty();
    assertThat(fixture.git("rev-parse", companion.asideRef())).isEqualTo(variant);
    fixture.assertClean(next);
  }
}
