package io.ovenmark.desk;

import java.util.List;
import java.util.Map;

/**
 * The records of answers, as programs see them in {@code --json} and from the web API. Member names
 * become snake case; units stand in the names; {@code null} is unknown or absent; times are ISO
 * 8601 with offset; addresses are canonical.
 */
public final class Views {
  private Views() {}

  /**
   * All formulas of a notebook.
   *
   * @param title the notebook's title
   * @param folder where it is
   * @param temperatureUnit {@code °C} or {@code °F}, for showing
   * @param massUnit {@code g} or {@code oz}, for showing
   * @param formulas the formulas by short name
   */
  public record FormulaList(
      String title,
      String folder,
      String temperatureUnit,
      String massUnit,
      List<FormulaEntry> formulas) {}

  /**
   * One formula in the list.
   *
   * @param formula short name
   * @param name name for people; the short name when the file cannot be read
   * @param goal short name of its goal, or null
   * @param goalName name of its goal, or null
   * @param goalMet whether the goal is met: true, false, or null for not known or no goal
   * @param reference short name of the conventional formula, or null
   * @param revisions number of the newest revision
   * @param latest address of the newest revision
   * @param time when that was committed
   * @param note its note
   * @param ratios liquid ratio and dough moisture, or null likewise
   * @param perPiece macros of a piece, or null when the formula or its foods cannot be read
   * @param bakes how many bakes there are that can be read
   * @param variants its variants
   * @param editedByHand whether the file on disk differs from the newest revision
   * @param problems what is wrong with the formula, with what its figures rest on or with its
   *     bakes; mostly empty
   */
  public record FormulaEntry(
      String formula,
      String name,
      String goal,
      String goalName,
      Boolean goalMet,
      String reference,
      int revisions,
      String latest,
      String time,
      String note,
      FigureSet ratios,
      FigureSet perPiece,
      int bakes,
      List<VariantEntry> variants,
      boolean editedByHand,
      List<ProblemView> problems) {}

  /**
   * One variant in the list.
   *
   * @param variant its name
   * @param address its newest revision
   * @param fork number of the revision at which it left the main line
   * @param revisions number of its newest revision
   * @param goal short name of its goal, or null
   * @param goalName name of its goal, or null
   * @param goalMet whether the goal is met: true, false, or null
   * @param time when its newest revision was committed
   * @param note that revision's note
   */
  public record VariantEntry(
      String variant,
      String address,
      int fork,
      int revisions,
      String goal,
      String goalName,
      Boolean goalMet,
      String time,
      String note) {}

  /**
   * What is wrong with a file.
   *
   * @param where file, line, column, field
   * @param message one sentence
   * @param hint what to do
   */
  public record ProblemView(String where, String message, String hint) {}

  /**
   * A revision worked out.
   *
   * @param address its address
   * @param formula short name
   * @param variant name of the variant, or null
   * @param revision its number; for a file edited by hand the number that it would get
   * @param foodsChangedSince whether its foods, its goal or the settings changed since that
   *     revision and the figures are those of the changed ones; then the address is not the
   *     numbered one
   * @param commit commit id, or null for a file edited by hand
   * @param blob id of the formula's content
   * @param time when it was committed, or null
   * @param author who did, or null
   * @param note first line of the commit's message, or null
   * @param details the rest, or null
   * @param published when and as what it was published, or null
   * @param name name for people
   * @param description a sentence or two, or null
   * @param reference short name of the conventional formula, or null
   * @param yield pieces, dough, mass a piece before and after the oven
   * @param handlingLossPercent as stated, or null
   * @param bakedPieces how many weighed pieces the baked mass rests on
   * @param ratios liquid ratio and dough moisture
   * @param lines the ingredients
   * @param method the steps
   * @param namedUnweighed foods that the steps name although no line weighs them
   * @param bake the stages in the oven
   * @param storage how to keep what was baked, or null
   * @param macros for each basis
   * @param energyRule how energy was worked out
   * @param netCarbohydrateRule how net carbohydrate was worked out
   * @param unknowns what could not be known
   * @param goal the goal and how it stands, or null
   * @param allergens what the foods contain
   * @param allergensUnknownIn foods of which that is not known
   * @param cautions what to mind
   * @param bakes the bakes of exactly this content
   * @param cost what a batch and a piece cost
   */
  public record FormulaSheet(
      String address,
      String formula,
      String variant,
      int revision,
      boolean foodsChangedSince,
      String commit,
      String blob,
      String time,
      String author,
      String note,
      String details,
      String published,
      String name,
      String description,
      String reference,
      FigureSet yield,
      Double handlingLossPercent,
      int bakedPieces,
      FigureSet ratios,
      List<LineView> lines,
      List<String> method,
      List<UnweighedView> namedUnweighed,
      List<StageView> bake,
      String storage,
      Map<String, FigureSet> macros,
      String energyRule,
      String netCarbohydrateRule,
      List<UnknownView> unknowns,
      GoalView goal,
      List<String> allergens,
      List<String> allergensUnknownIn,
      List<String> cautions,
      List<BakeView> bakes,
      CostViews.CostView cost) {}

