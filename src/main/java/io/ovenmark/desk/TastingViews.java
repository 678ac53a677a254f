package io.ovenmark.desk;

import java.util.List;
import java.util.Map;

/** The records of answers about tastings; see {@link Views} for the manner of all of them. */
public final class TastingViews {
  private TastingViews() {}

  /**
   * The tastings of a formula, and what a new one can be made of.
   *
   * @param address what was asked about
   * @param formula short name
   * @param name name for people
   * @param tastings newest first
   * @param problems what is wrong with those that cannot be read
   * @param samples what can be tasted: revisions with their bakes, newest first
   * @param kinds what tasters can be asked to do
   * @param panels how large a difference a triangle of so many tasters shows
   */
  public record TastingList(
      String address,
      String formula,
      String name,
      List<TastingLine> tastings,
      List<Views.ProblemView> problems,
      List<SampleChoice> samples,
      List<KindView> kinds,
      List<PanelView> panels) {}

  /**
   * The tastings of all formulas.
   *
   * @param tastings by formula, newest first
   * @param problems what is wrong with those that cannot be read
   */
  public record AllTastings(List<TastingLine> tastings, List<Views.ProblemView> problems) {}

  /**
   * A tasting in a line.
   *
   * @param formula short name of the formula
   * @param id name of the tasting
   * @param kind its key
   * @param kindLabel the kind for people
   * @param question what is asked
   * @param time when it was set up
   * @param samples what is tasted, as text
   * @param sheets how many sheets
   * @param answered how many are answered
   * @param says what the answers tell, in a sentence
   */
  public record TastingLine(
      String formula,
      String id,
      String kind,
      String kindLabel,
      String question,
      String time,
      List<String> samples,
      int sheets,
      int answered,
      String says) {}

  /**
   * Something that can be tasted.
   *
   * @param sample as an order names it
   * @param words for people
   */
  public record SampleChoice(String sample, String words) {}

  /**
   * A kind of tasting.
   *
   * @param key its key
   * @param label its name
   * @param question what is asked when nothing else is written
   * @param leastSamples how many samples it needs
   * @param mostSamples how many it can have
   */
  public record KindView(
      String key, String label, String question, int leastSamples, int mostSamples) {}

  /**
   * What a triangle of so many tasters can show.
   *
   * @param tasters how many
   * @param leastCorrect right answers needed at α 0.05, or null when even all would not do
   * @param visibleShare share of people noticing that is seen four times in five, or null
   */
  public record PanelView(int tasters, Integer leastCorrect, Double visibleShare) {}

  /**
   * A tasting as its organiser sees it; which code stands for which sample is a question of its
   * own.
   *
   * @param formula short name of the formula
   * @param id name of the tasting
   * @param name the formula's name for people
   * @param kind its key
   * @param kindLabel the kind for people
   * @param question what is asked
   * @param time when it was set up
   * @param note the organiser's note, or null
   * @param seed what codes and orders were drawn from
   * @param samples what is tasted
   * @param attributes what is judged just-about-right
   * @param balancedAt how many sheets, or a multiple of them, make the orders balanced
   * @param remarks what else the organiser should know
   * @param sheets the sheets with their answers
   * @param results what the answers show
   * @param cautions what to mind before anything is served
   */
  public record TastingSheet(
      String formula,
      String id,
      String name,
      String kind,
      String kindLabel,
      String question,
      String time,
      String note,
      int seed,
      List<SampleView> samples,
      List<String> attributes,
      int balancedAt,
      List<String> remarks,
      List<SheetView> sheets,
      ResultsView results,
      List<String> cautions) {}

  /**
   * A sample.
   *
   * @param place from 1
   * @param text as a person writes it
   * @param address the revision
   * @param bake name of the bake, or null
   * @param piece letter of the piece, or null
   * @param note the revision's note, or null when it is not found
   */
  public record SampleView(
      int place, String text, String address, String bake, String piece, String note) {}

  /**
   * A sheet, without its samples.
   *
   * @param number from 1
   * @param initials who tastes, or null
   * @param codes in the order of tasting
   * @param answer what was answered, or null
   * @param version names the state of the answer; a correction carries it
   */
  public record SheetView(
      int number, String initials, List<String> codes, AnswerView answer, String version) {}

  /**
   * An answer.
   *
   * @param choice code of the odd or preferred sample, {@code none}, or null
   * @param ranking codes, the best first
   * @param scores what was said of each plate
   * @param note the taster's words, or null
   * @param given when it was sent, or null
   */
  public record AnswerView(
      String choice, List<String> ranking, List<ScoreView> scores, String note, String given) {}

  /**
   * What was said of a plate.
   *
   * @param code the plate
   * @param liking from 1 to 9, or null
   * @param attributes from −2 to 2 by name; those not said are left out
   */
  public record ScoreView(String code, Double liking, Map<String, Integer> attributes) {}

