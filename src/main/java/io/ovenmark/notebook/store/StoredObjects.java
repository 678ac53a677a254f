package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.StoreException.Reason;
import java.io.IOException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.lib.AbbreviatedObjectId;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevTree;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.revwalk.filter.RevFilter;
import org.eclipse.jgit.treewalk.EmptyTreeIterator;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.TreeFilter;

/** Reads commits, trees and blobs. */
final class StoredObjects {
  private static final int SHORTEST_ABBREVIATION = 4;
  private static final int MOST_ANSWERS = 8192;
  private static final int MOST_LISTINGS = 128;

  private final Repository repository;
  private final BlobCache cache = new BlobCache();
  private final Recent<String, Optional<String>> folders = new Recent<>(MOST_ANSWERS);
  private final Recent<String, Optional<BlobId>> files = new Recent<>(MOST_ANSWERS);
  private final Recent<String, SortedMap<String, BlobId>> listings = new Recent<>(MOST_LISTINGS);

  StoredObjects(Repository repository) {
    this.repository = repository;
  }

  static ObjectId jgit(CommitId id) {
    return ObjectId.fromString(id.hex());
  }

  static OffsetDateTime time(PersonIdent ident) {
    int seconds = ident.getZoneOffset().getTotalSeconds();
    Instant instant = Instant.ofEpochSecond(ident.getWhenAsInstant().getEpochSecond());
    return OffsetDateTime.ofInstant(instant, ZoneOffset.ofTotalSeconds(seconds));
  }

