package io.ovenmark.desk;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Inspection;
import io.ovenmark.notebook.NotebookFile;
import io.ovenmark.notebook.store.HandEdit;
import io.ovenmark.notebook.store.StoreException;
import java.util.Optional;

/** Checks the files on disk that differ from the newest commit. */
final class CheckDisk {
  static final String STRAY = "The file is not read, because of its name or place.";
  static final String STRAY_HINT =
      "Name it as the others in its folder are, in lower-case letters a-z, digits and hyphens, or"
          + " move it elsewhere.";
  private static final String COMMIT =
      "Commit it with: git add, git commit; or put it back with: git restore ";

  private final Inspection inspection;
  private final CheckLog log;

  CheckDisk(Inspection inspection, CheckLog log) {
    this.inspection = inspection;
    this.log = log;
  }

  void run() {
    try {
      inspection.handEdits().forEach(this::edit);
    } catch (StoreException e) {
      log.wrong(
          e.where(),
          Optional.empty(),
          "The files on disk cannot be compared with the notebook: " + e.getMessage(),
          "Mend the Git data first, from a clone or a backup.");
    }
  }

  private void edit(HandEdit edit) {
    switch (edit.kind()) {
      case DELETED ->
          log.notice(
              edit.path(),
              Optional.empty(),
              "The file was deleted on disk, but the notebook still has it.",
              "Put it back with: git restore " + edit.path() + "; or commit that it is gone.");
      case UNREADABLE ->
          log.wrong(
              edit.path(),
              Optional.empty(),
              "On disk there is a link, a folder or a file that may not be read in its place.",
              "Move that away and put the file back with: git restore " + edit.path());
      case ADDED, CHANGED -> edit.onDisk().ifPresent(bytes -> content(edit, bytes));
    }
  }

  private void content(HandEdit edit, byte[] bytes) {
    try {
      told(edit, NotebookFile.read(edit.path(), bytes));
    } catch (UnreadableException e) {
      log.unreadable(e.problems(), Optional.empty());
    }
  }

  private void told(HandEdit edit, NotebookFile file) {
    String path = edit.path();
    boolean added = edit.kind() == HandEdit.Kind.ADDED;
    if (file instanceof NotebookFile.StrayFile) {
      log.wrong(path, Optional.empty(), STRAY, STRAY_HINT);
    } else if (file instanceof NotebookFile.FormulaFile formula) {
      log.notice(
          path,
          Optional.empty(),
          "Edited by hand, not yet a revision.",
          "Commit it with: ovenmark revise " + formula.slug() + "; or put it back with: git restore "
              + path);
    } else if (file instanceof NotebookFile.PhotoFile && added) {
      log.notice(
          path,
          Optional.empty(),
          "The picture is on disk only and belongs to no bake.",
          "Add it with: ovenmark photo add; or delete it.");
    } else if (file instanceof NotebookFile.OtherFile && added) {
      log.notice(
          path,
          Optional.empty(),
          "The file lies in the notebook's folder and is no part of the notebook.",
          "Leave it, list it in .gitignore, or move it elsewhere.");
    } else {
      log.notice(
          path, Optional.empty(), "Edited by hand, not yet committed.", COMMIT + path);
    }
  }
}
