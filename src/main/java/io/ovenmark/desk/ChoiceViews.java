package io.ovenmark.desk;

import java.util.List;

/**
 * The records of what can be chosen in forms; see {@link Views} for the manner of all of them.
 */
public final class ChoiceViews {
  private ChoiceViews() {}

  /**
   * What can be chosen in the forms of the kitchen.
   *
   * @param folder the notebook's folder, to tell notebooks apart
   * @param kinds kinds of food
   * @param nutrients what a food may state per 100 g
   * @param labels the labels that can be followed, row by row
   * @param allergens what United States and European Union law names
   * @param polyols the sugar alcohols that have a factor for energy
   * @param figures what a limit can be set on
   * @param bases what a limit can be stated for
   * @param energyRules how energy can be worked out
   * @param tableColumns the columns that an own table may have
   */
  public record KitchenChoices(
      String folder,
      List<String> kinds,
      List<FigureChoice> nutrients,
      List<LabelChoice> labels,
      List<AllergenChoice> allergens,
      List<String> polyols,
      List<FigureChoice> figures,
      List<BasisChoice> bases,
      List<String> energyRules,
      List<String> tableColumns) {}

  /**
   * A figure that can be chosen.
   *
   * @param figure its key
   * @param label its name for people
   * @param unit its unit
   * @param stated whether it is stated for a piece, 100 g or a batch
   */
  public record FigureChoice(String figure, String label, String unit, boolean stated) {}

  /**
   * What a figure can be stated for.
   *
   * @param per its key
   * @param label its name for people
   */
  public record BasisChoice(String per, String label) {}

  /**
   * An allergen.
   *
   * @param allergen its name
   * @param us whether it is one of the nine of the United States
   * @param eu whether it belongs to the fourteen of the European Union
   * @param gluten whether it is a cereal that contains gluten
   */
  public record AllergenChoice(String allergen, boolean us, boolean eu, boolean gluten) {}

  /**
   * A label that can be followed.
   *
   * @param panel {@code US} or {@code EU}
   * @param rows from top to bottom
   */
  public record LabelChoice(String panel, List<LabelRow> rows) {}

  /**
   * A row of a label.
   *
   * @param figure key of the figure
   * @param words as they are printed
   * @param unit as it is printed
   * @param part whether it is indented
   */
  public record LabelRow(String figure, String words, String unit, boolean part) {}
}
