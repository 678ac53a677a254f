package io.ovenmark.worksheet;

import io.ovenmark.pantry.Nutrient;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A figure of a worksheet. The macros are stated for a {@link Basis}; the others belong to the
 * formula as a whole.
 */
public enum Figure {
  /** Energy, by the notebook's rule. */
  ENERGY("energy_kcal", "energy", "kcal", true, Nutrient.ENERGY),
  /** Protein. */
  PROTEIN("protein_g", "protein", "g", true, Nutrient.PROTEIN),
  /** Fat. */
  FAT("fat_g", "fat", "g", true, Nutrient.FAT),
  /** Saturated fat. */
  SATURATED_FAT("saturated_fat_g", "saturated fat", "g", true, Nutrient.SATURATED_FAT),
  /** Carbohydrate by difference. */
  CARBOHYDRATE("carbohydrate_g", "carbohydrate", "g", true, Nutrient.CARBOHYDRATE),
  /** Fibre. */
  FIBRE("fibre_g", "fibre", "g", true, Nutrient.FIBRE),
  /** Sugars. */
  SUGARS("sugars_g", "sugars", "g", true, Nutrient.SUGARS),
  /** Polyols. */
  POLYOLS("polyols_g", "polyols", "g", true, Nutrient.POLYOLS),
  /** Allulose. */
  ALLULOSE("allulose_g", "allulose", "g", true, Nutrient.ALLULOSE),
  /** Carbohydrate less what the policy subtracts. */
  NET_CARBOHYDRATE("net_carbohydrate_g", "net carbohydrate", "g", true, null),
  /** Sodium. */
  SODIUM("sodium_mg", "sodium", "mg", true, Nutrient.SODIUM),
  /** Water. */
  WATER("water_g", "water", "g", true, Nutrient.WATER),
  /** Mass of liquid-kind lines divided by mass of dry-kind lines. */
  LIQUID_RATIO("liquid_ratio", "liquid ratio", "", false, null),
  /** Water in all lines divided by batch mass. */
  DOUGH_MOISTURE("dough_moisture_percent", "dough moisture", "%", false, null),
  /** Sum of all lines. */
  BATCH_MASS("batch_g", "batch mass", "g", false, null),
  /** Number of pieces. */
  PIECES("pieces", "pieces", "", false, null),
  /** Dough mass of a piece. */
  DOUGH_PER_PIECE("dough_per_piece_g", "dough a piece", "g", false, null),
  /** Baked mass of a piece. */
  BAKED_PER_PIECE("baked_per_piece_g", "baked a piece", "g", false, null);

  private static final List<Figure> MACROS =
      Arrays.stream(values()).filter(Figure::isMacro).toList();

  private final String key;
  private final String label;
  private final String unit;
  private final boolean macro;
  private final Nutrient nutrient;

  Figure(String key, String label, String unit, boolean macro, Nutrient nutrient) {
    this.key = key;
    this.label = label;
    this.unit = unit;
    this.macro = macro;
    this.nutrient = nutrient;
  }

  /**
   * The figures that are stated for a basis, in the order of JSON output.
   *
   * @return the macros
   */
  public static List<Figure> macros() {
    return MACROS;
  }

  /**
   * Finds a figure by its JSON name.
   *
   * @param key such as {@code net_carbohydrate_g}
   * @return the figure, empty when there is none
   */
  public static Optional<Figure> withKey(String key) {
    return Arrays.stream(values()).filter(figure -> figure.key.equals(key)).findFirst();
  }

  /**
   * The name in JSON, with its unit.
   *
   * @return such as {@code net_carbohydrate_g}
   */
  public String key() {
    return key;
  }

  /**
   * The name for people.
   *
   * @return such as {@code net carbohydrate}
   */
  public String label() {
    return label;
  }

  /**
   * The unit.
   *
   * @return g, mg, kcal, % or empty for a ratio or count
   */
  public String unit() {
    return unit;
  }

  /**
   * Whether it is stated for a basis.
   *
   * @return true for macros
   */
  public boolean isMacro() {
    return macro;
  }

  /**
   * Whether it is a mass that is weighed at the bench, not one of a nutrient.
   *
   * @return true for the mass of the batch and of a piece
   */
  public boolean isWeighed() {
    return !macro && unit.equals("g");
  }

  /**
   * The food component that it sums.
   *
   * @return the nutrient; empty for figures that are worked out
   */
  public Optional<Nutrient> nutrient() {
    return Optional.ofNullable(nutrient);
  }
}
