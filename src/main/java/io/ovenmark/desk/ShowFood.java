package io.ovenmark.desk;

import io.ovenmark.notebook.Contents;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import java.util.Optional;

/**
 * Shows a food of the pantry, or one of the built-in table that the pantry lacks.
 *
 * <pre>{@code
 * KitchenViews.FoodView food = new ShowFood(desk).call("egg-whole");
 * }</pre>
 */
public final class ShowFood {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShowFood(Desk desk) {
    this.desk = desk;
  }

  /**
   * Shows it.
   *
   * @param slug its short name
   * @return the food
   * @throws io.ovenmark.notebook.Refusal when there is no such food
   * @throws io.ovenmark.json.UnreadableException when its file is damaged
   */
  public KitchenViews.FoodView call(String slug) {
    Asked.slug("food", slug);
    Contents contents = desk.notebook().latest();
    Optional<Food> own = contents.food(slug);
    Food food =
        own.or(() -> BuiltInPantry.find(slug))
            .orElseThrow(() -> FoodParts.noFood(slug, contents));
    return FoodParts.view(
        food, own.isPresent(), new LinesInUse(desk.notebook()).withFood(slug));
  }
}
