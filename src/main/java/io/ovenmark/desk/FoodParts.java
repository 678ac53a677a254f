package io.ovenmark.desk;

import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrients;
import io.ovenmark.pantry.Price;
import io.ovenmark.pantry.Source;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the verbs about foods have in common. */
final class FoodParts {
  private static final double GRAMS_PER_KILOGRAM = 1000;

  private FoodParts() {}

  static KitchenViews.FoodEntry entry(
      Food food, boolean inPantry, String keptIn, List<String> usedBy, NetCarbohydrate net) {
    return new KitchenViews.FoodEntry(
        food.slug(),
        food.name(),
        inPantry,
        food.kind().key(),
        food.source().kind().key(),
        food.source().id().orElse(null),
        figures(food.per100g()),
        allergens(food),
        usedBy,
        List.of(),
        keptIn,
        food.price().map(FoodParts::price).orElse(null),
        net(food, net));
  }

  /** Net carbohydrate of 100 g. */
  static FigureSet net(Food food, NetCarbohydrate net) {
    return new FigureSet(Map.of(Figure.NET_CARBOHYDRATE.key(), net.per100g(food.per100g())));
  }

  static KitchenViews.FoodEntry unreadable(
      String slug, List<String> usedBy, List<Views.ProblemView> problems) {
    return new KitchenViews.FoodEntry(
        slug,
        slug,
        true,
        null,
        null,
        null,
        Map.of(),
        null,
        usedBy,
        problems,
        null,
        null,
        null);
  }

  static KitchenViews.FoodView view(Food food, boolean inPantry, List<String> usedBy) {
    return new KitchenViews.FoodView(
        food.slug(),
        food.name(),
        inPantry,
        food.kind().key(),
        food.source().kind().key(),
        food.source().id().orElse(null),
        food.source().note().orElse(null),
        figures(food.per100g()),
        food.household().stream()
            .map(m -> new KitchenViews.HouseholdView(m.measure(), m.grams()))
            .toList(),
        BakeViews.number(food.densityGramsPerMillilitre()),
        allergens(food),
        food.polyol().orElse(null),
        food.price().map(FoodParts::price).orElse(null),
        usedBy,
        remarks(food, inPantry));
  }

  private static KitchenViews.PriceView price(Price price) {
    return new KitchenViews.PriceView(
        price.amount(),
        price.currency(),
        price.grams(),
        price.amount().doubleValue() / price.grams() * GRAMS_PER_KILOGRAM,
        price.date().map(LocalDate::toString).orElse(null));
  }

  /** Figures by name, null where unknown. */
  static Map<String, Double> figures(Nutrients per100g) {
    Map<String, Double> figures = new LinkedHashMap<>();
    per100g
        .toMap()
        .forEach((nutrient, figure) -> figures.put(nutrient.key(), FigureSet.number(figure)));
    return figures;
  }

  private static List<String> allergens(Food food) {
    return food.allergens()
        .map(set -> set.stream().map(Allergen::key).toList())
        .orElse(null);
  }

  private static List<String> remarks(Food food, boolean inPantry) {
    List<String> remarks = new ArrayList<>();
    if (!inPantry) {
      remarks.add(
          "A food of the built-in table; it is copied into the pantry when a formula first uses it.");
    }
    if (food.source().kind() == Source.Kind.TYPICAL) {
      remarks.add(
          "Typical label values: replace them by those of your package before relying on them.");
    }
    if (food.allergens().isEmpty()) {
      remarks.add("Its allergens are unknown: read the package before serving.");
    }
    return remarks;
  }

  static Refusal noFood(String slug, Contents contents) {
    List<String> near =
        BuiltInPantry.search(slug.replace('-', ' ')).stream().limit(3).map(Food::slug).toList();
    boolean builtIn = BuiltInPantry.find(slug).isPresent();
    String hint =
        builtIn
            ? "Take it from the built-in table with: ovenmark pantry add " + slug
            : near.isEmpty()
                ? "Add it from its label with: ovenmark pantry add " + slug
                : "Perhaps you mean " + String.join(" or ", near) + ".";
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        "food " + slug,
        "The pantry has no food \"" + slug + "\".",
        contents.foods().contains(slug) ? "" : hint);
  }
}
