package io.ovenmark.desk;

import com.fasterxml.jackson.annotation.JsonRawValue;
import java.util.List;

/** The records of what was read from pasted text, in the manner of {@link Views}. */
public final class PasteViews {
  private PasteViews() {}

  /**
   * What was read.
   *
   * @param source {@code text} or {@code schema.org}
   * @param name the name that was pasted, or null
   * @param certain whether there is an ingredient and nothing is in doubt, so that the formula may
   *     be saved as it is
   * @param lines every line that is not blank, in order
   * @param method the steps
   * @param yield what is said about the yield, or null
   * @param remarks what else a person should know
   * @param formula the draft as the formula's own JSON: the lines whose food is certain and that
   *     have an amount, of a range the lower end
   */
  public record PastedView(
      String source,
      String name,
      boolean certain,
      List<PastedLineView> lines,
      List<String> method,
      PastedYieldView yield,
      List<String> remarks,
      @JsonRawValue String formula) {}

  /**
   * One pasted line.
   *
   * @param line its number in the pasted text, from 1
   * @param text the line exactly as it was pasted
   * @param kind {@code title}, {@code heading}, {@code ingredient}, {@code yield}, {@code step},
   *     {@code note} or {@code left_out}
   * @param status {@code certain}, {@code doubtful}, {@code unknown} or {@code heading}
   * @param section the heading above it, or null
   * @param amount the amount proposed, or null
   * @param upTo the higher end of a range, or null
   * @param amounts amounts to choose from; mostly empty
   * @param grams mass of the amount of the certain food, or null when not known
   * @param approximate whether the mass was worked out from a volume or household measure
   * @param foodWords the words for the food, the key of a choice; null where there are none
   * @param foods the foods that may be meant, best first
   * @param alternatives other foods that the line allows, in its words
   * @param optional whether the line may be left out
   * @param note what is kept beside food and amount, or null
   * @param lineId id of the draft's line that it became, or null
   * @param doubts what has to be settled first
   * @param remarks what should be known without being in doubt
   */
  public record PastedLineView(
      int line,
      String text,
      String kind,
      String status,
      String section,
      String amount,
      String upTo,
      List<String> amounts,
      Double grams,
      boolean approximate,
      String foodWords,
      List<FoodCandidateView> foods,
      List<String> alternatives,
      boolean optional,
      String note,
      String lineId,
      List<DoubtView> doubts,
      List<String> remarks) {}

  /**
   * A food that a line may mean.
   *
   * @param food short name
   * @param name name for people
   * @param score how well its names fit, above 0 up to 1
   * @param certain whether it is the one that is meant
   * @param inPantry whether the notebook has it
   * @param why why it is proposed
   */
  public record FoodCandidateView(
      String food, String name, double score, boolean certain, boolean inPantry, String why) {}

  /**
   * Something to settle.
   *
   * @param about {@code food}, {@code amount} or {@code line}
   * @param message what is open, one sentence
   * @param hint what to do, one sentence
   */
  public record DoubtView(String about, String message, String hint) {}

  /**
   * What is said about the yield.
   *
   * @param text as it was written
   * @param pieces how many pieces that is, or null when that is not certain
   * @param perhaps a number that may be the pieces, or null
   */
  public record PastedYieldView(String text, Integer pieces, Integer perhaps) {}
}
