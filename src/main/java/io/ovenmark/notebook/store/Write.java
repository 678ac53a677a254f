package io.ovenmark.notebook.store;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A commit to be made: some files of a branch and the head the writer has seen.
 *
 * <pre>{@code
 * Write write =
 *     Write.to("main", store.head("main"), author, time, "Less water")
 *         .put("formulas/seeded-lupin-bun.json", bytes)
 *         .trailer("Formula", "seeded-lupin-bun");
 * }</pre>
 *
 * @param branch the branch without {@code refs/heads/}
 * @param expectedHead the head the writer has seen; empty if the branch has no commit yet
 * @param otherParents further parents of a merge, empty for an ordinary commit
 * @param changes for each path its new bytes, or empty to delete the file
 * @param kept for each path a content that the repository has already; no path of the changes
 * @param author who writes
 * @param time when, kept to the second and to the minute of the offset
 * @param message subject and, after an empty line, body
 * @param trailers {@code Key: value} lines put under the message
 * @param companions branches and tags that are put aside or come back with it
 */
public record Write(
    String branch,
    Optional<CommitId> expectedHead,
    List<CommitId> otherParents,
    SortedMap<String, Optional<byte[]>> changes,
    SortedMap<String, BlobId> kept,
    Author author,
    OffsetDateTime time,
    String message,
    SortedMap<String, String> trailers,
    List<Companion> companions) {

  /**
   * Copies the collections; the byte arrays must not be changed afterwards.
   *
   * @throws IllegalArgumentException if the time is before 1970, which Git cannot keep
   */
  public Write {
    Objects.requireNonNull(branch, "branch");
    Objects.requireNonNull(expectedHead, "expectedHead");
    Objects.requireNonNull(author, "author");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(message, "message");
    if (time.toEpochSecond() < 0) {
      throw new IllegalArgumentException("Git keeps no time before 1970: " + time);
    }
    otherParents = List.copyOf(otherParents);
    changes = Collections.unmodifiableSortedMap(new TreeMap<>(changes));
    kept = Collections.unmodifiableSortedMap(new TreeMap<>(kept));
    trailers = Collections.unmodifiableSortedMap(new TreeMap<>(trailers));
    companions = List.copyOf(companions);
  }

  /** A write of no files yet; see {@link #put} and {@link #delete}. */
  public static Write to(
      String branch,
      Optional<CommitId> expectedHead,
      Author author,
      OffsetDateTime time,
      String message) {
    return new Write(
        branch,
        expectedHead,
        List.of(),
        new TreeMap<>(),
        new TreeMap<>(),
        author,
        time,
        message,
        new TreeMap<>(),
        List.of());
  }

  /** The same write that also gives a file these bytes. */
  public Write put(String path, byte[] bytes) {
    return change(path, Optional.of(bytes));
  }

  /** The same write that also deletes a file; a file that does not exist stays so. */
  public Write delete(String path) {
    return change(path, Optional.empty());
  }

  /**
   * The same write that also gives a file a content that the repository has, without storing it
   * anew.
   */
  public Write keep(String path, BlobId blob) {
    SortedMap<String, Optional<byte[]>> others = new TreeMap<>(changes);
    others.remove(path);
    SortedMap<String, BlobId> more = new TreeMap<>(kept);
    more.put(path, blob);
    return changed(expectedHead, otherParents, others, more, trailers, companions);
  }

  /** The same write with one more trailer. */
  public Write trailer(String key, String value) {
    SortedMap<String, String> more = new TreeMap<>(trailers);
    more.put(key, value);
    return changed(expectedHead, otherParents, changes, kept, more, companions);
  }

  /** The same write together with branches and tags. */
  public Write with(List<Companion> others) {
    return changed(expectedHead, otherParents, changes, kept, trailers, others);
  }

  /** The same write as a merge of one more commit. */
  public Write merging(CommitId parent) {
    List<CommitId> more = new ArrayList<>(otherParents);
    more.add(parent);
    return changed(expectedHead, more, changes, kept, trailers, companions);
  }

  /** The same write on another head, to be tried again after {@link WriteOutcome.Moved}. */
  public Write onto(Optional<CommitId> head) {
    return changed(head, otherParents, changes, kept, trailers, companions);
  }

  private Write change(String path, Optional<byte[]> bytes) {
    SortedMap<String, Optional<byte[]>> more = new TreeMap<>(changes);
    more.put(path, bytes);
    SortedMap<String, BlobId> others = new TreeMap<>(kept);
    others.remove(path);
    return changed(expectedHead, otherParents, more, others, trailers, companions);
  }

  private Write changed(
      Optional<CommitId> head,
      List<CommitId> parents,
      SortedMap<String, Optional<byte[]>> files,
      SortedMap<String, BlobId> contents,
      SortedMap<String, String> lines,
      List<Companion> others) {
    return new Write(
        branch, head, parents, files, contents, author, time, message, lines, others);
  }
}
