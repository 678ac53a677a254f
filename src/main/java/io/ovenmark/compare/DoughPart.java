package io.ovenmark.compare;

import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.FoodWork;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.Optional;
import java.util.Set;

/** The part that a line plays in a dough, in the order in which a table of lines tells them. */
public enum DoughPart {
  /** Lines marked as flour. */
  FLOUR("flour"),
  /** Gums, fibre and starch that bind. */
  BINDERS("binders and fibre"),
  /** Protein powders. */
  PROTEIN("protein powders"),
  /** Water, milk and other liquids. */
  LIQUID("water and other liquids"),
  /** Eggs, fresh or dried. */
  EGG("egg"),
  /** Oils, butter, nut pastes. */
  FAT("fat"),
  /** Sugars and sweeteners. */
  SWEET("sweetening"),
  /** Yeast, powder, soda and the acid that sets it off. */
  LEAVENING("leavening and acid"),
  /** Salt, spices, cocoa. */
  SEASONING("salt and seasoning"),
  /** Cheese. */
  DAIRY("cheese"),
  /** Vegetables and fruit. */
  PRODUCE("vegetables and fruit"),
  /** Everything else that is dry. */
  REST("seeds and other dry"),
  /** Lines whose food the pantry does not have. */
  UNKNOWN("foods that are not known");

  private final String label;

  DoughPart(String label) {
    this.label = label;
  }

  /**
   * The name for people.
   *
   * @return such as {@code binders and fibre}
   */
  public String label() {
    return label;
  }

  /**
   * The part of a line.
   *
   * @param line the line worked out
   * @return its part
   */
  public static DoughPart of(WorksheetLine line) {
    if (line.line().flour()) {
      return FLOUR;
    }
    Optional<Food> food = line.food();
    if (food.isEmpty()) {
      return UNKNOWN;
    }
    Set<FoodWork> works = FoodWork.of(food.get());
    if (works.contains(FoodWork.EGG) && food.get().kind() != FoodKind.FAT) {
      return EGG;
    }
    if (works.contains(FoodWork.LEAVENING) || works.contains(FoodWork.ACID)) {
      return LEAVENING;
    }
    if (works.contains(FoodWork.SALT) || works.contains(FoodWork.SEASONING)) {
      return SEASONING;
    }
    if (works.contains(FoodWork.SWEET)) {
      return SWEET;
    }
    return ofKind(food.get().kind(), works);
  }

  private static DoughPart ofKind(FoodKind kind, Set<FoodWork> works) {
    return switch (kind) {
      case LIQUID -> LIQUID;
      case FAT -> FAT;
      case DAIRY_SOLID -> DAIRY;
      case PRODUCE -> PRODUCE;
      case DRY -> {
        if (works.contains(FoodWork.PROTEIN)) {
          yield PROTEIN;
        }
        boolean binds =
            works.contains(FoodWork.GUM)
                || works.contains(FoodWork.FIBRE)
                || works.contains(FoodWork.STARCH);
        yield binds ? BINDERS : REST;
      }
    };
  }
}
