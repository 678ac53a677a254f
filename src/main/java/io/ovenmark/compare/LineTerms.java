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
 * orders in which mass m, food f and rule r can change, which for mass and food alone is Δm · mean(f)
 * and Δf · mean(m).
 *
 * @param from the sum before
 * @param to the sum after
 * @param amount by line, what its mass does
 * @param food by line, what its food or its food's data do
 * @param rule by line, what the rule does
 */
record LineTerms(double from, double to, double[] amount, double[] food, double[] rule) {

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
    return of(
        lines, new Sum(line -> line.macros().get(figure), rulesDiffer, content), from, to);
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
    LineTerms terms =
        new LineTerms(
            total(lines, sum, true),
            total(lines, sum, false),
            new double[count],
            new double[count],
            new double[count]);
    for (int i = 0; i < count; i++) {
      if (Double.isFinite(terms.from) && Double.isFinite(terms.to)) {
        terms.split(i, lines.get(i), sum, policyFrom, policyTo);
      }
    }
    return terms;
  }

  /** The known total, or not a number. */
  private static double total(List<LineComparison> lines, Sum sum, boolean before) {
    double total = 0;
    for (LineComparison line : lines) {
      Optional<WorksheetLine> side = before ? line.before() : line.after();
      if (side.isPresent()) {
        Quantity value = sum.value.apply(side.get());
        total += value.isKnown() ? value.low() : Double.NaN;
      }
    }
    return total;
  }

  private void split(int i, LineComparison line, Sum sum, Policy policyFrom, Policy policyTo) {
    double before = line.before().map(sum.value).map(Quantity::low).orElse(0.0);
    double after = line.after().map(sum.value).map(Quantity::low).orElse(0.0);
    Optional<Food> foodBefore = line.before().or(line::after).flatMap(WorksheetLine::food);
    Optional<Food> foodAfter = line.after().or(line::before).flatMap(WorksheetLine::food);
    boolean sameFood = sameComposition(foodBefore, foodAfter);
    if (sameFood && !sum.rulesDiffer) {
      amount[i] = after - before;
      return;
    }
    // a mass that is not known brings nothing, whatever it is; then only the food can have a part
    double massBefore = mass(line.before(), line.after());
    double massAfter = mass(line.after(), line.before());
    double c00 = share(sum, before, massBefore, foodBefore, policyFrom);
    double c11 = share(sum, after, massAfter, foodAfter, policyTo);
    if (Double.isNaN(c00) || Double.isNaN(c11)) {
      c00 = Double.isNaN(c00) ? Double.isNaN(c11) ? 0 : c11 : c00;
      c11 = Double.isNaN(c11) ? c00 : c11;
    }
    double c10 = c11;
    double c01 = c00;
    if (sum.rulesDiffer) {
      if (sameFood) {
        c10 = c00;
        c01 = c11;
      } else {
        OptionalDouble crossed = sum.content.of(foodAfter, policyFrom);
        OptionalDouble other = sum.content.of(foodBefore, policyTo);
        if (crossed.isPresent() && other.isPresent()) {
          c10 = crossed.getAsDouble();
          c01 = other.getAsDouble();
        }
      }
    }
    amount[i] = (massAfter - massBefore) * (2 * c00 + c10 + c01 + 2 * c11) / 6;
    food[i] = orders(massBefore, massAfter, c10 - c00, c11 - c01);
    rule[i] = orders(massBefore, massAfter, c01 - c00, c11 - c10);
  }

  private static double orders(double massBefore, double massAfter, double early, double late) {
    return (massBefore * (2 * early + late) + massAfter * (early + 2 * late)) / 6;
  }

  /** Mass; 0 when the line is not there; the other side's when it is not known. */
  private static double mass(Optional<WorksheetLine> line, Optional<WorksheetLine> other) {
    if (line.isEmpty()) {
      return 0;
    }
    Quantity grams = line.get().grams();
    if (grams.isKnown()) {
      return grams.low();
    }
    return other.map(WorksheetLine::grams).filter(Quantity::isKnown).map(Quantity::low).orElse(0.0);
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
        || a.per100g().equals(b.per100g())
            && a.polyol().equals(b.polyol())
            && a.kind() == b.kind();
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
