package io.ovenmark.desk;

import java.util.List;

/** The records of drafts of formulas; see {@link Views} for the manner of all of them. */
public final class DraftViews {
  private DraftViews() {}

  /**
   * All drafts of formulas.
   *
   * @param drafts those kept last first
   */
  public record DraftList(List<DraftEntry> drafts) {}

  /**
   * A draft in the list.
   *
   * @param id its name, as in the address of its page
   * @param version how often it was kept
   * @param time when it was kept last
   * @param author by whom
   * @param name the formula's name as typed so far; may be empty
   * @param formula short name of the formula that it changes, or null for a new one
   * @param variant the variant that it changes, or null
   * @param base address of the revision that it began from, or null for a new formula
   */
  public record DraftEntry(
      String id,
      long version,
      String time,
      String author,
      String name,
      String formula,
      String variant,
      String base) {}

  /**
   * A draft with all that it holds.
   *
   * @param id its name
   * @param version the version that the next keeping must name
   * @param time when it was kept last
   * @param author by whom
   * @param base the revision that it began from, or null for a new formula
   * @param shortName what a new formula shall be filed under, as typed; may be empty
   * @param note the note for saving it, as typed; may be empty
   * @param document the formula as JSON, in which any text may be half typed
   * @param saved the revision that it was saved as already, when the program ended right after, or
   *     null
   * @param newer revisions of the same line of history that came after the base, oldest first
   */
  public record DraftView(
      String id,
      long version,
      String time,
      String author,
      WriteViews.RevisionView base,
      String shortName,
      String note,
      JsonText document,
      WriteViews.RevisionView saved,
      List<WriteViews.RevisionView> newer) {}

  /**
   * That a draft is kept.
   *
   * @param id its name
   * @param version the version that the next keeping must name
   * @param time when
   */
  public record DraftKept(String id, long version, String time) {}

  /**
   * A draft worked out as far as it can be read.
   *
   * @param sheet what {@link Views.FormulaSheet} says of a revision; without address, time and note
   * @param places for each line of the sheet its index in the document; blank lines have none
   * @param bowl mass of the lines that are in the bowl, and of those that are not
   * @param comparison the base against the draft, or null for a new formula
   * @param changes what it changes against the base, in words; empty when it changes nothing
   * @param proposedNote a note that says what changes
   * @param proposedName what a new formula would be filed under, or null when it has a base
   * @param problems what cannot be read or saved as it stands; {@code where} is the path of the
   *     field in the document, such as {@code lines.3.amount}
   * @param remarks sentences about what else a person should know
   */
  public record DraftSheet(
      Views.FormulaSheet sheet,
      List<Integer> places,
      FigureSet bowl,
      ComparisonViews.ComparisonView comparison,
      List<Views.ChangeView> changes,
      String proposedNote,
      String proposedName,
      List<Views.ProblemView> problems,
      List<String> remarks) {}

  /**
   * How two documents of one draft differ.
   *
   * @param changes from the one to the other in words; empty when they differ in nothing, or only
   *     in what cannot be read yet
   */
  public record DraftDifference(List<Views.ChangeView> changes) {}

  /**
   * How a draft stands to the notebook, asked now and then.
   *
   * @param version how often it was kept
   * @param author who kept it last
   * @param newer revisions of the same line of history that came after the base, oldest first
   */
  public record DraftState(
      long version, String author, List<WriteViews.RevisionView> newer) {}

  /**
   * What must be written into a document so that a wish comes true.
   *
   * @param amounts the lines that change
   * @param pieces how many pieces the yield must state, or null to leave it
   * @param doughPerPieceG which dough mass a piece the yield must state, or null to leave it
   */
  public record Reweighed(List<NewAmount> amounts, Integer pieces, Double doughPerPieceG) {}

  /**
   * A line's new amount.
   *
   * @param place index of the line in the document
   * @param amount the amount as it is written
   */
  public record NewAmount(int place, String amount) {}
}
