package io.ovenmark.desk;

import io.ovenmark.formula.Line;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodSearch;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

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
   * Lists the pantry: the main line's foods, and those that only a variant keeps.
   *
   * @return the foods by short name
   */
  public KitchenViews.FoodList call() {
    return new KitchenViews.FoodList(list(new TreeMap<>()).entries());
  }

  /**
   * Lists the pantry and all foods of the built-in table that it lacks.
   *
   * @return the pantry's by short name, then the table's in its order
   */
  public KitchenViews.FoodList withBuiltIn() {
    Listing listing = list(new TreeMap<>());
    for (Food food : BuiltInPantry.all()) {
      if (!listing.slugs().contains(food.slug())) {
        listing.entries().add(listing.entry(food, false, null));
      }
    }
    return new KitchenViews.FoodList(listing.entries());
  }

  /**
   * Finds foods.
   *
   * @param words such as {@code almond meal}
   * @return those of the pantry, best first, then those of the built-in table that it lacks
   */
  public KitchenViews.FoodList find(String words) {
    SortedMap<String, Food> readable = new TreeMap<>();
    Listing all = list(readable);
    Map<String, KitchenViews.FoodEntry> known = new HashMap<>();
    all.entries().forEach(entry -> known.put(entry.food(), entry));
    Map<String, String> names = new HashMap<>();
    readable
        .keySet()
        .forEach(slug -> names.put(slug, String.join(";", BuiltInPantry.otherNames(slug))));
    List<KitchenViews.FoodEntry> entries = new ArrayList<>();
    FoodSearch.of(List.copyOf(readable.values()), names)
        .search(words)
        .forEach(food -> entries.add(known.get(food.slug())));
    BuiltInPantry.search(words).stream()
        .filter(food -> !all.slugs().contains(food.slug()))
        .forEach(food -> entries.add(all.entry(food, false, null)));
    return new KitchenViews.FoodList(entries);
  }

  /** A list that is being made. */
  private record Listing(
      List<KitchenViews.FoodEntry> entries,
      Set<String> slugs,
      LinesInUse lines,
      NetCarbohydrate net) {
    KitchenViews.FoodEntry entry(Food food, boolean inPantry, String keptIn) {
      return FoodParts.entry(food, inPantry, keptIn, lines.withFood(food.slug()), net);
    }
  }

  /** The pantry; what is wrong with a food that cannot be read is told in its place. */
  private Listing list(SortedMap<String, Food> readable) {
    Contents main = desk.notebook().latest();
    Listing listing =
        new Listing(
            new ArrayList<>(),
            new HashSet<>(main.foods()),
            new LinesInUse(desk.notebook()),
            main.settings().policy().netCarbohydrate());
    SortedMap<String, Address> places = new TreeMap<>();
    for (LinesInUse.Use use : listing.lines().all()) {
      if (use.line().variant().isPresent()) {
        Contents there = desk.notebook().latest(use.line());
        Set<String> kept = new HashSet<>(there.foods());
        use.formula().lines().stream()
            .map(Line::food)
            .filter(slug -> !listing.slugs().contains(slug) && kept.contains(slug))
            .forEach(slug -> places.putIfAbsent(slug, use.line()));
      }
    }
    SortedSet<String> all = new TreeSet<>(main.foods());
    all.addAll(places.keySet());
    listing.slugs().addAll(all);
    for (String slug : all) {
      Optional<Address> place = Optional.ofNullable(places.get(slug));
      Contents contents = place.map(desk.notebook()::latest).orElse(main);
      try {
        contents
            .food(slug)
            .ifPresent(
                food -> {
                  readable.put(slug, food);
                  listing
                      .entries()
                      .add(listing.entry(food, true, place.map(Address::line).orElse(null)));
                });
      } catch (UnreadableException | StoreException e) {
        listing
            .entries()
            .add(
                FoodParts.unreadable(
                    slug, listing.lines().withFood(slug), Refusals.problemsOf(e)));
      }
    }
    return listing;
  }
}
