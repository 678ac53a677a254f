package io.ovenmark.lever;

import static java.util.Objects.requireNonNull;

import io.ovenmark.pantry.Food;

/**
 * A food that might stand in for another.
 *
 * @param food the food
 * @param inPantry whether it is one of the notebook's own, not only of the built-in table
 */
public record StandIn(Food food, boolean inPantry) {
  /** Checks that the food is given. */
  public StandIn {
    requireNonNull(food, "food");
  }
}
