package io.ovenmark.worksheet;

import java.util.Optional;

/** What an amount of a nutrient is stated for. */
public enum Basis {
  /** The whole batch as weighed, before handling loss. */
  BATCH("per_batch", "batch"),
  /** One piece. */
  PIECE("per_piece", "piece"),
  /** 100 g of dough. */
  DOUGH_100_G("per_100_g_dough", "100 g dough"),
  /** 100 g as baked; unknown until dough and baked mass of a piece were measured. */
  BAKED_100_G("per_100_g_baked", "100 g baked");

  private final String key;
  private final String label;

  Basis(String key, String label) {
    this.key = key;
    this.label = label;
  }

  /**
   * The name in JSON output.
   *
   * @return such as {@code per_piece}
   */
  public String key() {
    return key;
  }

  /**
   * The name for people and in goals.
   *
   * @return such as {@code piece}
   */
  public String label() {
    return label;
  }

  /**
   * Finds a basis by its label.
   *
   * @param label such as {@code piece}
   * @return the basis, empty when there is none
   */
  public static Optional<Basis> withLabel(String label) {
    for (Basis basis : values()) {
      if (basis.label.equals(label)) {
        return Optional.of(basis);
      }
    }
    return Optional.empty();
  }
}
