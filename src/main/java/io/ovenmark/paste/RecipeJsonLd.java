package io.ovenmark.paste;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.JsonReader;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Position;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The strings of a schema.org Recipe written as JSON-LD: the bare object, within {@code @graph} or
 * a list, or in a script element of a page. Names of types and properties are those of the published
 * schema.org vocabulary (its file {@code schema.ttl}): name, description, recipeIngredient,
 * recipeInstructions with HowToStep, HowToSection and text, recipeYield and its
 * parent yield, performTime; from memory: itemListElement, cookTime, and ingredients, which
 * recipeIngredient superseded.
 *
 * <pre>{@code
 * RecipeJsonLd recipe = RecipeJsonLd.read(bytes);
 * PastedFormula pasted = PastedFormula.of(recipe, matcher);
 * }</pre>
 *
 * @param name the recipe's name; empty when it has none
 * @param description its description; empty when it has none
 * @param ingredients its ingredients as they are written, one each
 * @param instructions its steps in order; the first of a section begins with the section's name
 * @param yield what it gives, as it is written; empty when nothing is said
 * @param cookMinutes the cook time; empty when it is not stated or cannot be read
 * @param performMinutes the time to do it; empty likewise
 * @param remarks what could not be used and why, in sentences
 */
public record RecipeJsonLd(
    Optional<String> name,
    Optional<String> description,
    List<String> ingredients,
    List<String> instructions,
    Optional<String> yield,
    OptionalDouble cookMinutes,
    OptionalDouble performMinutes,
    List<String> remarks) {
  private static final String FILE = "pasted recipe";

  /** Copies the lists. */
  public RecipeJsonLd {
    requireNonNull(name, "name");
    requireNonNull(description, "description");
    ingredients = List.copyOf(ingredients);
    instructions = List.copyOf(instructions);
    requireNonNull(yield, "yield");
    requireNonNull(cookMinutes, "cookMinutes");
    requireNonNull(performMinutes, "performMinutes");
    remarks = List.copyOf(remarks);
  }

  /**
   * Whether a text is meant as JSON or as a page with JSON-LD, and not as lines of text.
   *
   * @param text any text
   * @return true when {@link #read} is the way to read it
   */
  public static boolean isMeant(String text) {
    String start = withoutMark(text);
    if (start.startsWith("{")) {
      return true;
    }
    if (start.startsWith("[")) {
      String inside = start.substring(1).stripLeading();
      return inside.startsWith("{") || inside.startsWith("[");
    }
    return start.startsWith("<")
        && (start.regionMatches(true, 0, "<!doctype", 0, 9)
            || start.regionMatches(true, 0, "<html", 0, 5)
            || !HtmlText.jsonLd(start).isEmpty());
  }

  /** Without a byte order mark and blanks in front. */
  private static String withoutMark(String text) {
    String start = text.stripLeading();
    return start.startsWith("\uFEFF") ? start.substring(1).stripLeading() : start;
  }

  /**
   * Reads JSON-LD or a page that holds it.
   *
   * @param utf8 the bytes
   * @return the first recipe in it
   * @throws UnreadableException when it is not JSON, or holds no recipe
   */
  public static RecipeJsonLd read(byte[] utf8) {
    return read(FILE, utf8);
  }

  /**
   * Reads JSON-LD or a page that holds it.
   *
   * @param file the name used in messages
   * @param utf8 the bytes
   * @return the first recipe in it
   * @throws UnreadableException when it is not JSON, or holds no recipe
   */
  public static RecipeJsonLd read(String file, byte[] utf8) {
    String text = new String(utf8, StandardCharsets.UTF_8);
    List<JsonValue.JsonObject> recipes = new ArrayList<>();
    if (withoutMark(text).startsWith("<")) {
      page(file, text, recipes);
    } else {
      RecipeFields.collect(JsonReader.read(file, utf8), recipes);
    }
    if (recipes.isEmpty()) {
      throw new UnreadableException(
          List.of(
              new Problem(
                  file,
                  Position.NONE,
                  "",
                  "There is no schema.org recipe in it.",
                  "Paste an object whose \"@type\" is \"Recipe\", or the ingredient lines"
                      + " themselves.")));
    }
    List<String> remarks = new ArrayList<>();
    if (recipes.size() > 1) {
      remarks.add("There are " + recipes.size() + " recipes in it; the first is read.");
    }
    return new RecipeFields(recipes.get(0), remarks).recipe();
  }

  private static void page(String file, String text, List<JsonValue.JsonObject> recipes) {
    List<UnreadableException> faults = new ArrayList<>();
    for (HtmlText.Block block : HtmlText.jsonLd(text)) {
      try {
        String padded = "\n".repeat(block.linesBefore()) + block.text();
        RecipeFields.collect(
            JsonReader.read(file, padded.getBytes(StandardCharsets.UTF_8)), recipes);
      } catch (UnreadableException e) {
        faults.add(e);
      }
    }
    if (recipes.isEmpty() && !faults.isEmpty()) {
      throw faults.get(0);
    }
  }
}
