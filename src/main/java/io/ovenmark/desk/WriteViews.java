package io.ovenmark.desk;

import com.fasterxml.jackson.annotation.JsonRawValue;
import java.util.List;

/** The records of what was committed; see {@link Views} for the manner of all of them. */
public final class WriteViews {
  private WriteViews() {}

  /**
   * A notebook that was made.
   *
   * @param folder where it is
   * @param title its title
   */
  public record NotebookMade(String folder, String title) {}

  /**
   * A revision in a few words.
   *
   * @param address its address
   * @param formula short name
   * @param variant name of the variant, or null
   * @param revision its number
   * @param commit commit id
   * @param blob id of its content
   * @param time when
   * @param author who
   * @param note its note
   */
  public record RevisionView(
      String address,
      String formula,
      String variant,
      int revision,
      String commit,
      String blob,
      String time,
      String author,
      String note) {}

  /**
   * The beginning of a formula that copies a revision; nothing is written.
   *
   * @param from the revision
   * @param name its name
   * @param formula the formula's own JSON, of the same name, with the copied formula as its
   *     reference
   */
  public record Beginning(RevisionView from, String name, @JsonRawValue String formula) {}

  /**
   * A formula that was committed, or why it was not.
   *
   * @param outcome {@code committed}, {@code unchanged} (the newest revision says the same already)
   *     or {@code conflict} (nothing was committed, a person must choose)
   * @param revision the new revision; when nothing was committed the newest one
   * @param base the revision that was edited, or null for a new formula
   * @param changes what it changes against the revision before; empty when there is none
   * @param comparison the revision before against the new one, or null when there is none or
   *     nothing was committed
   * @param mergedWith revisions of others that came in between and are merged in, oldest first
   * @param conflicts what both sides changed, {@code ours} being what was to be committed and
   *     {@code theirs} the newest revision
   * @param foodsAdded short names of foods copied from the built-in table into the pantry
   * @param leftAsEditedByHand files that stay on disk as somebody edited them
   * @param remarks sentences about what else a person should know
   */
  public record RevisionWritten(
      String outcome,
      RevisionView revision,
      RevisionView base,
      List<Views.ChangeView> changes,
      ComparisonViews.ComparisonView comparison,
      List<RevisionView> mergedWith,
      List<ConflictView> conflicts,
      List<String> foodsAdded,
      List<String> leftAsEditedByHand,
      List<String> remarks) {}

  /**
   * What taking an earlier revision back would do; nothing is written.
   *
   * @param revision the earlier revision
   * @param newest the newest revision of the line of history that would receive it
   * @param changes what that changes against the newest; empty when the two say the same or the
   *     newest cannot be read
   * @param same whether the newest revision says the same already
   * @param note a note that may be taken for it
   */
  public record RestorePreview(
      RevisionView revision,
      RevisionView newest,
      List<Views.ChangeView> changes,
      boolean same,
      String note) {}

  /**
   * One place where two sides made different things of the same.
   *
   * @param field which field, such as {@code lines.water.amount}
   * @param sentence what happened
   * @param base what stood there before both, or null
   * @param ours what the first side made of it, or null when it has nothing there
   * @param theirs what the second side made of it, or null when it has nothing there
   */
  public record ConflictView(
      String field, String sentence, String base, String ours, String theirs) {}

  /**
   * A variant that was branched.
   *
   * @param revision its newest revision
   * @param from the revision it was branched from
   * @param goal its goal and how it stands, or null
   * @param remarks sentences about what else a person should know
   */
  public record VariantMade(
      RevisionView revision, RevisionView from, Views.GoalView goal, List<String> remarks) {}

  /**
   * The main line's improvements carried into a variant, or what that would give.
   *
   * @param outcome {@code carried}, {@code nothing} (the variant holds everything already), {@code
   *     preview} (nothing was written) or {@code conflict} (nothing was written, a person must
   *     choose)
   * @param revision the variant's newest revision
   * @param from the newest revision of the main line
   * @param changes what changes in the variant's formula; where both sides contradict each other
   *     the variant's version is kept in a preview
   * @param conflicts what both sides changed, {@code ours} being the variant and {@code theirs} the
   *     main line
   * @param notes what to know although it needs no choice
   * @param comparison the variant before against after, or null when nothing was written or the
   *     formula stayed the same
   * @param keptAsInVariant files that both sides had changed and that stay as the variant has them
   * @param goal the variant's goal and how it stands afterwards, or null when it has none or its
   *     foods cannot be read
   */
  public record CarryWritten(
      String outcome,
      RevisionView revision,
      RevisionView from,
      List<Views.ChangeView> changes,
      List<ConflictView> conflicts,
      List<String> notes,
      ComparisonViews.ComparisonView comparison,
      List<String> keptAsInVariant,
      Views.GoalView goal) {}

  /**
   * A revision that was published, or would be.
   *
   * @param revision the revision
   * @param tag name of the Git tag, or null as long as nothing is published
   * @param note what was published, or null likewise
   * @param goal its goal and how it stands, or null
   * @param remarks sentences about what else a person should know
   * @param cautions what to mind when it is baked and eaten
   */
  public record Published(
      RevisionView revision,
      String tag,
      String note,
      Views.GoalView goal,
      List<String> remarks,
      List<String> cautions) {}

  /**
   * A change that was taken back.
   *
   * @param line the branch it was on: {@code main} or a variant's address
   * @param undone the note of the change that was taken back
   * @param commit the commit that takes it back
   * @param formulas what it did to formulas
   */
  public record Undone(String line, String undone, String commit, List<UndoneFormula> formulas) {}

  /**
   * The last change, which can be taken back; nothing is written.
   *
   * @param line the branch it is on: {@code main} or a variant's address
   * @param commit the commit that made it
   * @param note its note
   * @param author who made it
   * @param time when
   * @param formulas what taking it back would do to formulas
   * @param others what it would do to anything else, in sentences
   */
  public record UndoPreview(
      String line,
      String commit,
      String note,
      String author,
      String time,
      List<UndoneFormula> formulas,
      List<String> others) {}

  /**
   * What taking a change back did to a formula, or would do.
   *
   * @param formula short name
   * @param address its newest revision now (in a preview its line of history), or null when it is
   *     gone
   * @param changes what changed
   */
  public record UndoneFormula(String formula, String address, List<Views.ChangeView> changes) {}
}
