package io.ovenmark.publish.label;

import java.util.List;
import java.util.Optional;

/**
 * A line of a label's table, in the order of the law: 21 CFR 101.9(c) for the United States,
 * Regulation (EU) No 1169/2011, Annex XV for the European Union.
 *
 * @param key name in JSON, with the unit
 * @param label name for people
 * @param part whether it is a part of the line above that is not one
 * @param component what is stated
 * @param rounding how
 * @param dailyValue its Daily Value, United States only
 */
public record LabelLine(
    String key,
    String label,
    boolean part,
    Component component,
    Rounding rounding,
    Optional<DailyValue> dailyValue) {

  private static final List<LabelLine> UNITED_STATES =
      List.of(
          line("calories", "Calories", Component.ENERGY_KCAL, Rounding.US_ENERGY),
          line("fat_g", "Total fat", Component.FAT, Rounding.US_FAT).of(DailyValue.FAT),
          line("saturated_fat_g", "Saturated fat", Component.SATURATED_FAT, Rounding.US_FAT)
              .asPart()
              .of(DailyValue.SATURATED_FAT),
          line("trans_fat_g", "Trans fat", Component.TRANS_FAT, Rounding.US_FAT).asPart(),
          line("cholesterol_mg", "Cholesterol", Component.CHOLESTEROL, Rounding.US_CHOLESTEROL)
              .of(DailyValue.CHOLESTEROL),
          line("sodium_mg", "Sodium", Component.SODIUM, Rounding.US_SODIUM)
              .of(DailyValue.SODIUM),
          line(
                  "carbohydrate_g",
                  "Total carbohydrate",
                  Component.TOTAL_CARBOHYDRATE,
                  Rounding.US_CARBOHYDRATE)
              .of(DailyValue.CARBOHYDRATE),
          line("fibre_g", "Dietary fiber", Component.FIBRE, Rounding.US_CARBOHYDRATE)
              .asPart()
              .of(DailyValue.FIBRE),
          line("sugars_g", "Total sugars", Component.SUGARS, Rounding.US_CARBOHYDRATE).asPart(),
          line("added_sugars_g", "Added sugars", Component.ADDED_SUGARS, Rounding.US_CARBOHYDRATE)
              .asPart()
              .of(DailyValue.ADDED_SUGARS),
          line("polyols_g", "Sugar alcohol", Component.POLYOLS, Rounding.US_CARBOHYDRATE).asPart(),
          line("protein_g", "Protein", Component.PROTEIN, Rounding.US_PROTEIN)
              .of(DailyValue.PROTEIN),
          line("vitamin_d_ug", "Vitamin D", Component.VITAMIN_D, Rounding.US_VITAMIN_D)
              .of(DailyValue.VITAMIN_D),
          line("calcium_mg", "Calcium", Component.CALCIUM, Rounding.US_MINERAL)
              .of(DailyValue.CALCIUM),
          line("iron_mg", "Iron", Component.IRON, Rounding.US_IRON).of(DailyValue.IRON),
          line("potassium_mg", "Potassium", Component.POTASSIUM, Rounding.US_MINERAL)
              .of(DailyValue.POTASSIUM));

  private static final List<LabelLine> EUROPEAN_UNION =
      List.of(
          line("energy_kj", "Energy, kJ", Component.ENERGY_KJ, Rounding.EU_KILOJOULES),
          line("energy_kcal", "Energy, kcal", Component.ENERGY_KCAL, Rounding.EU_KILOCALORIES),
          line("fat_g", "Fat", Component.FAT, Rounding.EU_GRAMS),
          line("saturates_g", "of which saturates", Component.SATURATED_FAT, Rounding.EU_SATURATES)
              .asPart(),
          line(
              "carbohydrate_g",
              "Carbohydrate",
              Component.AVAILABLE_CARBOHYDRATE,
              Rounding.EU_GRAMS),
          line(
                  "sugars_g",
                  "of which sugars",
                  Component.SUGARS_WITH_ALLULOSE,
                  Rounding.EU_GRAMS)
              .asPart(),
          line("polyols_g", "of which polyols", Component.POLYOLS, Rounding.EU_GRAMS).asPart(),
          line("fibre_g", "Fibre", Component.FIBRE, Rounding.EU_GRAMS),
          line("protein_g", "Protein", Component.PROTEIN, Rounding.EU_GRAMS),
          line("salt_g", "Salt", Component.SALT, Rounding.EU_SALT));

  /**
   * The lines of a region's table.
   *
   * @param region whose
   * @return the lines in order
   */
  public static List<LabelLine> of(Region region) {
    return region == Region.UNITED_STATES ? UNITED_STATES : EUROPEAN_UNION;
  }

  private static LabelLine line(
      String key, String label, Component component, Rounding rounding) {
    return new LabelLine(key, label, false, component, rounding, Optional.empty());
  }

  private LabelLine asPart() {
    return new LabelLine(key, label, true, component, rounding, dailyValue);
  }

  private LabelLine of(DailyValue value) {
    return new LabelLine(key, label, part, component, rounding, Optional.of(value));
  }
}
