package io.ovenmark.paste;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.Amount;
import io.ovenmark.pantry.Food;
import java.util.List;
import java.util.Optional;

/**
 * One line of what was pasted, with what became of it.
 *
 * @param number its number in the pasted text, from 1
 * @param text the line exactly as it was pasted
 * @param kind what it was taken for
 * @param section the heading above an ingredient or step; empty when there is none
 * @param read the parts of an ingredient; empty for other lines
 * @param match the foods that an ingredient may mean; none for other lines
 * @param amount the amount that is proposed; empty when none can be
 * @param choices amounts to choose from, where a person has to; mostly empty
 * @param note what is kept beside food and amount; empty when there is nothing
 * @param lineId the line of the draft that it became; empty when it became none
 * @param doubts what has to be settled first; empty when the line is certain
 * @param remarks what should be known without being in doubt
 */
public record PastedLine(
    int number,
    String text,
    Kind kind,
    Optional<String> section,
    Optional<IngredientLine> read,
    FoodMatch match,
    Optional<Amount> amount,
    List<Amount> choices,
    Optional<String> note,
    Optional<String> lineId,
    List<Doubt> doubts,
    List<String> remarks) {
  /** What a pasted line was taken for. */
  public enum Kind {
    /** The name of the formula. */
    TITLE,
    /** A heading, such as "For the topping:". */
    HEADING,
    /** An ingredient, or what stands among them. */
    INGREDIENT,
    /** What a batch gives. */
    YIELD,
    /** A step of the method. */
    STEP,
    /** Anything else; it is kept beside the formula. */
    NOTE,
    /** An ingredient that a person leaves out of the formula. */
    LEFT_OUT
  }

  /** How far a line can be relied on. */
  public enum Status {
    /** It became what it was taken for. */
    CERTAIN,
    /** A person has to settle something. */
    DOUBTFUL,
    /** No food fits, or it is not understood. */
    UNKNOWN,
    /** It is a heading. */
    HEADING
  }

  /** Copies the lists. */
  public PastedLine {
    requireNonNull(text, "text");
    requireNonNull(kind, "kind");
    requireNonNull(section, "section");
    requireNonNull(read, "read");
    requireNonNull(match, "match");
    requireNonNull(amount, "amount");
    choices = List.copyOf(choices);
    requireNonNull(note, "note");
    requireNonNull(lineId, "lineId");
    doubts = List.copyOf(doubts);
    remarks = List.copyOf(remarks);
  }

  /** A line that is no ingredient. */
  static PastedLine other(int number, String text, Kind kind) {
    return new PastedLine(
        number,
        text,
        kind,
        Optional.empty(),
        Optional.empty(),
        FoodMatch.NONE,
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of());
  }

  /** What is kept of a text that goes on after the last line that is read. */
  static PastedLine unread(int number, String text, int read) {
    return new PastedLine(
        number,
        text,
        Kind.INGREDIENT,
        Optional.empty(),
        Optional.empty(),
        FoodMatch.NONE,
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        List.of(
            Doubt.line(
                "What follows line " + read + " is not read.", "Paste one formula at a time.")),
        List.of());
  }

  /**
   * How far the line can be relied on.
   *
   * @return certain, doubtful, unknown, or that it is a heading
   */
  public Status status() {
    if (kind == Kind.HEADING) {
      return Status.HEADING;
    }
    if (doubts.isEmpty()) {
      return Status.CERTAIN;
    }
    boolean nothing = kind == Kind.INGREDIENT && match.certainty() == FoodMatch.Certainty.NONE;
    return nothing ? Status.UNKNOWN : Status.DOUBTFUL;
  }

  /**
   * The food, when it is certain.
   *
   * @return empty when a person has to choose or nothing fits
   */
  public Optional<Food> food() {
    return match.food();
  }

  PastedLine withLineId(String id) {
    return new PastedLine(
        number, text, kind, section, read, match, amount, choices, note, Optional.of(id), doubts,
        remarks);
  }
}