  CommitFacts facts(CommitId id) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      return facts(walk.parseCommit(jgit(id)));
    }
  }

  /** The facts of a commit whose body has been read. */
  static CommitFacts facts(RevCommit commit) {
    List<CommitId> parents = new ArrayList<>();
    for (RevCommit parent : commit.getParents()) {
      parents.add(new CommitId(parent.name()));
    }
    PersonIdent ident = commit.getAuthorIdent();
    Author author =
        ident == null
            ? new Author("unknown", "")
            : new Author(ident.getName(), ident.getEmailAddress());
    OffsetDateTime time =
        ident == null
            ? OffsetDateTime.ofInstant(
                Instant.ofEpochSecond(commit.getCommitTime()), ZoneOffset.UTC)
            : time(ident);
    CommitMessage message = CommitMessage.parse(commit.getFullMessage());
    return new CommitFacts(
        new CommitId(commit.name()),
        parents,
        author,
        time,
        message.subject(),
        message.body(),
        message.trailers());
  }

  Optional<CommitId> resolve(String text) throws IOException {
    String hex = text.strip().toLowerCase(Locale.ROOT);
    if (!HexId.isHex(hex) || hex.length() > HexId.LENGTH || hex.length() < SHORTEST_ABBREVIATION) {
      return Optional.empty();
    }
    try (RevWalk walk = new RevWalk(repository)) {
      List<CommitId> found = new ArrayList<>();
      for (ObjectId id : walk.getObjectReader().resolve(AbbreviatedObjectId.fromString(hex))) {
        if (walk.getObjectReader().open(id).getType() == Constants.OBJ_COMMIT) {
          found.add(new CommitId(id.name()));
        }
      }
      if (found.size() > 1) {
        throw new StoreException(
            Reason.AMBIGUOUS, text, "The commit id " + text + " fits several commits: write more.");
      }
      return found.stream().findFirst();
    }
  }

  Optional<String> treeId(CommitId commit, String folder) throws IOException {
    return folders.get(commit.hex() + folder, () -> findFolder(commit, folder));
  }

  private Optional<String> findFolder(CommitId commit, String folder) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      RevTree tree = walk.parseCommit(jgit(commit)).getTree();
      if (folder.isEmpty()) {
        return Optional.of(tree.name());
      }
      try (TreeWalk found = TreeWalk.forPath(walk.getObjectReader(), folder, tree)) {
        return found != null && found.getFileMode(0) == FileMode.TREE
            ? Optional.of(found.getObjectId(0).name())
            : Optional.empty();
      }
    }
  }

  Optional<BlobId> blob(CommitId commit, String path) throws IOException {
    return files.get(commit.hex() + path, () -> findFile(commit, path));
  }

  private Optional<BlobId> findFile(CommitId commit, String path) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      RevTree tree = walk.parseCommit(jgit(commit)).getTree();
      try (TreeWalk found = TreeWalk.forPath(walk.getObjectReader(), path, tree)) {
        return found != null && isFile(found.getRawMode(0))
            ? Optional.of(new BlobId(found.getObjectId(0).name()))
            : Optional.empty();
      }
    }
  }

  SortedMap<String, BlobId> list(CommitId commit, String folder) throws IOException {
    Optional<String> tree = treeId(commit, folder);
    return tree.isEmpty()
        ? Collections.emptySortedMap()
        : listings.get(tree.get() + folder, () -> findFiles(tree.get(), folder));
  }

  private SortedMap<String, BlobId> findFiles(String id, String folder) throws IOException {
    SortedMap<String, BlobId> found = new TreeMap<>();
    String prefix = folder.isEmpty() ? "" : folder + "/";
    try (TreeWalk tree = new TreeWalk(repository)) {
      tree.addTree(ObjectId.fromString(id));
      tree.setRecursive(true);
      while (tree.next()) {
        if (isFile(tree.getRawMode(0))) {
          found.put(prefix + tree.getPathString(), new BlobId(tree.getObjectId(0).name()));
        }
      }
    }
    return Collections.unmodifiableSortedMap(found);
  }

  /** The files that differ; folders with the same id are not looked into. */
  SortedMap<String, Difference> differences(Optional<CommitId> from, CommitId to)
      throws IOException {
    SortedMap<String, Difference> files = new TreeMap<>();
    try (RevWalk walk = new RevWalk(repository);
        TreeWalk trees = new TreeWalk(walk.getObjectReader())) {
      if (from.isPresent()) {
        trees.addTree(walk.parseCommit(jgit(from.get())).getTree());
      } else {
        trees.addTree(new EmptyTreeIterator());
      }
      trees.addTree(walk.parseCommit(jgit(to)).getTree());
      trees.setRecursive(true);
      trees.setFilter(TreeFilter.ANY_DIFF);
      while (trees.next()) {
        Difference difference = new Difference(blob(trees, 0), blob(trees, 1));
        if (!difference.from().equals(difference.to())) {
          files.put(trees.getPathString(), difference);
        }
      }
    }
    return Collections.unmodifiableSortedMap(files);
  }

  private static Optional<BlobId> blob(TreeWalk trees, int side) {
    return isFile(trees.getRawMode(side))
        ? Optional.of(new BlobId(trees.getObjectId(side).name()))
        : Optional.empty();
  }

  static boolean isFile(int rawMode) {
    return (rawMode & FileMode.TYPE_MASK) == FileMode.TYPE_FILE;
  }

  /** The bytes of a blob, checked against its id, not to be changed. */
  byte[] read(BlobId id) throws IOException {
    byte[] cached = cache.get(id);
    if (cached != null) {
      return cached;
    }
    try (ObjectReader reader = repository.newObjectReader()) {
      byte[] bytes =
          reader
              .open(ObjectId.fromString(id.hex()), Constants.OBJ_BLOB)
              .getCachedBytes(Integer.MAX_VALUE);
      if (!BlobContent.id(bytes).equals(id)) {
        throw Faults.corrupt(id.hex(), null);
      }
      cache.put(id, bytes);
      return bytes;
    }
  }

  Optional<CommitId> mergeBase(CommitId a, CommitId b) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      walk.setRetainBody(false);
      walk.setRevFilter(RevFilter.MERGE_BASE);
      walk.markStart(walk.parseCommit(jgit(a)));
      walk.markStart(walk.parseCommit(jgit(b)));
      RevCommit base = walk.next();
      return base == null ? Optional.empty() : Optional.of(new CommitId(base.name()));
    }
  }

  boolean isAncestor(CommitId ancestor, CommitId descendant) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      walk.setRetainBody(false);
      return walk.isMergedInto(
          walk.parseCommit(jgit(ancestor)), walk.parseCommit(jgit(descendant)));
    }
  }
}
