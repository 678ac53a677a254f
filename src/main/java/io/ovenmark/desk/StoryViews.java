package io.ovenmark.desk;

import java.util.List;

/** What programs see of stories; see {@link Views} for how it is written. */
public final class StoryViews {
  private StoryViews() {}

  /**
   * The story of a line of history.
   *
   * @param address the line, such as {@code seeded-lupin-bun/egg-free}
   * @param name the formula's name
   * @param kept whether these very choices are what the notebook keeps
   * @param base what a change of it is based on, or null when none is kept
   * @param proposed whether the steps are those that are proposed, none having been chosen
   * @param plan what was chosen
   * @param title its title
   * @param span how many revisions and bakes, and from when to when
   * @param steps what is told
   * @param arcs the ways of the key figures
   * @param revisions what could be told, oldest first
   * @param figures the figures whose way could be drawn
   * @param photos the pictures that could be chosen
   * @param card address of the revision whose card ends it
   * @param cautions what the card says to mind
   * @param markdown the story as Markdown, which names the photos that lie beside it
   * @param pictures the pictures for a video
   */
  public record StorySheet(
      String address,
      String name,
      boolean kept,
      String base,
      boolean proposed,
      PlanView plan,
      String title,
      String span,
      List<StepView> steps,
      List<ArcView> arcs,
      List<Candidate> revisions,
      List<TrendViews.Choice> figures,
      List<CardViews.PhotoChoice> photos,
      String card,
      List<String> cautions,
      String markdown,
      List<PictureView> pictures) {}

  /**
   * What was chosen; null where nothing was.
   *
   * @param title the title
   * @param by who tells it
   * @param opening the words before the first step
   * @param closing the words after the last step
   * @param figures the figures whose way is drawn
   * @param steps what is told
   */
  public record PlanView(
      String title,
      String by,
      String opening,
      String closing,
      List<String> figures,
      List<StoryOrder.StepOrder> steps) {}

  /**
   * A step.
   *
   * @param revision its number along the line
   * @param address the revision
   * @param date its day
   * @param heading its heading
   * @param words what the author says, or null
   * @param changed what changed since the step before
   * @param credit what may be credited to what, or null
   * @param seen what was measured, seen and tasted
   * @param move the figure that moved, or null
   * @param moves the figures of which one could be shown to have moved
   * @param photo path of its photo, or null
   * @param alternative what the photo shows, or null
   */
  public record StepView(
      int revision,
      String address,
      String date,
      String heading,
      String words,
      List<String> changed,
      String credit,
      List<String> seen,
      MoveView move,
      List<MoveView> moves,
      String photo,
      String alternative) {}

  /**
   * A figure that moved.
   *
   * @param figure its key
   * @param label its name
   * @param unit its unit, may be empty
   * @param from before
   * @param to after
   * @param fromText before in words
   * @param toText after in words
   * @param differenceText the difference in words
   * @param limitTurned whether a limit of the goal was newly met or newly broken by it
   */
  public record MoveView(
      String figure,
      String label,
      String unit,
      double from,
      double to,
      String fromText,
      String toText,
      String differenceText,
      boolean limitTurned) {}

  /**
   * The way of a figure.
   *
   * @param figure its key
   * @param label its name
   * @param unit its unit, may be empty
   * @param limit what the goal demands of it, or null
   * @param points a point for each revision from the first step to the last
   */
  public record ArcView(
      String figure, String label, String unit, Views.LimitView limit, List<ArcPoint> points) {}

  /**
   * A point of a way.
   *
   * @param revision number of the revision
   * @param told whether the story tells of it
   * @param value the figure, or null when it is not exactly known
   * @param text the figure in words
   */
  public record ArcPoint(int revision, boolean told, Double value, String text) {}

  /**
   * A revision that could be told of.
   *
   * @param revision its number along the line
   * @param address the revision
   * @param date its day
   * @param note its note
   * @param bakes how many bakes it has
   * @param taught what its bakes taught; null when nothing, or when it was not baked
   * @param proposed whether it is proposed
   * @param readable whether its figures can be worked out; else it cannot be told of
   */
  public record Candidate(
      int revision,
      String address,
      String date,
      String note,
      int bakes,
      String taught,
      boolean proposed,
      boolean readable) {}

  /**
   * A picture for a video.
   *
   * @param name its file's name
   * @param alternative what it shows, for whoever does not see it
   */
  public record PictureView(String name, String alternative) {}
}
