package io.ovenmark.pantry;

import java.util.Optional;

/**
 * A component of food that Ovenmark keeps figures of. Carbohydrate is by difference (United States
 * use: fibre, polyols and allulose are part of it); the European figure without fibre is worked out
 * where it is shown.
 */
public enum Nutrient {
  /** Energy as the source states it. */
  ENERGY("energy_kcal", "energy", "kcal"),
  /** Protein. */
  PROTEIN("protein_g", "protein", "g"),
  /** Total fat. */
  FAT("fat_g", "fat", "g"),
  /** Saturated fatty acids. */
  SATURATED_FAT("saturated_fat_g", "saturated fat", "g"),
  /** Trans fatty acids. */
  TRANS_FAT("trans_fat_g", "trans fat", "g"),
  /** Carbohydrate by difference, fibre included. */
  CARBOHYDRATE("carbohydrate_g", "carbohydrate", "g"),
  /** Total dietary fibre. */
  FIBRE("fibre_g", "fibre", "g"),
  /** The soluble part of the fibre. */
  SOLUBLE_FIBRE("soluble_fibre_g", "soluble fibre", "g"),
  /** Total sugars, allulose not included. */
  SUGARS("sugars_g", "sugars", "g"),
  /** Sugars that were added or are added as such, as 21 CFR 101.9(c)(6)(iii) counts them. */
  ADDED_SUGARS("added_sugars_g", "added sugars", "g"),
  /** Sugar alcohols. */
  POLYOLS("polyols_g", "polyols", "g"),
  /** Allulose (D-psicose). */
  ALLULOSE("allulose_g", "allulose", "g"),
  /** Water. */
  WATER("water_g", "water", "g"),
  /** Ash. */
  ASH("ash_g", "ash", "g"),
  /** Ethanol. */
  ALCOHOL("alcohol_g", "alcohol", "g"),
  /** Cholesterol. */
  CHOLESTEROL("cholesterol_mg", "cholesterol", "mg"),
  /** Sodium. */
  SODIUM("sodium_mg", "sodium", "mg"),
  /** Potassium. */
  POTASSIUM("potassium_mg", "potassium", "mg"),
  /** Calcium. */
  CALCIUM("calcium_mg", "calcium", "mg"),
  /** Iron. */
  IRON("iron_mg", "iron", "mg"),
  /** Vitamin D, D2 and D3 together. */
  VITAMIN_D("vitamin_d_ug", "vitamin D", "µg");

  private final String key;
  private final String label;
  private final String unit;

  Nutrient(String key, String label, String unit) {
    this.key = key;
    this.label = label;
    this.unit = unit;
  }

  /**
   * The name in JSON, with its unit.
   *
   * @return such as {@code protein_g}
   */
  public String key() {
    return key;
  }

  /**
   * The name for people.
   *
   * @return such as {@code protein}
   */
  public String label() {
    return label;
  }

  /**
   * The unit of its figures.
   *
   * @return kcal, g, mg or µg
   */
  public String unit() {
    return unit;
  }

  /**
   * Finds a nutrient by its JSON name.
   *
   * @param key such as {@code protein_g}
   * @return the nutrient, empty when there is none
   */
  public static Optional<Nutrient> withKey(String key) {
    for (Nutrient nutrient : values()) {
      if (nutrient.key.equals(key)) {
        return Optional.of(nutrient);
      }
    }
    return Optional.empty();
  }
}
