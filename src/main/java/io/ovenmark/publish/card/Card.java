package io.ovenmark.publish.card;

import io.ovenmark.measure.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A card before it is laid out: words and numbers as they are printed. What is not known says so.
 *
 * @param name the formula's name
 * @param description a sentence or two; empty when there is none
 * @param yield such as {@code 6 pieces of 84.7 g dough, 72 g baked}
 * @param servings the same in two words, for programs: {@code 6 pieces}; empty when unknown
 * @param photo the picture; empty when there is none
 * @param ingredients in order of use
 * @param method the steps
 * @param stages the stages in the oven
 * @param figures the macros of a piece
 * @param basis how they were worked out, in sentences
 * @param contains allergens that the foods contain
 * @param allergensUnknownIn foods of which that is not known
 * @param cautions what to mind, never empty
 * @param storage how to keep it; empty when not said
 * @param address the revision, such as {@code seeded-lupin-bun@5}
 * @param date the day of the revision, as {@code 2026-09-14}; empty when it is not a revision
 * @param times by how much it was scaled; 1 when it was not
 */
public record Card(
    String name,
    Optional<String> description,
    String yield,
    Optional<String> servings,
    Optional<CardPhoto> photo,
    List<Ingredient> ingredients,
    List<String> method,
    List<Stage> stages,
    List<Fact> figures,
    List<String> basis,
    List<String> contains,
    List<String> allergensUnknownIn,
    List<String> cautions,
    Optional<String> storage,
    String address,
    Optional<String> date,
    double times) {

  /** Copies the lists. */
  public Card {
    ingredients = List.copyOf(ingredients);
    method = List.copyOf(method);
    stages = List.copyOf(stages);
    figures = List.copyOf(figures);
    basis = List.copyOf(basis);
    contains = List.copyOf(contains);
    allergensUnknownIn = List.copyOf(allergensUnknownIn);
    cautions = List.copyOf(cautions);
  }

  /**
   * An ingredient.
   *
   * @param mass such as {@code 110 g}; the amount as entered when its mass is unknown
   * @param grams the unrounded mass; empty when it is unknown
   * @param kitchen the nearest measure of a kitchen; empty when there is none
   * @param name the food
   * @param note what is said of it; empty when there is nothing
   */
  public record Ingredient(
      String mass,
      OptionalDouble grams,
      Optional<KitchenMeasure> kitchen,
      String name,
      Optional<String> note) {
    /**
     * Whether the mass is known.
     *
     * @return whether it is
     */
    public boolean known() {
      return grams.isPresent();
    }

    /**
     * The measure of a kitchen in words.
     *
     * @return such as {@code 1 cup}, with its error where that is large; empty when there is none
     */
    public Optional<String> measure() {
      return kitchen.map(KitchenMeasure::inWords);
    }

    /**
     * In one line.
     *
     * @return such as {@code 110 g (1 cup) lupin flour, sifted}
     */
    public String inOneLine() {
      return inOneLine(UnaryOperator.identity());
    }

    /** The same with what each text becomes that somebody wrote. */
    String inOneLine(UnaryOperator<String> written) {
      return mass
          + measure().map(text -> " (" + text + ")").orElse("")
          + " "
          + written.apply(name)
          + note.map(text -> ", " + written.apply(text)).orElse("");
    }
  }

  /**
   * A stage in the oven.
   *
   * @param heat such as {@code 205 °C (400 °F)}; empty when not stated
   * @param minutes such as {@code 21 min}; empty when not stated
   * @param rest rack, steam, vessel and note
   * @param isoDuration the time for programs, {@code PT21M}; empty when not stated
   */
  public record Stage(
      Optional<String> heat, Optional<String> minutes, List<String> rest,
      Optional<String> isoDuration) {
    /** Copies the list. */
    public Stage {
      rest = List.copyOf(rest);
    }

    /**
     * In one line.
     *
     * @return such as {@code 205 °C (400 °F), 21 min, middle rack}
     */
    public String inOneLine() {
      return inOneLine(UnaryOperator.identity());
    }

    /** The same with what each part becomes. */
    String inOneLine(UnaryOperator<String> written) {
      return parts().stream().map(written).collect(Collectors.joining(", "));
    }

    /** What is said of it, one after the other; that nothing is stated when nothing is. */
    List<String> parts() {
      List<String> parts = new ArrayList<>();
      heat.ifPresent(parts::add);
      minutes.ifPresent(parts::add);
      parts.addAll(rest);
      return parts.isEmpty() ? List.of("not stated") : parts;
    }
  }

  /**
   * A figure of a piece.
   *
   * @param key the figure's key, such as {@code protein_g}
   * @param label such as {@code protein}
   * @param text such as {@code 14.4 g}, {@code at least 3.1 g} or {@code unknown}
   * @param quantity the unrounded figure
   */
  public record Fact(String key, String label, String text, Quantity quantity) {
    /**
     * Whether it is known exactly.
     *
     * @return whether it is
     */
    public boolean known() {
      return quantity.isKnown();
    }
  }
}
