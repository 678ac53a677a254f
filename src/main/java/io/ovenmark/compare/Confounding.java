package io.ovenmark.compare;

import java.util.List;
import java.util.Optional;

/**
 * What may be concluded when the bakes of two sides came out differently. An outcome can be
 * credited to a cause only when nothing else that was noted differs.
 *
 * @param verdict what may be concluded
 * @param influences everything that differs between the bakes, formula first, then oven and room
 * @param sentence the verdict in plain words
 * @param likeForLike pieces of both sides that were baked at the same temperature for the same time
 * @param likeForLikeSentence which they are and what still differs between them; empty when there
 *     are none or when the oven does not differ anyway
 */
public record Confounding(
    Verdict verdict,
    List<Influence> influences,
    String sentence,
    List<LikeForLike> likeForLike,
    Optional<String> likeForLikeSentence) {

  /** What may be concluded. */
  public enum Verdict {
    /** At least one side has no bake. */
    NO_OUTCOMES,
    /** The two sides point at the very same bakes. */
    SAME_BAKES,
    /** Nothing that was noted differs. */
    NOTHING_DIFFERS,
    /** One thing differs. */
    SINGLE,
    /** More than one thing differs. */
    CONFOUNDED
  }

  /** Sorts of influences. */
  public enum Kind {
    /** A line of the formula, or all of them in one proportion. */
    LINE,
    /** A food's data. */
    FOOD_DATA,
    /** How the batch is divided. */
    YIELD,
    /** The method or a note in it. */
    METHOD,
    /** The temperature that was used. */
    OVEN_TEMPERATURE,
    /** The time that was used. */
    OVEN_TIME,
    /** Rack, steam, vessel and further stages in the oven. */
    OVEN,
    /** The room. */
    ROOM
  }

  /**
   * One thing that differs.
   *
   * @param kind its sort
   * @param name in words, such as {@code water} or {@code oven temperature}
   * @param detail how it differs, such as {@code −22 g} or {@code 190 °C → 205 °C}
   */
  public record Influence(Kind kind, String name, String detail) {}

  /**
   * Pieces that had the same oven.
   *
   * @param setting temperature and time, such as {@code 205 °C for 21 min}
   * @param from names of the earlier side's pieces
   * @param to names of the later side's pieces
   */
  public record LikeForLike(String setting, List<String> from, List<String> to) {
    /** Copies the lists. */
    public LikeForLike {
      from = List.copyOf(from);
      to = List.copyOf(to);
    }
  }

  /** Copies the lists. */
  public Confounding {
    influences = List.copyOf(influences);
    likeForLike = List.copyOf(likeForLike);
  }
}
