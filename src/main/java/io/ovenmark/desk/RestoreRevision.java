package io.ovenmark.desk;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.ReviseOutcome;
import io.ovenmark.notebook.Revision;
import java.util.List;

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
    if (!earlier.formula().equals(into.formula())) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          into.toString(),
          "A revision of " + earlier.formula() + " cannot be restored into " + into.formula() + ".",
          "To begin a formula with another's content use: ovenmark new NAME --from " + earlier);
    }
    Revision wanted = desk.notebook().revision(earlier);
    Address line = WriteParts.line(into);
    ReviseOutcome outcome = new FormulaWriter(desk.notebook()).restore(wanted, line, note, by);
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
}
