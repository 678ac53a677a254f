package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.Pending.FileChange;
import io.ovenmark.notebook.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.eclipse.jgit.lib.AnyObjectId;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.RepositoryState;
import org.eclipse.jgit.lib.TagBuilder;
import org.eclipse.jgit.revwalk.RevWalk;

/**
 * Makes commits, branches and tags.
 *
 * <p>The order of a commit is what makes it safe: take the write lock, finish what a dead writer
 * left, lock the index, store the objects, write down what is to come ({@link Pending}), move the
 * branch by compare-and-swap, then let the files and the index follow. Up to the move nothing is
 * seen by anybody; after it everything can be finished by the next one who comes.
 */
final class Writer {
  static final String OWN_FOLDER = "ovenmark";

  private final Repository repository;
  private final StoredObjects objects;
  private final Refs refs;
  private final Path folder;
  private final Path shared;
  private final Duration patience;

  Writer(Repository repository, StoredObjects objects, Refs refs, Duration patience) {
    this.repository = repository;
    this.objects = objects;
    this.refs = refs;
    this.folder = repository.getDirectory().toPath().resolve(OWN_FOLDER);
    this.shared = repository.getCommonDirectory().toPath().resolve(OWN_FOLDER);
    this.patience = patience;
  }

  static PersonIdent ident(Author author, OffsetDateTime time) {
    int minutes = time.getOffset().getTotalSeconds() / 60;
    ZoneOffset offset = ZoneOffset.ofTotalSeconds(minutes * 60);
    return new PersonIdent(author.name(), author.email(), time.toInstant(), offset);
  }

  WriteOutcome write(Write write) throws IOException {
    String ref = Refs.branchRef(write.branch());
    String message = CommitMessage.compose(write.message(), write.trailers());
    TreeSet<String> paths = new TreeSet<>(write.changes().keySet());
    paths.addAll(write.kept().keySet());
    paths.forEach(SafePath::check);
    refuseUnderAndOverAFile(paths);
    try (WriteLock lock = lock()) {
      recovery().recover(lock);
      boolean shown = refs.checkedOut().filter(ref::equals).isPresent();
      refuseDuringOperation(ref, shown);
      refs.refuseElsewhere(ref);
      if (!shown) {
        return commit(write, ref, message, Optional.empty());
      }
      Path root = repository.getWorkTree().toPath();
      paths.forEach(path -> SafePath.onDisk(root, path));
      try (Checkout checkout = Checkout.begin(repository, folder, patience)) {
        return commit(write, ref, message, Optional.of(checkout));
      }
    }
  }

  private WriteOutcome commit(
      Write write, String ref, String message, Optional<Checkout> checkout) throws IOException {
    Optional<CommitId> head = refs.head(ref);
    if (!head.equals(write.expectedHead())) {
      return new WriteOutcome.Moved(head);
    }
    Optional<ObjectId> own = refs.read(ref);
    if (own.isEmpty()) {
      refs.refuseTaken(ref);
    }
    Optional<Companions> with = Companions.plan(repository, refs, write.companions());
    if (with.isEmpty()) {
      return new WriteOutcome.Moved(head);
    }
    SortedMap<String, Optional<ObjectId>> blobs = new TreeMap<>();
    ObjectId commit;
    try (ObjectInserter inserter = repository.newObjectInserter();
        ObjectReader reader = repository.newObjectReader()) {
      for (Map.Entry<String, Optional<byte[]>> change : write.changes().entrySet()) {
        Optional<ObjectId> blob = Optional.empty();
        if (change.getValue().isPresent()) {
          blob = Optional.of(inserter.insert(Constants.OBJ_BLOB, change.getValue().get()));
        }
        blobs.put(change.getKey(), blob);
      }
      for (Map.Entry<String, BlobId> kept : write.kept().entrySet()) {
        ObjectId blob = ObjectId.fromString(kept.getValue().hex());
        reader.open(blob, Constants.OBJ_BLOB);
        blobs.put(kept.getKey(), Optional.of(blob));
      }
      ObjectId before = head.isPresent() ? tree(head.get()) : null;
      ObjectId tree = new TreeEditor(reader, inserter).edit(before, blobs);
      boolean same = before == null ? tree == null : before.equals(tree);
      if (same && write.otherParents().isEmpty()) {
        return new WriteOutcome.Unchanged();
      }
      if (tree == null) {
        tree = inserter.insert(Constants.OBJ_TREE, new byte[0]);
      }
      commit = inserter.insert(builder(write, tree, message));
      inserter.flush();
    }
    List<FileChange> files =
        checkout.isPresent() ? fileChanges(head, blobs) : List.of();
    new Pending(ref, commit, files, with.get().made(), with.get().gone()).write(folder);
    PersonIdent who = ident(write.author(), write.time());
    String why = (head.isEmpty() ? "commit (initial): " : "commit: ") + firstLine(message);
    if (!moved(ref, own, commit, who, why)) {
      return new WriteOutcome.Moved(refs.head(ref));
    }
    Companions.follow(refs, with.get().made(), with.get().gone(), who);
    List<String> left = List.of();
    if (checkout.isPresent()) {
      left = checkout.get().follow(files, this::read);
    }
    Pending.remove(folder);
    return new WriteOutcome.Written(new CommitId(commit.name()), left);
  }

