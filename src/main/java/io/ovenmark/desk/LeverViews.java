package io.ovenmark.desk;

import java.util.List;

/** The records of answers about levers; see {@link Views} for the manner of all of them. */
public final class LeverViews {
  private LeverViews() {}

  /**
   * What to change so that figures come to wanted values.
   *
   * @param address the state that was asked about
   * @param formula short name
   * @param variant name of the variant, or null
   * @param revision its number; for a file edited by hand the number that it would get
   * @param commit commit id, or null for a file edited by hand
   * @param name name for people
   * @param asked what was asked
   * @param granted whether all is so already
   * @param summary the answer in a sentence or two
   * @param answers changes that grant all wishes: single ones by how little they disturb, then the
   *     combined one
   * @param ways how less liquid and more of something dry differ, or null
   * @param impossible why it cannot be done, or null
   * @param remarks what else a person should know
   * @param cautions what to mind
   */
  public record LeverSheet(
      String address,
      String formula,
      String variant,
      int revision,
      String commit,
      String name,
      AskedView asked,
      boolean granted,
      String summary,
      List<AnswerView> answers,
      String ways,
      ImpossibleView impossible,
      List<String> remarks,
      List<String> cautions) {}

  /**
   * What was asked.
   *
   * @param wishes the wishes
   * @param keep ids of lines that must stay
   * @param limits limits on lines in words
   * @param batch {@code free} or {@code fixed}
   * @param pieces {@code fixed} or {@code free}
   * @param readableG what the scale can show; 0 for exact masses
   */
  public record AskedView(
      List<WishView> wishes,
      List<String> keep,
      List<String> limits,
      String batch,
      String pieces,
      double readableG) {}

  /**
   * A wish and how it stands.
   *
   * @param wish in words
   * @param typed the same as it can be asked for again, with masses in grams
   * @param figure name of the figure
   * @param per basis key, or null for a figure that is not stated for a basis
   * @param limit its bounds; the same twice for a value
   * @param now the figure now, or null when not exactly known
   * @param nowText the figure now in words
   * @param granted whether it is so already, whatever is unknown
   */
  public record WishView(
      String wish,
      String typed,
      String figure,
      String per,
      Views.LimitView limit,
      Double now,
      String nowText,
      boolean granted) {}

  /**
   * A change that grants all wishes.
   *
   * @param number by which it is asked for
   * @param kind {@code division}, {@code single} or {@code combined}
   * @param line id of the line that a single change moves, or null
   * @param sentence what it changes
   * @param also what else it moves, in words; empty when nothing
   * @param note a note for the revision that it becomes
   * @param disturbance how much it disturbs the rest; less is better
   * @param lines the lines that move
   * @param yield how the batch is divided afterwards, or null when that stays
   * @param wishes the wished figures, exactly and as weighed
   * @param moves every figure that moves
   * @param cost what it costs before and after
   * @param goalMet whether the formula's goal is met afterwards: true, false, or null for not known
   *     or no goal
   * @param cautions what to mind that need not be minded now
   */
  public record AnswerView(
      int number,
      String kind,
      String line,
      String sentence,
      String also,
      String note,
      double disturbance,
      List<LineMoveView> lines,
      YieldView yield,
      List<GrantView> wishes,
      List<MoveView> moves,
      CostViews.CostDifference cost,
      Boolean goalMet,
      List<String> cautions) {}

  /**
   * A line that moves.
   *
   * @param line its id
   * @param name its name for people
   * @param entered what the formula states
   * @param fromG its mass
   * @param toG the mass that it comes to, exactly
   * @param deltaG the difference
   * @param percent the difference in percent, or null when there was nothing
   * @param weigh what to weigh, which is what becomes the revision's amount
   */
  public record LineMoveView(
      String line,
      String name,
      String entered,
      double fromG,
      double toG,
      double deltaG,
      Double percent,
      String weigh) {}

  /**
   * How a batch is divided.
   *
   * @param pieces number of pieces, or null when the dough a piece is stated
   * @param doughPerPieceG dough a piece, or null when the pieces are stated
   */
  public record YieldView(Integer pieces, Double doughPerPieceG) {}

  /**
   * A wished figure after a change.
   *
   * @param wish in words
   * @param value with the exact masses, or null when not exactly known
   * @param weighed with what is weighed, or null likewise
   * @param weighedText the same in words
   * @param granted whether what is weighed grants it
   */
  public record GrantView(
      String wish, Double value, Double weighed, String weighedText, boolean granted) {}

  /**
   * A figure that moves.
   *
   * @param figure its name
   * @param label its name for people, with its basis
   * @param unit unit, may be empty
   * @param per basis key, or null for a figure that is not stated for a basis
   * @param from before, or null when not exactly known
   * @param to after, or null when not exactly known
   * @param delta the difference, or null
   * @param changeText before and after in words
   * @param deltaText the difference in words, with its sign
   */
  public record MoveView(
      String figure,
      String label,
      String unit,
      String per,
      Double from,
      Double to,
      Double delta,
      String changeText,
      String deltaText) {}

  /**
   * Why it cannot be done.
   *
   * @param because conditions that contradict each other, none of which could be left out
   * @param nearest how near one can come to each wish
   */
  public record ImpossibleView(List<String> because, List<NearestView> nearest) {}

  /**
   * How near one can come to a wish.
   *
   * @param wish in words
   * @param alone the nearest value within the limits, or null
   * @param together the nearest value with the other wishes granted, or null when those cannot be
   * @param sentence in words
   * @param instead a wish that can be granted in its place, as it is typed; null when it need not
   *     be given up, or when that alone does not help
   */
  public record NearestView(
      String wish, Double alone, Double together, String sentence, String instead) {}

  /**
   * What can be asked of a formula.
   *
   * @param address the state that is asked about
   * @param formula short name
   * @param variant name of the variant, or null
   * @param revision its number; for a file edited by hand the number that it would get
   * @param commit commit id, or null for a file edited by hand
   * @param name name for people
   * @param goal name of its goal, or null
   * @param wishes the limits of its goal, then its figures that are exactly known
   * @param lines its lines
   * @param batch {@code free} or {@code fixed} unless something else is asked for
   * @param pieces {@code fixed} or {@code free} likewise
   * @param cautions what to mind
   */
  public record LeverStart(
      String address,
      String formula,
      String variant,
      int revision,
      String commit,
      String name,
      String goal,
      List<WishOffer> wishes,
      List<LineOffer> lines,
      String batch,
      String pieces,
      List<String> cautions) {
    /** Copies the lists. */
    public LeverStart {
      wishes = List.copyOf(wishes);
      lines = List.copyOf(lines);
    }
  }

  /**
   * A wish that can be asked for as it is, or changed.
   *
   * @param wish as it is typed: a limit of the goal, or a figure with the value that it has
   * @param figure name of the figure for people, with its basis
   * @param nowText the figure now in words
   * @param fromGoal whether the goal says so
   * @param granted whether it is so already, whatever is unknown
   */
  public record WishOffer(
      String wish, String figure, String nowText, boolean fromGoal, boolean granted) {}

  /**
   * A line of the formula.
   *
   * @param line its id
   * @param name its name for people
   * @param entered what the formula states
   * @param grams its mass, or null when it is not known
   */
  public record LineOffer(String line, String name, String entered, Double grams) {}
}
