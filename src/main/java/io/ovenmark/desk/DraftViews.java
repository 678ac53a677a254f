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
}
