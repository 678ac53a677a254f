package io.ovenmark.compare;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a food mostly brings: the part that makes up at least half of its dry matter. A rule of this
 * program, chosen so that egg white and whey isolate, butter and oil, sugar and erythritol share a
 * role while salt and psyllium do not.
 */
enum FoodRole {
  WATER(false),
  PROTEIN(true),
  FAT(true),
  SWEET(true),
  FIBRE(true),
  MINERAL(false),
  MIXED(false);

  private static final double WATERY = 97;
  private static final double HALF = 0.5;

  /** How many times heavier one of two lines may be that stand in for each other. */
  private static final double GREATEST_RATIO = 4;

  private final boolean tellsEnough;

  FoodRole(boolean tellsEnough) {
    this.tellsEnough = tellsEnough;
  }

  /** Whether two foods of this role can stand in for each other though one is wet, one dry. */
  boolean tellsEnough() {
    return tellsEnough;
  }

  static FoodRole of(Food food) {
    double water = least(food, Nutrient.WATER);
    if (water >= WATERY) {
      return WATER;
    }
    double half = (100 - water) * HALF;
    if (least(food, Nutrient.PROTEIN) >= half) {
      return PROTEIN;
    }
    if (least(food, Nutrient.FAT) >= half) {
      return FAT;
    }
    double sweet =
        least(food, Nutrient.SUGARS)
            + least(food, Nutrient.POLYOLS)
            + least(food, Nutrient.ALLULOSE);
    if (sweet >= half) {
      return SWEET;
    }
    if (least(food, Nutrient.FIBRE) >= half) {
      return FIBRE;
    }
    return least(food, Nutrient.ASH) >= half ? MINERAL : MIXED;
  }

  /**
   * Whether two amounts of foods are of one order: by mass or by dry matter, within a factor of 4.
   */
  static boolean ofOneOrder(WorksheetLine one, double grams, WorksheetLine other, double others) {
    return within(grams, others)
        || within(grams * dryShare(one.food()), others * dryShare(other.food()));
  }

  /** Mass in grams; empty when it is not known or 0. */
  static OptionalDouble weighed(WorksheetLine line) {
    Quantity grams = line.grams();
    return grams.isKnown() && grams.low() > 0 ? grams.value() : OptionalDouble.empty();
  }

  private static double dryShare(Optional<Food> food) {
    return 1 - food.map(known -> least(known, Nutrient.WATER)).orElse(0.0) / 100;
  }

  private static boolean within(double a, double b) {
    return a > 0 && b > 0 && Math.max(a, b) <= GREATEST_RATIO * Math.min(a, b);
  }

  private static double least(Food food, Nutrient nutrient) {
    return Math.max(0, food.per100g().get(nutrient).low());
  }
}
