package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.goal.Goal;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What to mind when a formula is baked and eaten. Cautions, not advice: local codes and licensed
 * practice decide. They appear by themselves and cannot be switched off; whoever publishes may word
 * them longer ({@link #worded}). Sources: 71 °C for egg dishes, USDA Food Safety and Inspection
 * Service; raw flour, FDA consumer advice; polyols above 10 %, Regulation (EU) No 1169/2011, Annex
 * III, 2.4; xylitol and dogs, FDA consumer update; lupin and peanut, and that other tree nuts may
 * be reacted to, common clinical caution, from memory.
 */
final class Cautions {
  private static final double POLYOL_PERCENT = 10;
  private static final String XYLITOL = "xylitol";

  private static final String ALLERGENS = "allergens";
  private static final String MEDICAL_DIETS = "medical-diets";

  private Cautions() {}

  /** What to mind with a formula, in words. */
  static List<String> of(Worksheet sheet) {
    return of(sheet, List.of(), ShownUnits.AS_WRITTEN);
  }

  /** The same with what its bakes say of its safety. */
  static List<String> of(Worksheet sheet, List<Bake> bakes, ShownUnits units) {
    return keyed(sheet, bakes, units).stream().map(Caution::words).toList();
  }

  /**
   * What to mind with a formula, in a fixed order, each with a name by which it can be worded
   * longer.
   *
   * @param sheet the formula worked out
   * @param bakes its bakes
   * @param units the units of the reader
   */
  static List<Caution> keyed(Worksheet sheet, List<Bake> bakes, ShownUnits units) {
    List<Caution> cautions = new ArrayList<>();
    allergens(sheet, cautions);
    rawDough(sheet, bakes, units, cautions);
    crossReactions(sheet, cautions);
    polyols(sheet, cautions);
    xylitol(sheet, cautions);
    cautions.add(
        new Caution(
            MEDICAL_DIETS,
            "Figures are an aid for development. Whoever takes medicine for blood sugar or blood"
                + " pressure should settle changes of diet with those who treat them."));
    return List.copyOf(cautions);
  }

  /**
   * Cautions worded longer: each keeps its own words, and what was written for it follows.
   *
   * @param cautions the cautions that apply
   * @param more by key what to add; nothing or blanks add nothing
   * @return every caution in the same order, none left out
   * @throws Refusal when something was written for a caution that does not apply
   */
  static List<Caution> worded(List<Caution> cautions, Map<String, String> more) {
    List<String> keys = cautions.stream().map(Caution::key).toList();
    for (String key : new TreeSet<>(more.keySet())) {
      if (!keys.contains(key)) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            "cautions." + key,
            "There is no caution " + Quoting.quote(key) + " here.",
            "Those that apply are " + String.join(", ", keys) + ".");
      }
    }
    return cautions.stream()
        .map(caution -> caution.longer(more.getOrDefault(caution.key(), "")))
        .toList();
  }

  /** What to mind besides the lists of allergens, as whoever eats needs to know. */
  static List<String> besidesAllergens(Worksheet sheet) {
    return keyed(sheet, List.of(), ShownUnits.AS_WRITTEN).stream()
        .filter(caution -> !caution.key().startsWith(ALLERGENS))
        .filter(caution -> !caution.key().equals(MEDICAL_DIETS))
        .map(Caution::words)
        .toList();
  }

  /** Whether there is egg or raw flour in it, so that it must be done before it is tasted. */
  static boolean raw(Worksheet sheet) {
    return sheet.allergens().contains(Allergen.EGGS) || flour(sheet);
  }

  private static boolean flour(Worksheet sheet) {
    return sheet.lines().stream()
        .anyMatch(line -> line.line().flour() || line.line().food().contains("flour"));
  }

  /**
   * What to mind after a change besides what was to mind before. Which allergens come and go is
   * told apart from it.
   */
  static List<String> newIn(Worksheet after, Worksheet before) {
    List<String> known = of(before);
    return keyed(after, List.of(), ShownUnits.AS_WRITTEN).stream()
        .filter(caution -> !caution.key().equals(ALLERGENS))
        .map(Caution::words)
        .filter(words -> !known.contains(words))
        .toList();
  }

  private static void allergens(Worksheet sheet, List<Caution> cautions) {
    if (!sheet.allergens().isEmpty()) {
      cautions.add(
          new Caution(
              ALLERGENS,
              "Contains "
                  + String.join(", ", sheet.allergens().stream().map(Allergen::key).toList())
                  + ". Traces from the bench and from packages are not counted; read every"
                  + " label."));
    }
    if (!sheet.allergensUnknownIn().isEmpty()) {
      cautions.add(
          new Caution(
              ALLERGENS + "-unknown",
              "Allergens are unknown in " + String.join(", ", sheet.allergensUnknownIn())
                  + ": read the package before serving."));
    }
  }

  private static void rawDough(
      Worksheet sheet, List<Bake> bakes, ShownUnits units, List<Caution> cautions) {
    boolean egg = sheet.allergens().contains(Allergen.EGGS);
    if (egg) {
      cautions.add(
          new Caution(
              "egg",
              "Contains egg: bake until the centre reaches 71 °C (160 °F),"
                  + " and follow local food codes."));
      for (Bake bake : bakes) {
        List<String> cool = BakeRemarks.below(bake.pieces(), units);
        if (!cool.isEmpty()) {
          cautions.add(
              new Caution(
                  "egg-core-" + bake.id(),
                  "In the bake of " + bake.time().toLocalDate() + " the centre stayed below 71 °C"
                      + " (160 °F), though there is egg in it: " + String.join(", ", cool)
                      + ". Do not serve such pieces; follow local food codes."));
        }
      }
    }
    if (flour(sheet)) {
      cautions.add(
          new Caution("raw-flour", "Raw flour is not ready to eat: do not taste the dough."));
    } else if (egg) {
      cautions.add(
          new Caution("raw-egg", "Raw egg is not ready to eat: do not taste the dough."));
    }
  }

  private static void crossReactions(Worksheet sheet, List<Caution> cautions) {
    Set<Allergen> contained = sheet.allergens();
    if (contained.contains(Allergen.LUPIN)) {
      cautions.add(
          new Caution("lupin", "Contains lupin: people allergic to peanut can react to it."));
    }
    if (contained.contains(Allergen.PEANUTS)) {
      cautions.add(
          new Caution(
              "peanut",
              "Contains peanut: traces can bring on a severe reaction; tell whoever is served."));
    }
    if (contained.contains(Allergen.TREE_NUTS)) {
      cautions.add(
          new Caution(
              "tree-nuts",
              "Contains tree nuts: name each kind to whoever is served; people allergic to one kind"
                  + " may react to others."));
    }
  }

  /**
   * What to mind with a food. Gluten: Regulation (EU) No 828/2014 and 21 CFR 101.91 allow "gluten
   * free" up to 20 mg/kg of gluten in what is sold.
   */
  static List<String> of(Food food) {
    List<String> cautions = new ArrayList<>();
    Set<Allergen> contained = food.allergens().orElse(Set.of());
    if (food.allergens().isEmpty()) {
      cautions.add("Its allergens are unknown: read the package before serving.");
    } else {
      cautions.add(
          "Allergens are as entered here. Traces from the mill and the bench are not counted, and"
              + " makers change their recipes: read every new package.");
    }
    if (contained.contains(Allergen.LUPIN)) {
      cautions.add("Lupin: people allergic to peanut can react to it.");
    }
    if (contained.contains(Allergen.EGGS)) {
      cautions.add(
          "Egg: bake until the centre reaches 71 °C (160 °F), and follow local food codes.");
    }
    if (food.slug().contains("flour")) {
      cautions.add("Raw flour is not ready to eat: do not taste the dough.");
    }
    if (food.per100g().get(Nutrient.POLYOLS).low() > POLYOL_PERCENT) {
      cautions.add(
          "Bakes with more than 10 % polyols: excessive consumption may produce laxative effects.");
    }
    if (food.slug().contains("xylitol")
        || food.polyol().filter(Cautions::namesXylitol).isPresent()) {
      cautions.add("Xylitol is poisonous to dogs.");
    }
    return cautions;
  }

  /** What to mind with a goal. */
  static List<String> of(Goal goal) {
    List<String> cautions = new ArrayList<>();
    Set<Figure> limited = new HashSet<>();
    goal.limits().forEach(limit -> limited.add(limit.figure()));
    if (limited.contains(Figure.NET_CARBOHYDRATE) || goal.netCarbohydrate().isPresent()) {
      cautions.add(
          "Net carbohydrate has no legal definition. Whoever doses medicine by it should settle"
              + " the counting with those who treat them.");
    }
    if (!goal.withoutAllergens().isEmpty()) {
      cautions.add(
          "Judged by what the foods are stated to contain. Traces depend on makers and on the"
              + " kitchen, and local rules decide what may be declared free of something.");
    }
    if (goal.withoutAllergens().contains("gluten")) {
      cautions.add(
          "No figure here shows that a bake is gluten free: the United States and the European"
              + " Union allow at most 20 mg gluten in a kilogram of what is served, which only a"
              + " laboratory can measure.");
    }
    if (limited.contains(Figure.SODIUM)
        || limited.contains(Figure.PROTEIN)
        || limited.contains(Figure.CARBOHYDRATE)
        || limited.contains(Figure.SUGARS)) {
      cautions.add(
          "Figures are an aid for development. Whoever keeps to a medical diet should settle its"
              + " limits with those who treat them.");
    }
    return cautions;
  }

  /** Of the baked mass where that is known; else a loss up to all the water is allowed for. */
  private static void polyols(Worksheet sheet, List<Caution> cautions) {
    Map<Basis, Quantity> polyols =
        sheet.sum(
            food ->
                food.per100g()
                    .get(Nutrient.POLYOLS)
                    .noMoreThan(food.per100g().get(Nutrient.CARBOHYDRATE)));
    Quantity dough = polyols.get(Basis.DOUGH_100_G);
    boolean weighed = sheet.bakedYield().share().isKnown();
    double driest = Math.max(0, 100 - sheet.doughMoisturePercent().high());
    Quantity percent =
        weighed
            ? polyols.get(Basis.BAKED_100_G)
            : dough.dividedBy(Quantity.between(driest / 100, 1));
    if (percent.low() > POLYOL_PERCENT) {
      cautions.add(
          new Caution(
              "polyols",
              "Above 10 % polyols: excessive consumption may produce laxative effects."));
    } else if (dough.low() > 0 && percent.high() > POLYOL_PERCENT) {
      cautions.add(
          new Caution(
              "polyols",
              "May be above 10 % polyols, which cannot be told from what is known: excessive"
                  + " consumption may produce laxative effects."));
    }
  }

  private static void xylitol(Worksheet sheet, List<Caution> cautions) {
    if (sheet.lines().stream().anyMatch(Cautions::isXylitol)) {
      cautions.add(
          new Caution(XYLITOL, "Contains xylitol, which is poisonous to dogs."));
      return;
    }
    List<String> unknown =
        sheet.lines().stream()
            .filter(line -> line.food().filter(Cautions::isPolyolOfUnknownKind).isPresent())
            .map(WorksheetLine::name)
            .distinct()
            .toList();
    if (!unknown.isEmpty()) {
      cautions.add(
          new Caution(
              "polyol-kind",
              "Which polyol is in " + String.join(", ", unknown)
                  + " is not stated: if it is xylitol, it is poisonous to dogs."));
    }
  }

  private static boolean isXylitol(WorksheetLine line) {
    return line.line().food().contains(XYLITOL)
        || line.food().flatMap(Food::polyol).filter(Cautions::namesXylitol).isPresent();
  }

  private static boolean namesXylitol(String polyol) {
    return polyol.toLowerCase(Locale.ROOT).contains(XYLITOL);
  }

  private static boolean isPolyolOfUnknownKind(Food food) {
    return food.per100g().get(Nutrient.POLYOLS).low() > 0
        && food.polyol()
            .map(kind -> kind.strip().toLowerCase(Locale.ROOT))
            .filter(EnergyRule.polyols()::contains)
            .isEmpty();
  }
}
