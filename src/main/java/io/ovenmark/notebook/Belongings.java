package io.ovenmark.notebook;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.Write;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodCodec;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a commit of a formula must bring along, so that its tree holds all that the figures rest on:
 * foods and the goal that its branch lacks. They come from elsewhere in the notebook, such as the
 * main line's pantry and goals, foods else from the built-in table.
 *
 * @param kept files of other commits by path
 * @param foods foods of the built-in table, in the order of the lines
 * @param slugs short names of all foods that come along, in the order of the lines
 */
record Belongings(Map<String, BlobId> kept, List<Food> foods, List<String> slugs) {

  /**
   * Finds what is lacking.
   *
   * @param formula the formula to be committed
   * @param here what its branch holds
   * @param elsewhere where to look for what is lacking, in this order
   * @throws Refusal when a food is nowhere to be found
   */
  static Belongings of(Formula formula, Contents here, List<Contents> elsewhere) {
    Map<String, BlobId> kept = new LinkedHashMap<>();
    Map<String, Food> foods = new LinkedHashMap<>();
    List<String> slugs = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    for (String slug : formula.lines().stream().map(Line::food).distinct().toList()) {
      if (here.blob(Layout.food(slug)).isPresent()) {
        continue;
      }
      slugs.add(slug);
      Optional<BlobId> known = find(Layout.food(slug), elsewhere);
      Optional<Food> builtIn = BuiltInPantry.find(slug);
      if (known.isPresent()) {
        kept.put(Layout.food(slug), known.get());
      } else if (builtIn.isPresent()) {
        foods.put(slug, builtIn.get());
      } else {
        unknown.add(slug);
      }
    }
    if (!unknown.isEmpty()) {
      throw unknownFoods(unknown);
    }
    formula
        .goal()
        .map(Layout::goal)
        .filter(path -> here.blob(path).isEmpty())
        .ifPresent(path -> find(path, elsewhere).ifPresent(blob -> kept.put(path, blob)));
    return new Belongings(kept, List.copyOf(foods.values()), slugs);
  }

  private static Optional<BlobId> find(String path, List<Contents> places) {
    return places.stream().flatMap(contents -> contents.blob(path).stream()).findFirst();
  }

  /** The same write that also brings them along. */
  Write with(Write write) {
    Write result = write;
    for (Food food : foods) {
      result = result.put(Layout.food(food.slug()), FoodCodec.write(food));
    }
    for (Map.Entry<String, BlobId> file : kept.entrySet()) {
      result = result.keep(file.getKey(), file.getValue());
    }
    return result;
  }

  private static Refusal unknownFoods(List<String> slugs) {
    String first = slugs.get(0);
    List<String> near =
        BuiltInPantry.search(first.replace('-', ' ')).stream().limit(3).map(Food::slug).toList();
    String hint = "Add it with: ovenmark pantry add " + first;
    return new Refusal(
        Refusal.Reason.INVALID,
        first,
        slugs.size() == 1
            ? "The pantry has no food \"" + first + "\"."
            : "The pantry has no foods \"" + String.join("\", \"", slugs) + "\".",
        near.isEmpty() ? hint : "Perhaps you mean " + String.join(" or ", near) + ". " + hint);
  }
}
