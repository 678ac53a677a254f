package io.ovenmark.compare;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What each line does to a sum over all lines (of mass, of liquids, of a macro), by cause. A line
 * brings mass × content of its food under a rule; its difference is split by averaging over all
 * orders in which mass m, food f and rule r can change, which for mass and food alone is Δm ·
 * mean(f) and Δf · mean(m).
 *
 * @param from the sum before
 * @param to the sum after
 * @param amount by line, what its mass does
 * @param food by line, what its food or its food's data do
 * @param rule by line, what the rule does
 */
record LineTerms(double from, double to, double[] amount, double[] food, double[] rule) {

  private static final double ANY_MASS = 100;

  /** One sum over lines. */
  private record Sum(
      Function<WorksheetLine, Quantity> value, boolean rulesDiffer, Content content) {}

  /** Content of one gram of a food under a rule. */
  private interface Content {
    OptionalDouble of(Optional<Food> food, Policy policy);
  }

  static LineTerms mass(List<LineComparison> lines) {
    return of(lines, new Sum(WorksheetLine::grams, false, (food, policy) -> OptionalDouble.of(1)));
  }

  static LineTerms kind(List<LineComparison> lines, FoodKind kind) {
    Content content =
        (food, policy) ->
            OptionalDouble.of(food.filter(known -> known.kind() == kind).isPresent() ? 1 : 0);
    Function<WorksheetLine, Quantity> value =
        line ->
            line.food().filter(known -> known.kind() == kind).isPresent()
                ? line.grams()
                : Quantity.ZERO;
    return of(lines, new Sum(value, false, content));
  }

  static LineTerms macro(List<LineComparison> lines, Figure figure, Policy from, Policy to) {
    boolean rulesDiffer =
        figure == Figure.ENERGY && from.energy() != to.energy()
            || figure == Figure.NET_CARBOHYDRATE
                && !from.netCarbohydrate().equals(to.netCarbohydrate());
    Content content = (food, policy) -> content(figure, food, policy);
    return of(lines, new Sum(line -> line.macros().get(figure), rulesDiffer, content), from, to);
  }

  private static OptionalDouble content(Figure figure, Optional<Food> food, Policy policy) {
    if (food.isEmpty()) {
      return OptionalDouble.empty();
    }
    Quantity per100g =
        switch (figure) {
          case ENERGY -> policy.energy().energyPer100g(food.get());
          case NET_CARBOHYDRATE -> policy.netCarbohydrate().per100g(food.get().per100g());
          default -> food.get().per100g().get(figure.nutrient().orElseThrow());
        };
    return per100g.isKnown() ? OptionalDouble.of(per100g.low() / 100) : OptionalDouble.empty();
  }

  private static LineTerms of(List<LineComparison> lines, Sum sum) {
    return of(lines, sum, Policy.USUAL, Policy.USUAL);
  }

  private static LineTerms of(
      List<LineComparison> lines, Sum sum, Policy policyFrom, Policy policyTo) {
    int count = lines.size();
    double[] amount = new double[count];
    double[] food = new double[count];
    double[] rule = new double[count];
    double from = 0;
    double to = 0;
    for (int i = 0; i < count; i++) {
      LineComparison line = lines.get(i);
      double massBefore = mass(line.before(), line.after());
      double massAfter = mass(line.after(), line.before());
      double before = value(sum, line.before(), massBefore, policyFrom);
      double after = value(sum, line.after(), massAfter, policyTo);
      from += before;
      to += after;
      Optional<Food> foodBefore = line.before().or(line::after).flatMap(WorksheetLine::food);
      Optional<Food> foodAfter = line.after().or(line::before).flatMap(WorksheetLine::food);
      boolean sameFood = sameComposition(foodBefore, foodAfter);
      if (sameFood && !sum.rulesDiffer) {
        amount[i] = after - before;
      } else {
        // content of a gram: first index the food, second the rule, 0 before and 1 after
        double c00 = share(sum, before, massBefore, foodBefore, policyFrom);
        double c11 = share(sum, after, massAfter, foodAfter, policyTo);
        c00 = Double.isNaN(c00) ? Double.isNaN(c11) ? 0 : c11 : c00;
        c11 = Double.isNaN(c11) ? c00 : c11;
        double c10 = sameFood ? c00 : c11;
        double c01 = sameFood ? c11 : c00;
        if (sum.rulesDiffer && !sameFood) {
          OptionalDouble laterFood = sum.content.of(foodAfter, policyFrom);
          OptionalDouble earlierFood = sum.content.of(foodBefore, policyTo);
          if (laterFood.isPresent() && earlierFood.isPresent()) {
            c10 = laterFood.getAsDouble();
            c01 = earlierFood.getAsDouble();
          }
        }
        amount[i] = (massAfter - massBefore) * (2 * c00 + c10 + c01 + 2 * c11) / 6;
        food[i] = orders(massBefore, massAfter, c10 - c00, c11 - c01);
        rule[i] = orders(massBefore, massAfter, c01 - c00, c11 - c10);
      }
    }
    return new LineTerms(from, to, amount, food, rule);
  }

  private static double orders(double massBefore, double massAfter, double early, double late) {
    return (massBefore * (2 * early + late) + massAfter * (early + 2 * late)) / 6;
  }

  /** Mass; 0 when the line is not there; the other side's, else any, when it is not known. */
  private static double mass(Optional<WorksheetLine> line, Optional<WorksheetLine> other) {
    if (line.isEmpty()) {
      return 0;
    }
    Quantity grams = line.get().grams();
    if (grams.isKnown()) {
      return grams.low();
    }
    return other
        .map(WorksheetLine::grams)
        .filter(known -> known.isKnown() && known.low() > 0)
        .map(Quantity::low)
        .orElse(ANY_MASS);
  }

  /** What a line brings; not a number when that is not known though its mass is, or its content. */
  private static double value(Sum sum, Optional<WorksheetLine> line, double mass, Policy policy) {
    if (line.isEmpty()) {
      return 0;
    }
    if (line.get().grams().isKnown()) {
      Quantity value = sum.value.apply(line.get());
      return value.isKnown() ? value.low() : Double.NaN;
    }
    return sum.content.of(line.get().food(), policy).orElse(Double.NaN) * mass;
  }

  private static double share(
      Sum sum, double value, double mass, Optional<Food> food, Policy policy) {
    return mass > 0 ? value / mass : sum.content.of(food, policy).orElse(Double.NaN);
  }

  private static boolean sameComposition(Optional<Food> one, Optional<Food> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isEmpty() && other.isEmpty();
    }
    Food a = one.get();
    Food b = other.get();
    return a == b
        || a.per100g().equals(b.per100g()) && a.polyol().equals(b.polyol()) && a.kind() == b.kind();
  }

  /** This sum less another. */
  LineTerms minus(LineTerms other) {
    return new LineTerms(
        from - other.from,
        to - other.to,
        minus(amount, other.amount),
        minus(food, other.food),
        minus(rule, other.rule));
  }

  private static double[] minus(double[] a, double[] b) {
    double[] difference = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      difference[i] = a[i] - b[i];
    }
    return difference;
  }
}
