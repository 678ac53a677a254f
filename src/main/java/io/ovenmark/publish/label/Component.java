package io.ovenmark.publish.label;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.EnergyRule;

/**
 * What a label states an amount of. Carbohydrate is by difference in the United States and without
 * fibre in the European Union (Regulation (EU) No 1169/2011, Annex I). Allulose counts as
 * carbohydrate; as sugar it counts in the European Union only, where every monosaccharide does
 * (Annex I; the United States leave it out by FDA guidance of 2020).
 */
public enum Component {
  /** Energy in kilocalories, by the rule chosen. */
  ENERGY_KCAL("energy"),
  /** Energy in kilojoules, by the rule chosen. */
  ENERGY_KJ("energy"),
  /** Fat. */
  FAT("fat"),
  /** Saturated fat. */
  SATURATED_FAT("saturated fat"),
  /** Trans fat; where it is not stated, at most the fat that is not saturated. */
  TRANS_FAT("trans fat"),
  /** Cholesterol. */
  CHOLESTEROL("cholesterol"),
  /** Sodium. */
  SODIUM("sodium"),
  /** Salt: sodium × 2.5 (Regulation (EU) No 1169/2011, Annex I). */
  SALT("sodium"),
  /** Carbohydrate with fibre. */
  TOTAL_CARBOHYDRATE("carbohydrate"),
  /** Carbohydrate without fibre. */
  AVAILABLE_CARBOHYDRATE("carbohydrate or fibre"),
  /** Fibre. */
  FIBRE("fibre"),
  /** Sugars without allulose. */
  SUGARS("sugars"),
  /** Sugars with allulose. */
  SUGARS_WITH_ALLULOSE("sugars or allulose"),
  /** Added sugars; where they are not stated, at most the sugars. */
  ADDED_SUGARS("added sugars"),
  /** Polyols. */
  POLYOLS("polyols"),
  /** Allulose. */
  ALLULOSE("allulose"),
  /** Protein. */
  PROTEIN("protein"),
  /** Vitamin D. */
  VITAMIN_D("vitamin D"),
  /** Calcium. */
  CALCIUM("calcium"),
  /** Iron. */
  IRON("iron"),
  /** Potassium. */
  POTASSIUM("potassium");

  private static final double SALT_GRAMS_PER_MG_SODIUM = 2.5 / 1000;

  private final String words;

  Component(String words) {
    this.words = words;
  }

  /**
   * What a food would have to state.
   *
   * @return such as {@code saturated fat}
   */
  public String words() {
    return words;
  }

  /** What 100 g of a food hold. */
  Quantity per100g(Food food, EnergyRule rule) {
    return switch (this) {
      case ENERGY_KCAL -> rule.energyPer100g(food);
      case ENERGY_KJ -> rule.kilojoulesPer100g(food);
      case FAT -> of(food, Nutrient.FAT);
      case SATURATED_FAT -> of(food, Nutrient.SATURATED_FAT);
      case TRANS_FAT ->
          stated(
              of(food, Nutrient.TRANS_FAT),
              of(food, Nutrient.FAT).minus(of(food, Nutrient.SATURATED_FAT)).notNegative());
      case CHOLESTEROL -> of(food, Nutrient.CHOLESTEROL);
      case SODIUM -> of(food, Nutrient.SODIUM);
      case SALT -> of(food, Nutrient.SODIUM).times(SALT_GRAMS_PER_MG_SODIUM);
      case TOTAL_CARBOHYDRATE -> of(food, Nutrient.CARBOHYDRATE);
      case AVAILABLE_CARBOHYDRATE ->
          of(food, Nutrient.CARBOHYDRATE)
              .minus(of(food, Nutrient.FIBRE).noMoreThan(of(food, Nutrient.CARBOHYDRATE)))
              .notNegative();
      case FIBRE -> of(food, Nutrient.FIBRE);
      case SUGARS -> of(food, Nutrient.SUGARS);
      case SUGARS_WITH_ALLULOSE -> of(food, Nutrient.SUGARS).plus(of(food, Nutrient.ALLULOSE));
      case ADDED_SUGARS -> stated(of(food, Nutrient.ADDED_SUGARS), of(food, Nutrient.SUGARS));
      case POLYOLS -> of(food, Nutrient.POLYOLS);
      case ALLULOSE -> of(food, Nutrient.ALLULOSE);
      case PROTEIN -> of(food, Nutrient.PROTEIN);
      case VITAMIN_D -> of(food, Nutrient.VITAMIN_D);
      case CALCIUM -> of(food, Nutrient.CALCIUM);
      case IRON -> of(food, Nutrient.IRON);
      case POTASSIUM -> of(food, Nutrient.POTASSIUM);
    };
  }

  /** The figure; where there is none, no more than the whole that it is a part of. */
  private static Quantity stated(Quantity figure, Quantity whole) {
    return figure.isUnknown() ? figure.noMoreThan(whole) : figure;
  }

  private static Quantity of(Food food, Nutrient nutrient) {
    return food.per100g().get(nutrient);
  }
}
