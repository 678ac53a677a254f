package io.ovenmark.cli;

import io.ovenmark.desk.KitchenViews;
import io.ovenmark.pantry.Nutrient;
import java.util.List;
import java.util.Map;

/** Prints foods in a table, figures per 100 g. */
final class FoodListText {
  private FoodListText() {}

  /** The foods; an empty cell is an unknown figure. */
  static void print(List<KitchenViews.FoodEntry> foods, Output out) {
    Table table =
        new Table("food", "kind", ">kcal", ">protein", ">fat", ">carb.", ">fibre", ">uses");
    for (KitchenViews.FoodEntry food : foods) {
      Map<String, Double> figures = food.per100G();
      int uses = food.usedBy().size();
      table.row(
          food.food(),
          food.kind(),
          cell(figures, Nutrient.ENERGY),
          cell(figures, Nutrient.PROTEIN),
          cell(figures, Nutrient.FAT),
          cell(figures, Nutrient.CARBOHYDRATE),
          cell(figures, Nutrient.FIBRE),
          uses == 0 ? "" : String.valueOf(uses));
    }
    out.table(table.withoutEmptyColumns());
    out.line("Figures per 100 g, grams unless kcal; an empty cell is not known.");
    out.line("uses: how many formulas and variants have it.");
    foods.forEach(food -> ProblemText.print(food.problems(), out));
  }

  /** Foods that were found, with their whole names and where they are. */
  static void found(List<KitchenViews.FoodEntry> foods, Output out) {
    Table table = new Table("food", "", ">kcal", ">protein", ">carb.", "");
    for (KitchenViews.FoodEntry food : foods) {
      table.row(
          food.food(),
          food.name().equals(food.food().replace('-', ' ')) ? "" : food.name(),
          cell(food.per100G(), Nutrient.ENERGY),
          cell(food.per100G(), Nutrient.PROTEIN),
          cell(food.per100G(), Nutrient.CARBOHYDRATE),
          food.inPantry() ? "in the pantry" : "");
    }
    out.table(table.withoutEmptyColumns());
    out.line("Figures per 100 g, grams unless kcal; an empty cell is not known.");
  }

  static String cell(Map<String, Double> figures, Nutrient nutrient) {
    return Figures.cell(figures.get(nutrient.key()));
  }
}