  /** Moves a branch; if it did not move, takes back what was written down. */
  boolean moved(
      String ref, Optional<ObjectId> expected, AnyObjectId target, PersonIdent who, String why)
      throws IOException {
    boolean moved = false;
    try {
      moved = refs.move(ref, expected, target, who, why);
      return moved;
    } finally {
      if (!moved) {
        Pending.remove(folder);
      }
    }
  }

  private CommitBuilder builder(Write write, ObjectId tree, String message) throws IOException {
    CommitBuilder builder = new CommitBuilder();
    builder.setTreeId(tree);
    List<ObjectId> parents = new ArrayList<>();
    write.expectedHead().ifPresent(head -> parents.add(StoredObjects.jgit(head)));
    for (CommitId parent : write.otherParents()) {
      tree(parent);
      parents.add(StoredObjects.jgit(parent));
    }
    builder.setParentIds(parents);
    builder.setAuthor(ident(write.author(), write.time()));
    builder.setCommitter(ident(write.author(), write.time()));
    builder.setMessage(message);
    return builder;
  }

  private ObjectId tree(CommitId commit) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      return walk.parseCommit(StoredObjects.jgit(commit)).getTree().getId();
    }
  }

  private List<FileChange> fileChanges(
      Optional<CommitId> head, SortedMap<String, Optional<ObjectId>> blobs) throws IOException {
    List<FileChange> files = new ArrayList<>();
    for (Map.Entry<String, Optional<ObjectId>> entry : blobs.entrySet()) {
      Optional<BlobId> before =
          head.isPresent() ? objects.blob(head.get(), entry.getKey()) : Optional.empty();
      Optional<BlobId> after = entry.getValue().map(id -> new BlobId(id.name()));
      if (before.isPresent() || after.isPresent()) {
        files.add(new FileChange(entry.getKey(), before, after));
      }
    }
    return files;
  }

  private byte[] read(BlobId blob) {
    return Faults.guard(blob.hex(), () -> objects.read(blob));
  }

  void createBranch(String branch, CommitId at, PersonIdent who) throws IOException {
    String ref = Refs.branchRef(branch);
    try (WriteLock lock = lock()) {
      recovery().recover(lock);
      tree(at);
      refs.refuseTaken(ref);
      refs.refuseFetched(ref);
      String why = "branch: created at " + at.abbreviated();
      if (!moveAlone(ref, Optional.empty(), StoredObjects.jgit(at), who, why)) {
        refs.refuseTaken(ref);
      }
    }
  }

  boolean moveBranch(
      String branch, Optional<CommitId> expected, Optional<CommitId> target, PersonIdent who)
      throws IOException {
    String ref = Refs.branchRef(branch);
    try (WriteLock lock = lock()) {
      recovery().recover(lock);
      if (!refs.head(ref).equals(expected)) {
        return false;
      }
      if (refs.checkedOut().filter(ref::equals).isPresent()) {
        throw new StoreException(
            Reason.CHECKED_OUT,
            branch,
            "The branch " + branch + " is checked out: check out another one first.");
      }
      refuseDuringOperation(ref, false);
      refs.refuseElsewhere(ref);
      if (target.isPresent()) {
        tree(target.get());
      }
      AnyObjectId to = target.map(StoredObjects::jgit).orElse(ObjectId.zeroId());
      return moveAlone(ref, expected.map(StoredObjects::jgit), to, who, "branch: moved");
    }
  }

  ObjectId tag(String name, CommitId commit, String message, PersonIdent who)
      throws IOException {
    String ref = Refs.tagRef(name);
    String text = CommitMessage.compose(message, Map.of());
    try (WriteLock lock = lock()) {
      recovery().recover(lock);
      tree(commit);
      refs.refuseTaken(ref);
      TagBuilder builder = new TagBuilder();
      builder.setTag(name);
      builder.setObjectId(StoredObjects.jgit(commit), Constants.OBJ_COMMIT);
      builder.setTagger(who);
      builder.setMessage(text);
      ObjectId id;
      try (ObjectInserter inserter = repository.newObjectInserter()) {
        id = inserter.insert(builder);
        inserter.flush();
      }
      if (!moveAlone(ref, Optional.empty(), id, who, "tag: created")) {
        refs.refuseTaken(ref);
      }
      return id;
    }
  }

  private boolean moveAlone(
      String ref, Optional<ObjectId> expected, AnyObjectId target, PersonIdent who, String why)
      throws IOException {
    new Pending(ref, target.toObjectId(), List.of()).write(folder);
    boolean moved = moved(ref, expected, target, who, why);
    Pending.remove(folder);
    return moved;
  }

  WriteLock lock() throws IOException {
    Files.createDirectories(folder);
    return WriteLock.take(shared, patience);
  }

  /** Finishes what a dead writer left, if there are signs of one. */
  void recoverIfNeeded() throws IOException {
    if (Recovery.isNeeded(folder) || WriteLock.looksHeld(shared)) {
      recoverNow();
    }
  }

  /** Waits for a writer at work and finishes what a dead one left. */
  void recoverNow() throws IOException {
    try (WriteLock lock = lock()) {
      recovery().recover(lock);
    }
  }

  /**
   * Looks at files while nobody writes, after finishing what a dead writer left. Where that cannot
   * be had, in a folder that may only be read for instance, they are looked at as they are.
   */
  <T> T undisturbed(Faults.Task<T> look) throws IOException {
    Optional<WriteLock> held = lockIfFree();
    if (held.isEmpty()) {
      return look.run();
    }
    try (WriteLock lock = held.get()) {
      recoverQuietly(lock);
      return look.run();
    }
  }

  private Optional<WriteLock> lockIfFree() {
    try {
      return Optional.of(lock());
    } catch (IOException | StoreException e) {
      return Optional.empty();
    }
  }

  private void recoverQuietly(WriteLock lock) {
    try {
      recovery().recover(lock);
    } catch (IOException | StoreException e) {
      return;
    }
  }

  /** Leaves out files that still are as before a commit that could not be finished yet. */
  List<HandEdit> withoutUnfinished(List<HandEdit> edits) throws IOException {
    Optional<Pending> pending = Pending.read(folder);
    if (pending.isEmpty()) {
      return edits;
    }
    return edits.stream().filter(edit -> !isUnfinished(pending.get(), edit)).toList();
  }

  private static boolean isUnfinished(Pending pending, HandEdit edit) {
    Optional<BlobId> onDisk = edit.onDisk().map(BlobContent::id);
    return pending.files().stream()
        .anyMatch(
            file ->
                file.path().equals(edit.path())
                    && file.after().equals(edit.committed())
                    && file.before().equals(onDisk)
                    && edit.kind() != HandEdit.Kind.UNREADABLE);
  }

  Recovery recovery() {
    return new Recovery(repository, refs, objects, folder, patience);
  }

  void refuseDuringOperation(String ref, boolean shown) throws IOException {
    if (repository.isBare()) {
      return;
    }
    RepositoryState state = repository.getRepositoryState();
    if (state == RepositoryState.SAFE || state == RepositoryState.BISECTING) {
      return;
    }
    if (shown || isRebased(ref)) {
      throw new StoreException(
          Reason.OPERATION_IN_PROGRESS,
          ref,
          "Git is in the middle of something (" + state.getDescription()
              + "): finish or abort it with git first.");
    }
  }

  private boolean isRebased(String ref) throws IOException {
    for (String kind : List.of("rebase-merge", "rebase-apply")) {
      Path name = repository.getDirectory().toPath().resolve(kind).resolve("head-name");
      if (Files.isRegularFile(name) && Files.readString(name).strip().equals(ref)) {
        return true;
      }
    }
    return false;
  }

  private static void refuseUnderAndOverAFile(SortedSet<String> paths) {
    for (String path : paths) {
      SortedSet<String> rest = paths.tailSet(path + "/");
      if (!rest.isEmpty() && rest.first().startsWith(path + "/")) {
        throw new StoreException(
            Reason.NOT_A_FILE,
            path,
            "The path " + path + " cannot be a file and a folder at once: choose another name.");
      }
    }
  }

  private static String firstLine(String message) {
    return message.substring(0, message.indexOf('\n'));
  }
}
