package io.ovenmark.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The published descriptions of the files of a notebook, as JSON Schema (2020-12). They say what
 * can be said in a schema; names that must be unique and numbers within texts are checked on
 * reading.
 */
public final class Schemas {
  private static final List<String> NAMES =
      List.of("formula", "bake", "food", "goal", "notebook", "tasting", "story");

  private Schemas() {}

  /**
   * The kinds of files that have a schema.
   *
   * @return {@code formula}, {@code bake}, {@code food}, {@code goal}, {@code notebook},
   *     {@code tasting}, {@code story}
   */
  public static List<String> names() {
    return NAMES;
  }

  /**
   * The text of a schema.
   *
   * @param name one of {@link #names}
   * @return the JSON text
   * @throws IllegalArgumentException when there is no schema of that name
   */
  public static String text(String name) {
    if (!NAMES.contains(name)) {
      throw new IllegalArgumentException(
          "There is no schema named \""
              + name
              + "\".\nUse one of "
              + String.join(", ", NAMES)
              + ".");
    }
    String resource = "/io/ovenmark/schema/" + name + ".schema.json";
    try (InputStream in = Schemas.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
