package io.ovenmark.pantry;

import io.ovenmark.pantry.LabelFood.Figure;
import io.ovenmark.pantry.LabelFood.Panel;
import java.util.List;

/**
 * The order and the words in which a package label prints its figures, so that a form can be filled
 * in from top to bottom. Sources: European Union, Regulation (EU) No 1169/2011, Article 30 and
 * Annex XV; United States, 21 CFR 101.9(c) and (d)(12). Allulose is on no European list; where a
 * label states it, it stands after the polyols.
 */
public final class LabelOrder {
  private static final List<Row> EUROPEAN_UNION =
      List.of(
          row(Figure.ENERGY_KJ, "Energy", "kJ"),
          row(Figure.ENERGY_KCAL, "Energy", "kcal"),
          row(Figure.FAT, "Fat", "g"),
          part(Figure.SATURATED_FAT, "of which saturates", "g"),
          row(Figure.CARBOHYDRATE, "Carbohydrate (without fibre)", "g"),
          part(Figure.SUGARS, "of which sugars", "g"),
          part(Figure.POLYOLS, "of which polyols", "g"),
          part(Figure.ALLULOSE, "of which allulose", "g"),
          row(Figure.FIBRE, "Fibre", "g"),
          row(Figure.PROTEIN, "Protein", "g"),
          row(Figure.SALT, "Salt", "g"),
          row(Figure.ALCOHOL, "Alcohol", "g"),
          row(Figure.VITAMIN_D, "Vitamin D", "µg"),
          row(Figure.POTASSIUM, "Potassium", "mg"),
          row(Figure.CALCIUM, "Calcium", "mg"),
          row(Figure.IRON, "Iron", "mg"));

  private static final List<Row> UNITED_STATES =
      List.of(
          row(Figure.ENERGY_KCAL, "Calories", "kcal"),
          row(Figure.FAT, "Total fat", "g"),
          part(Figure.SATURATED_FAT, "Saturated fat", "g"),
          part(Figure.TRANS_FAT, "Trans fat", "g"),
          row(Figure.CHOLESTEROL, "Cholesterol", "mg"),
          row(Figure.SODIUM, "Sodium", "mg"),
          row(Figure.CARBOHYDRATE, "Total carbohydrate (fiber included)", "g"),
          part(Figure.FIBRE, "Dietary fiber", "g"),
          part(Figure.SOLUBLE_FIBRE, "Soluble fiber", "g"),
          part(Figure.SUGARS, "Total sugars", "g"),
          part(Figure.ADDED_SUGARS, "Added sugars", "g"),
          part(Figure.POLYOLS, "Sugar alcohol", "g"),
          part(Figure.ALLULOSE, "Allulose", "g"),
          row(Figure.PROTEIN, "Protein", "g"),
          row(Figure.VITAMIN_D, "Vitamin D", "µg"),
          row(Figure.CALCIUM, "Calcium", "mg"),
          row(Figure.IRON, "Iron", "mg"),
          row(Figure.POTASSIUM, "Potassium", "mg"),
          row(Figure.ALCOHOL, "Alcohol", "g"));

  /**
   * One row of a label.
   *
   * @param figure what it states
   * @param words the words that are printed
   * @param unit the unit that is printed
   * @param part whether it is indented as a part of the row above it
   */
  public record Row(Figure figure, String words, String unit, boolean part) {}

  private LabelOrder() {}

  /**
   * The rows of a label.
   *
   * @param panel whose rules it follows
   * @return from top to bottom
   */
  public static List<Row> of(Panel panel) {
    return panel == Panel.EUROPEAN_UNION ? EUROPEAN_UNION : UNITED_STATES;
  }

  private static Row row(Figure figure, String words, String unit) {
    return new Row(figure, words, unit, false);
  }

  private static Row part(Figure figure, String words, String unit) {
    return new Row(figure, words, unit, true);
  }
}
