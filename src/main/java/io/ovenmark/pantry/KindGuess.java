package io.ovenmark.pantry;

import io.ovenmark.measure.Quantity;
import java.util.List;

/**
 * Guesses which part a food of a published table plays in a dough, as the tables do not say: from
 * the words of its description, its food group and its water and fat. The guess is always marked.
 */
final class KindGuess {
  /** Food groups of USDA's tables, by the first two digits of the group code. */
  private static final int FATS = 4;

  private static final int FRUITS = 9;
  private static final int VEGETABLES = 11;
  private static final double MOIST = 50;
  private static final double MOSTLY_FAT = 70;

  private static final List<String> SYRUPS = List.of("syrup", "honey", "molass", "nectar");
  private static final List<String> PASTES = List.of("butter", "tahini", "paste");
  private static final List<String> DRIED = List.of("powder", "flour", "dried", "dry", "meal");

  private KindGuess() {}

  /**
   * Guesses.
   *
   * @param description the food's description
   * @param group number of its food group, 0 when unknown
   * @param per100g its composition
   */
  static FoodKind of(String description, int group, Nutrients per100g) {
    List<String> words = Words.of(description).stream().map(Words::singular).toList();
    double water = known(per100g.get(Nutrient.WATER));
    double fat = known(per100g.get(Nutrient.FAT));
    if (words.contains("cheese") && water < 85) {
      return FoodKind.DAIRY_SOLID;
    }
    if (fat >= MOSTLY_FAT && (group == FATS || words.contains("butter") || words.contains("oil"))) {
      return FoodKind.FAT;
    }
    if (fat >= 40 && words.stream().anyMatch(PASTES::contains)) {
      return FoodKind.FAT;
    }
    if (words.stream().anyMatch(SYRUPS::contains) && words.stream().noneMatch(DRIED::contains)) {
      return FoodKind.LIQUID;
    }
    boolean moist = water > MOIST;
    boolean grown = group == FRUITS || group == VEGETABLES;
    if (moist && grown && !words.contains("juice")) {
      return FoodKind.PRODUCE;
    }
    return moist ? FoodKind.LIQUID : FoodKind.DRY;
  }

  private static double known(Quantity figure) {
    return figure.value().orElse(-1);
  }
}
