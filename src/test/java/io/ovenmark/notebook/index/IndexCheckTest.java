package io.ovenmark.notebook.index;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.RepositoryFixture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IndexCheckTest {
  private static final String BUN = "formulas/seeded-lupin-bun.json";
  private static final String CRACKER = "formulas/sesame-crispbread.json";

  @TempDir Path folder;
  private RepositoryFixture repository;
  private GitStore store;

  @BeforeEach
  void write() {
    repository = new RepositoryFixture(folder);
    store = repository.create();
    repository.put(store, "main", BUN, "1");
    repository.put(store, "main", CRACKER, "1");
    CommitId second = repository.put(store, "main", BUN, "2");
    store.createBranch(
        "variant/seeded-lupin-bun/egg-free", second, RepositoryFixture.AUTHOR, repository.tick());
    repository.put(store, "variant/seeded-lupin-bun/egg-free", BUN, "3");
  }

  @AfterEach
  void close() {
    repository.close();
  }

  /** A table with all commits, whose changes may be read otherwise than they were. */
  private void forge(UnaryOperator<Change> lie) throws IOException {
    HistoryTable table = new HistoryTable();
    Scan scan = new Scan(store.jgit(), BuildProgress.NONE);
    for (CommitId tip : store.branches("").values()) {
      scan.read(
          tip,
          id -> table.find(id) >= 0,
          (facts, message, changes) ->
              table.add(facts, message, changes.stream().map(lie).toList()));
    }
    new HistoryFile(store.gitDirectory().resolve("ovenmark")).write(table, 0);
  }

  @Test
  void aTrueIndexHasNoDifference() throws IOException {
    assertThat(IndexCheck.of(store, BuildProgress.NONE)).isEmpty();
    forge(change -> change);
    assertThat(IndexCheck.of(store, BuildProgress.NONE)).isEmpty();
  }

  @Test
  void aHistoryThatIsToldWronglyIsNamedOnEachBranch() throws IOException {
    forge(
        change ->
            change.path().equals(BUN)
                ? new Change(change.path(), Optional.of(store.hash(new byte[] {7})), change.renamedFrom())
                : change);

    assertThat(IndexCheck.of(store, BuildProgress.NONE))
        .containsExactly(
            new IndexCheck.Difference("main", BUN),
            new IndexCheck.Difference("variant/seeded-lupin-bun/egg-free", BUN));
  }

  @Test
  void aFileThatIsMissingInTheIndexIsNamed() throws IOException {
    forge(
        change ->
            change.path().equals(CRACKER)
                ? new Change("formulas/other.json", change.blob(), change.renamedFrom())
                : change);

    assertThat(IndexCheck.of(store, BuildProgress.NONE))
        .extracting(IndexCheck.Difference::path)
        .containsOnly(CRACKER);
  }

  @Test
  void anIndexThatIsCutOffIsMadeAnewAndRight() throws IOException {
    IndexedHistory history = new IndexedHistory(store);
    history.formula("main", BUN);
    Files.write(history.file(), new byte[] {1, 2, 3});

    assertThat(IndexCheck.of(store, BuildProgress.NONE)).isEmpty();
  }

  @Test
  void saysHowFarItHasCome() {
    List<Long> done = new ArrayList<>();

    IndexCheck.of(store, (read, total) -> done.add(read));

    assertThat(done).isNotEmpty();
  }
}
