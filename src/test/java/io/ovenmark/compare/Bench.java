package io.ovenmark.compare;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.goal.Limit;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Temperature;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.HouseholdMeasure;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.pantry.Nutrients;
import io.ovenmark.pantry.Source;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The invented Saltmarsh bench in small: a handful of foods, formulas written as short texts. */
final class Bench {
  static final Map<String, Food> FOODS = new HashMap<>();

  static {
    // energy, protein, fat, saturated, carbohydrate, fibre, sugars, water, ash, sodium per 100 g;
    // USDA SR28: NDB 14411, 01124, 14058, 16076, 20083, 02047, 01145, 04053, 19335
    add("water", "water", FoodKind.LIQUID, Set.of(), 0, 0, 0, 0, 0, 0, 0, 99.9, 0.1, 4);
    add(
        "egg-white",
        "egg white",
        FoodKind.LIQUID,
        Set.of(Allergen.EGGS),
        52,
        10.9,
        0.17,
        0,
        0.73,
        0,
        0.71,
        87.57,
        0.63,
        166);
    add(
        "whey-isolate",
        "whey isolate",
        FoodKind.DRY,
        Set.of(Allergen.MILK),
        359,
        58.14,
        1.16,
        0.581,
        29.07,
        0,
        1.16,
        0.86,
        10.77,
        372);
    add(
        "lupin-flour",
        "lupin flour",
        FoodKind.DRY,
        Set.of(Allergen.LUPIN),
        371,
        36.17,
        9.74,
        1.156,
        40.37,
        18.9,
        3.4,
        10.44,
        3.28,
        15);
    add(
        "bread-flour",
        "bread flour",
        FoodKind.DRY,
        Set.of(Allergen.WHEAT),
        361,
        11.98,
        1.66,
        0.244,
        72.53,
        2.4,
        0.31,
        13.36,
        0.47,
        2);
    add("salt", "table salt", FoodKind.DRY, Set.of(), 0, 0, 0, 0, 0, 0, 0, 0.2, 99.8, 38758);
    add(
        "butter",
        "butter, unsalted",
        FoodKind.FAT,
        Set.of(Allergen.MILK),
        717,
        0.85,
        81.11,
        50.489,
        0.06,
        0,
        0.06,
        17.94,
        0.09,
        11);
    add("olive-oil", "olive oil", FoodKind.FAT, Set.of(), 884, 0, 100, 13.808, 0, 0, 0, 0, 0, 2);
    add(
        "sugar",
        "granulated sugar",
        FoodKind.DRY,
        Set.of(),
        387,
        0,
        0,
        0,
        99.98,
        0,
        99.8,
        0.02,
        0.01,
        1);
    // typical label values, invented for these tests
    add("psyllium", "psyllium husk", FoodKind.DRY, Set.of(), 200, 2, 0.6, 0.1, 85, 80, 0, 9, 3, 60);
    add(
        "sesame-flour",
        "sesame flour",
        FoodKind.DRY,
        Set.of(Allergen.SESAME),
        333,
        47,
        12,
        1.8,
        26,
        20,
        2,
        7,
        8,
        40);
    Food psyllium = FOODS.get("psyllium");
    FOODS.put("psyllium", withHousehold(psyllium, new HouseholdMeasure("tbsp", 5)));
    FOODS.put(
        "mystery-meal",
        withFigure(FOODS.get("lupin-flour"), "mystery-meal", "mystery meal", Nutrient.FIBRE, null));
  }

  private Bench() {}

  private static void add(
      String slug, String name, FoodKind kind, Set<Allergen> allergens, double... figures) {
    Nutrient[] order = {
      Nutrient.ENERGY,
      Nutrient.PROTEIN,
      Nutrient.FAT,
      Nutrient.SATURATED_FAT,
      Nutrient.CARBOHYDRATE,
      Nutrient.FIBRE,
      Nutrient.SUGARS,
      Nutrient.WATER,
      Nutrient.ASH,
      Nutrient.SODIUM
    };
    Map<Nutrient, Quantity> known = new EnumMap<>(Nutrient.class);
    for (int i = 0; i < order.length; i++) {
      known.put(order[i], Quantity.known(figures[i]));
    }
    known.put(Nutrient.SOLUBLE_FIBRE, Quantity.ZERO);
    known.put(Nutrient.POLYOLS, Quantity.ZERO);
    known.put(Nutrient.ALLULOSE, Quantity.ZERO);
    known.put(Nutrient.ALCOHOL, Quantity.ZERO);
    FOODS.put(
        slug,
        new Food(
            slug,
            name,
            kind,
            new Source(Source.Kind.OWN, Optional.empty(), Optional.empty()),
            Nutrients.of(known),
            List.of(),
            OptionalDouble.empty(),
            Optional.of(allergens),
            Optional.empty(),
            Optional.empty(),
            Extras.NONE));
  }

  static Food withFigure(Food f, String slug, String name, Nutrient nutrient, Double value) {
    Quantity figure = value == null ? Quantity.UNKNOWN : Quantity.known(value);
    return new Food(
        slug,
        name,
        f.kind(),
        f.source(),
        f.per100g().with(nutrient, figure),
        f.household(),
        f.densityGramsPerMillilitre(),
        f.allergens(),
        f.polyol(),
        f.price(),
        f.extras());
  }

