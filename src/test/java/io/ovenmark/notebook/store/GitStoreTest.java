package io.ovenmark.notebook.store;

import static io.ovenmark.notebook.store.RepositoryFixture.AUTHOR;
import static io.ovenmark.notebook.store.RepositoryFixture.bytes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import io.ovenmark.notebook.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GitStoreTest {
  private static final String BUN = "formulas/seeded-lupin-bun.json";
  private static final String CRISPBREAD = "formulas/sesame-crispbread.json";

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private GitStore store;

  @BeforeEach
  void createANotebook() {
    fixture = new RepositoryFixture(temporary);
    store = fixture.create();
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private static void assertRefused(Reason reason, ThrowingCallable task) {
    assertThatThrownBy(task)
        .isInstanceOfSatisfying(
            StoreException.class,
            e -> {
              assertThat(e.reason()).as(e.getMessage()).isEqualTo(reason);
              assertThat(e).hasMessageMatching("(?s)[A-Z].*[.)]");
              assertThat(e.where()).isNotNull();
            });
  }

  @Test
  void anEmptyNotebookHasABranchButNoCommit() {
    assertThat(store.head("main")).isEmpty();
    assertThat(store.branches("")).isEmpty();
    assertThat(store.checkedOutBranch()).contains("main");
    assertThat(store.handEdits("formulas")).isEmpty();
    assertThat(store.tags("")).isEmpty();
    assertThat(store.resolve("d670460b4b")).isEmpty();
    fixture.assertClean(store);
  }

  @Test
  void createOpensARepositoryThatIsThere() {
    CommitId commit = fixture.put(store, "main", BUN, "{}\n");

    assertThat(fixture.create().head("main")).contains(commit);
  }

  @Test
  void createKeepsTheFilesOfTheFolder() throws IOException {
    Path folder = Files.createDirectories(temporary.resolve("full/formulas"));
    Files.writeString(folder.resolve("bun.json"), "{}\n");
    try (GitStore full = GitStore.create(folder.getParent())) {
      assertThat(full.handEdits("formulas"))
          .extracting(HandEdit::path, HandEdit::kind)
          .containsExactly(
              tuple("formulas/bun.json", HandEdit.Kind.ADDED));
    }
  }

  @Test
  void createBeginsAgainWhereItWasCutShort() throws IOException {
    Path folder = Files.createDirectories(temporary.resolve("short"));
    Files.createDirectories(folder.resolve(".git.part/objects"));
    Files.writeString(folder.resolve(".git.part/config"), "[core]\n");
    try (GitStore full = GitStore.create(folder)) {
      assertThat(full.head("main")).isEmpty();
      assertThat(folder.resolve(".git.part")).doesNotExist();
    }
  }

  @Test
  void aFolderThatIsNoRepositoryIsRefused() throws IOException {
    Path folder = Files.createDirectories(fixture.directory().resolve("formulas"));
    assertRefused(Reason.NOT_A_REPOSITORY, () -> GitStore.open(folder));
    assertRefused(Reason.NOT_A_REPOSITORY, () -> GitStore.open(temporary.resolve("none")));
    Path fake = Files.createDirectories(temporary.resolve("fake/.git")).getParent();
    assertRefused(Reason.NOT_A_REPOSITORY, () -> GitStore.open(fake));
  }

  @Test
  void aRepositoryWithOtherIdsIsRefused() throws IOException {
    Path config = fixture.directory().resolve(".git/config");
    Files.writeString(
        config,
        "[core]\n\trepositoryformatversion = 1\n[extensions]\n\tobjectformat = sha256\n");
    assertRefused(Reason.UNSUPPORTED_REPOSITORY, () -> GitStore.open(fixture.directory()));
  }

  @Test
  void aDamagedConfigurationIsRefused() throws IOException {
    Files.writeString(fixture.directory().resolve(".git/config"), "[core\n");
    assertRefused(Reason.CORRUPT, () -> GitStore.open(fixture.directory()));
  }

  @Test
  void aWriteIsReadBack() {
    OffsetDateTime time = OffsetDateTime.parse("2026-03-04T05:06:07-03:30");
    Write write =
        Write.to("main", Optional.empty(), new Author("Ana Ψ", "a@example.org"), time, "A\n\nB\nC")
            .put(BUN, bytes("bun\n"))
            .put("photos/seeded-lupin-bun/tray.jpg", new byte[] {0, -1, 13, 10})
            .trailer("Formula", "seeded-lupin-bun");

    CommitId commit = fixture.commit(store, write);

    assertThat(store.facts(commit))
        .isEqualTo(
            new CommitFacts(
                commit,
                List.of(),
                new Author("Ana Ψ", "a@example.org"),
                time,
                "A",
                "B\nC",
                Map.of("Formula", "seeded-lupin-bun")));
    assertThat(store.list(commit, "formulas")).containsOnlyKeys(BUN);
    assertThat(store.list(commit, "")).hasSize(2);
    assertThat(store.list(commit, "pantry")).isEmpty();
    assertThat(store.read(store.blob(commit, BUN).orElseThrow())).isEqualTo(bytes("bun\n"));
    assertThat(store.blob(commit, BUN)).contains(store.hash(bytes("bun\n")));
    assertThat(store.blob(commit, "formulas")).isEmpty();
    assertThat(store.blob(commit, CRISPBREAD)).isEmpty();
    assertThat(store.treeId(commit, "pantry")).isEmpty();
    assertThat(store.resolve(commit.abbreviated())).contains(commit);
    assertThat(store.resolve(commit.hex().toUpperCase(Locale.ROOT))).contains(commit);
    assertThat(store.resolve("no-id")).isEmpty();
    fixture.assertClean(store);
  }

  @Test
  void theBytesReadAreACopy() {
    fixture.put(store, "main", BUN, "bun\n");
    BlobId blob = store.hash(bytes("bun\n"));

    store.read(blob)[0] = 'g';

    assertThat(store.read(blob)).isEqualTo(bytes("bun\n"));
  }

  @Test
  void anUnchangedFolderKeepsItsTree() {
    CommitId first = fixture.put(store, "main", BUN, "1\n");
    CommitId second = fixture.put(store, "main", "bakes/seeded-lupin-bun/1.json", "2\n");

    assertThat(store.treeId(second, "formulas")).isEqualTo(store.treeId(first, "formulas"));
    assertThat(store.treeId(second, "")).isNotEqualTo(store.treeId(first, ""));
  }

  @Test
  void aWriteOfTheSameFilesMakesNoCommit() {
    CommitId head = fixture.put(store, "main", BUN, "1\n");

    assertThat(store.write(fixture.change(store, "main", "Again").put(BUN, bytes("1\n"))))
        .isEqualTo(new WriteOutcome.Unchanged());
    assertThat(store.write(fixture.change(store, "main", "Nothing").delete(CRISPBREAD)))
        .isEqualTo(new WriteOutcome.Unchanged());
    assertThat(store.write(fixture.change(store, "other", "Nothing")))
        .isEqualTo(new WriteOutcome.Unchanged());
    assertThat(store.head("main")).contains(head);
    assertThat(store.head("other")).isEmpty();
    fixture.assertClean(store);
  }

  @Test
  void aWriteOnAnOldHeadIsAnsweredWithTheNewOne() {
    Write write = fixture.change(store, "main", "First").put(BUN, bytes("1\n"));
    CommitId head = fixture.put(store, "main", CRISPBREAD, "2\n");

    assertThat(store.write(write)).isEqualTo(new WriteOutcome.Moved(Optional.of(head)));
    CommitId second = fixture.commit(store, write.onto(Optional.of(head)));

    assertThat(store.facts(second).parents()).containsExactly(head);
    Write nowhere = fixture.change(store, "none", "x").put(BUN, bytes(""));
    assertThat(store.write(nowhere.onto(Optional.of(head))))
        .isEqualTo(new WriteOutcome.Moved(Optional.empty()));
  }

  @Test
  void filesAreChangedAndDeletedWithTheirFolders() {
    fixture.put(store, "main", BUN, "1\n");
    fixture.put(store, "main", "bakes/a/b/1.json", "1\n");
    Write write =
        fixture.change(store, "main", "Clear").delete("bakes/a/b/1.json").put(BUN, bytes("2\n"));

    CommitId commit = fixture.commit(store, write);

    assertThat(store.list(commit, "")).containsOnlyKeys(BUN);
    assertThat(fixture.directory().resolve("bakes")).doesNotExist();
    assertThat(fixture.onDisk(BUN)).contains("2\n");
    fixture.assertClean(store);
  }

  @Test
  void deletingTheLastFileLeavesAnEmptyTree() {
    fixture.put(store, "main", BUN, "1\n");

    CommitId commit = fixture.commit(store, fixture.change(store, "main", "Clear").delete(BUN));

    assertThat(store.list(commit, "")).isEmpty();
    fixture.assertClean(store);
    fixture.put(store, "main", BUN, "2\n");
    fixture.assertClean(store);
  }

  @Test
  void namesThatSortUnusuallyAreStoredInGitsOrder() {
    Write write = fixture.change(store, "main", "Order");
    for (String name : List.of("a.json", "a/x.json", "a-b.json", "a0.json", "λ.json", "é/x", "Z")) {
      write = write.put("formulas/" + name, bytes(name));
    }

    CommitId commit = fixture.commit(store, write);

    assertThat(store.list(commit, "formulas")).hasSize(7);
    fixture.assertClean(store);
  }

  @Test
  void aBranchThatIsNotCheckedOutLeavesTheWorkTreeAlone() {
    CommitId head = fixture.put(store, "main", BUN, "1\n");
    store.createBranch("variant/seeded-lupin-bun/egg-free", head, AUTHOR, fixture.tick());

    CommitId variant = fixture.put(store, "variant/seeded-lupin-bun/egg-free", BUN, "2\n");

    assertThat(fixture.onDisk(BUN)).contains("1\n");
    assertThat(store.head("main")).contains(head);
    assertThat(store.branches("variant/"))
        .isEqualTo(Map.of("variant/seeded-lupin-bun/egg-free", variant));
    fixture.assertClean(store);
  }

  @Test
  void aMergeHasAllItsParentsEvenWithoutAChange() {
    CommitId base = fixture.put(store, "main", BUN, "1\n");
    store.createBranch("variant/x/y", base, AUTHOR, fixture.tick());
    CommitId variant = fixture.put(store, "variant/x/y", BUN, "2\n");
    CommitId main = fixture.put(store, "main", CRISPBREAD, "3\n");

    Write write = fixture.change(store, "variant/x/y", "Carry").merging(main);
    CommitId merge = fixture.commit(store, write);

    assertThat(store.facts(merge).parents()).containsExactly(variant, main);
    assertThat(store.mergeBase(variant, main)).contains(base);
    assertThat(store.mergeBase(merge, main)).contains(main);
    assertThat(store.isAncestor(main, merge)).isTrue();
    assertThat(store.isAncestor(merge, main)).isFalse();
    fixture.assertClean(store);
  }

  @Test
  void strangersHaveNoCommonAncestor() {
    CommitId one = fixture.put(store, "main", BUN, "1\n");
    CommitId other = fixture.put(store, "other", BUN, "2\n");

    assertThat(store.mergeBase(one, other)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "/etc/passwd", "../x", "formulas/../../x", "formulas//x", "./x", "formulas/.", "a/",
        ".git/config", "formulas/.git/hooks/x", ".GIT/config", ".git /config", ".git./x",
        "git~1/config", ".g\u200cit/config", "formulas\\x", "C:/x", "a\0b", "a\nb", ".git::x/y"
      })
  void aPathOutsideTheNotebookIsRefused(String path) {
    Write write = fixture.change(store, "main", "Bad").put(path, bytes("x"));

    assertRefused(Reason.PATH_OUTSIDE, () -> store.write(write));
    assertThat(store.head("main")).isEmpty();
  }

  @Test
  void aFileIsNotTakenForAFolder() {
    fixture.put(store, "main", BUN, "1\n");

    for (String path : List.of("formulas", BUN + "/x")) {
      Write write = fixture.change(store, "main", "Bad").put(path, bytes("x"));
      assertRefused(Reason.NOT_A_FILE, () -> store.write(write));
    }
    Write both = fixture.change(store, "main", "Bad").put("a", bytes("x")).put("a/b", bytes("x"));
    assertRefused(Reason.NOT_A_FILE, () -> store.write(both));
    fixture.assertClean(store);
  }

  @Test
  void anAbbreviationThatFitsTwoCommitsIsRefused() {
    Map<String, CommitId> seen = new HashMap<>();
    for (int i = 0; i < 2000; i++) {
      CommitId commit =
          fixture.commit(store, fixture.change(store, "side", "n" + i).put(BUN, bytes("" + i)));
      String start = commit.hex().substring(0, 4);
      if (seen.put(start, commit) != null) {
        assertRefused(Reason.AMBIGUOUS, () -> store.resolve(start));
        assertThat(store.resolve(commit.hex())).contains(commit);
        return;
      }
    }
    throw new AssertionError("2000 ids with 65536 beginnings and no two alike");
  }

  @Test
  void whatDoesNotExistIsRefusedByItsId() {
    CommitId none = new CommitId("d670460b4b4aece5915caf5c68d12f560a9fe3e4");

    assertRefused(Reason.MISSING, () -> store.facts(none));
    assertRefused(Reason.MISSING, () -> store.list(none, "formulas"));
    assertRefused(Reason.MISSING, () -> store.read(new BlobId(none.hex())));
    assertRefused(
        Reason.MISSING, () -> store.createBranch("b", none, AUTHOR, fixture.tick()));
    CommitId commit = fixture.put(store, "main", BUN, "1\n");
    BlobId notABlob = new BlobId(commit.hex());
    assertRefused(Reason.MISSING, () -> store.read(notABlob));
    assertRefused(
        Reason.MISSING,
        () -> store.facts(new CommitId(store.blob(commit, BUN).orElseThrow().hex())));
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aDamagedObjectIsRefusedByItsId(boolean readable) throws IOException {
    CommitId commit = fixture.put(store, "main", BUN, "1\n");
    fixture.put(store, "main", BUN, "2\n");
    BlobId blob = store.blob(commit, BUN).orElseThrow();
    Path file = objectFile(blob.hex());
    Path other = objectFile(store.hash(bytes("2\n")).hex());
    byte[] damage = readable ? Files.readAllBytes(other) : new byte[] {1, 2, 3};
    Files.delete(file);
    Files.write(file, damage);

    assertRefused(Reason.CORRUPT, () -> fixture.open().read(blob));
  }

  @Test
  void aDamagedCommitIsRefusedByItsId() throws IOException {
    CommitId commit = fixture.put(store, "main", BUN, "1\n");
    Path file = objectFile(commit.hex());
    Files.delete(file);
    Files.write(file, new byte[] {1, 2, 3});

    GitStore fresh = fixture.open();
    assertThat(fresh.head("main")).contains(commit);
    assertRefused(Reason.CORRUPT, () -> fresh.facts(commit));
    assertRefused(Reason.CORRUPT, () -> fresh.list(commit, "formulas"));
    assertRefused(
        Reason.CORRUPT,
        () -> fresh.write(fixture.change(fresh, "main", "On it").put(BUN, bytes("2\n"))));
  }

  @Test
  void verifyingFindsWhatIsDamagedOrMissing() throws IOException {
    CommitId first = fixture.put(store, "main", BUN, "1\n");
    fixture.put(store, "main", BUN, "2\n");
    CommitId variant = fixture.put(store, "variant/a/b", CRISPBREAD, "3\n");
    store.tag("published/a/1", first, "Out", AUTHOR, fixture.tick());
    AtomicLong read = new AtomicLong();
    assertThat(store.verify(read::set)).isEmpty();
    assertThat(read).hasValue(13);

    BlobId swapped = store.hash(bytes("1\n"));
    Path file = objectFile(swapped.hex());
    Files.delete(file);
    Files.copy(objectFile(store.hash(bytes("2\n")).hex()), file);
    Files.delete(objectFile(variant.hex()));

    assertThat(fixture.open().verify(read::set))
        .extracting(Damage::object)
        .containsExactlyInAnyOrder(swapped.hex(), variant.hex());
  }

  private Path objectFile(String hex) {
    Path objects = fixture.directory().resolve(".git/objects");
    return objects.resolve(hex.substring(0, 2)).resolve(hex.substring(2));
  }

  @Test
  void theAuthorComesFromGitsConfiguration() throws IOException {
    Path config = fixture.home().resolve(".gitconfig");
    Files.writeString(config, "[user]\n\tname = Home\n");
    assertThat(fixture.open().configuredAuthor()).contains(new Author("Home", ""));

    fixture.git("config", "user.name", "Notebook");
    fixture.git("config", "user.email", "n@example.org");
    assertThat(fixture.open().configuredAuthor())
        .contains(new Author("Notebook", "n@example.org"));

    Files.delete(config);
    fixture.git("config", "--unset", "user.name");
    assertThat(fixture.open().configuredAuthor()).isEmpty();
  }

  @Test
  void nothingIsWrittenToTheUsersHomeOrLeftInTheFolder() throws IOException {
    fixture.put(store, "main", BUN, "1\n");
    try (var files = Files.walk(fixture.home())) {
      assertThat(files.map(file -> fixture.home().relativize(file).toString()))
          .containsExactlyInAnyOrder("", ".gitconfig");
    }
    try (var files = Files.list(fixture.directory().resolve(".git/ovenmark"))) {
      assertThat(files).containsExactly(fixture.directory().resolve(".git/ovenmark/write.lock"));
    }
    try (var files = Files.list(fixture.directory())) {
      assertThat(files).hasSize(2);
    }
  }

  @Test
  void anAuthorIsReadBackAsWritten() {
    for (String name : List.of("A. B. Jr.", "  x ", "a<b>c\n", "", "Ψ \"q\" 'r'", "a,b;c:", "\\")) {
      Author author = new Author(name, " " + name + "@x");
      Write write =
          Write.to("main", store.head("main"), author, fixture.tick(), "n").put("n", bytes(name));
      assertThat(store.facts(fixture.commit(store, write)).author()).isEqualTo(author);
    }
    assertThat(fixture.git("fsck", "--strict")).isEmpty();
    assertThat(fixture.git("log", "--format=%an|%ae", "--reverse").lines())
        .startsWith("A. B. Jr.|A. B. Jr.@x", "x|x @x");
  }
}
