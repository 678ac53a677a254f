package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.paste.LineChoices;
import java.util.Map;
import java.util.Set;

/**
 * What a person settled about pasted text.
 *
 * @param foods short name of the food by the words that a line has for it
 * @param lines amounts that are meant, and lines to leave out
 */
public record PasteChoices(Map<String, String> foods, LineChoices lines) {
  /** Nothing is settled. */
  public static final PasteChoices NONE = ofFoods(Map.of());

  /** Copies the map. */
  public PasteChoices {
    foods = Map.copyOf(foods);
    requireNonNull(lines, "lines");
  }

  /**
   * All that can be settled.
   *
   * @param foods short name of the food by the words that a line has for it
   * @param amounts the amount that is meant, as one writes it, by the line's number or text
   * @param leftOut number or text of each line that does not become part of the formula
   * @return the choices
   */
  public static PasteChoices of(
      Map<String, String> foods, Map<String, String> amounts, Set<String> leftOut) {
    return new PasteChoices(foods, new LineChoices(amounts, leftOut));
  }

  /**
   * Foods alone.
   *
   * @param foods short name of the food by the words that a line has for it
   * @return the choices
   */
  public static PasteChoices ofFoods(Map<String, String> foods) {
    return new PasteChoices(foods, LineChoices.NONE);
  }
}
