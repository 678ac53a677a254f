package io.ovenmark.cause;

import io.ovenmark.worksheet.Figure;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a cause is tested on: a figure of the formula, or of the pieces in the oven. */
public enum Gauge {
  /** Mass of liquids divided by mass of dry foods. */
  LIQUID_RATIO("liquid_ratio", "liquid ratio", "", Figure.LIQUID_RATIO, false),
  /** Dough mass of a piece. */
  DOUGH_PER_PIECE("dough_per_piece_g", "dough a piece", "g", Figure.DOUGH_PER_PIECE, false),
  /** Fat in 100 g dough. */
  FAT("fat_g_per_100_g_dough", "fat in 100 g dough", "g", Figure.FAT, true),
  /** Protein in 100 g dough. */
  PROTEIN("protein_g_per_100_g_dough", "protein in 100 g dough", "g", Figure.PROTEIN, true),
  /** Fibre in 100 g dough. */
  FIBRE("fibre_g_per_100_g_dough", "fibre in 100 g dough", "g", Figure.FIBRE, true),
  /** Sugars in 100 g dough. */
  SUGARS("sugars_g_per_100_g_dough", "sugars in 100 g dough", "g", Figure.SUGARS, true),
  /** Allulose in 100 g dough. */
  ALLULOSE("allulose_g_per_100_g_dough", "allulose in 100 g dough", "g", Figure.ALLULOSE, true),
  /** Polyols in 100 g dough. */
  POLYOLS("polyols_g_per_100_g_dough", "polyols in 100 g dough", "g", Figure.POLYOLS, true),
  /** Sodium in 100 g dough. */
  SODIUM("sodium_mg_per_100_g_dough", "sodium in 100 g dough", "mg", Figure.SODIUM, true),
  /** Baking powder, soda and yeast in percent of the batch. */
  LEAVENING(
      "leavening_percent",
      "leavening",
      List.of("baking-powder", "baking-soda", "yeast", "bicarbonate", "ammonia")),
  /** Egg in any form in percent of the batch. */
  EGG("egg_percent", "egg", List.of("egg")),
  /** What gels and holds water, in percent of the batch. */
  GELLING(
      "gelling_percent",
      "gelling fibre and seed",
      List.of(
          "psyllium", "xanthan", "guar", "glucomannan", "konjac", "flax", "chia", "gelatin",
          "pectin")),
  /** Acid foods in percent of the batch. */
  ACID("acid_percent", "acid", List.of("vinegar", "lemon-juice", "cream-of-tartar", "citric")),
  /** Foods that taste bitter, in percent of the batch. */
  BITTER_FOODS(
      "bitter_foods_percent",
      "bitter-tasting flour, cocoa and seed",
      List.of("lupin", "cocoa", "sesame-flour", "sunflower-flour", "flax", "walnut", "chocolate")),
  /** Erythritol in percent of the batch. */
  ERYTHRITOL("erythritol_percent", "erythritol", List.of("erythritol")),
  /** Whey, milk powder and other milk proteins in percent of the batch. */
  MILK_PROTEIN("milk_protein_percent", "whey and milk powder", List.of("whey", "milk-dry")),
  /** Temperature of the oven. */
  OVEN_TEMPERATURE("oven_temperature_c", "oven temperature", "°C"),
  /** Time in the oven. */
  OVEN_TIME("oven_minutes", "oven time", "min"),
  /** Temperature in the centre when taken out. */
  CORE("core_c", "core temperature", "°C"),
  /** Share of the dough mass lost in the oven. */
  LOSS("loss_percent", "loss in the oven", "%"),
  /** Crust shade from 0, raw, to 4, burnt. */
  CRUST("crust_shade", "crust shade (0 raw to 4 burnt)", ""),
  /** Where in the oven, in words. */
  RACK("rack", "rack", Sort.WORDS),
  /** What it stands on or in, in words. */
  VESSEL("vessel", "tray or tin", Sort.WORDS),
  /** Steam, in words. */
  STEAM("steam", "steam", Sort.WORDS);

  /** Where a gauge is read. */
  enum Sort {
    /** A figure of the worksheet. */
    FIGURE,
    /** A macro of 100 g dough. */
    PER_100_G,
    /** Share of some foods in the batch. */
    SHARE,
    /** Measured or set for pieces. */
    OVEN,
    /** A text, which can only be the same or another. */
    WORDS
  }

  private final String key;
  private final String label;
  private final String unit;
  private final Sort sort;
  private final Optional<Figure> figure;
  private final List<String> foods;

  Gauge(String key, String label, String unit, Figure figure, boolean per100g) {
    this.key = key;
    this.label = label;
    this.unit = unit;
    this.sort = per100g ? Sort.PER_100_G : Sort.FIGURE;
    this.figure = Optional.of(figure);
    this.foods = List.of();
  }

  Gauge(String key, String label, List<String> foods) {
    this.key = key;
    this.label = label + " in the batch";
    this.unit = "%";
    this.sort = Sort.SHARE;
    this.figure = Optional.empty();
    this.foods = foods;
  }

  Gauge(String key, String label, String unit) {
    this.key = key;
    this.label = label;
    this.unit = unit;
    this.sort = Sort.OVEN;
    this.figure = Optional.empty();
    this.foods = List.of();
  }

  Gauge(String key, String label, Sort sort) {
    this.key = key;
    this.label = label;
    this.unit = "";
    this.sort = sort;
    this.figure = Optional.empty();
    this.foods = List.of();
  }

  /**
   * Finds a gauge by its name in the table of causes.
   *
   * @param key such as {@code liquid_ratio}
   * @return the gauge, empty when there is none
   */
  public static Optional<Gauge> withKey(String key) {
    return Arrays.stream(values()).filter(gauge -> gauge.key.equals(key)).findFirst();
  }

  /**
   * The name in the table of causes and in JSON.
   *
   * @return such as {@code liquid_ratio}
   */
  public String key() {
    return key;
  }

  /**
   * The name for people.
   *
   * @return such as {@code liquid ratio}
   */
  public String label() {
    return label;
  }

  /**
   * The unit.
   *
   * @return g, mg, %, °C, min or empty
   */
  public String unit() {
    return unit;
  }

  /**
   * The worksheet's figure that it reads.
   *
   * @return the figure; empty for shares of foods and for the oven
   */
  public Optional<Figure> figure() {
    return figure;
  }

  /**
   * Whether it is a text, which can only be the same or another.
   *
   * @return true for rack, tray and steam
   */
  public boolean isWords() {
    return sort == Sort.WORDS;
  }

  /**
   * Whether pieces of one dough can differ in it.
   *
   * @return true for what belongs to the oven
   */
  public boolean isOfPieces() {
    return sort == Sort.OVEN || this == RACK;
  }

  /**
   * Whether it sums some foods.
   *
   * @return true for shares of the batch
   */
  public boolean isShare() {
    return sort == Sort.SHARE;
  }

  Sort sort() {
    return sort;
  }

  /** Whether a food belongs to the share, by the words of its short name. */
  boolean counts(String slug) {
    return foods.stream().anyMatch(part -> ("-" + slug).contains("-" + part));
  }
}
