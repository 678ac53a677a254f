package io.ovenmark.desk;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodSearch;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Lists the pantry's foods with the formulas that use them, or finds foods by words, in the pantry
 * and in the built-in table. A food whose file is damaged is listed with what is wrong.
 *
 * <pre>{@code
 * KitchenViews.FoodList pantry = new ListFoods(desk).call();
 * KitchenViews.FoodList found = new ListFoods(desk).find("almond meal");
 * }</pre>
 */
public final class ListFoods {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ListFoods(Desk desk) {
    this.desk = desk;
  }

  /**
   * Lists the pantry of the main line.
   *
   * @return the foods by short name
   */
  public KitchenViews.FoodList call() {
    Contents contents = desk.notebook().latest();
    LinesInUse lines = new LinesInUse(desk.notebook());
    List<KitchenViews.FoodEntry> entries = new ArrayList<>();
    for (String slug : contents.foods()) {
      List<String> usedBy = lines.withFood(slug);
      try {
        contents.food(slug).map(food -> FoodParts.entry(food, true, usedBy)).ifPresent(entries::add);
      } catch (UnreadableException | StoreException e) {
        entries.add(FoodParts.unreadable(slug, usedBy, Refusals.problemsOf(e)));
      }
    }
    return new KitchenViews.FoodList(entries);
  }

  /**
   * Finds foods.
   *
   * @param words such as {@code almond meal}
   * @return those of the pantry, best first, then those of the built-in table that it lacks
   */
  public KitchenViews.FoodList find(String words) {
    Contents contents = desk.notebook().latest();
    LinesInUse lines = new LinesInUse(desk.notebook());
    List<Food> own = readable(contents);
    Set<String> slugs = new HashSet<>(contents.foods());
    List<KitchenViews.FoodEntry> entries = new ArrayList<>();
    FoodSearch.of(own, Map.of())
        .search(words)
        .forEach(food -> entries.add(FoodParts.entry(food, true, lines.withFood(food.slug()))));
    BuiltInPantry.search(words).stream()
        .filter(food -> !slugs.contains(food.slug()))
        .forEach(food -> entries.add(FoodParts.entry(food, false, List.of())));
    return new KitchenViews.FoodList(entries);
  }

  /** The foods that can be read; what is wrong with others is told where they are listed. */
  private static List<Food> readable(Contents contents) {
    List<Food> foods = new ArrayList<>();
    for (String slug : contents.foods()) {
      try {
        contents.food(slug).ifPresent(foods::add);
      } catch (UnreadableException | StoreException e) {
        Refusals.problemsOf(e);
      }
    }
    return foods;
  }
}
