package io.ovenmark.desk;

import io.ovenmark.measure.Quantity;
import io.ovenmark.publish.card.Card;
import java.util.List;
import java.util.Map;

/** What programs see of cards. */
public final class CardViews {
  private CardViews() {}

  /**
   * A card in its forms.
   *
   * @param address the revision
   * @param name the formula's name
   * @param paper the paper, {@code a4}, {@code letter} or {@code 4x6}
   * @param masses {@code g} or {@code oz}
   * @param times by how much it was scaled
   * @param yield what it gives, in words
   * @param photo path of its picture, or null
   * @param photos the pictures that could be chosen
   * @param ingredients in order of use
   * @param method the steps
   * @param oven the stages in the oven, a line each
   * @param perPiece the figures of a piece, in words
   * @param basis how they were worked out
   * @param allergens what the foods contain
   * @param allergensUnknownIn foods of which that is not known
   * @param cautions what to mind, first what the formula calls for
   * @param storage how to keep it, or null
   * @param remarks what to look at before it is published; not on the card
   * @param markdown the card as Markdown
   * @param text the card as plain text of at most 5 000 signs
   * @param shortText the same with at most 1 500
   * @param jsonLd the card in the words of schema.org
   */
  public record CardSheet(
      String address,
      String name,
      String paper,
      String masses,
      double times,
      String yield,
      String photo,
      List<PhotoChoice> photos,
      List<IngredientView> ingredients,
      List<String> method,
      List<String> oven,
      List<FactView> perPiece,
      List<String> basis,
      List<String> allergens,
      List<String> allergensUnknownIn,
      List<CautionView> cautions,
      String storage,
      List<String> remarks,
      String markdown,
      TextView text,
      TextView shortText,
      Map<String, Object> jsonLd) {}

  /**
   * A picture that could be chosen.
   *
   * @param file its path
   * @param caption what is said of it
   */
  public record PhotoChoice(String file, String caption) {}

  /**
   * An ingredient.
   *
   * @param mass such as {@code 110 g}; the amount as entered when its mass is unknown
   * @param grams the unrounded mass, or null when it is unknown
   * @param measure the nearest measure of a kitchen with its error over 5 %, or null
   * @param measureGrams what that measure weighs, or null
   * @param name the food
   * @param note its note, or null
   */
  public record IngredientView(
      String mass, Double grams, String measure, Double measureGrams, String name, String note) {}

  /**
   * A figure of a piece.
   *
   * @param figure its key
   * @param label its name
   * @param text in words
   * @param value the unrounded figure in the unit of its key, or null when it is not exactly known
   * @param atLeast what it is at least, or null when that is not known
   * @param atMost what it is at most, or null when that is not known
   */
  public record FactView(
      String figure, String label, String text, Double value, Double atLeast, Double atMost) {
    static FactView of(Card.Fact fact) {
      Quantity quantity = fact.quantity();
      return new FactView(
          fact.key(),
          fact.label(),
          fact.text(),
          quantity.isKnown() ? quantity.low() : null,
          finite(quantity.low()),
          finite(quantity.high()));
    }

    private static Double finite(double bound) {
      return Double.isFinite(bound) ? bound : null;
    }
  }

  /**
   * Something to mind.
   *
   * @param caution the key by which it can be worded longer; null for one that was added
   * @param own what the formula calls for, which always stands; null for one that was added
   * @param text the words on the card: those of its own, and what was written for it
   */
  public record CautionView(String caution, String own, String text) {}

  /**
   * A plain text.
   *
   * @param text the text
   * @param signs its length
   * @param limit the most signs
   * @param fits whether it is within the limit
   * @param leftOut what was left out
   */
  public record TextView(
      String text, int signs, int limit, boolean fits, List<String> leftOut) {}
}