  /**
   * A line worked out.
   *
   * @param id its id
   * @param food slug of the food
   * @param name name of the food
   * @param kind kind of the food, or null when the pantry has no such food
   * @param entered the amount as entered
   * @param grams its mass, or null when unresolved
   * @param approximate whether the mass comes from a volume or a household measure
   * @param how what the mass comes from, or why there is none
   * @param flour whether it counts as flour
   * @param note its note, or null
   * @param percentOfBatch share of the batch, or null
   * @param bakersPercent share of the flour, or null
   */
  public record LineView(
      String id,
      String food,
      String name,
      String kind,
      String entered,
      Double grams,
      boolean approximate,
      String how,
      boolean flour,
      String note,
      Double percentOfBatch,
      Double bakersPercent) {}

  /**
   * A stage in the oven.
   *
   * @param id its id
   * @param temperature as written, or null
   * @param temperatureC degrees Celsius, or null
   * @param minutes time, or null
   * @param rack position, or null
   * @param steam steam, or null
   * @param vessel vessel, or null
   * @param note its note, or null
   */
  public record StageView(
      String id,
      String temperature,
      Double temperatureC,
      Double minutes,
      String rack,
      String steam,
      String vessel,
      String note) {}

  /**
   * A food that a step names although no line weighs it.
   *
   * @param step number of the step, from 1
   * @param words as the step has them
   * @param text what follows from that, in a sentence
   */
  public record UnweighedView(int step, String words, String text) {}

  /**
   * Something that a figure needed and that is not known.
   *
   * @param line id of the line
   * @param nutrient name of the figure, {@code mass} or {@code food}
   * @param why in words
   */
  public record UnknownView(String line, String nutrient, String why) {}

  /**
   * A goal and how a revision stands to it.
   *
   * @param goal its short name
   * @param name its name for people
   * @param note its note, or null
   * @param met true, false, or null when what is not known decides
   * @param checks rule by rule
   */
  public record GoalView(
      String goal, String name, String note, Boolean met, List<GoalRule> checks) {}

  /**
   * One rule of a goal.
   *
   * @param rule in words
   * @param figure name of the figure, or null for an allergen or food
   * @param per what it is stated for, or null
   * @param limit the bounds, {@code at_least} and {@code at_most}, either may be null; null for an
   *     allergen or food
   * @param value the figure, or null when not exactly known
   * @param valueText the figure in words, such as {@code at least 3.1 g}
   * @param met true, false, or null when what is not known decides
   * @param because the foods that break an allergen or food rule or leave it open
   */
  public record GoalRule(
      String rule,
      String figure,
      String per,
      LimitView limit,
      Double value,
      String valueText,
      Boolean met,
      List<String> because) {}

  /**
   * The bounds of a limit.
   *
   * @param atLeast lower bound, or null
   * @param atMost upper bound, or null
   */
  public record LimitView(Double atLeast, Double atMost) {}

  /**
   * A bake.
   *
   * @param formula short name of the formula
   * @param id its name
   * @param address the revision that was baked, as noted then
   * @param blob id of the content that was weighed
   * @param revisions addresses of the revisions that have this content
   * @param time when it went into the oven
   * @param baker who baked, or null
   * @param ambient room and oven remarks, or null
   * @param note its note, or null
   * @param findings of the whole tray
   * @param pieces the pieces
   * @param photos the pictures
   * @param summary in figures
   */
  public record BakeView(
      String formula,
      String id,
      String address,
      String blob,
      List<String> revisions,
      String time,
      String baker,
      String ambient,
      String note,
      List<String> findings,
      List<PieceView> pieces,
      List<PhotoView> photos,
      BakeSummary summary) {}

