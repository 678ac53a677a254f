package io.ovenmark.cli;

import io.ovenmark.desk.KitchenViews;
import io.ovenmark.measure.FigureText;
import io.ovenmark.pantry.Nutrient;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Prints everything that is known of a food. */
final class FoodSheetText {
  private FoodSheetText() {}

  static void print(KitchenViews.FoodView food, Output out) {
    out.wrapped(food.name() + " (" + food.food() + ") · " + food.kind(), "  ");
    String id = food.sourceId() == null ? "" : " " + food.sourceId();
    String note = food.sourceNote() == null ? "" : ". " + food.sourceNote();
    out.wrapped("Source: " + food.source() + id + note, "  ");
    figures(food, out);
    out.blank();
    household(food, out);
    out.wrapped("Allergens: " + allergens(food.allergens()), "  ");
    if (food.polyol() != null) {
      out.line("Polyols are " + food.polyol());
    }
    if (food.price() != null) {
      KitchenViews.PriceView price = food.price();
      out.line(
          "Price: " + money(price.amount()) + " " + price.currency() + " for "
              + FigureText.number(price.grams()) + " g, "
              + money(BigDecimal.valueOf(price.perKilogram())) + " a kilogram"
              + (price.date() == null ? "" : ", on " + price.date()));
    }
    if (!food.usedBy().isEmpty()) {
      out.wrapped("Used by " + String.join(", ", food.usedBy()), "  ");
    }
    if (!food.remarks().isEmpty()) {
      out.blank();
      WrittenText.remarks(food.remarks(), out);
    }
  }

  private static String money(BigDecimal amount) {
    return amount.setScale(2, RoundingMode.HALF_UP).toPlainString();
  }

  private static void figures(KitchenViews.FoodView food, Output out) {
    Table table = new Table("per 100 g", ">", "");
    List<String> unknown = new ArrayList<>();
    for (Nutrient nutrient : Nutrient.values()) {
      Double figure = food.per100G().get(nutrient.key());
      if (figure == null) {
        unknown.add(nutrient.label());
      } else {
        table.row(nutrient.label(), FigureText.number(figure), nutrient.unit());
      }
    }
    if (!table.isEmpty()) {
      out.blank();
      out.table(table.indent(2));
    }
    if (!unknown.isEmpty()) {
      out.wrapped("  Not known: " + String.join(", ", unknown), "    ");
    }
  }

  private static void household(KitchenViews.FoodView food, Output out) {
    List<String> weights = new ArrayList<>();
    for (KitchenViews.HouseholdView measure : food.household()) {
      weights.add("1 " + measure.measure() + " = " + FigureText.number(measure.grams()) + " g");
    }
    if (food.densityGPerMl() != null) {
      weights.add("density " + FigureText.number(food.densityGPerMl()) + " g/ml");
    }
    out.wrapped(
        weights.isEmpty()
            ? "No household weights and no density: weigh it in grams."
            : "Weights: " + String.join(" · ", weights),
        "  ");
  }

  private static String allergens(List<String> allergens) {
    if (allergens == null) {
      return "not known";
    }
    return allergens.isEmpty()
        ? "none of the food itself; traces stand on the package"
        : String.join(", ", allergens);
  }
}
