package io.ovenmark.lever;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import java.util.Locale;

/** What of a line stays the same when another food stands in for it. */
public enum Kept {
  /** Its protein. */
  PROTEIN("protein", "protein"),
  /** What is not water. */
  DRY_MASS("dry", "dry mass"),
  /** Its fat. */
  FAT("fat", "fat"),
  /** Its water, and so what it does to the dough's moisture. */
  WATER("water", "water"),
  /** What it weighs. */
  MASS("mass", "mass");

  private final String key;
  private final String label;

  Kept(String key, String label) {
    this.key = key;
    this.label = label;
  }

  /**
   * The name in JSON and on the command line.
   *
   * @return such as {@code dry}
   */
  public String key() {
    return key;
  }

  /**
   * The name for people.
   *
   * @return such as {@code dry mass}
   */
  public String label() {
    return label;
  }

  /**
   * How much of it 100 g of a food hold.
   *
   * @param food the food
   * @return grams, known in part or not at all where the food's figure is; for the mass itself 100
   */
  public Quantity per100g(Food food) {
    return switch (this) {
      case PROTEIN -> food.per100g().get(Nutrient.PROTEIN);
      case FAT -> food.per100g().get(Nutrient.FAT);
      case WATER -> food.per100g().get(Nutrient.WATER);
      case DRY_MASS ->
          Quantity.known(100).minus(food.per100g().get(Nutrient.WATER)).notNegative();
      case MASS -> Quantity.known(100);
    };
  }

  /**
   * What is kept when nobody says otherwise: the water of a liquid, the fat of a fat, the dry mass
   * of the rest; the mass where that figure is not known or 0. Common practice, no source.
   *
   * @param food the food that is replaced
   * @return what is kept
   */
  public static Kept usual(Food food) {
    Kept usual =
        switch (food.kind()) {
          case LIQUID -> WATER;
          case FAT -> FAT;
          default -> DRY_MASS;
        };
    Quantity held = usual.per100g(food);
    return held.isKnown() && held.low() > 0 ? usual : MASS;
  }

  /**
   * Reads what a person typed.
   *
   * @param text protein, dry, fat, water or mass; also {@code dry mass} and {@code moisture}
   * @return what is kept
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Kept read(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    for (Kept kept : values()) {
      if (plain.equals(kept.key) || plain.equals(kept.label)) {
        return kept;
      }
    }
    if (plain.equals("moisture")) {
      return WATER;
    }
    throw new IllegalArgumentException(
        "What shall be kept is not understood.\nWrite protein, dry, fat, water or mass.");
  }
}
