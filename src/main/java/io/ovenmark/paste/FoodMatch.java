package io.ovenmark.paste;

import static java.util.Objects.requireNonNull;

import io.ovenmark.pantry.Food;
import java.util.List;
import java.util.Optional;

/**
 * Which foods a pasted line may mean.
 *
 * @param certainty how sure the first candidate is
 * @param candidates best first, at most {@value #MOST}; foods of the notebook before others that
 *     fit as well; empty when nothing fits
 * @param leftOut words of the line that only describe the food and were left out of the comparison,
 *     as written
 */
public record FoodMatch(
    Certainty certainty, List<FoodCandidate> candidates, List<String> leftOut) {
  /** The most candidates that are given. */
  public static final int MOST = 6;

  /** Nothing fits. */
  static final FoodMatch NONE = new FoodMatch(Certainty.NONE, List.of(), List.of());

  /** How sure a food is. */
  public enum Certainty {
    /** One food is called just that, or it was chosen. */
    CERTAIN,
    /** A person has to choose. */
    DOUBTFUL,
    /** Nothing fits. */
    NONE
  }

  /** Copies the lists. */
  public FoodMatch {
    requireNonNull(certainty, "certainty");
    candidates = List.copyOf(candidates);
    leftOut = List.copyOf(leftOut);
    if (candidates.isEmpty() != (certainty == Certainty.NONE)) {
      throw new IllegalArgumentException("no candidates and no certainty go together");
    }
  }

  /**
   * The food, when it is certain.
   *
   * @return empty when a person has to choose or nothing fits
   */
  public Optional<Food> food() {
    return certainty == Certainty.CERTAIN
        ? Optional.of(candidates.get(0).food())
        : Optional.empty();
  }
}
