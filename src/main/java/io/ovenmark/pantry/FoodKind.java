package io.ovenmark.pantry;

import java.util.Optional;

/** The part that a food plays in a dough; the liquid ratio divides liquids by dry foods. */
public enum FoodKind {
  /** Flours, powders, seeds, sugars, salt: the divisor of the liquid ratio. */
  DRY("dry"),
  /** Water, milk, egg, syrup: counted as liquid. */
  LIQUID("liquid"),
  /** Oils, butter, nut pastes. */
  FAT("fat"),
  /** Cheeses. */
  DAIRY_SOLID("dairy solid"),
  /** Vegetables and fruit. */
  PRODUCE("produce");

  private final String key;

  FoodKind(String key) {
    this.key = key;
  }

  /**
   * The name in JSON and for people.
   *
   * @return such as {@code dairy solid}
   */
  public String key() {
    return key;
  }

  /**
   * Finds a kind by its name.
   *
   * @param key such as {@code dry}
   * @return the kind, empty when there is none
   */
  public static Optional<FoodKind> withKey(String key) {
    for (FoodKind kind : values()) {
      if (kind.key.equals(key)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
