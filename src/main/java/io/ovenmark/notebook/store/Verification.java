package io.ovenmark.notebook.store;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.AnyObjectId;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectIdOwnerMap;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevTag;
import org.eclipse.jgit.treewalk.CanonicalTreeParser;

/** Reads every object that branches and tags lead to and compares it with its id. */
final class Verification {
  private static final int TELL_EVERY = 1024;

  private final Repository repository;
  private final LongConsumer progress;
  private final ObjectIdOwnerMap<Seen> seen = new ObjectIdOwnerMap<>();
  private final Deque<Seen> open = new ArrayDeque<>();
  private final List<Damage> damages = new ArrayList<>();

  /** An object that was come across, with its kind. */
  private static final class Seen extends ObjectIdOwnerMap.Entry {
    final int type;

    Seen(AnyObjectId id, int type) {
      super(id);
      this.type = type;
    }
  }

  private Verification(Repository repository, LongConsumer progress) {
    this.repository = repository;
    this.progress = progress;
  }

  static List<Damage> run(Repository repository, LongConsumer progress) throws IOException {
    return new Verification(repository, progress).run();
  }

  private List<Damage> run() throws IOException {
    try (ObjectReader reader = repository.newObjectReader()) {
      for (Ref ref : repository.getRefDatabase().getRefsByPrefix(Constants.R_REFS)) {
        if (ref.getObjectId() != null) {
          come(ref.getObjectId(), ObjectReader.OBJ_ANY);
        }
      }
      var shallow = reader.getShallowCommits();
      for (long done = 1; !open.isEmpty(); done++) {
        Seen next = open.pop();
        verify(reader, next, shallow.contains(next));
        if (done % TELL_EVERY == 0 || open.isEmpty()) {
          progress.accept(done);
        }
      }
    }
    return List.copyOf(damages);
  }

  private void come(AnyObjectId id, int type) {
    if (!seen.contains(id)) {
      Seen entry = new Seen(id, type);
      seen.add(entry);
      open.push(entry);
    }
  }

  private void verify(ObjectReader reader, Seen object, boolean shallow) {
    try {
      var loader = reader.open(object, object.type);
      byte[] bytes = loader.getCachedBytes(Integer.MAX_VALUE);
      int type = loader.getType();
      ObjectId actual =
          type == Constants.OBJ_BLOB
              ? ObjectId.fromString(BlobContent.id(bytes).hex())
              : new ObjectInserter.Formatter().idFor(type, bytes);
      if (!actual.equals(object)) {
        damage(object, Optional.empty());
        return;
      }
      follow(type, bytes, shallow);
    } catch (MissingObjectException e) {
      String id = object.name();
      damages.add(new Damage(id, "The Git object " + id + " is missing."));
    } catch (IOException | RuntimeException e) {
      damage(object, Optional.ofNullable(e.getMessage()));
    }
  }

  private void damage(Seen object, Optional<String> detail) {
    String id = object.name();
    String why = detail.orElse("its content does not match its id");
    damages.add(new Damage(id, "The Git object " + id + " is damaged (" + why + ")."));
  }

  private void follow(int type, byte[] bytes, boolean shallow) throws IOException {
    if (type == Constants.OBJ_TREE) {
      CanonicalTreeParser tree = new CanonicalTreeParser();
      for (tree.reset(bytes); !tree.eof(); tree.next(1)) {
        if (tree.getEntryFileMode() == FileMode.TREE) {
          come(tree.getEntryObjectId(), Constants.OBJ_TREE);
        } else if (tree.getEntryFileMode() != FileMode.GITLINK) {
          come(tree.getEntryObjectId(), Constants.OBJ_BLOB);
        }
      }
    } else if (type == Constants.OBJ_COMMIT) {
      RevCommit commit = RevCommit.parse(bytes);
      come(commit.getTree(), Constants.OBJ_TREE);
      if (!shallow) {
        for (RevCommit parent : commit.getParents()) {
          come(parent, Constants.OBJ_COMMIT);
        }
      }
    } else if (type == Constants.OBJ_TAG) {
      come(RevTag.parse(bytes).getObject(), ObjectReader.OBJ_ANY);
    }
  }
}
