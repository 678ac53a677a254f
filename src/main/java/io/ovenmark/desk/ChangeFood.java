package io.ovenmark.desk;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodEdit;
import java.util.List;
import java.util.Optional;

/**
 * Changes a food of the pantry: household weights, density, price, allergens, figures. Figures of
 * revisions that are committed do not move; the next revision is worked out with the changed food.
 *
 * <pre>{@code
 * new ChangeFood(desk).call("lupin-flour", List.of("weight.tbsp=9 g", "density=0.55 g/ml"), by);
 * }</pre>
 */
public final class ChangeFood {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ChangeFood(Desk desk) {
    this.desk = desk;
  }

  /**
   * Changes it in the main line's pantry.
   *
   * @param slug its short name
   * @param edits changes as {@link FoodEdit} reads them, at least one
   * @param by who commits it, and when
   * @return the food as it is now
   * @throws Refusal when there is no such food, a change is not understood, nothing changes, or
   *     somebody changed it meanwhile
   */
  public KitchenViews.FoodView call(String slug, List<String> edits, By by) {
    return change(desk.notebook().latest(), Optional.empty(), slug, edits, by);
  }

  /**
   * Changes it in a variant's pantry.
   *
   * @param line the variant
   * @param slug its short name
   * @param edits changes as {@link FoodEdit} reads them, at least one
   * @param by who commits it, and when
   * @return the food as it is now
   * @throws Refusal as for the main line
   */
  public KitchenViews.FoodView call(Address line, String slug, List<String> edits, By by) {
    return change(desk.notebook().latest(line), Optional.of(line), slug, edits, by);
  }

  private KitchenViews.FoodView change(
      Contents contents, Optional<Address> line, String slug, List<String> edits, By by) {
    Asked.slug("food", slug);
    Food before = contents.food(slug).orElseThrow(() -> FoodParts.noFood(slug, contents));
    Food after = Asked.read("food", () -> FoodEdit.of(before, edits));
    if (after.equals(before)) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          slug,
          "The food says all of that already.",
          "Say what changes, such as \"price=3.20 EUR for 1000 g\".");
    }
    RecordWriter writer = new RecordWriter(desk.notebook());
    String note = "Food changed: " + after.name();
    if (line.isPresent()) {
      writer.saveFood(line.get(), after, Optional.of(before), note, by);
    } else {
      writer.saveFood(after, Optional.of(before), note, by);
    }
    return FoodParts.view(after, true, new LinesInUse(desk.notebook()).withFood(slug));
  }
}
