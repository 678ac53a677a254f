package io.ovenmark.lever;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is asked of a formula.
 *
 * @param wishes the figures that shall come to a value, at least one
 * @param keep ids of the lines that must stay
 * @param limits what lines may weigh
 * @param batchFixed whether the batch mass must stay
 * @param piecesFixed whether the number of pieces stays and the dough a piece follows; otherwise
 *     the dough a piece stays and the number follows
 */
public record Question(
    List<Wish> wishes,
    Set<String> keep,
    List<LineLimit> limits,
    boolean batchFixed,
    boolean piecesFixed) {
  /** Copies the collections. */
  public Question {
    wishes = List.copyOf(wishes);
    keep = Collections.unmodifiableSet(new LinkedHashSet<>(keep));
    limits = List.copyOf(limits);
    if (wishes.isEmpty()) {
      throw new IllegalArgumentException(
          "Nothing was asked for.\n"
              + "Name a figure, such as \"liquid ratio 0.85\" or"
              + " \"net carbohydrate a piece at most 3 g\".");
    }
  }

  /**
   * A question without conditions: every line may move, the batch may, the number of pieces stays.
   *
   * @param wishes the wishes
   * @return the question
   */
  public static Question of(Wish... wishes) {
    return new Question(List.of(wishes), Set.of(), List.of(), false, true);
  }

  /**
   * The same question with lines that must stay.
   *
   * @param lines ids
   * @return a new question
   */
  public Question keeping(String... lines) {
    return new Question(
        wishes, new LinkedHashSet<>(List.of(lines)), limits, batchFixed, piecesFixed);
  }

  /**
   * The same question with limits on lines.
   *
   * @param next the limits
   * @return a new question
   */
  public Question within(LineLimit... next) {
    return new Question(wishes, keep, List.of(next), batchFixed, piecesFixed);
  }

  /**
   * The same question with the batch mass fixed or free.
   *
   * @param fixed whether it must stay
   * @return a new question
   */
  public Question withBatchFixed(boolean fixed) {
    return new Question(wishes, keep, limits, fixed, piecesFixed);
  }

  /**
   * The same question with the number of pieces fixed, or following from the dough a piece.
   *
   * @param fixed whether the number stays
   * @return a new question
   */
  public Question withPiecesFixed(boolean fixed) {
    return new Question(wishes, keep, limits, batchFixed, fixed);
  }
}
