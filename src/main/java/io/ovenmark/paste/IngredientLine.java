package io.ovenmark.paste;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * One line of an ingredient list, taken apart. Which food it means is for {@link FoodMatcher} to
 * say.
 *
 * <pre>{@code
 * IngredientLine line = IngredientLine.read("1 1/2 cups almond meal, sifted");
 * line.amount().get().least();   // 1 1/2 cups
 * line.food();                   // almond meal
 * line.preparation();            // sifted
 * }</pre>
 *
 * @param text the line exactly as it was pasted
 * @param isHeading whether it heads the lines below it, as "For the topping:" does; its name is in
 *     {@code food}
 * @param amount how much; empty when none is said or it cannot be read
 * @param food the words for the food, as written; empty when there are none
 * @param preparation what is done to it, such as "sifted"; empty when nothing is said
 * @param remarks what stands in brackets and words about the amount, in order
 * @param alternatives the other foods that may be used instead, as written
 * @param optional whether it may be left out
 * @param doubts what is open; about the food nothing is said here
 */
public record IngredientLine(
    String text,
    boolean isHeading,
    Optional<PastedAmount> amount,
    String food,
    Optional<String> preparation,
    List<String> remarks,
    List<String> alternatives,
    boolean optional,
    List<Doubt> doubts) {
  private static final Predicate<String> DESCRIBES =
      Pattern.compile("\\d|(?i)\\b(?:plus|for|not|no|or|without|with|see|from|instead)\\b")
          .asPredicate()
          .negate();

  /** Copies the lists. */
  public IngredientLine {
    requireNonNull(text, "text");
    requireNonNull(amount, "amount");
    requireNonNull(food, "food");
    requireNonNull(preparation, "preparation");
    remarks = List.copyOf(remarks);
    alternatives = List.copyOf(alternatives);
    doubts = List.copyOf(doubts);
  }

  /**
   * Reads a line. Never fails: what is not understood is kept and doubted.
   *
   * @param text one line, not null; bullets and numbers in front do not count
   * @return its parts
   */
  public static IngredientLine read(String text) {
    return new LineReader(requireNonNull(text, "text")).read();
  }

  /**
   * The words beside the food's that may tell foods apart, such as "unsalted" after a comma. What
   * speaks of a further amount, a purpose or another food does not.
   */
  String descriptors() {
    List<String> parts = new ArrayList<>(remarks);
    preparation.ifPresent(text -> parts.addAll(List.of(text.split(", "))));
    return String.join(" ", parts.stream().filter(DESCRIBES).toList());
  }
}