  static Food withFigure(Food f, Nutrient nutrient, double value) {
    return withFigure(f, f.slug(), f.name(), nutrient, value);
  }

  static Food withHousehold(Food f, HouseholdMeasure... measures) {
    return new Food(
        f.slug(),
        f.name(),
        f.kind(),
        f.source(),
        f.per100g(),
        List.of(measures),
        f.densityGramsPerMillilitre(),
        f.allergens(),
        f.polyol(),
        f.price(),
        f.extras());
  }

  /**
   * Lines such as {@code water 210 g}, {@code lupin-flour 150 g *} (a flour), {@code id=food 5 g}.
   */
  static Formula formula(String... lines) {
    List<Line> parsed = new ArrayList<>();
    Formula formula = Formula.named("Seeded lupin bun");
    for (String text : lines) {
      boolean flour = text.endsWith(" *");
      String[] parts = text.replace(" *", "").split(" ", 2);
      String food = parts[0].substring(parts[0].indexOf('=') + 1);
      String id =
          parts[0].contains("=")
              ? parts[0].substring(0, parts[0].indexOf('='))
              : formula.freeLineId(food);
      parsed.add(Line.of(id, food, Amount.parse(parts[1])).withFlour(flour));
      formula = formula.withLines(parsed);
    }
    return formula.withYield(Yield.ofPieces(6));
  }

  static Formula oven(Formula formula, String temperature, double minutes) {
    return formula.withBake(
        List.of(
            BakeSetting.named("bake")
                .withTemperature(Optional.of(Temperature.parse(temperature)))
                .withMinutes(OptionalDouble.of(minutes))));
  }

  static Worksheet sheet(Formula formula) {
    return sheet(formula, FOODS, Policy.USUAL);
  }

  static Worksheet sheet(Formula formula, Map<String, Food> foods, Policy policy) {
    return Worksheet.of(
        formula, slug -> Optional.ofNullable(foods.get(slug)), policy, BakedYield.UNMEASURED);
  }

  static Map<String, Food> with(Food... changed) {
    Map<String, Food> foods = new HashMap<>(FOODS);
    for (Food food : changed) {
      foods.put(food.slug(), food);
    }
    return foods;
  }

  static Comparison compare(Formula from, Formula to) {
    return Comparison.between(Side.of("bun@5", sheet(from)), Side.of("bun@7", sheet(to)));
  }

  static Comparison compare(Formula from, Formula to, Goal goal) {
    return Comparison.between(held("bun@5", from, goal), held("bun@7", to, goal));
  }

  static Side held(String address, Formula formula, Goal goal) {
    Worksheet sheet = sheet(formula);
    return Side.of(address, sheet).withGoal(Optional.of(GoalCheck.of(goal, sheet)));
  }

  static Goal goal(String... withoutAllergens) {
    return goal(4, withoutAllergens);
  }

  static Goal goal(double mostNetCarbohydrate, String... withoutAllergens) {
    Limit limit =
        new Limit(
            Figure.NET_CARBOHYDRATE,
            Basis.PIECE,
            OptionalDouble.empty(),
            OptionalDouble.of(mostNetCarbohydrate),
            Extras.NONE);
    return new Goal(
        "low-carbohydrate-bun",
        "low-carbohydrate bun",
        Optional.empty(),
        List.of(limit),
        List.of(withoutAllergens),
        List.of(),
        Optional.empty(),
        Extras.NONE);
  }

  static Bake bake(String id, Piece... pieces) {
    return new Bake(
        "bun",
        id,
        "bun@5",
        "a".repeat(40),
        OffsetDateTime.parse(id.substring(0, 10) + "T10:00:00+02:00"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(pieces),
        List.of(),
        List.of(),
        Extras.NONE);
  }

  static Bake withPhoto(Bake bake, String file, String caption) {
    return bake.withPhotos(
        List.of(new Photo(file, Optional.of(caption), Optional.empty(), List.of(), Extras.NONE)));
  }

  /** A piece; 0 for what was not measured. */
  static Piece piece(String id, String temperature, double minutes, double height) {
    return piece(id, temperature, minutes, height, List.of(), List.of());
  }

  static Piece piece(
      String id,
      String temperature,
      double minutes,
      double height,
      List<String> findings,
      List<Double> liking) {
    return new Piece(
        id,
        temperature.isEmpty() ? Optional.empty() : Optional.of(Temperature.parse(temperature)),
        measured(minutes),
        Optional.empty(),
        height == 0 ? OptionalDouble.empty() : OptionalDouble.of(95),
        height == 0 ? OptionalDouble.empty() : OptionalDouble.of(82),
        height == 0 ? OptionalDouble.empty() : OptionalDouble.of(92),
        measured(height),
        Optional.empty(),
        OptionalDouble.empty(),
        findings,
        liking,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  private static OptionalDouble measured(double value) {
    return value == 0 ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
