package io.ovenmark.desk;

import java.util.List;

/** Parts of a timeline, for pages that show much of it; see {@link Views}. */
public final class TimelineViews {
  private TimelineViews() {}

  /**
   * A timeline without what has to be worked out for each revision.
   *
   * @param formula short name
   * @param name name for people
   * @param variant the variant asked for, or null for all lines of history
   * @param goal the goal of the newest revision, or null
   * @param figures those of the newest revision; null when it cannot be worked out
   * @param revisions newest first
   * @param variants the variants
   * @param editedByHand whether the file on disk differs from the newest revision
   * @param problems what is wrong with bakes that cannot be read; mostly empty
   */
  public record SpineView(
      String formula,
      String name,
      String variant,
      Views.GoalView goal,
      FigureSet figures,
      List<SpineEntry> revisions,
      List<Views.VariantEntry> variants,
      boolean editedByHand,
      List<Views.ProblemView> problems) {}

  /**
   * What a commit says of a revision; members are named as in {@link Views.TimelineEntry}.
   *
   * @param address its address
   * @param revision its number
   * @param variant name of the variant, or null
   * @param commit commit id
   * @param blob id of its content
   * @param time when
   * @param author who
   * @param note first line of the commit's message
   * @param details the rest, or null
   * @param merge whether it joins two lines of history
   * @param restores address of the revision whose content was taken back, or null
   * @param carries address of the revision of the main line that was carried over, or null
   * @param published what it was published as, or null
   * @param bakeCount how many bakes of exactly this content there are
   */
  public record SpineEntry(
      String address,
      int revision,
      String variant,
      String commit,
      String blob,
      String time,
      String author,
      String note,
      String details,
      boolean merge,
      String restores,
      String carries,
      String published,
      int bakeCount) {}

  /**
   * Some rows of a timeline.
   *
   * @param rows in the order in which they were asked for
   */
  public record Rows(List<Views.TimelineEntry> rows) {}
}
