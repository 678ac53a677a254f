package io.ovenmark.tasting;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What a taster answered; which parts are there follows from the tasting's kind.
 *
 * @param choice the code of the odd or the preferred sample; {@link #NO_PREFERENCE} for neither
 * @param ranking codes in order, the best first
 * @param scores what was said of each plate
 * @param note in the taster's words; empty when there is none
 * @param given when it was sent or entered; empty when not noted
 * @param extras unknown fields
 */
public record Answer(
    Optional<String> choice,
    List<String> ranking,
    List<Score> scores,
    Optional<String> note,
    Optional<OffsetDateTime> given,
    Extras extras) {
  /** Stands for the code where a taster prefers neither. */
  public static final String NO_PREFERENCE = "none";

  /** The longest note, in characters. */
  public static final int LONGEST_NOTE = 1000;

  /** Copies; a blank note is none. */
  public Answer {
    requireNonNull(choice, "choice");
    ranking = List.copyOf(ranking);
    scores = scores.stream().filter(score -> !score.isEmpty()).toList();
    note = note.map(String::strip).filter(text -> !text.isEmpty());
    Faults.require(
        note.map(String::length).orElse(0) <= LONGEST_NOTE,
        "The note is longer than " + LONGEST_NOTE + " characters.",
        "Shorten it.");
    requireNonNull(given, "given");
    requireNonNull(extras, "extras");
  }


  /**
   * The same answer, given at a time.
   *
   * @param time when it was sent or entered
   * @return a new answer
   */
  public Answer givenAt(OffsetDateTime time) {
    return new Answer(choice, ranking, scores, note, Optional.of(time), extras);
  }

  /**
   * The same answer with a note.
   *
   * @param text the note; empty to take it away
   * @return a new answer
   */
  public Answer withNote(Optional<String> text) {
    return new Answer(choice, ranking, scores, text, given, extras);
  }

  /** What was said of a plate. */
  Optional<Score> score(String code) {
    return scores.stream().filter(each -> each.code().equals(code)).findFirst();
  }
}
