package io.ovenmark.notebook;

import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Which files a commit has, remembered: a commit never changes, and folders that are the same in
 * many commits are kept once.
 */
final class Folders {
  /** How many commits' folders are remembered; one takes some hundred bytes. */
  private static final int KEPT_COMMITS = 50_000;

  /** How many listings are kept; one of 200 files takes some 30 kB. */
  private static final int KEPT_LISTINGS = 500;

  private record Place(String commit, String path) {}

  private final GitStore store;
  private final Map<Place, Optional<String>> trees = remembering(KEPT_COMMITS);
  private final Map<Place, Optional<BlobId>> blobs = remembering(KEPT_COMMITS);
  private final Map<Place, SortedMap<String, BlobId>> listings = remembering(KEPT_LISTINGS);

  Folders(GitStore store) {
    this.store = store;
  }

  /** The files of a folder by path. */
  SortedMap<String, BlobId> list(CommitId commit, String folder) {
    Optional<String> tree = treeId(commit, folder);
    if (tree.isEmpty()) {
      return Collections.emptySortedMap();
    }
    return listings.computeIfAbsent(
        new Place(tree.get(), folder), place -> store.list(commit, folder));
  }

  /** The id of a folder's content; empty when there is no such folder. */
  Optional<String> treeId(CommitId commit, String folder) {
    return trees.computeIfAbsent(
        new Place(commit.hex(), folder), place -> store.treeId(commit, folder));
  }

  /** The content of a file directly in the notebook's folder. */
  Optional<BlobId> topFile(CommitId commit, String path) {
    return blobs.computeIfAbsent(new Place(commit.hex(), path), place -> store.blob(commit, path));
  }

  private static <K, V> Map<K, V> remembering(int most) {
    return Collections.synchronizedMap(
        new LinkedHashMap<>(256, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
          }
        });
  }
}
