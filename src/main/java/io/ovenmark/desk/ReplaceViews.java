package io.ovenmark.desk;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/** The records of answers about replacing a food; see {@link Views} for their manner. */
public final class ReplaceViews {
  private ReplaceViews() {}

  /**
   * What can be asked about a state.
   *
   * @param address the state
   * @param formula short name
   * @param variant name of the variant, or null
   * @param name name for people
   * @param lines its lines
   * @param keeps what of a line can be kept
   * @param goal short name of its own goal, or null
   * @param goals the goals that it can be held to
   */
  public record Choices(
      String address,
      String formula,
      String variant,
      String name,
      List<LineChoice> lines,
      List<KeepChoice> keeps,
      String goal,
      List<GoalChoice> goals) {}

  /**
   * A line that can be replaced.
   *
   * @param line its id
   * @param name its food's name
   * @param entered what was entered
   * @param usual what is kept of it when nobody says otherwise, or null when its food is unknown
   */
  public record LineChoice(String line, String name, String entered, String usual) {}

  /**
   * Something that can be kept.
   *
   * @param keep its name in questions
   * @param label for people
   */
  public record KeepChoice(String keep, String label) {}

  /**
   * A goal.
   *
   * @param goal short name
   * @param name for people
   */
  public record GoalChoice(String goal, String name) {}

  /**
   * Foods that can stand in for a line.
   *
   * @param address the state that was asked about
   * @param formula short name
   * @param variant name of the variant, or null
   * @param revision its number; for a file edited by hand the number that it would get
   * @param commit commit id, or null for a file edited by hand
   * @param name name for people
   * @param line what is replaced
   * @param kept what is kept
   * @param goal how the goal stands now, or null without goal
   * @param readableG what the scale can show; 0 for exact masses
   * @param per what the figures are stated for: a piece, or 100 g of dough where the batch is not
   *     divided
   * @param figuresNow the figures as they are
   * @param summary the answer in a sentence or two
   * @param answers the foods that can stand in: those of the same kind first, then by how far the
   *     goal is met, then by how little they disturb
   * @param setAside the foods that are not proposed, and why
   * @param remarks what else a person should know
   * @param cautions what to mind
   */
  public record ReplaceSheet(
      String address,
      String formula,
      String variant,
      int revision,
      String commit,
      String name,
      LineView line,
      KeptView kept,
      Views.GoalView goal,
      double readableG,
      String per,
      FigureSet figuresNow,
      String summary,
      List<AnswerView> answers,
      List<SetAsideView> setAside,
      List<String> remarks,
      List<String> cautions) {}

  /**
   * The line that is replaced.
   *
   * @param line its id
   * @param food short name of its food
   * @param name its food's name
   * @param kind part that it plays in a dough
   * @param entered what was entered
   * @param grams its mass
   * @param source where its figures come from, in words
   * @param work what it does in the dough that figures do not show, in words
   */
  public record LineView(
      String line,
      String food,
      String name,
      String kind,
      String entered,
      double grams,
      String source,
      List<String> work) {}

  /**
   * What is kept.
   *
   * @param keep its name in questions
   * @param label for people
   * @param grams how much of it the line holds
   * @param per100G how much 100 g of the line's food hold
   * @param usual whether it is what is kept when nobody says otherwise
   * @param text how much of it the line holds, in words
   * @param per100Text how much 100 g of its food hold, in words
   */
  public record KeptView(
      String keep,
      String label,
      double grams,
      @JsonProperty("per_100_g") double per100G,
      boolean usual,
      String text,
      @JsonProperty("per_100_text") String per100Text) {}

  /**
   * A food that can stand in.
   *
   * @param number its place
   * @param food short name
   * @param name for people
   * @param kind part that it plays in a dough
   * @param sameKind whether it is of the same kind as what it replaces
   * @param inPantry whether it is one of the notebook's own, not only of the built-in table
   * @param source where its figures come from, in words
   * @param grams the mass that keeps the figure exactly
   * @param weigh what to weigh
   * @param weighText the same in the reader's units
   * @param per100G how much of the kept figure 100 g of it hold
   * @param keptG how much of the kept figure there is with what is weighed
   * @param keepsText how the amount follows, in words
   * @param elsewhereG how much of the same food other lines hold already, or null for none
   * @param elsewhereText the same in words, or null
   * @param sentence what it does, in words
   * @param brief what moves and which rules of the goal are missed, in words
   * @param note a note for the revision that it becomes
   * @param disturbance how much it disturbs the rest
   * @param goalMet whether the goal is met then, or null when not known or without goal
   * @param rules rules of the goal that then stand otherwise than now, and those that are missed
   * @param figures the figures with it
   * @param moves everything that moves; only when one food was asked about
   * @param allergensGained allergens that the formula would newly contain
   * @param allergensLost allergens that it would no longer contain
   * @param allergensKnown whether the food's allergens are known
   * @param cost what it does to the cost of a batch and of a piece
   * @param structure what it does to the work of the dough that figures do not show
   * @param cautions what to mind besides the sheet's cautions
   */
  public record AnswerView(
      int number,
      String food,
      String name,
      String kind,
      boolean sameKind,
      boolean inPantry,
      String source,
      double grams,
      String weigh,
      String weighText,
      @JsonProperty("per_100_g") double per100G,
      Double keptG,
      String keepsText,
      Double elsewhereG,
      String elsewhereText,
      String sentence,
      String brief,
      String note,
      double disturbance,
      Boolean goalMet,
      List<RuleView> rules,
      FigureSet figures,
      List<MovesView> moves,
      List<String> allergensGained,
      List<String> allergensLost,
      boolean allergensKnown,
      CostViews.CostDifference cost,
      List<String> structure,
      List<String> cautions) {}

  /**
   * A rule of the goal.
   *
   * @param rule in words
   * @param valueText the figure in words, or null
   * @param now whether it is kept now, or null when not known
   * @param met whether it is kept then, or null when not known
   * @param because foods that break it or leave it open
   */
  public record RuleView(
      String rule, String valueText, Boolean now, Boolean met, List<String> because) {}

  /**
   * What moves for a basis.
   *
   * @param per basis key
   * @param label for people
   * @param moves the figures that move
   */
  public record MovesView(String per, String label, List<LeverViews.MoveView> moves) {}

  /**
   * A food that is not proposed.
   *
   * @param food short name
   * @param name for people
   * @param inPantry whether it is one of the notebook's own
   * @param why {@code forbidden}, {@code unknown}, {@code nothing}, {@code other work}, {@code out
   *     of proportion} or {@code unreadable}
   * @param because the reason in words
   */
  public record SetAsideView(
      String food, String name, boolean inPantry, String why, String because) {}
}
