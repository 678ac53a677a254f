package io.ovenmark.notebook.store;

import static io.ovenmark.notebook.store.RepositoryFixture.AUTHOR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.notebook.store.StoreException.Reason;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BranchesAndTagsTest {
  private static final String BUN = "formulas/seeded-lupin-bun.json";
  private static final String VARIANT = "variant/seeded-lupin-bun/egg-free";

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private GitStore store;
  private CommitId first;
  private CommitId second;

  @BeforeEach
  void createANotebookOfTwoCommits() {
    fixture = new RepositoryFixture(temporary);
    store = fixture.create();
    first = fixture.put(store, "main", BUN, "1\n");
    second = fixture.put(store, "main", BUN, "2\n");
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private static void assertRefused(Reason reason, ThrowingCallable task) {
    assertThatThrownBy(task)
        .isInstanceOfSatisfying(
            StoreException.class,
            e -> assertThat(e.reason()).as(e.getMessage()).isEqualTo(reason));
  }

  private void branch(String name, CommitId at) {
    store.createBranch(name, at, AUTHOR, fixture.tick());
  }

  @Test
  void branchesAreMadeMovedAndDeletedByCompareAndSwap() {
    branch(VARIANT, first);
    assertThat(store.branches("variant/")).containsEntry(VARIANT, first);

    assertThat(store.moveBranch(VARIANT, second, first, AUTHOR, fixture.tick())).isFalse();
    assertThat(store.moveBranch(VARIANT, first, second, AUTHOR, fixture.tick())).isTrue();
    assertThat(store.head(VARIANT)).contains(second);
    assertThat(store.deleteBranch(VARIANT, first, AUTHOR, fixture.tick())).isFalse();
    assertThat(store.deleteBranch(VARIANT, second, AUTHOR, fixture.tick())).isTrue();
    assertThat(store.deleteBranch(VARIANT, second, AUTHOR, fixture.tick())).isFalse();
    assertThat(store.branches("")).containsOnlyKeys("main");
    fixture.assertClean(store);
  }

  @Test
  void aPackedBranchIsMovedAndDeleted() {
    branch(VARIANT, first);
    fixture.git("pack-refs", "--all");
    assertThat(store.head(VARIANT)).contains(first);

    fixture.put(store, VARIANT, BUN, "3\n");
    fixture.git("pack-refs", "--all");
    CommitId head = store.head(VARIANT).orElseThrow();

    assertThat(store.deleteBranch(VARIANT, head, AUTHOR, fixture.tick())).isTrue();
    assertThat(fixture.git("branch", "--list").strip()).isEqualTo("* main");
    fixture.assertClean(store);
  }

  @Test
  void aNameInUseOrInTheWayIsRefused() {
    branch(VARIANT, first);

    assertRefused(Reason.NAME_TAKEN, () -> branch(VARIANT, second));
    assertRefused(Reason.NAME_TAKEN, () -> branch("variant/seeded-lupin-bun", first));
    assertRefused(Reason.NAME_TAKEN, () -> branch(VARIANT + "/more", first));
    assertRefused(
        Reason.NAME_TAKEN,
        () ->
            store.write(
                fixture
                    .change(store, "main/below", "Bad")
                    .put(BUN, RepositoryFixture.bytes("x"))));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "a..b", "a b", "a~1", "/a", "a/", "a.lock", "-x", "a\\b", "@{", "a:b"})
  void aNameGitDoesNotAllowIsRefused(String name) {
    assertRefused(Reason.BAD_NAME, () -> branch(name, first));
    assertRefused(Reason.BAD_NAME, () -> store.head(name));
    assertRefused(
        Reason.BAD_NAME, () -> store.tag(name, first, "x", AUTHOR, fixture.tick()));
  }

  @Test
  void aBranchWhoseFilesAreOnDiskIsNotMovedByItself() {
    assertRefused(
        Reason.CHECKED_OUT,
        () -> store.moveBranch("main", second, first, AUTHOR, fixture.tick()));
    assertRefused(
        Reason.CHECKED_OUT, () -> store.deleteBranch("main", second, AUTHOR, fixture.tick()));
  }

  @Test
  void anAnnotatedTagIsMadeOnce() {
    OffsetDateTime time = fixture.tick();
    String name = "published/seeded-lupin-bun/2";

    TagFacts tag = store.tag(name, second, "For the guests", AUTHOR, time);

    assertThat(tag).isEqualTo(new TagFacts(name, second, time, "For the guests"));
    assertThat(store.tags("published/")).containsEntry(name, tag).hasSize(1);
    assertRefused(
        Reason.NAME_TAKEN, () -> store.tag(name, first, "Again", AUTHOR, fixture.tick()));
    assertThat(fixture.git("cat-file", "-t", name)).isEqualTo("tag");
    assertThat(fixture.git("tag", "-n", "-l", name)).contains("For the guests");
    fixture.assertClean(store);
  }

  @Test
  void tagsOfNativeGitAreRead() {
    fixture.git("tag", "light", first.hex());
    fixture.git("tag", "-a", "-m", "Note\n\nMore", "annotated", second.hex());
    fixture.git("tag", "-a", "-m", "Of a tag", "outer", "annotated");
    fixture.git("tag", "blob", store.hash(RepositoryFixture.bytes("1\n")).hex());
    fixture.git("pack-refs", "--all");

    assertThat(store.tags("")).containsOnlyKeys("light", "annotated", "outer");
    assertThat(store.tags("").get("light"))
        .isEqualTo(new TagFacts("light", first, store.facts(first).time(), ""));
    assertThat(store.tags("").get("annotated").message()).isEqualTo("Note\n\nMore");
    assertThat(store.tags("").get("outer").commit()).isEqualTo(second);
  }
}
