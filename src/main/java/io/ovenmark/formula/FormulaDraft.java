package io.ovenmark.formula;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Problem;
import java.util.List;

/**
 * A formula that is still being typed. What cannot be read yet is left open in the formula: an
 * amount is {@link io.ovenmark.measure.Amount#unread}, a food {@link #NO_FOOD}, a name {@link
 * #NO_NAME}, anything else absent.
 *
 * @param formula what can be read
 * @param places for each line of the formula its index in the document; blank lines have none
 * @param problems what cannot be read, in the order of reading; empty when the formula may be
 *     written
 */
public record FormulaDraft(Formula formula, List<Integer> places, List<Problem> problems) {
  /** The food of a line for which none is chosen yet; no pantry has it. */
  public static final String NO_FOOD = "food-not-chosen-yet";

  /** The name of a formula that has none yet. */
  public static final String NO_NAME = "Unnamed";

  /** Copies the lists; nothing is reported twice. */
  public FormulaDraft {
    requireNonNull(formula, "formula");
    places = List.copyOf(places);
    problems = problems.stream().distinct().toList();
  }
}
