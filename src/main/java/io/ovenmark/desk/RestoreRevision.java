package io.ovenmark.desk;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Moved;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.ReviseOutcome;
import io.ovenmark.notebook.Revision;
import java.util.List;
import java.util.Optional;

/**
 * Takes the content of an earlier revision back as the newest one; the revisions in between stay.
 *
 * <pre>{@code
 * new RestoreRevision(desk).call(earlier, line, "Back to the bun without allulose", by);
 * }</pre>
 */
public final class RestoreRevision {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public RestoreRevision(Desk desk) {
    this.desk = desk;
  }

  /**
   * What restoring would do.
   *
   * @param earlier the revision whose content is wanted
   * @param into the line of history that would receive it, of the same formula
   * @return what changes against its newest revision
   * @throws Refusal when the two are of different formulas
   */
  public WriteViews.RestorePreview preview(Address earlier, Address into) {
    requireSameFormula(earlier, into);
    Notebook notebook = desk.notebook();
    Revision wanted = notebook.revision(earlier);
    Address line = WriteParts.line(into);
    Revision newest = notebook.newest(line);
    List<Views.ChangeView> changes =
        desk.readable(newest)
            .map(
                now ->
                    WriteParts.changes(
                        desk.units(),
                        now,
                        notebook.at(newest.commit()),
                        notebook.formula(wanted),
                        notebook.at(wanted.commit())))
            .orElse(List.of());
    return new WriteViews.RestorePreview(
        WriteParts.revision(wanted),
        WriteParts.revision(newest),
        changes,
        wanted.blob().equals(newest.blob()),
        note(earlier));
  }

  /**
   * A note for whoever does not want to say why.
   *
   * @param earlier the revision whose content is wanted
   * @return one line
   */
  public String note(Address earlier) {
    return "Back to " + desk.notebook().revision(earlier).address();
  }

  /**
   * Restores.
   *
   * @param earlier the revision whose content is wanted
   * @param into the line of history that receives it, of the same formula
   * @param note why, not blank
   * @param by who and when
   * @return committed, unchanged, or a conflict when somebody committed at the same moment
   * @throws Refusal when the two are of different formulas
   */
  public WriteViews.RevisionWritten call(Address earlier, Address into, String note, By by) {
    return call(earlier, into, note, Optional.empty(), by);
  }

  /**
   * Restores, as decided by looking at the newest revision.
   *
   * @param earlier the revision whose content is wanted
   * @param into the line of history that receives it, of the same formula
   * @param note why, not blank
   * @param seen commit id of the newest revision as it was seen; empty when that does not matter
   * @param by who and when
   * @return committed or unchanged; without {@code seen} also a conflict when somebody committed at
   *     the same moment
   * @throws Refusal when the two are of different formulas, or there is a newer revision than the
   *     one seen
   */
  public WriteViews.RevisionWritten call(
      Address earlier, Address into, String note, Optional<String> seen, By by) {
    requireSameFormula(earlier, into);
    Revision wanted = desk.notebook().revision(earlier);
    Address line = WriteParts.line(into);
    FormulaWriter writer = new FormulaWriter(desk.notebook());
    ReviseOutcome outcome =
        seen.isEmpty()
            ? writer.restore(wanted, line, note, by)
            : writer.restoreInto(wanted, Moved.checked(desk.notebook(), line, seen), note, by);
    if (outcome instanceof ReviseOutcome.SameAsLatest same) {
      return ReviseFormula.unsaved("unchanged", wanted, same.latest(), List.of(), List.of());
    }
    if (outcome instanceof ReviseOutcome.Diverged diverged) {
      return ReviseFormula.unsaved(
          "conflict",
          wanted,
          diverged.latest(),
          WriteParts.conflicts(diverged.merge().conflicts()),
          diverged.merge().notes());
    }
    ReviseOutcome.Saved saved = (ReviseOutcome.Saved) outcome;
    WriteParts.Changed changed = WriteParts.changed(desk, saved.revision());
    return new WriteViews.RevisionWritten(
        "committed",
        WriteParts.revision(saved.revision()),
        WriteParts.revision(wanted),
        changed.changes(),
        changed.comparison(),
        List.of(),
        List.of(),
        saved.foodsAdded(),
        saved.leftAsEditedByHand(),
        changed.remarks());
  }

  private static void requireSameFormula(Address earlier, Address into) {
    if (!earlier.formula().equals(into.formula())) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          into.toString(),
          "A revision of " + earlier.formula() + " cannot be restored into " + into.formula() + ".",
          "To begin a formula with another's content use: ovenmark new NAME --from " + earlier);
    }
  }
}
