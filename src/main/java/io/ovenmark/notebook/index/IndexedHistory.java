package io.ovenmark.notebook.index;

import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * Histories read through an index, which is kept in memory and in one file below {@code
 * .git/ovenmark/}.
 *
 * <pre>{@code
 * try (GitStore store = GitStore.open(folder)) {
 *   History history = new IndexedHistory(store);
 *   for (Entry entry : history.formula("main", "formulas/seeded-lupin-bun.json")) {
 *     Optional<byte[]> content = entry.blob().map(store::read);
 *   }
 * }
 * }</pre>
 *
 * <p>Every question looks where the branch is, and only commits that are not in the index are
 * read. What the index says of a commit depends on nothing but that commit, so rewritten history
 * leaves it right. The file may be missing, cut off or damaged: it is then made anew without a
 * word; where it cannot be written the index stays in memory. Threads may share one of these, and
 * programs may share the file.
 */
public final class IndexedHistory implements History {
  /** The file is written again when this part of it (1 in so many commits) is new. */
  private static final int SAVE_FRACTION = 512;

  private final GitStore store;
  private final BuildProgress progress;
  private final HistoryFile file;
  private HistoryTable table;
  private long fingerprint;
  private int saved;

  /** An index over a store, which stays the caller's to close. */
  public IndexedHistory(GitStore store) {
    this(store, BuildProgress.NONE);
  }

  /**
   * An index that tells how far it has come.
   *
   * @param progress told when many commits have to be read
   */
  public IndexedHistory(GitStore store, BuildProgress progress) {
    this.store = Objects.requireNonNull(store, "store");
    this.progress = Objects.requireNonNull(progress, "progress");
    this.file = new HistoryFile(store.gitDirectory().resolve("ovenmark"));
  }

  /** The file of the index; it may be deleted at any time. */
  public Path file() {
    return file.path();
  }

  @Override
  public synchronized List<Entry> formula(String branch, String path) {
    return store.head(branch).map(head -> formulaAt(head, path)).orElse(List.of());
  }

  @Override
  public synchronized List<Entry> formulaAt(CommitId commit, String path) {
    int[] steps = table(commit).follow(table.find(commit), path);
    List<Entry> entries = new ArrayList<>(steps.length);
    for (int number = 1; number <= steps.length; number++) {
      entries.add(table.entry(steps[steps.length - number], number));
    }
    return List.copyOf(entries);
  }

  @Override
  public synchronized Optional<Entry> at(String branch, String path, int number) {
    int[] steps = follow(branch, path);
    return number < 1 || number > steps.length
        ? Optional.empty()
        : Optional.of(table.entry(steps[steps.length - number], number));
  }

  @Override
  public synchronized Optional<Entry> latest(String branch, String path) {
    return newest(follow(branch, path));
  }

  @Override
  public synchronized Optional<Entry> latestAt(CommitId commit, String path) {
    return newest(table(commit).follow(table.find(commit), path));
  }

  private Optional<Entry> newest(int[] steps) {
    return steps.length == 0
        ? Optional.empty()
        : Optional.of(table.entry(steps[0], steps.length));
  }

  private int[] follow(String branch, String path) {
    Optional<CommitId> head = store.head(branch);
    return head.isEmpty()
        ? new int[0]
        : table(head.get()).follow(table.find(head.get()), path);
  }

  @Override
  public synchronized List<Entry> newestFirst(String branch, int limit) {
    List<Entry> newest = new ArrayList<>();
    Optional<CommitId> head = store.head(branch);
    int row = head.isEmpty() ? -1 : table(head.get()).find(head.get());
    for (; row >= 0 && newest.size() < limit; row = table.parent(row)) {
      for (int change : table.changesOf(row)) {
        if (newest.size() < limit) {
          int number = table.follow(row, table.pathOf(change)).length;
          newest.add(table.entry(change, number));
        }
      }
    }
    return List.copyOf(newest);
  }

  @Override
  public synchronized Optional<CommitId> fork(String branch) {
    Optional<CommitId> main = store.head(GitStore.MAIN);
    Optional<CommitId> head = store.head(branch);
    if (main.isEmpty() || head.isEmpty()) {
      return Optional.empty();
    }
    table(head.get());
    int[] reach = table(main.get()).reach(table.find(main.get()));
    int row = table.find(head.get());
    while (row >= 0 && !table.isWithin(reach, row)) {
      row = table.parent(row);
    }
    return row < 0 ? Optional.empty() : Optional.of(table.commit(row));
  }

  /** The table with all commits of the line of a commit in it. */
  private HistoryTable table(CommitId tip) {
    long now = fingerprint();
    if (table == null || now != fingerprint) {
      fingerprint = now;
      table = file.read(now).orElseGet(HistoryTable::new);
      saved = table.size();
    }
    if (table.find(tip) < 0) {
      new Scan(store.jgit(), progress).read(tip, id -> table.find(id) >= 0, table::add);
      int fresh = table.size() - saved;
      if (fresh >= Math.max(1, table.size() / SAVE_FRACTION)) {
        save();
      }
    }
    return table;
  }

  private void save() {
    try {
      file.write(table, fingerprint);
      saved = table.size();
    } catch (IOException | ArithmeticException e) {
      saved = table.size();
    }
  }

  /**
   * What a commit's first parent depends on besides the commit: where a shallow clone ends. Zero
   * for an ordinary repository.
   */
  private long fingerprint() {
    Path shallow = store.gitDirectory().resolve("shallow");
    try {
      if (!Files.exists(shallow)) {
        return 0;
      }
      CRC32C checksum = new CRC32C();
      checksum.update(Files.readAllBytes(shallow));
      return 1 + checksum.getValue();
    } catch (IOException e) {
      return -1;
    }
  }
}
