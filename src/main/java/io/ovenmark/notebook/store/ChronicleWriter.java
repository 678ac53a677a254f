package io.ovenmark.notebook.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.LongConsumer;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.TagBuilder;
import org.eclipse.jgit.revwalk.RevWalk;

/** Stores the objects of a {@link Chronicle}; no branch and no tag moves. */
final class ChronicleWriter {
  private final Repository repository;
  private final Function<BlobId, byte[]> contents;
  private final LongConsumer progress;
  private final Set<ObjectId> stored = new HashSet<>();

  /** The commits of the steps and the tags of the labels, in their order. */
  record Written(List<ObjectId> commits, List<ObjectId> labels) {
    CommitId commit(int step) {
      return new CommitId(commits.get(step).name());
    }
  }

  /**
   * Writes to a repository.
   *
   * @param contents where contents are read that it does not have yet
   * @param progress told how many steps are done
   */
  ChronicleWriter(
      Repository repository, Function<BlobId, byte[]> contents, LongConsumer progress) {
    this.repository = repository;
    this.contents = contents;
    this.progress = progress;
  }

  /** Stores everything, on top of a commit or of nothing. */
  Written write(Chronicle chronicle, Optional<CommitId> base) throws IOException {
    List<ObjectId> commits = new ArrayList<>();
    List<ObjectId> trees = new ArrayList<>();
    List<ObjectId> labels = new ArrayList<>();
    try (ObjectInserter inserter = repository.newObjectInserter();
        ObjectReader reader = repository.newObjectReader()) {
      ObjectId baseTree = base.isPresent() ? tree(reader, base.get()) : null;
      for (Chronicle.Step step : chronicle.steps()) {
        progress.accept(commits.size());
        boolean first = step.parent() == Chronicle.BASE;
        ObjectId before = first ? baseTree : trees.get(step.parent());
        SortedMap<String, Optional<ObjectId>> blobs = new TreeMap<>();
        for (Map.Entry<String, Optional<BlobId>> change : step.changes().entrySet()) {
          Optional<ObjectId> blob = Optional.empty();
          if (change.getValue().isPresent()) {
            blob = Optional.of(blob(reader, inserter, change.getValue().get()));
          }
          blobs.put(SafePath.check(change.getKey()), blob);
        }
        ObjectId tree = new TreeEditor(reader, inserter).edit(before, blobs);
        if (tree == null) {
          tree = inserter.insert(Constants.OBJ_TREE, new byte[0]);
        }
        trees.add(tree);
        commits.add(inserter.insert(commit(step, tree, base, commits)));
      }
      for (Chronicle.Label label : chronicle.labels()) {
        labels.add(inserter.insert(tag(label, commits.get(label.step()))));
      }
      inserter.flush();
    }
    progress.accept(commits.size());
    return new Written(commits, labels);
  }

  private ObjectId blob(ObjectReader reader, ObjectInserter inserter, BlobId wanted)
      throws IOException {
    ObjectId id = ObjectId.fromString(wanted.hex());
    if (stored.contains(id) || reader.has(id, Constants.OBJ_BLOB)) {
      return id;
    }
    ObjectId made = inserter.insert(Constants.OBJ_BLOB, contents.apply(wanted));
    if (!made.equals(id)) {
      throw Faults.corrupt(wanted.hex(), null);
    }
    stored.add(id);
    return id;
  }

  private static CommitBuilder commit(
      Chronicle.Step step, ObjectId tree, Optional<CommitId> base, List<ObjectId> earlier) {
    CommitBuilder builder = new CommitBuilder();
    builder.setTreeId(tree);
    List<ObjectId> parents = new ArrayList<>();
    if (step.parent() != Chronicle.BASE) {
      parents.add(earlier.get(step.parent()));
    } else {
      base.ifPresent(commit -> parents.add(StoredObjects.jgit(commit)));
    }
    for (int merged : step.merged()) {
      parents.add(earlier.get(merged));
    }
    builder.setParentIds(parents);
    builder.setAuthor(Writer.ident(step.author(), step.time()));
    builder.setCommitter(Writer.ident(step.author(), step.time()));
    builder.setMessage(
        CommitMessage.compose(
            step.message().text(at -> new CommitId(earlier.get(at).name())), Map.of()));
    return builder;
  }

  private static TagBuilder tag(Chronicle.Label label, ObjectId commit) {
    Refs.tagRef(label.name());
    TagBuilder builder = new TagBuilder();
    builder.setTag(label.name());
    builder.setObjectId(commit, Constants.OBJ_COMMIT);
    builder.setTagger(Writer.ident(label.author(), label.time()));
    builder.setMessage(CommitMessage.compose(label.message(), Map.of()));
    return builder;
  }

  private ObjectId tree(ObjectReader reader, CommitId commit) throws IOException {
    try (RevWalk walk = new RevWalk(reader)) {
      return walk.parseCommit(StoredObjects.jgit(commit)).getTree().getId();
    }
  }
}
