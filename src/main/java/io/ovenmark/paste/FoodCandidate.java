package io.ovenmark.paste;

import static java.util.Objects.requireNonNull;

import io.ovenmark.pantry.Food;

/**
 * A food that a pasted line may mean.
 *
 * @param food the food
 * @param score how well its names fit, above 0 up to 1, which is every word and no other
 * @param inPantry whether it is one of the notebook's; false for one of the built-in table
 * @param why in words: why it is proposed
 */
public record FoodCandidate(Food food, double score, boolean inPantry, String why) {
  /** Checks that nothing is null and that the score is one. */
  public FoodCandidate {
    requireNonNull(food, "food");
    requireNonNull(why, "why");
    if (!(score > 0 && score <= 1)) {
      throw new IllegalArgumentException("score must be above 0 and at most 1, was " + score);
    }
  }
}
