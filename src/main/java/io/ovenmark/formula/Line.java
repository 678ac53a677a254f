package io.ovenmark.formula;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Slug;
import java.util.Optional;

/**
 * One ingredient of a formula.
 *
 * @param id stable name of the line within its formula; survives renaming, replacing the food and
 *     reordering
 * @param food slug of the food
 * @param amount what was entered, a tonne at most
 * @param flour whether it counts as flour, the base of baker's percentages
 * @param note anything to remember, such as "35 °C"; empty when there is none
 * @param extras unknown fields
 */
public record Line(
    String id, String food, Amount amount, boolean flour, Optional<String> note, Extras extras) {
  /** Checks that nothing is null, that the names are slugs and that it is a tonne at most. */
  public Line {
    Slug.check(id);
    Slug.check(food);
    checked(amount);
    requireNonNull(note, "note");
    requireNonNull(extras, "extras");
  }

  /**
   * Checks that an amount is one that a line may carry.
   *
   * @param amount the amount, not null
   * @return the same amount
   * @throws IllegalArgumentException with a sentence and a remedy when it is more than a tonne
   */
  static Amount checked(Amount amount) {
    requireNonNull(amount, "amount");
    if (amount
        .grams()
        .filter(grams -> grams.compareTo(FormulaCodec.GREATEST_GRAMS) > 0)
        .isPresent()) {
      throw new IllegalArgumentException(
          "The amount \"" + amount + "\" is more than a tonne.\nCheck the number and the unit.");
    }
    return amount;
  }

  /**
   * A line without note or extras.
   *
   * @param id name of the line
   * @param food slug of the food
   * @param amount the amount
   * @return the line
   */
  public static Line of(String id, String food, Amount amount) {
    return new Line(id, food, amount, false, Optional.empty(), Extras.NONE);
  }

  /**
   * The same line with another amount.
   *
   * @param next the amount
   * @return a new line
   */
  public Line withAmount(Amount next) {
    return new Line(id, food, next, flour, note, extras);
  }

  /**
   * The same line with another food.
   *
   * @param next slug of the food
   * @return a new line
   */
  public Line withFood(String next) {
    return new Line(id, next, amount, flour, note, extras);
  }

  /**
   * The same line with or without the flour mark.
   *
   * @param next whether it counts as flour
   * @return a new line
   */
  public Line withFlour(boolean next) {
    return new Line(id, food, amount, next, note, extras);
  }

  /**
   * The same line with another note.
   *
   * @param next the note, empty for none
   * @return a new line
   */
  public Line withNote(Optional<String> next) {
    return new Line(id, food, amount, flour, next, extras);
  }

  /**
   * The same line with other unknown fields.
   *
   * @param next the fields
   * @return a new line
   */
  public Line withExtras(Extras next) {
    return new Line(id, food, amount, flour, note, next);
  }
}
