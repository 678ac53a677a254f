package io.ovenmark.publish.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A card as data for programs: a Recipe with NutritionInformation in the words of schema.org. A
 * figure that is not exactly known is left out, since the vocabulary has no word for "at least".
 */
public final class CardJsonLd {
  /** The vocabulary's property for a figure. */
  private static final Map<String, String> PROPERTIES =
      Map.of(
          "energy_kcal", "calories",
          "protein_g", "proteinContent",
          "fat_g", "fatContent",
          "saturated_fat_g", "saturatedFatContent",
          "carbohydrate_g", "carbohydrateContent",
          "fibre_g", "fiberContent",
          "sugars_g", "sugarContent",
          "sodium_mg", "sodiumContent");

  private CardJsonLd() {}

  /**
   * Draws it up.
   *
   * @param card the card
   * @return members in a fixed order: texts, lists and maps
   */
  public static Map<String, Object> of(Card card) {
    Map<String, Object> recipe = new LinkedHashMap<>();
    recipe.put("@context", "https://schema.org");
    recipe.put("@type", "Recipe");
    recipe.put("name", card.name());
    card.description().ifPresent(text -> recipe.put("description", text));
    card.date().ifPresent(day -> recipe.put("datePublished", day));
    recipe.put("version", card.address());
    card.servings().ifPresent(text -> recipe.put("recipeYield", text));
    if (!card.ingredients().isEmpty()) {
      recipe.put(
          "recipeIngredient",
          card.ingredients().stream().map(Card.Ingredient::inOneLine).toList());
    }
    recipe.put("recipeInstructions", steps(card));
    cookTime(card).ifPresent(time -> recipe.put("cookTime", time));
    nutrition(card).ifPresent(figures -> recipe.put("nutrition", figures));
    return recipe;
  }

  private static List<Map<String, Object>> steps(Card card) {
    List<String> texts = new ArrayList<>(card.method());
    for (Card.Stage stage : card.stages()) {
      texts.add("Oven: " + stage.inOneLine() + ".");
    }
    card.storage().ifPresent(text -> texts.add("Storage: " + text));
    texts.add("To mind: " + String.join(" ", card.cautions()));
    List<Map<String, Object>> steps = new ArrayList<>();
    for (String text : texts) {
      Map<String, Object> step = new LinkedHashMap<>();
      step.put("@type", "HowToStep");
      step.put("text", text);
      steps.add(step);
    }
    return steps;
  }

  /** The whole time in the oven, when that of every stage is known. */
  private static Optional<String> cookTime(Card card) {
    long minutes = 0;
    for (Card.Stage stage : card.stages()) {
      if (stage.isoDuration().isEmpty()) {
        return Optional.empty();
      }
      String text = stage.isoDuration().get();
      minutes += Long.parseLong(text.substring(2, text.length() - 1));
    }
    return card.stages().isEmpty() ? Optional.empty() : Optional.of("PT" + minutes + "M");
  }

  /** The figures that are exactly known; empty when none of them is. */
  private static Optional<Map<String, Object>> nutrition(Card card) {
    Map<String, Object> nutrition = new LinkedHashMap<>();
    nutrition.put("@type", "NutritionInformation");
    nutrition.put("servingSize", "1 piece");
    for (Card.Fact fact : card.figures()) {
      String property = PROPERTIES.get(fact.key());
      if (property != null && fact.known()) {
        nutrition.put(property, fact.text().replace("kcal", "calories"));
      }
    }
    return nutrition.size() > 2 ? Optional.of(nutrition) : Optional.empty();
  }
}
