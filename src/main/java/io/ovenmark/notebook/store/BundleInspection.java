package io.ovenmark.notebook.store;

import java.io.IOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.jgit.errors.IncorrectObjectTypeException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.AnyObjectId;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevObject;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.CanonicalTreeParser;

/**
 * Sees that a repository holds all that its branches lead to, and that no commit unfolds to more
 * files than a notebook can have: a few small folders that contain each other many times over are
 * enough for that.
 */
final class BundleInspection {
  private static final long MOST_FILES = 100_000;
  private static final int MOST_COMMITS = 200_000;
  private static final int DEEPEST = 16;

  private final Repository repository;
  private final Function<String, StoreException> refusal;
  private final Map<ObjectId, Long> files = new HashMap<>();

  BundleInspection(Repository repository, Function<String, StoreException> refusal) {
    this.repository = repository;
    this.refusal = refusal;
  }

  void run(Collection<ObjectId> ends) throws IOException {
    try (ObjectReader reader = repository.newObjectReader();
        RevWalk walk = new RevWalk(reader)) {
      walk.setRetainBody(false);
      for (ObjectId end : ends) {
        RevObject peeled = walk.peel(walk.parseAny(end));
        if (!(peeled instanceof RevCommit commit)) {
          throw refusal.apply("One of its branches or tags does not lead to a commit.");
        }
        walk.markStart(commit);
      }
      int commits = 0;
      for (RevCommit commit = walk.next(); commit != null; commit = walk.next()) {
        if (++commits > MOST_COMMITS) {
          throw refusal.apply("It holds more than " + MOST_COMMITS + " commits.");
        }
        count(reader, commit.getTree(), 0);
      }
    } catch (MissingObjectException e) {
      throw refusal.apply("Something is missing in it (" + e.getObjectId().name() + ").");
    } catch (IncorrectObjectTypeException e) {
      throw refusal.apply("Something in it is damaged (" + e.getMessage() + ").");
    }
  }

  private long count(ObjectReader reader, AnyObjectId tree, int depth) throws IOException {
    Long known = files.get(tree);
    if (known != null) {
      return known;
    }
    if (depth > DEEPEST) {
      throw refusal.apply("Its folders are more than " + DEEPEST + " deep.");
    }
    long found = 0;
    CanonicalTreeParser rows = new CanonicalTreeParser();
    for (rows.reset(reader, tree); !rows.eof(); rows.next(1)) {
      if (rows.getEntryFileMode() == FileMode.TREE) {
        found += count(reader, rows.getEntryObjectId(), depth + 1);
      } else {
        found++;
        if (StoredObjects.isFile(rows.getEntryRawMode())
            && !reader.has(rows.getEntryObjectId(), Constants.OBJ_BLOB)) {
          throw new MissingObjectException(rows.getEntryObjectId(), Constants.OBJ_BLOB);
        }
      }
      if (found > MOST_FILES) {
        throw refusal.apply("It holds more than " + MOST_FILES + " files at a time.");
      }
    }
    files.put(tree.toObjectId(), found);
    return found;
  }
}
