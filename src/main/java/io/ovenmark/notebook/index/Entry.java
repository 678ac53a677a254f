package io.ovenmark.notebook.index;

import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitFacts;
import io.ovenmark.notebook.store.CommitId;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One step in the history of a formula's file.
 *
 * @param number its place in the history, from 1; a deletion has one, too
 * @param commit the commit that made it
 * @param path where the file was then
 * @param blob its content after the commit, empty if the commit deleted it
 * @param renamedFrom where the file was before, if the commit renamed it
 * @param time when it was authored
 * @param author who made it
 * @param subject the first line of the note
 * @param body the rest of the note without trailers, may be empty
 * @param trailers the trailers of the commit
 * @param merge whether the commit has more than one parent
 */
public record Entry(
    int number,
    CommitId commit,
    String path,
    Optional<BlobId> blob,
    Optional<String> renamedFrom,
    OffsetDateTime time,
    Author author,
    String subject,
    String body,
    Map<String, String> trailers,
    boolean merge) {

  /** Refuses nulls; the trailers must be immutable, as those of {@link CommitFacts} are. */
  public Entry {
    Objects.requireNonNull(commit, "commit");
    Objects.requireNonNull(path, "path");
    Objects.requireNonNull(blob, "blob");
    Objects.requireNonNull(renamedFrom, "renamedFrom");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(author, "author");
    Objects.requireNonNull(trailers, "trailers");
  }

  /** Whether the commit deleted the file (or renamed it away). */
  public boolean isDeletion() {
    return blob.isEmpty();
  }

  static Entry of(
      int number,
      CommitFacts facts,
      String path,
      Optional<BlobId> blob,
      Optional<String> renamedFrom) {
    return new Entry(
        number,
        facts.id(),
        path,
        blob,
        renamedFrom,
        facts.time(),
        facts.author(),
        facts.subject(),
        facts.body(),
        facts.trailers(),
        facts.parents().size() > 1);
  }
}
