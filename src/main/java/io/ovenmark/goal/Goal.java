package io.ovenmark.goal;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Slug;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.util.List;
import java.util.Optional;

/**
 * What a formula is developed towards.
 *
 * @param slug the short name it is filed under
 * @param name its name for people
 * @param note anything else; empty when there is none
 * @param limits limits on figures
 * @param withoutAllergens allergens it must be free of, as words: an allergen's name or {@code
 *     gluten}
 * @param withoutFoods slugs of foods it must not contain
 * @param netCarbohydrate its own policy; empty for the notebook's
 * @param extras unknown fields
 */
public record Goal(
    String slug,
    String name,
    Optional<String> note,
    List<Limit> limits,
    List<String> withoutAllergens,
    List<String> withoutFoods,
    Optional<NetCarbohydrate> netCarbohydrate,
    Extras extras) {
  /** Checks and copies. */
  public Goal {
    Slug.check(slug);
    requireNonNull(name, "name");
    requireNonNull(note, "note");
    limits = List.copyOf(limits);
    withoutAllergens = List.copyOf(withoutAllergens);
    withoutFoods = List.copyOf(withoutFoods);
    requireNonNull(netCarbohydrate, "netCarbohydrate");
    requireNonNull(extras, "extras");
    if (name.isBlank()) {
      throw new IllegalArgumentException("A goal needs a name.\nGive it one.");
    }
    withoutFoods.forEach(Slug::check);
    for (String word : withoutAllergens) {
      if (Allergen.group(word).isEmpty()) {
        throw new IllegalArgumentException(
            "\"" + word + "\" is not an allergen that is known here.\n"
                + "Use a name such as \"eggs\", \"tree nuts\" or \"gluten\".");
      }
    }
  }
}
