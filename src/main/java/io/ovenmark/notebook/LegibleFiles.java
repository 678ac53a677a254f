package io.ovenmark.notebook;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.store.BlobId;
import java.util.HashSet;
import java.util.Set;
import java.util.SortedMap;

/** Refuses what comes from elsewhere and cannot be read, by the file's name. */
public final class LegibleFiles {
  private final Notebook source;
  private final Set<BlobId> looked = new HashSet<>();

  LegibleFiles(Notebook source) {
    this.source = source;
  }

  /** The newest revision of a formula. */
  Formula newest(String slug) {
    Revision revision = source.newest(Address.parse(slug));
    try {
      return FormulaCodec.read(revision.path(), source.store().read(revision.blob()));
    } catch (UnreadableException damaged) {
      throw refusal(revision.path(), damaged);
    }
  }

  /** All files as they are now, except pictures, which are left out where they cannot be read. */
  void check(SortedMap<String, BlobId> files) {
    files.forEach(
        (path, blob) -> {
          if (!Layout.isPhoto(path) && looked.add(blob)) {
            try {
              NotebookFile.read(path, source.store().read(blob));
            } catch (UnreadableException damaged) {
              throw refusal(path, damaged);
            }
          }
        });
  }

  /**
   * The refusal of another notebook's file that cannot be read.
   *
   * @param damaged what is wrong with it
   * @return one sentence that names the file
   */
  public static Refusal refusal(UnreadableException damaged) {
    return refusal(damaged.problems().get(0).file(), damaged);
  }

  /** The refusal of a file. */
  static Refusal refusal(String path, UnreadableException damaged) {
    return new Refusal(
        Refusal.Reason.INVALID,
        path,
        "It cannot be taken in, for " + path + " in it cannot be read: "
            + damaged.problems().get(0).message(),
        "Ask whoever sent it to put the file right: ovenmark check says what is wrong where.");
  }
}
