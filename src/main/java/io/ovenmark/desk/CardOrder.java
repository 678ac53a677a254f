package io.ovenmark.desk;

import java.util.List;

/**
 * What is asked of a card, as it is typed or sent. Every part may be null or blank.
 *
 * @param paper {@code a4}, {@code letter} or {@code 4x6}; null for A4
 * @param masses {@code g} or {@code oz}; null for grams
 * @param times by how much the formula is multiplied, such as {@code 2}; null for as it is
 * @param photo path of a photo of the formula, or {@code none}; null for one of its best bake
 * @param storage how to keep it; null for what the formula says of it
 * @param more further cautions
 * @param words longer wordings of cautions that belong to the formula, each as {@code KEY=TEXT}
 */
public record CardOrder(
    String paper,
    String masses,
    String times,
    String photo,
    String storage,
    List<String> more,
    List<String> words) {
  /** As the formula is, on A4, in grams. */
  public static final CardOrder USUAL = new CardOrder(null, null, null, null, null, null, null);

  /** Copies the lists; null becomes empty. */
  public CardOrder {
    more = more == null ? List.of() : List.copyOf(more);
    words = words == null ? List.of() : List.copyOf(words);
  }
}
