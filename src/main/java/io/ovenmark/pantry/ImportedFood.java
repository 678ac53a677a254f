package io.ovenmark.pantry;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Slug;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A chosen food of a table while its rows are being gathered. */
final class ImportedFood {
  final String id;
  final String description;
  final int group;
  private final Map<Nutrient, Quantity> figures = new EnumMap<>(Nutrient.class);
  private final Map<Nutrient, Integer> ranks = new EnumMap<>(Nutrient.class);
  private final List<HouseholdMeasure> household = new ArrayList<>();

  ImportedFood(String id, String description, int group) {
    this.id = id;
    this.description = description;
    this.group = group;
  }

  /** Takes a figure unless a better one is there; rank 0 is best. */
  void figure(Nutrient nutrient, int rank, double value) {
    if (rank < ranks.getOrDefault(nutrient, Integer.MAX_VALUE)) {
      ranks.put(nutrient, rank);
      figures.put(nutrient, Quantity.known(value));
    }
  }

  /** Takes a household weight unless one of the same name is there. */
  void household(HouseholdMeasure measure) {
    if (household.stream().noneMatch(known -> known.measure().equals(measure.measure()))) {
      household.add(measure);
    }
  }

  /** Whether all words are beginnings of words of the description. */
  static boolean fits(List<String> wanted, String description) {
    List<String> own = Words.of(description);
    for (String word : wanted) {
      String singular = Words.singular(word);
      if (own.stream().noneMatch(o -> o.startsWith(word) || o.startsWith(singular))) {
        return false;
      }
    }
    return true;
  }

  /** Makes the foods, each with a slug of its own. */
  static List<FoodImport.Found> finish(
      List<ImportedFood> foods, Source.Kind source, String note, Optional<FoodKind> kind) {
    Set<String> taken = new HashSet<>();
    List<FoodImport.Found> found = new ArrayList<>();
    for (ImportedFood food : foods) {
      String slug = Slug.of(food.description, "food-" + food.id);
      if (!taken.add(slug)) {
        String start = slug.substring(0, Math.min(slug.length(), Slug.LONGEST - 12));
        slug = Slug.of(start + "-" + food.id, "food-" + food.id);
        taken.add(slug);
      }
      found.add(food.finish(slug, source, note, kind));
    }
    return found;
  }

  private FoodImport.Found finish(
      String slug, Source.Kind source, String note, Optional<FoodKind> wanted) {
    Nutrients per100g = Nutrients.of(figures);
    FoodKind kind = wanted.orElseGet(() -> KindGuess.of(description, group, per100g));
    String full =
        wanted.isPresent() ? note : note + " The kind \"" + kind.key() + "\" is a guess: check it.";
    Food food =
        new Food(
            slug,
            description,
            kind,
            new Source(source, Optional.of(id), Optional.of(full)),
            per100g,
            household,
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Extras.NONE);
    return new FoodImport.Found(food, wanted.isEmpty());
  }
}
