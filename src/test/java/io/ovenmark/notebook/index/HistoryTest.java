package io.ovenmark.notebook.index;

import static io.ovenmark.notebook.store.RepositoryFixture.AUTHOR;
import static io.ovenmark.notebook.store.RepositoryFixture.bytes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.RepositoryFixture;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.notebook.store.Write;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a history is; each case is asked of the plain walk and of the index. */
class HistoryTest {
  private static final String BUN = "formulas/seeded-lupin-bun.json";
  private static final String ROLL = "formulas/seeded-lupin-roll.json";
  private static final String CRISPBREAD = "formulas/sesame-crispbread.json";

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private GitStore store;
  private PlainWalk plain;
  private IndexedHistory indexed;

  @BeforeEach
  void createANotebook() {
    fixture = new RepositoryFixture(temporary);
    store = fixture.create();
    plain = new PlainWalk(store);
    indexed = new IndexedHistory(store);
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private List<Entry> formula(String branch, String path) {
    List<Entry> entries = plain.formula(branch, path);
    assertThat(indexed.formula(branch, path)).isEqualTo(entries);
    assertThat(new IndexedHistory(store).formula(branch, path)).isEqualTo(entries);
    for (Entry entry : entries) {
      assertThat(indexed.at(branch, path, entry.number())).contains(entry);
      assertThat(plain.at(branch, path, entry.number())).contains(entry);
    }
    for (int number : new int[] {-1, 0, entries.size() + 1}) {
      assertThat(indexed.at(branch, path, number)).isEmpty();
      assertThat(plain.at(branch, path, number)).isEmpty();
    }
    Optional<Entry> last = entries.stream().skip(Math.max(0, entries.size() - 1)).findFirst();
    assertThat(plain.latest(branch, path)).isEqualTo(last);
    assertThat(indexed.latest(branch, path)).isEqualTo(last);
    return entries;
  }

  private List<Entry> newestFirst(String branch, int limit) {
    List<Entry> entries = plain.newestFirst(branch, limit);
    assertThat(indexed.newestFirst(branch, limit)).isEqualTo(entries);
    return entries;
  }

  private Optional<CommitId> fork(String branch) {
    Optional<CommitId> fork = plain.fork(branch);
    assertThat(indexed.fork(branch)).isEqualTo(fork);
    return fork;
  }

  private Optional<BlobId> blob(String content) {
    return Optional.of(store.hash(bytes(content)));
  }

  /** A text whose lines differ from each other, long enough to be found again when edited. */
  private static String text(String title) {
    return IntStream.range(0, 30)
        .mapToObj(i -> title + " line " + i + " weighs " + i * 37 + " g\n")
        .collect(Collectors.joining());
  }

  @Test
  void anEmptyNotebookHasNone() {
    assertThat(formula("main", BUN)).isEmpty();
    assertThat(newestFirst("main", 10)).isEmpty();
    assertThat(fork("main")).isEmpty();
    assertThat(fork("variant/a/b")).isEmpty();
    assertThat(indexed.file()).doesNotExist();
  }

  @Test
  void stepsAreNumberedFromTheOldestAndOthersCommitsDoNotCount() {
    CommitId first = fixture.put(store, "main", BUN, "1\n");
    fixture.put(store, "main", CRISPBREAD, "x\n");
    fixture.put(store, "main", "bakes/seeded-lupin-bun/1.json", "{}\n");
    OffsetDateTime time = fixture.tick();
    CommitId second =
        fixture.commit(
            store,
            Write.to("main", store.head("main"), AUTHOR, time, "A\n\nB")
                .put(BUN, bytes("2\n"))
                .trailer("Formula", "seeded-lupin-bun"));

    List<Entry> entries = formula("main", BUN);

    assertThat(entries).extracting(Entry::commit).containsExactly(first, second);
    assertThat(entries.get(1))
        .isEqualTo(
            new Entry(
                2,
                second,
                BUN,
                blob("2\n"),
                Optional.empty(),
                time,
                AUTHOR,
                "A",
                "B",
                Map.of("Formula", "seeded-lupin-bun"),
                false));
    assertThat(formula("main", "formulas/none.json")).isEmpty();
    assertThat(formula("main", "bakes/seeded-lupin-bun/1.json")).isEmpty();
    assertThat(formula("none", BUN)).isEmpty();
    assertThat(newestFirst("main", 2)).extracting(Entry::path).containsExactly(BUN, CRISPBREAD);
    assertThat(plain.formulaAt(first, BUN)).isEqualTo(indexed.formulaAt(first, BUN)).hasSize(1);
  }

  @Test
  void aDeletionIsAStepAndAddingAgainContinues() {
    fixture.put(store, "main", BUN, "1\n");
    fixture.commit(store, fixture.change(store, "main", "Away").delete(BUN));
    assertThat(formula("main", BUN)).extracting(Entry::isDeletion).containsExactly(false, true);
    fixture.put(store, "main", BUN, text("back"));

    assertThat(formula("main", BUN))
        .extracting(Entry::number, Entry::isDeletion)
        .containsExactly(tuple(1, false), tuple(2, true), tuple(3, false));
  }

  @Test
  void aRenameByNativeGitIsFollowed() {
    fixture.put(store, "main", BUN, text("bun"));
    fixture.git("mv", BUN, ROLL);
    fixture.git("commit", "-qm", "Pure rename");
    fixture.git("mv", ROLL, CRISPBREAD);
    fixture.edit(CRISPBREAD, text("bun").replace("line 7 weighs", "line 7 is now") + "more\n");
    fixture.git("commit", "-qam", "Rename and edit");

    List<Entry> entries = formula("main", CRISPBREAD);

    assertThat(entries)
        .extracting(Entry::number, Entry::path, Entry::renamedFrom)
        .containsExactly(
            tuple(1, BUN, Optional.empty()),
            tuple(2, ROLL, Optional.of(BUN)),
            tuple(3, CRISPBREAD, Optional.of(ROLL)));
    String log = fixture.git("log", "--follow", "-M60%", "--format=%H", "--", CRISPBREAD);
    List<String> oldestFirst = new ArrayList<>(log.lines().toList());
    Collections.reverse(oldestFirst);
    assertThat(entries).extracting(e -> e.commit().hex()).isEqualTo(oldestFirst);
    assertThat(formula("main", BUN)).extracting(Entry::isDeletion).containsExactly(false, true);
    assertThat(newestFirst("main", 10))
        .containsExactly(entries.get(2), entries.get(1), entries.get(0));
  }

  @Test
  void aFileOfAnotherContentIsNoRename() {
    fixture.put(store, "main", BUN, text("bun"));
    fixture.commit(
        store,
        fixture.change(store, "main", "Swap").delete(BUN).put(ROLL, bytes("quite different\n")));

    assertThat(formula("main", ROLL)).hasSize(1);
    assertThat(newestFirst("main", 10)).hasSize(3);
  }

  @Test
  void anOldPathThatIsTakenAgainHasItsOwnLaterHistory() {
    fixture.put(store, "main", BUN, text("bun"));
    fixture.git("mv", BUN, ROLL);
    fixture.git("commit", "-qm", "Rename");
    fixture.put(store, "main", BUN, text("another"));
    fixture.put(store, "main", ROLL, text("bun") + "x\n");

    assertThat(formula("main", ROLL)).hasSize(3);
    assertThat(formula("main", BUN)).extracting(Entry::isDeletion)
        .containsExactly(false, true, false);
  }

  @Test
  void aMergeIsOneStepOfTheLineThatWasMergedInto() {
    fixture.put(store, "main", BUN, "1\n");
    fixture.git("checkout", "-q", "-b", "side");
    fixture.put(store, "side", BUN, "2\n");
    CommitId side = fixture.put(store, "side", BUN, "3\n");
    fixture.git("checkout", "-q", "main");
    fixture.put(store, "main", CRISPBREAD, "x\n");
    fixture.git("merge", "-q", "--no-ff", "-m", "Merge", "side");

    List<Entry> entries = formula("main", BUN);

    assertThat(entries)
        .extracting(Entry::number, Entry::merge, Entry::blob)
        .containsExactly(tuple(1, false, blob("1\n")), tuple(2, true, blob("3\n")));
    assertThat(formula("side", BUN)).hasSize(3);
    assertThat(plain.formulaAt(side, BUN)).isEqualTo(indexed.formulaAt(side, BUN)).hasSize(3);
    String log = fixture.git("log", "--first-parent", "-m", "--format=%H", "main", "--", BUN);
    assertThat(log.lines()).hasSize(2).first().isEqualTo(entries.get(1).commit().hex());
  }

  @Test
  void aVariantContinuesTheNumberingFromItsFork() {
    String variant = "variant/seeded-lupin-bun/egg-free";
    fixture.put(store, "main", BUN, "1\n");
    CommitId fork = fixture.put(store, "main", BUN, "2\n");
    store.createBranch(variant, fork, AUTHOR, fixture.tick());
    assertThat(fork(variant)).contains(fork);
    fixture.put(store, variant, BUN, "3 of the variant\n");
    CommitId main = fixture.put(store, "main", BUN, "3 of the main line\n");
    fixture.commit(
        store,
        fixture.change(store, variant, "Carry").merging(main).put(BUN, bytes("4 of both\n")));

    assertThat(fork(variant)).contains(fork);
    assertThat(fork("main")).contains(main);
    assertThat(formula(variant, BUN))
        .extracting(Entry::number, Entry::blob)
        .containsExactly(
            tuple(1, blob("1\n")),
            tuple(2, blob("2\n")),
            tuple(3, blob("3 of the variant\n")),
            tuple(4, blob("4 of both\n")));
    assertThat(formula("main", BUN)).hasSize(3);
  }

  @Test
  void aBranchOfStrangersHasNoFork() {
    fixture.put(store, "main", BUN, "1\n");
    fixture.put(store, "strange", BUN, "2\n");

    assertThat(fork("strange")).isEmpty();
    assertThat(formula("strange", BUN)).hasSize(1);
  }

  @Test
  void rewrittenHistoryIsReadAnew() {
    for (int i = 0; i < 5; i++) {
      fixture.put(store, "main", BUN, i + "\n");
    }
    List<Entry> old = formula("main", BUN);
    fixture.git("commit", "-q", "--amend", "-m", "Amended");
    List<Entry> amended = formula("main", BUN);
    assertThat(amended).hasSize(5).doesNotContain(old.get(4));
    assertThat(amended.subList(0, 4)).isEqualTo(old.subList(0, 4));
    fixture.git("reset", "-q", "--hard", "HEAD~2");
    assertThat(formula("main", BUN)).isEqualTo(old.subList(0, 3));
    fixture.put(store, "main", BUN, "other\n");
    assertThat(formula("main", BUN)).hasSize(4);
    fixture.git("checkout", "-q", "--orphan", "again");
    fixture.git("commit", "-qm", "One for all");
    fixture.git("branch", "-qf", "main");
    assertThat(formula("main", BUN)).hasSize(1);
  }

  @Test
  void modesLinksAndAFileInPlaceOfTheFolderAreNoSteps() throws IOException {
    fixture.edit("formulas", "a file of the folder's name\n");
    fixture.git("add", "-A");
    fixture.git("commit", "-qm", "File");
    assertThat(newestFirst("main", 10)).isEmpty();
    Files.delete(fixture.directory().resolve("formulas"));
    fixture.edit(BUN, "a file of the folder's name\n");
    fixture.git("add", "-A");
    fixture.git("commit", "-qm", "Folder");
    fixture.git("update-index", "--chmod=+x", BUN);
    fixture.git("commit", "-qm", "Mode");
    assertThat(formula("main", BUN)).hasSize(1);
    Files.delete(fixture.directory().resolve(BUN));
    Files.createSymbolicLink(fixture.directory().resolve(BUN), Path.of("x"));
    Files.createSymbolicLink(fixture.directory().resolve(ROLL), Path.of("x"));
    fixture.git("add", "-A");
    fixture.git("commit", "-qm", "Links");
    assertThat(formula("main", ROLL)).isEmpty();
    assertThat(formula("main", BUN)).extracting(Entry::isDeletion).containsExactly(false, true);
    Files.delete(fixture.directory().resolve(ROLL));
    fixture.edit(ROLL, "file\n");
    fixture.git("add", "-A");
    fixture.git("commit", "-qm", "File again");
    assertThat(formula("main", ROLL)).hasSize(1);
  }

  @Test
  void namesAndNotesOfTheWholeWorldAreKept() {
    String greek = "formulas/ψωμί-λούπινου.json";
    fixture.put(store, "main", greek, "1\n");
    fixture.edit(greek, "2\n");
    fixture.git("-c", "user.name=Ωμέγα 🥖", "commit", "-qam", "Λιγότερο νερό 🥐");

    assertThat(formula("main", greek)).hasSize(2);
    assertThat(newestFirst("main", 1).get(0).subject()).isEqualTo("Λιγότερο νερό 🥐");
    assertThat(newestFirst("main", 1).get(0).author().name()).isEqualTo("Ωμέγα 🥖");
  }

  @Test
  void unusualCommitsAreRead() throws IOException {
    fixture.put(store, "main", BUN, "1\n");
    String tree = fixture.git("rev-parse", "main^{tree}");
    for (String author : List.of("A <a@x> 9999999999 +0530", "no person at all", " <> 0 -0000")) {
      Path raw = temporary.resolve("raw");
      String text = "tree " + tree + "\nparent " + fixture.git("rev-parse", "main")
          + "\nauthor " + author + "\ncommitter " + author + "\n\nnote";
      Files.writeString(raw, text);
      String id =
          fixture.git("hash-object", "--literally", "-t", "commit", "-w", raw.toString());
      fixture.git("update-ref", "refs/heads/main", id);
      fixture.put(store, "main", BUN, author + "\n");
      tree = fixture.git("rev-parse", "main^{tree}");
    }
    assertThat(formula("main", BUN)).hasSize(4);
    assertThat(store.facts(new CommitId(fixture.git("rev-parse", "main~5"))).time())
        .isEqualTo("2286-11-20T23:16:39+05:30");
  }

  @Test
  void aHistoryWithAMissingCommitIsRefused() throws IOException {
    CommitId first = fixture.put(store, "main", BUN, "1\n");
    fixture.put(store, "main", BUN, "2\n");
    String hex = first.hex();
    Path objects = fixture.directory().resolve(".git/objects");
    Files.delete(objects.resolve(hex.substring(0, 2)).resolve(hex.substring(2)));
    GitStore fresh = fixture.open();

    for (History history : List.of(new PlainWalk(fresh), new IndexedHistory(fresh))) {
      assertThatThrownBy(() -> history.formula("main", BUN))
          .isInstanceOfSatisfying(
              StoreException.class,
              e -> assertThat(e.reason()).isEqualTo(StoreException.Reason.MISSING));
    }
  }

  @Test
  void aShallowCloneIsReadAndReadAnewWhenItIsDeepened() {
    for (int i = 0; i < 4; i++) {
      fixture.put(store, "main", BUN, i + "\n");
    }
    fixture.git("clone", "-q", "--depth=2", "file://" + fixture.directory(), "../clone");
    Path clone = fixture.directory().resolveSibling("clone");
    try (GitStore other = GitStore.open(clone)) {
      History history = new IndexedHistory(other);
      assertThat(history.formula("main", BUN))
          .isEqualTo(new PlainWalk(other).formula("main", BUN))
          .hasSize(2);
      fixture.git("-C", clone.toString(), "fetch", "-q", "--unshallow");
      assertThat(history.formula("main", BUN)).isEqualTo(formula("main", BUN)).hasSize(4);
    }
  }
}
