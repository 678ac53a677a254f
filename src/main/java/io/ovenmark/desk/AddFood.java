package io.ovenmark.desk;

import io.ovenmark.notebook.By;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodEdit;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.FoodText;
import io.ovenmark.pantry.LabelFood;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Adds a food to the pantry: from its package's label or from the built-in table.
 *
 * <pre>{@code
 * AddFood.Label label = new AddFood.Label("bench-lupin-flour", "Lupin flour of the bench",
 *     FoodKind.DRY, LabelFood.Panel.EUROPEAN_UNION, 100,
 *     List.of("energy=1400kJ", "protein=40", "fat=9", "carbohydrate=11", "fibre=28", "salt=0.05",
 *         "allergens=lupin", "price=4.80 EUR for 500 g"));
 * new AddFood(desk).fromLabel(label, by);
 * }</pre>
 */
public final class AddFood {
  private final Desk desk;

  /**
   * What stands on a package, and what else is known of the food.
   *
   * @param slug the short name to file it under
   * @param name its name for people
   * @param kind the part it plays in a dough
   * @param panel whose rules the label follows
   * @param servingGrams what the figures are for; 100 for figures per 100 g
   * @param facts {@code name=value} each: figures as {@link FoodText#label} reads them, other facts
   *     as {@link FoodEdit} reads them
   */
  public record Label(
      String slug,
      String name,
      FoodKind kind,
      LabelFood.Panel panel,
      double servingGrams,
      List<String> facts) {
    /** Copies the list. */
    public Label {
      facts = List.copyOf(facts);
    }
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public AddFood(Desk desk) {
    this.desk = desk;
  }

  /**
   * Adds a food from its label.
   *
   * @param label what stands on it
   * @param by who commits it, and when
   * @return the food
   * @throws Refusal when there is one of that short name, or a fact is not understood
   * @throws io.ovenmark.json.UnreadableException when figures cannot be right together
   */
  public KitchenViews.FoodView fromLabel(Label label, By by) {
    Asked.slug("food", label.slug());
    LabelFood panel =
        LabelFood.perServing(
            label.name().strip(), label.kind(), label.panel(), label.servingGrams());
    List<String> others = new ArrayList<>();
    for (String fact : label.facts()) {
      Optional<FoodText.LabelValue> figure =
          Asked.read("label", () -> FoodText.labelFact(fact));
      if (figure.isPresent()) {
        panel = panel.with(figure.get().figure(), figure.get().value());
      } else {
        others.add(fact);
      }
    }
    if (panel.figures().isEmpty()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          label.slug(),
          "The label has no figure.",
          "Give what is printed, such as energy=120kcal protein=12 fat=3 carbohydrate=9 fibre=8.");
    }
    Food food = panel.food(label.slug());
    return save(Asked.read("food", () -> FoodEdit.of(food, others)), by);
  }

  /**
   * Adds a food of the built-in table.
   *
   * @param slug its short name in the table
   * @param edits changes to it as {@link FoodEdit} reads them
   * @param by who commits it, and when
   * @return the food
   * @throws Refusal when the table has none of that name, the pantry has one, or a change is not
   *     understood
   */
  public KitchenViews.FoodView fromTable(String slug, List<String> edits, By by) {
    Asked.slug("food", slug);
    Food food =
        BuiltInPantry.find(slug)
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.Reason.NOT_FOUND,
                        "food " + slug,
                        "The built-in table has no food \"" + slug + "\".",
                        "Find one with: ovenmark pantry find, or give the figures of its label,"
                            + " with --us or --eu."));
    return save(Asked.read("food", () -> FoodEdit.of(food, edits)), by);
  }

  private KitchenViews.FoodView save(Food food, By by) {
    if (desk.notebook().latest().foods().contains(food.slug())) {
      throw exists(food);
    }
    try {
      new RecordWriter(desk.notebook())
          .saveFood(food, Optional.empty(), "Food: " + food.name(), by);
    } catch (Refusal refusal) {
      throw refusal.reason() == Refusal.Reason.EXISTS ? exists(food) : refusal;
    }
    return new ShowFood(desk).call(food.slug());
  }

  private static Refusal exists(Food food) {
    return new Refusal(
        Refusal.Reason.EXISTS,
        "food " + food.slug(),
        "The pantry has a food \"" + food.slug() + "\" already.",
        "Choose another short name, or change it with: ovenmark pantry set " + food.slug());
  }
}
