package io.ovenmark.pantry;

import io.ovenmark.measure.Quantity;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A food fact by fact, in the words that {@link FoodEdit} reads back: what a form shows in its
 * fields, and what is set side by side when two people changed the same food.
 *
 * <pre>{@code
 * FoodFacts.of(lupin)  →  name: lupin flour, kind: dry, protein_g: 37.2, water_g: (empty),
 *                         weight.cup: 112 g, allergens: lupin, price: 5.1 EUR for 1000 g
 * }</pre>
 */
public final class FoodFacts {
  /** What the name of a household measure begins with. */
  public static final String WEIGHT = "weight.";

  /** The fact that says where the figures come from; it is told, and cannot be edited. */
  public static final String SOURCE = "source";

  private FoodFacts() {}

  /**
   * All facts of a food.
   *
   * @param food the food
   * @return by name, in a fixed order; an empty text stands for unknown
   */
  public static Map<String, String> of(Food food) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("name", food.name());
    facts.put("kind", food.kind().key());
    facts.put(SOURCE, source(food.source()));
    food.per100g().toMap().forEach((nutrient, figure) -> facts.put(nutrient.key(), text(figure)));
    food.household()
        .forEach(each -> facts.put(WEIGHT + each.measure(), plain(each.grams()) + " g"));
    facts.put(
        "density",
        food.densityGramsPerMillilitre().isPresent()
            ? plain(food.densityGramsPerMillilitre().getAsDouble())
            : "");
    facts.put("allergens", food.allergens().map(FoodFacts::allergens).orElse(""));
    facts.put("polyol", food.polyol().orElse(""));
    facts.put("price", food.price().map(FoodFacts::price).orElse(""));
    return Collections.unmodifiableMap(facts);
  }

  /**
   * The name of a fact for people.
   *
   * @param fact such as {@code protein_g} or {@code weight.cup}
   * @return such as {@code protein, g} or {@code weight of 1 cup}
   */
  public static String label(String fact) {
    if (fact.startsWith(WEIGHT)) {
      return "weight of 1 " + fact.substring(WEIGHT.length());
    }
    return Nutrient.withKey(fact)
        .map(nutrient -> nutrient.label() + ", " + nutrient.unit())
        .orElse(fact);
  }

  private static String source(Source source) {
    return source.kind().key()
        + source.id().map(id -> " " + id).orElse("")
        + source.note().map(note -> ": " + note).orElse("");
  }

  private static String allergens(Set<Allergen> set) {
    return set.isEmpty()
        ? "none"
        : set.stream().map(Allergen::key).collect(Collectors.joining(", "));
  }

  private static String price(Price price) {
    return price.amount().toPlainString()
        + " " + price.currency() + " for " + plain(price.grams()) + " g"
        + price.date().map(day -> " on " + day).orElse("");
  }

  private static String text(Quantity figure) {
    return figure.isKnown() ? plain(figure.low()) : "";
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
