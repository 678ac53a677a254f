package io.ovenmark.desk;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Slug;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodEdit;
import io.ovenmark.pantry.FoodFacts;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.FoodText;
import io.ovenmark.pantry.HouseholdMeasure;
import io.ovenmark.pantry.LabelFood;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.pantry.Nutrients;
import io.ovenmark.pantry.Source;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Reads the form of a food field by field; what is wrong is told and left as it was. */
final class FoodReading {
  /** Printed figures are rounded, as a rule to half a gram. */
  private static final double ROUNDING = 0.5;

  private final Food base;
  private final FoodForm form;
  private final List<KitchenWork.FieldProblem> problems = new ArrayList<>();
  private Food food;

  private FoodReading(Food base, FoodForm form) {
    this.base = base;
    this.form = form;
    this.food = base;
  }

  /**
   * What was read.
   *
   * @param food the food, as far as it could be read
   * @param problems field by field
   */
  record Typed(Food food, List<KitchenWork.FieldProblem> problems) {}

  /** A food of which nothing is known yet. */
  static Food blank(String slug) {
    return new Food(
        slug,
        "",
        FoodKind.DRY,
        new Source(Source.Kind.OWN, Optional.empty(), Optional.empty()),
        Nutrients.UNKNOWN,
        List.of(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  /** The short name that a new food gets; one that cannot be used is told by {@link #of}. */
  static String slugOf(FoodForm form) {
    return Slug.isSlug(form.food())
        ? form.food()
        : Slug.of(form.facts().getOrDefault("name", ""), "food");
  }

  /** Reads a form that begins with a food. */
  static Typed of(Food base, FoodForm form) {
    FoodReading reading = new FoodReading(base, form);
    reading.read();
    return new Typed(reading.food, List.copyOf(reading.problems));
  }

  private void read() {
    if (!form.food().isEmpty() && !Slug.isSlug(form.food())) {
      attempt("food", food -> food.slug().equals(Slug.check(form.food())) ? food : base);
    }
    Map<String, String> before = FoodFacts.of(base);
    for (Map.Entry<String, String> fact : form.facts().entrySet()) {
      String name = fact.getKey();
      String text = fact.getValue().strip();
      boolean weight = name.startsWith(FoodFacts.WEIGHT);
      boolean same = text.equals(before.getOrDefault(name, ""));
      if (!weight && !same && !name.equals(FoodFacts.SOURCE)) {
        attempt(name, food -> FoodEdit.of(food, name, text));
      }
    }
    part(Nutrient.TRANS_FAT, Nutrient.FAT, food.per100g().get(Nutrient.SATURATED_FAT));
    part(Nutrient.ADDED_SUGARS, Nutrient.SUGARS, Quantity.ZERO);
    if (food.name().isBlank() && problems.stream().noneMatch(p -> p.field().equals("name"))) {
      problem("name", "The food has no name.", "Write what you call it.");
    }
    if (form.label() != null) {
      label(form.label());
    }
    if (form.weights() != null) {
      weights(form.weights(), before);
    }
  }

  /** Tells a figure, typed now, that with another part is more than the whole. */
  private void part(Nutrient part, Nutrient whole, Quantity beside) {
    Quantity figure = food.per100g().get(part);
    Quantity most = food.per100g().get(whole);
    boolean typed = form.label() == null && !figure.equals(base.per100g().get(part));
    if (typed && figure.low() + beside.low() > most.high() + ROUNDING) {
      problem(
          part.key(),
          "100 g hold " + FigureText.number(most.high()) + " g " + whole.label() + ", so "
              + FigureText.number(figure.low()) + " g " + part.label()
              + (beside.low() > 0
                  ? " beside " + FigureText.number(beside.low()) + " g saturated fat"
                  : "")
              + " cannot be.",
          "Check the figures.");
    }
  }

  private void weights(List<FoodForm.Weight> rows, Map<String, String> before) {
    Set<String> named = new HashSet<>();
    for (int i = 0; i < rows.size(); i++) {
      FoodForm.Weight row = rows.get(i);
      String field = "weights." + i;
      if (row.measure().isEmpty() && row.grams().isEmpty()) {
        continue;
      }
      if (row.measure().isEmpty()) {
        problem(field, "The household measure has no name.", "Write cup, tbsp, large or the like.");
      } else if (!named.add(row.measure())) {
        problem(field, "1 " + row.measure() + " is stated twice.", "Take one of them out.");
      } else if (row.grams().isEmpty()) {
        problem(field, "What 1 " + row.measure() + " weighs is not said.", "Write grams: 9 g.");
      } else if (!row.grams().equals(before.get(FoodFacts.WEIGHT + row.measure()))) {
        String grams = row.grams().matches("[0-9.,]+") ? row.grams() + " g" : row.grams();
        attempt(field, food -> FoodEdit.of(food, FoodFacts.WEIGHT + row.measure(), grams));
      }
    }
    for (HouseholdMeasure measure : base.household()) {
      if (!named.contains(measure.measure())) {
        food = FoodEdit.of(food, FoodFacts.WEIGHT + measure.measure(), "");
      }
    }
  }

  private void label(FoodForm.Label typed) {
    LabelFood.Panel panel =
        typed.panel().equals(LabelFood.Panel.UNITED_STATES.key())
            ? LabelFood.Panel.UNITED_STATES
            : LabelFood.Panel.EUROPEAN_UNION;
    int faultsBefore = problems.size();
    double serving = serving(typed.serving());
    String name = food.name().isBlank() ? "food" : food.name();
    LabelFood label = LabelFood.perServing(name, food.kind(), panel, serving);
    for (Map.Entry<String, String> figure : typed.figures().entrySet()) {
      String text = figure.getValue().strip();
      if (!text.isEmpty()) {
        label = with(label, figure.getKey(), text);
      }
    }
    if (label.figures().isEmpty()) {
      if (problems.size() == faultsBefore) {
        problem(
            "label", "The label has no figure yet.", "Copy what is printed, from the top down.");
      }
      return;
    }
    label.problems().forEach(p -> problem(p.field(), p.message(), p.hint()));
    if (problems.size() == faultsBefore) {
      take(label, typed.keepUnstated());
    }
  }

  private double serving(String text) {
    if (text.isEmpty()) {
      return 100;
    }
    try {
      return FoodText.grams("a serving", text.matches("[0-9.,]+") ? text + " g" : text);
    } catch (IllegalArgumentException e) {
      problem("serving_g", e);
      return 100;
    }
  }

  private LabelFood with(LabelFood label, String figure, String text) {
    try {
      Optional<FoodText.LabelValue> read = FoodText.label(figure, text);
      if (read.isPresent()) {
        return label.with(read.get().figure(), read.get().value());
      }
      problem(figure, "A label does not state that.", "Leave it out.");
    } catch (IllegalArgumentException e) {
      problem(figure, e);
    }
    return label;
  }

  private void take(LabelFood label, boolean keepUnstated) {
    Food read = label.food(food.slug());
    Nutrients figures = read.per100g();
    Source source = read.source();
    if (keepUnstated) {
      for (Nutrient nutrient : Nutrient.values()) {
        Quantity old = food.per100g().get(nutrient);
        if (figures.get(nutrient).isUnknown()) {
          figures = figures.with(nutrient, old);
        }
      }
      String from = base.source().kind().key() + base.source().id().map(id -> " " + id).orElse("");
      String note =
          source.note().orElse("") + " What it does not state is kept as it was (" + from + ").";
      source = new Source(source.kind(), source.id(), Optional.of(note));
    }
    List<HouseholdMeasure> household = new ArrayList<>(food.household());
    for (HouseholdMeasure serving : read.household()) {
      household.removeIf(each -> each.measure().equals(serving.measure()));
      household.add(serving);
    }
    food =
        new Food(
            food.slug(), food.name(), food.kind(), source, figures, household,
            food.densityGramsPerMillilitre(), food.allergens(), food.polyol(), food.price(),
            food.extras());
  }

  private void attempt(String field, UnaryOperator<Food> change) {
    try {
      food = change.apply(food);
    } catch (IllegalArgumentException e) {
      problem(field, e);
    }
  }

  private void problem(String field, IllegalArgumentException e) {
    String[] parts = String.valueOf(e.getMessage()).split("\n", 2);
    problem(field, parts[0], parts.length > 1 ? parts[1] : "");
  }

  private void problem(String field, String message, String hint) {
    problems.add(new KitchenWork.FieldProblem(field, message, hint));
  }
}