  /**
   * A bake in figures, each null when nothing was measured.
   *
   * @param pieces how many pieces
   * @param bestHeightMm greatest height
   * @param meanLiking mean of all tasters' liking, 1 to 9
   * @param tasters how many scores that rests on
   * @param meanLossPercent mean loss on baking of the pieces weighed
   * @param meanSpreadFactor mean width by height
   * @param lowestCoreC lowest core temperature
   */
  public record BakeSummary(
      int pieces,
      Double bestHeightMm,
      Double meanLiking,
      int tasters,
      Double meanLossPercent,
      Double meanSpreadFactor,
      Double lowestCoreC) {}

  /**
   * A piece.
   *
   * @param id its letter
   * @param temperature oven temperature as written, or null
   * @param temperatureC degrees Celsius, or null
   * @param minutes time, or null
   * @param rack position, or null
   * @param doughG mass before the oven, or null
   * @param bakedG mass after cooling, or null
   * @param lossPercent loss on baking, or null
   * @param widthMm width, or null
   * @param heightMm height, or null
   * @param spreadFactor width by height, or null
   * @param core core temperature as written, or null
   * @param coreC degrees Celsius, or null
   * @param coreLog core temperatures through the bake, in the order of time
   * @param crustShade 0 to 4, or null
   * @param findings faults and merits
   * @param liking scores, 1 to 9
   * @param meanLiking their mean, or null
   * @param attributes just-about-right scores
   * @param verdict the verdict, or null
   * @param note its note, or null
   */
  public record PieceView(
      String id,
      String temperature,
      Double temperatureC,
      Double minutes,
      String rack,
      Double doughG,
      Double bakedG,
      Double lossPercent,
      Double widthMm,
      Double heightMm,
      Double spreadFactor,
      String core,
      Double coreC,
      List<CorePointView> coreLog,
      Double crustShade,
      List<FindingView> findings,
      List<Double> liking,
      Double meanLiking,
      List<AttributeView> attributes,
      String verdict,
      String note) {}

  /**
   * A core temperature at one moment of a bake.
   *
   * @param minutes since the piece went into the oven
   * @param temperature as written
   * @param temperatureC degrees Celsius
   */
  public record CorePointView(double minutes, String temperature, double temperatureC) {}

  /**
   * A finding.
   *
   * @param word the word
   * @param merit true for a merit, false for a fault, null for free words
   */
  public record FindingView(String word, Boolean merit) {}

  /**
   * Just-about-right scores.
   *
   * @param name the attribute
   * @param scores −2 to 2
   */
  public record AttributeView(String name, List<Double> scores) {}

  /**
   * A picture.
   *
   * @param file path in the notebook
   * @param caption what is said beside it, or null
   * @param alternative what it shows, for whoever does not see it, or null
   * @param taken when, or null
   * @param marks which piece is where
   */
  public record PhotoView(
      String file, String caption, String alternative, String taken, List<MarkView> marks) {}

  /**
   * A mark on a picture.
   *
   * @param piece the piece
   * @param x 0 to 1 from the left
   * @param y 0 to 1 from above
   */
  public record MarkView(String piece, double x, double y) {}

  /**
   * The development timeline of a formula.
   *
   * @param formula short name
   * @param name name for people
   * @param variant the variant asked for, or null for all lines of history
   * @param goal the goal of the newest revision, or null
   * @param revisions newest first
   * @param variants the variants
   * @param editedByHand whether the file on disk differs from the newest revision
   * @param problems what is wrong with bakes that cannot be read; mostly empty
   */
  public record TimelineView(
      String formula,
      String name,
      String variant,
      GoalView goal,
      List<TimelineEntry> revisions,
      List<VariantEntry> variants,
      boolean editedByHand,
      List<ProblemView> problems) {}

  /**
   * One revision on the timeline.
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
   * @param changes what changed against the revision before
   * @param figures liquid ratio, moisture, mass and macros of a piece
   * @param goalMet whether its goal is met: true, false, or null
   * @param bakes the bakes of exactly this content
   * @param problems why it could not be worked out; empty when it could
   */
  public record TimelineEntry(
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
      List<ChangeView> changes,
      FigureSet figures,
      Boolean goalMet,
      List<BakeView> bakes,
      List<ProblemView> problems) {}

  /**
   * One change against the revision before.
   *
   * @param kind which sort of change, such as {@code amount_changed}
   * @param sentence in words
   */
  public record ChangeView(String kind, String sentence) {}
}
