package io.ovenmark.desk;

import io.ovenmark.goal.Goal;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Macros;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What to mind when a formula is baked and eaten. Cautions, not advice: local codes and licensed
 * practice decide. Sources: 71 °C for egg dishes, USDA Food Safety and Inspection Service; raw
 * flour, FDA consumer advice; polyols above 10 %, Regulation (EU) No 1169/2011, Annex III, 2.4;
 * xylitol and dogs, FDA consumer update; lupin and peanut, common clinical caution, from memory.
 */
final class Cautions {
  private static final double POLYOL_PERCENT = 10;

  private Cautions() {}

  static List<String> of(Worksheet sheet) {
    List<String> cautions = new ArrayList<>();
    if (!sheet.allergens().isEmpty()) {
      cautions.add(contained(sheet));
    }
    if (!sheet.allergensUnknownIn().isEmpty()) {
      cautions.add(
          "Allergens are unknown in " + String.join(", ", sheet.allergensUnknownIn())
              + ": read the package before serving.");
    }
    cautions.addAll(besidesAllergens(sheet));
    cautions.add(
        "Figures are an aid for development. Whoever takes medicine for blood sugar or blood"
            + " pressure should settle changes of diet with those who treat them.");
    return cautions;
  }

  /** What to mind besides the lists of allergens, as whoever eats needs to know. */
  static List<String> besidesAllergens(Worksheet sheet) {
    List<String> cautions = new ArrayList<>();
    if (sheet.allergens().contains(Allergen.EGGS)) {
      cautions.add(
          "Contains egg: bake until the centre reaches 71 °C (160 °F),"
              + " and follow local food codes.");
    }
    if (flour(sheet)) {
      cautions.add("Raw flour is not ready to eat: do not taste the dough.");
    }
    if (sheet.allergens().contains(Allergen.LUPIN)) {
      cautions.add("Contains lupin: people allergic to peanut can react to it.");
    }
    polyols(sheet, cautions);
    if (sheet.lines().stream().anyMatch(Cautions::isXylitol)) {
      cautions.add("Contains xylitol, which is poisonous to dogs.");
    }
    return cautions;
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
    return of(after).stream()
        .filter(caution -> !known.contains(caution) && !caution.equals(contained(after)))
        .toList();
  }

  private static String contained(Worksheet sheet) {
    return "Contains "
        + String.join(", ", sheet.allergens().stream().map(Allergen::key).toList())
        + ". Traces from the bench and from packages are not counted; read every label.";
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
        || food.polyol().filter("xylitol"::equals).isPresent()) {
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

  private static void polyols(Worksheet sheet, List<String> cautions) {
    Macros baked = sheet.macros().get(Basis.BAKED_100_G);
    Macros dough = sheet.macros().get(Basis.DOUGH_100_G);
    boolean weighed = sheet.bakedYield().share().isKnown();
    double percent = (weighed ? baked : dough).get(Figure.POLYOLS).low();
    if (percent > POLYOL_PERCENT) {
      cautions.add("Above 10 % polyols: excessive consumption may produce laxative effects.");
    }
  }

  private static boolean isXylitol(WorksheetLine line) {
    return line.line().food().contains("xylitol")
        || line.food().flatMap(food -> food.polyol()).filter("xylitol"::equals).isPresent();
  }
}
