package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.Pending.FileChange;
import io.ovenmark.notebook.store.Pending.NewRef;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Repository;

/** Finishes or takes back what a writer left that died at its work. */
final class Recovery {
  private final Repository repository;
  private final Refs refs;
  private final StoredObjects objects;
  private final Path folder;
  private final Duration patience;

  Recovery(
      Repository repository, Refs refs, StoredObjects objects, Path folder, Duration patience) {
    this.repository = repository;
    this.refs = refs;
    this.objects = objects;
    this.folder = folder;
    this.patience = patience;
  }

  /** Whether a dead writer of this work tree left something. */
  static boolean isNeeded(Path folder) {
    return Pending.exists(folder) || IndexLock.isLeft(folder);
  }

  /**
   * Does what is to do; next to nothing if the last writer ended well.
   *
   * @param held the write lock, as a proof that nobody else is at work
   */
  void recover(WriteLock held) throws IOException {
    if (held.wasAbandoned()) {
      sweep(held.time());
    }
    IndexLock.releaseAbandoned(repository.getDirectory().toPath(), folder, patience);
    if (!Pending.exists(folder)) {
      return;
    }
    Optional<Pending> pending = Pending.read(folder);
    if (pending.isPresent()) {
      releaseRef(pending.get());
      makeOthers(pending.get());
      follow(pending.get());
    }
    Pending.remove(folder);
  }

  /** Deletes the half-written files of the dead writer. */
  private void sweep(FileTime now) throws IOException {
    Path stored = repository.getCommonDirectory().toPath().resolve("objects");
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(stored, "noz*.tmp")) {
      for (Path part : parts) {
        deleteIfOlder(part, now);
      }
    }
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, "*.{part,part.lock}")) {
      for (Path part : parts) {
        deleteIfOlder(part, now);
      }
    }
  }

  private static void deleteIfOlder(Path part, FileTime now) throws IOException {
    try {
      if (Files.getLastModifiedTime(part).compareTo(now) <= 0) {
        Files.deleteIfExists(part);
      }
    } catch (NoSuchFileException e) {
      return;
    }
  }

  /** Deletes the lock file of the branch, if it is the dead writer's. */
  private void releaseRef(Pending pending) throws IOException {
    Path lock = refs.lockFile(pending.ref());
    if (Files.exists(lock)) {
      String content = new String(Files.readAllBytes(lock), StandardCharsets.ISO_8859_1).strip();
      boolean ours = content.equals(pending.target().name());
      boolean maybe = content.isEmpty() || pending.target().equals(ObjectId.zeroId());
      if (ours || maybe && StaleFile.staysUnchanged(lock, patience)) {
        Files.deleteIfExists(lock);
      }
    }
    Path packed = repository.getCommonDirectory().toPath().resolve("packed-refs.lock");
    if (pending.target().equals(ObjectId.zeroId())
        && Files.exists(packed)
        && StaleFile.staysUnchanged(packed, patience)) {
      Files.deleteIfExists(packed);
    }
  }

  /** Makes and deletes the branches and tags that belong to a branch that did move. */
  private void makeOthers(Pending pending) throws IOException {
    if (pending.others().isEmpty() && pending.gone().isEmpty()) {
      return;
    }
    for (NewRef other : pending.others()) {
      releaseRef(new Pending(other.ref(), other.target(), List.of()));
    }
    for (NewRef gone : pending.gone()) {
      releaseRef(new Pending(gone.ref(), ObjectId.zeroId(), List.of()));
    }
    CommitId target = new CommitId(pending.target().name());
    Optional<CommitId> head = refs.head(pending.ref());
    if (head.isPresent() && objects.isAncestor(target, head.get())) {
      CommitFacts facts = objects.facts(target);
      PersonIdent who = Writer.ident(facts.author(), facts.time());
      Companions.follow(refs, pending.others(), pending.gone(), who);
    }
  }

  /** Lets the files and the index follow, where the branch did move. */
  private void follow(Pending pending) throws IOException {
    if (repository.isBare() || pending.files().isEmpty()) {
      return;
    }
    Checkout.sweep(repository.getWorkTree().toPath(), pending.files());
    Optional<CommitId> head = refs.head(pending.ref());
    if (head.isEmpty() || refs.checkedOut().filter(pending.ref()::equals).isEmpty()) {
      return;
    }
    List<FileChange> open = new ArrayList<>();
    for (FileChange file : pending.files()) {
      if (objects.blob(head.get(), file.path()).equals(file.after())) {
        open.add(file);
      }
    }
    if (!open.isEmpty()) {
      try (Checkout checkout = Checkout.begin(repository, folder, patience)) {
        checkout.follow(open, blob -> Faults.guard(blob.hex(), () -> objects.read(blob)));
      }
    }
  }
}
