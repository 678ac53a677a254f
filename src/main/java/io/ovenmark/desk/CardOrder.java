package io.ovenmark.desk;

import java.util.List;

/**
 * What is asked of a card, as it is typed or sent. Every part may be null or blank.
 *
 * @param paper {@code a4}, {@code letter} or {@code 4x6}; null for A4
 * @param masses {@code g} or {@code oz}; null for grams
 * @param times by how much the formula is multiplied, such as {@code 2}; null for as it is
 * @param photo path of a photo of the formula, or {@code none}; null for one of its best bake
 * @param storage how to keep it; null when not said
 * @param more further cautions
 */
public record CardOrder(
    String paper, String masses, String times, String photo, String storage, List<String> more) {
  /** As the formula is, on A4, in grams. */
  public static final CardOrder USUAL = new CardOrder(null, null, null, null, null, null);

  /** Copies the list; null becomes empty. */
  public CardOrder {
    more = more == null ? List.of() : List.copyOf(more);
  }
}