  /**
   * What a taster sees: nothing that tells the samples apart.
   *
   * @param formula short name of the formula that the tasting is kept under
   * @param id name of the tasting
   * @param number of the sheet
   * @param initials who tastes, or null
   * @param kind its key
   * @param question what is asked
   * @param codes in the order of tasting
   * @param attributes what is judged just-about-right
   * @param answered whether the answer is in; the organiser alone can correct it then
   * @param cautions what to mind before tasting
   */
  public record TasterSheet(
      String formula,
      String id,
      int number,
      String initials,
      String kind,
      String question,
      List<String> codes,
      List<String> attributes,
      boolean answered,
      List<String> cautions) {}

  /**
   * All sheets of a tasting, for printing.
   *
   * @param formula short name of the formula
   * @param id name of the tasting
   * @param kindLabel the kind for people
   * @param sheets in order
   */
  public record TasterSheets(
      String formula, String id, String kindLabel, List<TasterSheet> sheets) {}

  /**
   * Which sample has which code.
   *
   * @param formula short name of the formula
   * @param id name of the tasting
   * @param samples what is tasted
   * @param sheets the plates of each sheet
   */
  public record TastingKey(
      String formula, String id, List<SampleView> samples, List<KeySheet> sheets) {}

  /**
   * The plates of a sheet.
   *
   * @param number of the sheet
   * @param initials who tastes, or null
   * @param plates in the order of tasting
   */
  public record KeySheet(int number, String initials, List<PlateView> plates) {}

  /**
   * A plate.
   *
   * @param code its code
   * @param sample place of its sample, from 1
   */
  public record PlateView(String code, int sample) {}

  /**
   * What the answers show; the part of the tasting's kind is there, the others are null.
   *
   * @param sheets how many sheets
   * @param answered how many are answered
   * @param says what the answers tell
   * @param cannot what they cannot tell
   * @param triangle of a triangle
   * @param preference of a paired preference
   * @param ranking of a ranking
   * @param liking of scores of liking
   * @param attributes just-about-right, attribute by attribute, or null
   */
  public record ResultsView(
      int sheets,
      int answered,
      List<String> says,
      List<String> cannot,
      TriangleView triangle,
      PreferenceView preference,
      RankingView ranking,
      LikingView liking,
      List<AttributeView> attributes) {}

  /** A triangle: see {@link io.ovenmark.tasting.Triangle}; shares are of people, 0 to 1. */
  public record TriangleView(
      int answered,
      int correct,
      Double p,
      Integer leastCorrect,
      Double noticingShare,
      Double noticingShareLeast,
      Double noticingShareMost,
      Double visibleShare) {}

  /** A paired preference: see {@link io.ovenmark.tasting.Preference}. */
  public record PreferenceView(
      int first,
      int second,
      int neither,
      Double p,
      Integer leastMajority,
      Double firstShareLeast,
      Double firstShareMost,
      Double visibleShare) {}

  /** A ranking: see {@link io.ovenmark.tasting.Ranking}; figures are null without answers. */
  public record RankingView(
      int answered,
      List<Integer> rankSums,
      Double friedman,
      Integer degreesOfFreedom,
      Double p,
      String method,
      Double leastDifference,
      Double agreement,
      List<PairView> pairs) {}

  /** Two samples by place, the better first; interval null where there is none. */
  public record PairView(
      int better, int other, double difference, Double least, Double most, boolean apart) {}

  /** Liking: see {@link io.ovenmark.tasting.Liking}; blocks is null when they cannot be formed. */
  public record LikingView(List<LikedView> samples, BlocksView blocks) {}

  /**
   * The liking of one sample.
   *
   * @param sample its place
   * @param scored how many scored it
   * @param mean mean, or null
   * @param deviation standard deviation between tasters, or null
   * @param least lower end of the 95 % interval of the mean, or null
   * @param most upper end, or null
   * @param counts how many gave 1, 2 … 9
   * @param scores each taster's score
   */
  public record LikedView(
      int sample,
      int scored,
      Double mean,
      Double deviation,
      Double least,
      Double most,
      List<Integer> counts,
      List<TasterScore> scores) {}

  /** What one taster gave. */
  public record TasterScore(int sheet, double liking) {}

  /** The samples against each other: see {@link io.ovenmark.tasting.Blocks}. */
  public record BlocksView(
      int tasters,
      Double f,
      int samplesFreedom,
      int errorFreedom,
      double p,
      double leastDifference,
      double visibleDifference,
      List<PairView> pairs) {}

  /** An attribute of a sample: see {@link io.ovenmark.tasting.JustAboutRight}. */
  public record AttributeView(
      int sample,
      String attribute,
      List<Integer> counts,
      Double rightShare,
      SideView tooLittle,
      SideView tooMuch,
      Double directionP) {}

  /** Those who want a change in one direction; drops are in points of liking. */
  public record SideView(
      int tasters,
      Double share,
      Double drop,
      Double dropLeast,
      Double dropMost,
      Double weightedDrop,
      boolean counts) {}
}
