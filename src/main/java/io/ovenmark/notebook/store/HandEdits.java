package io.ovenmark.notebook.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.dircache.DirCacheIterator;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.EmptyTreeIterator;
import org.eclipse.jgit.treewalk.FileTreeIterator;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.PathFilter;

/** Compares the files on disk with a commit; files the index knows as unchanged are not read. */
final class HandEdits {
  private static final char UNREADABLE_NAME = '\uFFFD';

  private final Repository repository;
  private final Path root;
  private final boolean crlf;
  private final SortedMap<String, HandEdit> found = new TreeMap<>();

  private HandEdits(Repository repository) {
    this.repository = repository;
    this.root = repository.getWorkTree().toPath();
    this.crlf = Checkout.convertsLineEnds(repository);
  }

  /**
   * Finds the edits below a folder.
   *
   * @param head the commit to compare with, empty for none yet
   * @param folder the folder, empty for the whole notebook; or one file
   */
  static List<HandEdit> find(
      Repository repository, StoredObjects objects, Optional<CommitId> head, String folder)
      throws IOException {
    HandEdits edits = new HandEdits(repository);
    Optional<BlobId> file =
        head.isPresent() && !folder.isEmpty()
            ? objects.blob(head.get(), folder)
            : Optional.empty();
    if (file.isEmpty() || !edits.isUnchanged(folder, file)) {
      edits.walk(head, folder);
    }
    return List.copyOf(edits.found.values());
  }

  /** Whether a file on disk is one and has just the content that was committed. */
  private boolean isUnchanged(String path, Optional<BlobId> committed) throws IOException {
    return SafePath.isRepresentable(root, path)
        && BlobContent.kind(root, root.resolve(path)) == BlobContent.Kind.FILE
        && BlobContent.fileMatches(root.resolve(path), committed, crlf);
  }

  private void walk(Optional<CommitId> head, String folder) throws IOException {
    DirCache index = DirCache.read(repository);
    try (RevWalk commits = new RevWalk(repository);
        TreeWalk walk = new TreeWalk(repository, commits.getObjectReader())) {
      if (head.isPresent()) {
        walk.addTree(commits.parseCommit(StoredObjects.jgit(head.get())).getTree());
      } else {
        walk.addTree(new EmptyTreeIterator());
      }
      walk.addTree(new DirCacheIterator(index));
      FileTreeIterator files = new FileTreeIterator(repository);
      files.setDirCacheIterator(walk, 1);
      walk.addTree(files);
      walk.setRecursive(true);
      if (!folder.isEmpty()) {
        walk.setFilter(PathFilter.create(folder));
      }
      while (walk.next()) {
        compare(walk);
      }
    }
  }

  private void compare(TreeWalk walk) throws IOException {
    String path = walk.getPathString();
    if (path.indexOf(UNREADABLE_NAME) >= 0 || !SafePath.isRepresentable(root, path)) {
      return;
    }
    Optional<BlobId> committed =
        StoredObjects.isFile(walk.getRawMode(0))
            ? Optional.of(new BlobId(walk.getObjectId(0).name()))
            : Optional.empty();
    DirCacheIterator indexed = walk.getTree(1, DirCacheIterator.class);
    DirCacheEntry entry = indexed == null ? null : indexed.getDirCacheEntry();
    FileTreeIterator disk = walk.getTree(2, FileTreeIterator.class);
    if (disk == null) {
      boolean sparse = entry != null && entry.isSkipWorkTree();
      if (committed.isPresent() && !sparse) {
        put(path, missing(path), committed, Optional.empty());
      }
    } else if (!StoredObjects.isFile(walk.getRawMode(2))) {
      if (committed.isPresent()) {
        put(path, HandEdit.Kind.UNREADABLE, committed, Optional.empty());
      }
    } else if (committed.isPresent()) {
      if (!isKnownUnchanged(walk, disk, entry, committed.get())) {
        read(path, committed);
      }
    } else if (walk.getRawMode(0) == 0 && (entry != null || !disk.isEntryIgnored())) {
      read(path, committed);
    }
  }

  private static boolean isKnownUnchanged(
      TreeWalk walk, FileTreeIterator disk, DirCacheEntry entry, BlobId committed)
      throws IOException {
    return entry != null
        && entry.getStage() == DirCacheEntry.STAGE_0
        && entry.getObjectId().equals(ObjectId.fromString(committed.hex()))
        && !disk.isModified(entry, true, walk.getObjectReader());
  }

  private void read(String path, Optional<BlobId> committed) {
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(root.resolve(path));
    } catch (IOException e) {
      put(path, HandEdit.Kind.UNREADABLE, committed, Optional.empty());
      return;
    }
    if (committed.isEmpty()) {
      put(path, HandEdit.Kind.ADDED, committed, Optional.of(bytes));
    } else if (!BlobContent.matches(bytes, committed.get(), crlf)) {
      put(path, HandEdit.Kind.CHANGED, committed, Optional.of(bytes));
    }
  }

  /** A committed file that is not on disk; a folder of its name is not read as its end. */
  private HandEdit.Kind missing(String path) {
    return Files.exists(root.resolve(path), LinkOption.NOFOLLOW_LINKS)
        ? HandEdit.Kind.UNREADABLE
        : HandEdit.Kind.DELETED;
  }

  private void put(
      String path, HandEdit.Kind kind, Optional<BlobId> committed, Optional<byte[]> onDisk) {
    found.putIfAbsent(path, new HandEdit(path, kind, committed, onDisk));
  }
}
