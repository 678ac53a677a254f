package io.ovenmark.paste;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.JsonValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the properties of one schema.org Recipe, in whichever of the allowed forms they come. */
final class RecipeFields {
  private static final double SECONDS_A_MINUTE = 60;

  private final JsonValue.JsonObject recipe;
  private final List<String> remarks;

  RecipeFields(JsonValue.JsonObject recipe, List<String> remarks) {
    this.recipe = recipe;
    this.remarks = new ArrayList<>(remarks);
  }

  /** Gathers the recipes in a value, in the order in which they stand. */
  static void collect(JsonValue value, List<JsonValue.JsonObject> recipes) {
    if (value instanceof JsonValue.JsonArray array) {
      array.items().forEach(item -> collect(item, recipes));
    } else if (value instanceof JsonValue.JsonObject object) {
      if (isType(object, "Recipe")) {
        recipes.add(object);
      } else {
        object.members().values().forEach(member -> collect(member, recipes));
      }
    }
  }

  private static boolean isType(JsonValue.JsonObject object, String type) {
    return items(object.members().get("@type")).stream()
        .map(RecipeFields::text)
        .flatMap(Optional::stream)
        .map(name -> name.replaceFirst("^(?:https?://schema\\.org/|schema:)", ""))
        .anyMatch(type::equals);
  }

  RecipeJsonLd recipe() {
    List<String> ingredients = new ArrayList<>();
    ingredients("recipeIngredient", ingredients);
    if (ingredients.isEmpty()) {
      ingredients("ingredients", ingredients);
    }
    List<String> steps = new ArrayList<>();
    steps(recipe.members().get("recipeInstructions"), steps);
    if (ingredients.isEmpty()) {
      remarks.add("The recipe states no ingredients.");
    }
    OptionalDouble cook = minutes("cookTime");
    OptionalDouble perform = minutes("performTime");
    return new RecipeJsonLd(
        first("name"),
        first("description"),
        ingredients,
        steps,
        statedYield(),
        cook,
        perform,
        remarks);
  }

  private Optional<String> first(String name) {
    return items(recipe.members().get(name)).stream()
        .flatMap(item -> text(item).stream())
        .map(HtmlText::plain)
        .filter(text -> !text.isEmpty())
        .findFirst();
  }

  private void ingredients(String name, List<String> ingredients) {
    for (JsonValue item : items(recipe.members().get(name))) {
      ingredient(item, ingredients);
    }
  }

  private void ingredient(JsonValue item, List<String> ingredients) {
    if (item instanceof JsonValue.JsonString string) {
      ingredients.addAll(HtmlText.lines(string.value()));
    } else if (item instanceof JsonValue.JsonObject object) {
      JsonValue list = object.members().get("itemListElement");
      JsonValue inner = object.members().get("item");
      if (list != null) {
        items(list).forEach(each -> ingredient(each, ingredients));
      } else if (inner != null) {
        ingredient(inner, ingredients);
      } else {
        String parts =
            String.join(" ", said(object, "value"), said(object, "unitText"), said(object, "name"));
        String text = said(object, "text");
        String line = (text.isEmpty() ? parts : text).strip().replaceAll("\\s+", " ");
        if (!line.isEmpty()) {
          ingredients.add(line);
        }
      }
    } else if (!(item instanceof JsonValue.JsonNull)) {
      ingredients.add(text(item).orElse(item.kind()));
    }
  }

  private static String said(JsonValue.JsonObject object, String name) {
    JsonValue value = object.members().get(name);
    return value == null ? "" : text(value).map(HtmlText::plain).orElse("");
  }

  /** Steps as one text, a list of texts, steps, sections of steps, or a list object. */
  private void steps(JsonValue value, List<String> steps) {
    for (JsonValue item : items(value)) {
      if (item instanceof JsonValue.JsonString string) {
        HtmlText.lines(string.value()).stream()
            .map(PasteText::withoutNumber)
            .filter(step -> !step.isBlank())
            .forEach(steps::add);
      } else if (item instanceof JsonValue.JsonArray array) {
        steps(array, steps);
      } else if (item instanceof JsonValue.JsonObject object) {
        step(object, steps);
      }
    }
  }

  private void step(JsonValue.JsonObject object, List<String> steps) {
    JsonValue list = object.members().get("itemListElement");
    JsonValue inner = object.members().get("item");
    String text = said(object, "text");
    String name = said(object, "name");
    if (list == null && inner != null) {
      steps(inner, steps);
    } else if (!text.isEmpty() || list == null) {
      String step = text.isEmpty() ? name : text;
      if (!step.isEmpty()) {
        steps.add(PasteText.withoutNumber(step));
      }
    } else {
      int before = steps.size();
      steps(list, steps);
      boolean section = isType(object, "HowToSection");
      if (section && !name.isEmpty() && steps.size() > before) {
        steps.set(before, name.replaceFirst(":$", "") + ": " + steps.get(before));
      }
    }
  }

  /** The yield that says most: one with words before a bare number. */
  private Optional<String> statedYield() {
    JsonValue value = recipe.members().get("recipeYield");
    List<String> said = new ArrayList<>();
    for (JsonValue item : items(value == null ? recipe.members().get("yield") : value)) {
      if (item instanceof JsonValue.JsonObject object) {
        said.add((said(object, "value") + " " + said(object, "unitText")).strip());
      } else {
        text(item).map(HtmlText::plain).ifPresent(said::add);
      }
    }
    said.removeIf(String::isEmpty);
    return said.stream()
        .filter(text -> !text.matches("[\\d.,\\s]+"))
        .findFirst()
        .or(() -> said.stream().findFirst());
  }

  private OptionalDouble minutes(String name) {
    Optional<String> text = first(name);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      double seconds = IsoDuration.seconds(text.get()).doubleValue();
      return seconds > 0 ? OptionalDouble.of(seconds / SECONDS_A_MINUTE) : OptionalDouble.empty();
    } catch (IllegalArgumentException e) {
      remarks.add(name + ": " + e.getMessage().replace('\n', ' '));
      return OptionalDouble.empty();
    }
  }

  private static List<JsonValue> items(JsonValue value) {
    if (value == null || value instanceof JsonValue.JsonNull) {
      return List.of();
    }
    return value instanceof JsonValue.JsonArray array ? array.items() : List.of(value);
  }

  private static Optional<String> text(JsonValue value) {
    if (value instanceof JsonValue.JsonString string) {
      return Optional.of(string.value());
    }
    return value instanceof JsonValue.JsonNumber number
        ? Optional.of(CanonicalJson.number(number.value()))
        : Optional.empty();
  }
}
