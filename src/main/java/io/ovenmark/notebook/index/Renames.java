package io.ovenmark.notebook.index;

import io.ovenmark.notebook.store.BlobId;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.diff.DiffEntry;
import org.eclipse.jgit.diff.RenameDetector;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.treewalk.TreeWalk;

/** Lists the changed files of a walk over two trees and finds the renames among them. */
final class Renames {
  /** Of 100; the same as Git's default would be at {@code -M60%}. */
  private static final int LEAST_SCORE = 60;

  /** More files than this, added or deleted by one commit, are compared by content id only. */
  private static final int MOST_FILES = 400;

  private Renames() {}

  /**
   * Lists the changes.
   *
   * @param walk over the tree before and the tree after, recursive, at its start
   * @return by path; a change of mode alone is none, and links and submodules are not there
   */
  static List<Change> changes(Repository repository, TreeWalk walk) throws IOException {
    SortedMap<String, Change> changes = new TreeMap<>();
    List<DiffEntry> candidates = new ArrayList<>();
    boolean added = false;
    boolean deleted = false;
    for (DiffEntry entry : DiffEntry.scan(walk)) {
      boolean gone = entry.getChangeType() == DiffEntry.ChangeType.DELETE;
      String place = gone ? entry.getOldPath() : entry.getNewPath();
      if (!place.startsWith(History.FOLDER + "/")) {
        continue;
      }
      boolean before = isFile(entry.getOldMode());
      boolean after = isFile(entry.getNewMode());
      if (before && after) {
        if (!entry.getOldId().equals(entry.getNewId())) {
          put(changes, entry);
        }
      } else if (after) {
        put(changes, entry);
        if (entry.getChangeType() == DiffEntry.ChangeType.ADD) {
          candidates.add(entry);
          added = true;
        }
      } else if (before) {
        changes.put(place, new Change(place, Optional.empty(), Optional.empty()));
        if (gone) {
          candidates.add(entry);
          deleted = true;
        }
      }
    }
    if (added && deleted) {
      for (Map.Entry<String, String> rename : detect(repository, candidates).entrySet()) {
        Change change = changes.get(rename.getKey());
        changes.put(
            change.path(),
            new Change(change.path(), change.blob(), Optional.of(rename.getValue())));
      }
    }
    return List.copyOf(changes.values());
  }

  /** For each renamed file its old path. */
  private static SortedMap<String, String> detect(
      Repository repository, List<DiffEntry> candidates) throws IOException {
    SortedMap<String, String> renames = new TreeMap<>();
    RenameDetector detector = new RenameDetector(repository);
    detector.setRenameScore(LEAST_SCORE);
    detector.setRenameLimit(MOST_FILES);
    detector.addAll(candidates);
    for (DiffEntry entry : detector.compute()) {
      if (entry.getChangeType() == DiffEntry.ChangeType.RENAME) {
        renames.put(entry.getNewPath(), entry.getOldPath());
      }
    }
    return renames;
  }

  private static void put(Map<String, Change> changes, DiffEntry entry) {
    String path = entry.getNewPath();
    BlobId blob = new BlobId(entry.getNewId().name());
    changes.put(path, new Change(path, Optional.of(blob), Optional.empty()));
  }

  private static boolean isFile(FileMode mode) {
    return mode == FileMode.REGULAR_FILE || mode == FileMode.EXECUTABLE_FILE;
  }
}
