package io.ovenmark.notebook.store;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * A file on disk that differs from the last commit of the checked-out branch.
 *
 * @param path the file, with {@code /} between folders
 * @param kind what happened to it
 * @param committed the content in the last commit, empty if the file is new
 * @param onDisk the bytes on disk, empty if the file is deleted or unreadable
 */
public record HandEdit(
    String path, Kind kind, Optional<BlobId> committed, Optional<byte[]> onDisk) {

  /** What happened to a file. */
  public enum Kind {
    /** On disk but not in the last commit. */
    ADDED,
    /** Another content than in the last commit. */
    CHANGED,
    /** In the last commit but no longer on disk. */
    DELETED,
    /** In the last commit, but on disk a link, a folder or a file that may not be read. */
    UNREADABLE
  }

  /** Copies the bytes. */
  public HandEdit {
    Objects.requireNonNull(path, "path");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(committed, "committed");
    onDisk = onDisk.map(byte[]::clone);
  }

  @Override
  public Optional<byte[]> onDisk() {
    return onDisk.map(byte[]::clone);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HandEdit that
        && path.equals(that.path)
        && kind == that.kind
        && committed.equals(that.committed)
        && Arrays.equals(onDisk.orElse(null), that.onDisk.orElse(null));
  }

  @Override
  public int hashCode() {
    return Objects.hash(path, kind, committed, Arrays.hashCode(onDisk.orElse(null)));
  }
}
