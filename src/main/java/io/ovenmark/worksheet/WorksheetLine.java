package io.ovenmark.worksheet;

import io.ovenmark.formula.Line;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Resolved;
import java.util.Optional;

/**
 * A line worked out.
 *
 * @param line the line as written
 * @param food its food; empty when the pantry has none of that name
 * @param resolved its mass, or why there is none
 * @param percentOfBatch its share of the batch mass in percent
 * @param bakersPercent its mass in percent of all flour; unknown when no line is marked as flour
 * @param macros what it brings to the batch
 */
public record WorksheetLine(
    Line line,
    Optional<Food> food,
    Resolved resolved,
    Quantity percentOfBatch,
    Quantity bakersPercent,
    Macros macros) {

  /**
   * Its name for people.
   *
   * @return the food's name, or the food's slug when the pantry does not know it
   */
  public String name() {
    return food.map(Food::name).orElse(line.food());
  }

  /**
   * Its mass.
   *
   * @return grams, unknown when unresolved
   */
  public Quantity grams() {
    return resolved.grams();
  }
}
