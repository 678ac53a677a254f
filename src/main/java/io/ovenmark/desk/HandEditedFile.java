package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.HandEdit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A formula's file that was edited by hand, as it was when it was read.
 *
 * @param path its path in the notebook
 * @param place where it is
 * @param bytes what it held
 * @param modified when it was last written
 */
public record HandEditedFile(String path, Path place, byte[] bytes, Instant modified) {
  /** Copies the bytes. */
  public HandEditedFile {
    requireNonNull(path, "path");
    requireNonNull(place, "place");
    bytes = bytes.clone();
    requireNonNull(modified, "modified");
  }

  @Override
  public byte[] bytes() {
    return bytes.clone();
  }

  /** Finds the file of a formula; empty when it was not edited. */
  static Optional<HandEditedFile> of(Notebook notebook, String formula) {
    HandEdit edit = notebook.handEdit(formula).orElse(null);
    if (edit == null) {
      return Optional.empty();
    }
    if (edit.onDisk().isEmpty()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          edit.path(),
          "The file cannot be read, or was deleted on disk.",
          "Bring it back with: git checkout -- " + edit.path());
    }
    Path place = notebook.folder().resolve(edit.path());
    Instant modified;
    try {
      modified = Files.getLastModifiedTime(place).toInstant();
    } catch (IOException e) {
      modified = Instant.MAX;
    }
    return Optional.of(new HandEditedFile(edit.path(), place, edit.onDisk().get(), modified));
  }

  /**
   * The revision that the edit most likely began with: the newest one that was there when the file
   * was last written.
   *
   * @param revisions of the file's line of history, oldest first, at least one
   */
  Revision base(List<Revision> revisions) {
    Revision newest = revisions.get(revisions.size() - 1);
    if (!newest.time().toInstant().isAfter(modified)) {
      return newest;
    }
    return revisions.stream()
        .filter(each -> !each.time().toInstant().isAfter(modified))
        .reduce((first, second) -> second)
        .orElse(newest);
  }

  /**
   * Brings the file to what was committed, once its content is safe in a revision, unless somebody
   * wrote to it meanwhile.
   *
   * @return whether the file is as committed now
   */
  boolean settle(byte[] committed) {
    Path part = place.resolveSibling("." + place.getFileName() + ".part");
    try {
      if (!Arrays.equals(Files.readAllBytes(place), bytes)) {
        return false;
      }
      if (!Arrays.equals(bytes, committed)) {
        Files.write(part, committed);
        Files.move(part, place, StandardCopyOption.ATOMIC_MOVE);
      }
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HandEditedFile that
        && path.equals(that.path)
        && place.equals(that.place)
        && Arrays.equals(bytes, that.bytes)
        && modified.equals(that.modified);
  }

  @Override
  public int hashCode() {
    return path.hashCode() * 31 + Arrays.hashCode(bytes);
  }

  @Override
  public String toString() {
    return path;
  }
}
