package io.ovenmark.notebook.index;

import io.ovenmark.notebook.store.CommitFacts;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.StoreException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.AbstractTreeIterator;
import org.eclipse.jgit.treewalk.CanonicalTreeParser;
import org.eclipse.jgit.treewalk.EmptyTreeIterator;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.TreeFilter;

/**
 * Reads the commits of a line that are not known yet. Of a commit that leaves {@code formulas/}
 * as it was only the root tree is looked at.
 */
final class Scan {
  private static final int TELL_EVERY = 256;
  private static final byte[] PREFIX = History.FOLDER.getBytes(StandardCharsets.UTF_8);

  private final Repository repository;
  private final BuildProgress progress;

  /** Takes what was read of a commit; parents come before their children. */
  @FunctionalInterface
  interface Sink {
    void commit(CommitFacts facts, String message, List<Change> changes);
  }

  Scan(Repository repository, BuildProgress progress) {
    this.repository = repository;
    this.progress = progress;
  }

  /**
   * Walks back from a commit along first parents to the first known one, then reads forward.
   *
   * @param isKnown whether a commit, and with it all of its line, has been read before
   */
  void read(CommitId tip, Predicate<CommitId> isKnown, Sink sink) {
    try (RevWalk walk = new RevWalk(repository)) {
      Deque<RevCommit> unknown = new ArrayDeque<>();
      RevCommit known = walk.parseCommit(ObjectId.fromString(tip.hex()));
      while (known != null && !isKnown.test(new CommitId(known.name()))) {
        unknown.push(known);
        known = known.getParentCount() == 0 ? null : walk.parseCommit(known.getParent(0));
      }
      Optional<ObjectId> before =
          known == null ? Optional.empty() : folder(walk.getObjectReader(), known);
      long total = unknown.size();
      while (!unknown.isEmpty()) {
        RevCommit commit = unknown.pop();
        Optional<ObjectId> after = folder(walk.getObjectReader(), commit);
        List<Change> changes =
            before.equals(after) ? List.of() : changes(walk.getObjectReader(), before, after);
        sink.commit(GitStore.facts(commit), commit.getFullMessage(), changes);
        commit.disposeBody();
        before = after;
        long done = total - unknown.size();
        if (done % TELL_EVERY == 0 || done == total) {
          progress.scanned(done, total);
        }
      }
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
      throw fault(tip, e);
    }
  }

  /** What a commit or tree that cannot be read means for the caller. */
  static StoreException fault(CommitId tip, Exception e) {
    StoreException.Reason reason = StoreException.Reason.DISK;
    if (e instanceof MissingObjectException) {
      reason = StoreException.Reason.MISSING;
    } else if (e instanceof CorruptObjectException || e instanceof RuntimeException) {
      reason = StoreException.Reason.CORRUPT;
    }
    return new StoreException(
        reason,
        tip.hex(),
        "The history of commit " + tip.abbreviated() + " cannot be read: " + e.getMessage(),
        e);
  }

  private static Optional<ObjectId> folder(ObjectReader reader, RevCommit commit)
      throws IOException {
    CanonicalTreeParser root = new CanonicalTreeParser();
    byte[] name = new byte[PREFIX.length];
    for (root.reset(reader, commit.getTree()); !root.eof(); root.next(1)) {
      if (root.getNameLength() == PREFIX.length && root.getEntryFileMode() == FileMode.TREE) {
        root.getName(name, 0);
        if (Arrays.equals(name, PREFIX)) {
          return Optional.of(root.getEntryObjectId());
        }
      }
    }
    return Optional.empty();
  }

  private List<Change> changes(
      ObjectReader reader, Optional<ObjectId> before, Optional<ObjectId> after)
      throws IOException {
    try (TreeWalk trees = new TreeWalk(reader)) {
      trees.addTree(parser(reader, before));
      trees.addTree(parser(reader, after));
      trees.setRecursive(true);
      trees.setFilter(TreeFilter.ANY_DIFF);
      return Renames.changes(repository, trees);
    }
  }

  private static AbstractTreeIterator parser(ObjectReader reader, Optional<ObjectId> tree)
      throws IOException {
    return tree.isPresent()
        ? new CanonicalTreeParser(PREFIX, reader, tree.get())
        : new EmptyTreeIterator();
  }
}
