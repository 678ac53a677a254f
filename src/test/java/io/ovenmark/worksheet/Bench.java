package io.ovenmark.worksheet;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.HouseholdMeasure;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.pantry.Nutrients;
import io.ovenmark.pantry.Source;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A small bench of invented foods with round figures, and short ways to write formulas. */
public final class Bench {
  private final Map<String, Food> foods = new LinkedHashMap<>();

  /** The foods every test may use. */
  public Bench() {
    add(food("lupin-flour", FoodKind.DRY, 40, 10, 40, 30, 10, 300, Allergen.LUPIN));
    add(food("seeds", FoodKind.DRY, 20, 50, 20, 10, 10, 550));
    add(food("water", FoodKind.LIQUID, 0, 0, 0, 0, 100, 0));
    add(
        withHousehold(
            food("egg", FoodKind.LIQUID, 12, 10, 1, 0, 76, 143, Allergen.EGGS), "large", 50));
    add(food("oil", FoodKind.FAT, 0, 100, 0, 0, 0, 900));
    add(food("salt", FoodKind.DRY, 0, 0, 0, 0, 0, 0));
  }

  /** A food of which all figures that are not named are 0. */
  public static Food food(
      String slug,
      FoodKind kind,
      double protein,
      double fat,
      double carbohydrate,
      double fibre,
      double water,
      double kcal,
      Allergen... allergens) {
    Map<Nutrient, Quantity> figures = new EnumMap<>(Nutrient.class);
    for (Nutrient nutrient : Nutrient.values()) {
      figures.put(nutrient, Quantity.ZERO);
    }
    figures.put(Nutrient.PROTEIN, Quantity.known(protein));
    figures.put(Nutrient.FAT, Quantity.known(fat));
    figures.put(Nutrient.CARBOHYDRATE, Quantity.known(carbohydrate));
    figures.put(Nutrient.FIBRE, Quantity.known(fibre));
    figures.put(Nutrient.WATER, Quantity.known(water));
    figures.put(Nutrient.ENERGY, Quantity.known(kcal));
    return new Food(
        slug,
        slug.replace('-', ' '),
        kind,
        new Source(Source.Kind.OWN, Optional.empty(), Optional.empty()),
        Nutrients.of(figures),
        List.of(),
        OptionalDouble.empty(),
        Optional.of(Set.of(allergens)),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  /** The same food with another composition. */
  public static Food with(Food food, Nutrient nutrient, Quantity figure) {
    return copy(
        food, food.per100g().with(nutrient, figure), food.household(), food.allergens(),
        food.polyol());
  }

  /** The same food with a household measure. */
  public static Food withHousehold(Food food, String measure, double grams) {
    return copy(
        food, food.per100g(), List.of(new HouseholdMeasure(measure, grams)), food.allergens(),
        food.polyol());
  }

  /** The same food of which nobody knows the allergens. */
  public static Food withoutAllergenList(Food food) {
    return copy(food, food.per100g(), food.household(), Optional.empty(), food.polyol());
  }

  /** The same food with polyols of a kind. */
  public static Food withPolyol(Food food, String polyol) {
    return copy(
        food, food.per100g(), food.household(), food.allergens(), Optional.of(polyol));
  }

  /** The same food under another name. */
  public static Food named(Food food, String name) {
    return new Food(
        food.slug(), name, food.kind(), food.source(), food.per100g(), food.household(),
        food.densityGramsPerMillilitre(), food.allergens(), food.polyol(), food.price(),
        food.extras());
  }

  private static Food copy(
      Food food,
      Nutrients per100g,
      List<HouseholdMeasure> household,
      Optional<Set<Allergen>> allergens,
      Optional<String> polyol) {
    return new Food(
        food.slug(),
        food.name(),
        food.kind(),
        food.source(),
        per100g,
        household,
        food.densityGramsPerMillilitre(),
        allergens,
        polyol,
        food.price(),
        food.extras());
  }

  /** Adds or replaces a food. */
  public Bench add(Food food) {
    foods.put(food.slug(), food);
    return this;
  }

  /** Makes one figure of a food unknown. */
  public Bench forget(String slug, Nutrient nutrient) {
    return add(with(foods.get(slug), nutrient, Quantity.UNKNOWN));
  }

  /** Finds a food. */
  public Optional<Food> find(String slug) {
    return Optional.ofNullable(foods.get(slug));
  }

  /** A formula of lines written as "food: amount". */
  public static Formula formula(Yield yield, String... lines) {
    List<Line> made = new ArrayList<>();
    Formula formula = Formula.named("bench formula").withYield(yield);
    for (String line : lines) {
      String[] parts = line.split(": ");
      String id = formula.withLines(made).freeLineId(parts[0]);
      made.add(Line.of(id, parts[0], Amount.parse(parts[1])));
    }
    return formula.withLines(made);
  }

  /** Works it out under the usual policy, unbaked. */
  public Worksheet sheet(Formula formula) {
    return sheet(formula, Policy.USUAL, BakedYield.UNMEASURED);
  }

  /** Works it out. */
  public Worksheet sheet(Formula formula, Policy policy, BakedYield baked) {
    return Worksheet.of(formula, this::find, policy, baked);
  }

  /** Works lines out without a stated yield. */
  public Worksheet sheet(String... lines) {
    return sheet(formula(Yield.UNSTATED, lines));
  }
}
