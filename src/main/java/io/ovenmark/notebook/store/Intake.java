package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.Pending.FileChange;
import io.ovenmark.notebook.store.Pending.NewRef;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongConsumer;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Repository;

/**
 * Puts a {@link Chronicle} on top of a branch, together with new branches and tags.
 *
 * <p>The objects are stored before anything is locked, since that may take a while. Then the order
 * is that of {@link Writer}: what is to come is written down, the branch is moved by
 * compare-and-swap, the new branches and tags are made, and files and index follow. Whoever comes
 * after a sudden death either finds nothing moved, or finishes the rest.
 */
final class Intake {
  private final Repository repository;
  private final StoredObjects objects;
  private final Refs refs;
  private final Writer writer;
  private final Path folder;
  private final Duration patience;

  Intake(
      Repository repository,
      StoredObjects objects,
      Refs refs,
      Writer writer,
      Path folder,
      Duration patience) {
    this.repository = repository;
    this.objects = objects;
    this.refs = refs;
    this.writer = writer;
    this.folder = folder;
    this.patience = patience;
  }

  WriteOutcome run(
      Chronicle chronicle,
      String branch,
      CommitId seen,
      Function<BlobId, byte[]> contents,
      Author author,
      OffsetDateTime time,
      LongConsumer progress)
      throws IOException {
    String ref = Refs.branchRef(branch);
    ChronicleWriter.Written written =
        new ChronicleWriter(repository, contents, progress).write(chronicle, Optional.of(seen));
    ObjectId target = written.commits().get(chronicle.branches().get(branch));
    List<NewRef> others = others(chronicle, branch, written);
    try (WriteLock lock = writer.lock()) {
      writer.recovery().recover(lock);
      boolean shown = refs.checkedOut().filter(ref::equals).isPresent();
      writer.refuseDuringOperation(ref, shown);
      refs.refuseElsewhere(ref);
      if (!shown) {
        return move(ref, seen, target, others, ident(author, time), Optional.empty());
      }
      try (Checkout checkout = Checkout.begin(repository, folder, patience)) {
        return move(ref, seen, target, others, ident(author, time), Optional.of(checkout));
      }
    }
  }

  private static PersonIdent ident(Author author, OffsetDateTime time) {
    return Writer.ident(author, time);
  }

  private static List<NewRef> others(
      Chronicle chronicle, String branch, ChronicleWriter.Written written) {
    List<NewRef> others = new ArrayList<>();
    for (Map.Entry<String, Integer> each : chronicle.branches().entrySet()) {
      if (!each.getKey().equals(branch)) {
        ObjectId end = written.commits().get(each.getValue());
        others.add(new NewRef(Refs.branchRef(each.getKey()), end));
      }
    }
    for (int i = 0; i < chronicle.labels().size(); i++) {
      String name = Refs.tagRef(chronicle.labels().get(i).name());
      others.add(new NewRef(name, written.labels().get(i)));
    }
    return others;
  }

  private WriteOutcome move(
      String ref,
      CommitId seen,
      ObjectId target,
      List<NewRef> others,
      PersonIdent who,
      Optional<Checkout> checkout)
      throws IOException {
    Optional<CommitId> head = refs.head(ref);
    if (!head.equals(Optional.of(seen))) {
      return new WriteOutcome.Moved(head);
    }
    for (NewRef other : others) {
      refs.refuseTaken(other.ref());
      if (other.ref().startsWith(Constants.R_HEADS)) {
        refs.refuseFetched(other.ref());
      }
    }
    CommitId made = new CommitId(target.name());
    List<FileChange> files = checkout.isPresent() ? files(seen, made) : List.of();
    new Pending(ref, target, files, others).write(folder);
    Optional<ObjectId> before = Optional.of(StoredObjects.jgit(seen));
    if (!writer.moved(ref, before, target, who, "commit: taken in")) {
      return new WriteOutcome.Moved(refs.head(ref));
    }
    Companions.follow(refs, others, List.of(), who);
    List<String> left = List.of();
    if (checkout.isPresent()) {
      left =
          checkout
              .get()
              .follow(files, blob -> Faults.guard(blob.hex(), () -> objects.read(blob)));
    }
    Pending.remove(folder);
    return new WriteOutcome.Written(made, left);
  }

  private List<FileChange> files(CommitId from, CommitId to) throws IOException {
    List<FileChange> files = new ArrayList<>();
    objects
        .differences(Optional.of(from), to)
        .forEach((path, each) -> files.add(new FileChange(path, each.from(), each.to())));
    return files;
  }
}
