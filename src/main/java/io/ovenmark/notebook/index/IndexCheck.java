package io.ovenmark.notebook.index;

import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Compares the index on disk with the commits themselves, which are all read anew for it.
 *
 * <pre>{@code
 * List<IndexCheck.Difference> differences = IndexCheck.of(store, BuildProgress.NONE);
 * }</pre>
 */
public final class IndexCheck {
  private IndexCheck() {}

  /**
   * A history that the index tells otherwise than the commits do.
   *
   * @param branch the branch
   * @param path the file
   */
  public record Difference(String branch, String path) {
    /** Refuses nulls. */
    public Difference {
      Objects.requireNonNull(branch, "branch");
      Objects.requireNonNull(path, "path");
    }
  }

  /**
   * Compares every history of every branch.
   *
   * @param store the repository
   * @param progress told how many commits have been read
   * @return the histories that differ, by branch and path; empty when the index is right
   */
  public static List<Difference> of(GitStore store, BuildProgress progress) {
    IndexedHistory indexed = new IndexedHistory(store);
    HistoryTable fresh = new HistoryTable();
    Scan scan = new Scan(store.jgit(), progress);
    Map<String, CommitId> branches = store.branches("");
    branches.values().forEach(tip -> scan.read(tip, id -> fresh.find(id) >= 0, fresh::add));
    List<Difference> differences = new ArrayList<>();
    branches.forEach(
        (branch, tip) ->
            fresh.paths().stream()
                .sorted()
                .filter(path -> !entries(fresh, tip, path).equals(told(indexed, tip, path)))
                .forEach(path -> differences.add(new Difference(branch, path))));
    return List.copyOf(differences);
  }

  private static Optional<List<Entry>> told(IndexedHistory indexed, CommitId tip, String path) {
    try {
      return Optional.of(indexed.formulaAt(tip, path));
    } catch (RuntimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<List<Entry>> entries(HistoryTable table, CommitId tip, String path) {
    int[] steps = table.follow(table.find(tip), path);
    List<Entry> entries = new ArrayList<>(steps.length);
    for (int number = 1; number <= steps.length; number++) {
      entries.add(table.entry(steps[steps.length - number], number));
    }
    return Optional.of(entries);
  }
}
