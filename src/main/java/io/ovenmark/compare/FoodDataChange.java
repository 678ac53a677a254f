package io.ovenmark.compare;

import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.HouseholdMeasure;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A food that both sides use and whose data differ: the food changed, not the formula.
 *
 * @param food its slug
 * @param name its name after
 * @param figures the figures per 100 g that differ, in the order of {@link Nutrient}
 * @param weights the household weights and the density that differ
 * @param others name, kind, allergens, kind of polyol, source and price where they differ
 */
public record FoodDataChange(
    String food,
    String name,
    List<FoodFigureChange> figures,
    List<FieldChange> weights,
    List<FieldChange> others) {

  /**
   * One figure of 100 g of the food.
   *
   * @param nutrient which
   * @param from before
   * @param to after
   */
  public record FoodFigureChange(Nutrient nutrient, Quantity from, Quantity to) {}

  /** Copies the lists. */
  public FoodDataChange {
    figures = List.copyOf(figures);
    weights = List.copyOf(weights);
    others = List.copyOf(others);
  }

  /**
   * Whether any figure of a formula can move by it.
   *
   * @return false when only its name, source, price or allergens differ
   */
  public boolean movesFigures() {
    return !figures.isEmpty()
        || !weights.isEmpty()
        || others.stream().anyMatch(other -> other.matters());
  }

  /**
   * Finds them.
   *
   * @param from the earlier worksheet
   * @param to the later worksheet
   * @param units how masses are shown
   * @return one for each food that differs, in the order in which the later formula uses them
   */
  static List<FoodDataChange> between(Worksheet from, Worksheet to, ShownUnits units) {
    Map<String, Food> before = foods(from);
    List<FoodDataChange> changes = new ArrayList<>();
    foods(to)
        .forEach(
            (slug, food) -> {
              Food earlier = before.get(slug);
              if (earlier != null && !earlier.equals(food)) {
                FoodDataChange change = between(earlier, food, units);
                if (change.movesFigures() || !change.others.isEmpty()) {
                  changes.add(change);
                }
              }
            });
    return List.copyOf(changes);
  }

  private static Map<String, Food> foods(Worksheet sheet) {
    Map<String, Food> foods = new LinkedHashMap<>();
    for (WorksheetLine line : sheet.lines()) {
      line.food().ifPresent(food -> foods.putIfAbsent(food.slug(), food));
    }
    return foods;
  }

  private static FoodDataChange between(Food from, Food to, ShownUnits units) {
    List<FoodFigureChange> figures = new ArrayList<>();
    for (Nutrient nutrient : Nutrient.values()) {
      Quantity before = from.per100g().get(nutrient);
      Quantity after = to.per100g().get(nutrient);
      if (!before.equals(after)) {
        figures.add(new FoodFigureChange(nutrient, before, after));
      }
    }
    return new FoodDataChange(
        to.slug(), to.name(), figures, weights(from, to, units), others(from, to));
  }

  private static List<FieldChange> weights(Food from, Food to, ShownUnits units) {
    List<FieldChange> changes = new ArrayList<>();
    Map<String, String> before = measures(from);
    Map<String, String> after = measures(to);
    Set<String> names = new TreeSet<>(before.keySet());
    names.addAll(after.keySet());
    for (String name : names) {
      add(
          changes,
          "household." + name,
          "weight of 1 " + name,
          Optional.ofNullable(before.get(name)),
          Optional.ofNullable(after.get(name)),
          true);
    }
    changes.replaceAll(
        each ->
            new FieldChange(
                each.field(),
                each.label(),
                each.from().map(units::grams),
                each.to().map(units::grams),
                each.matters()));
    add(changes, "density_g_per_ml", "density", density(from), density(to), true);
    return changes;
  }

  private static Map<String, String> measures(Food food) {
    Map<String, String> measures = new LinkedHashMap<>();
    for (HouseholdMeasure measure : food.household()) {
      measures.putIfAbsent(measure.measure(), plain(measure.grams()));
    }
    return measures;
  }

  private static Optional<String> density(Food food) {
    return food.densityGramsPerMillilitre().isEmpty()
        ? Optional.empty()
        : Optional.of(plain(food.densityGramsPerMillilitre().getAsDouble()) + " g/ml");
  }

  private static List<FieldChange> others(Food from, Food to) {
    List<FieldChange> changes = new ArrayList<>();
    add(changes, "name", "name", Optional.of(from.name()), Optional.of(to.name()), false);
    add(
        changes,
        "kind",
        "kind",
        Optional.of(from.kind().key()),
        Optional.of(to.kind().key()),
        true);
    add(changes, "allergens", "allergens", allergens(from), allergens(to), false);
    add(changes, "polyol", "kind of polyol", from.polyol(), to.polyol(), true);
    add(changes, "source", "source", source(from), source(to), false);
    add(changes, "price", "price", price(from), price(to), false);
    return changes;
  }

  private static Optional<String> allergens(Food food) {
    return food.allergens()
        .map(
            set ->
                set.isEmpty()
                    ? "none"
                    : String.join(", ", set.stream().map(Allergen::key).toList()));
  }

  private static Optional<String> source(Food food) {
    String kind = food.source().kind().key();
    return Optional.of(food.source().id().map(id -> kind + " " + id).orElse(kind));
  }

  private static Optional<String> price(Food food) {
    return food.price()
        .map(
            price ->
                price.amount().toPlainString()
                    + " "
                    + price.currency()
                    + " for "
                    + plain(price.grams())
                    + " g");
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  private static void add(
      List<FieldChange> changes,
      String field,
      String label,
      Optional<String> from,
      Optional<String> to,
      boolean matters) {
    if (!from.equals(to)) {
      changes.add(new FieldChange(field, label, from, to, matters));
    }
  }
}
