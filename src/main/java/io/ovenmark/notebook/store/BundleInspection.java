package io.ovenmark.notebook.store;

import java.io.IOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
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
 * enough for that. A bundle with links, submodules or files that are no part of a notebook is not
 * from a notebook, whoever made it, so it is refused as a whole.
 */
final class BundleInspection {
  private static final long MOST_FILES = 100_000;
  private static final int MOST_COMMITS = 200_000;
  private static final int DEEPEST = 16;

  private final Repository repository;
  private final Function<String, StoreException> refusal;
  private final Predicate<String> belongs;
  private final Map<ObjectId, Long> files = new HashMap<>();
  private final Set<ObjectId> roots = new HashSet<>();

  /**
   * For a repository.
   *
   * @param refusal words a refusal
   * @param belongs whether what lies at the top belongs to a notebook; folders end in a slash
   */
  BundleInspection(
      Repository repository,
      Function<String, StoreException> refusal,
      Predicate<String> belongs) {
    this.repository = repository;
    this.refusal = refusal;
    this.belongs = belongs;
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
        checkTop(reader, commit.getTree());
        count(reader, commit.getTree(), "", 0);
      }
    } catch (MissingObjectException e) {
      throw refusal.apply("Something is missing in it (" + e.getObjectId().name() + ").");
    } catch (IncorrectObjectTypeException e) {
      throw refusal.apply("Something in it is damaged (" + e.getMessage() + ").");
    }
  }

  private void checkTop(ObjectReader reader, AnyObjectId tree) throws IOException {
    if (!roots.add(tree.toObjectId())) {
      return;
    }
    CanonicalTreeParser rows = new CanonicalTreeParser();
    for (rows.reset(reader, tree); !rows.eof(); rows.next(1)) {
      boolean folder = rows.getEntryFileMode() == FileMode.TREE;
      String name = rows.getEntryPathString();
      if (!belongs.test(folder ? name + "/" : name)) {
        throw refusal.apply(
            "It holds " + BundleReader.shown(name) + ", which is no part of a notebook.");
      }
    }
  }

  private long count(ObjectReader reader, AnyObjectId tree, String folder, int depth)
      throws IOException {
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
      String path = folder + rows.getEntryPathString();
      if (rows.getEntryFileMode() == FileMode.TREE) {
        found += count(reader, rows.getEntryObjectId(), path + "/", depth + 1);
      } else {
        found++;
        if (!StoredObjects.isFile(rows.getEntryRawMode())) {
          String what =
              rows.getEntryFileMode() == FileMode.SYMLINK ? "a symbolic link" : "a submodule";
          throw refusal.apply(
              "It holds " + what + " (" + BundleReader.shown(path)
                  + "), which a notebook never does.");
        }
        if (!reader.has(rows.getEntryObjectId(), Constants.OBJ_BLOB)) {
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
