package io.ovenmark.goal;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A goal held against a worksheet.
 *
 * @param goal the goal
 * @param results one for each limit, then each allergen, then each food, in the goal's order
 */
public record GoalCheck(Goal goal, List<Result> results) {
  /** A figure that misses a limit by less than this share of it misses it by arithmetic only. */
  private static final double ROUNDING = 1e-9;

  /** Whether a rule is kept. */
  public enum Outcome {
    /** It is kept, whatever the unknowns turn out to be. */
    MET,
    /** It is broken, whatever the unknowns turn out to be. */
    BROKEN,
    /** What is not known decides. */
    UNKNOWN
  }

  /**
   * One rule and how it stands.
   *
   * @param rule the rule in words
   * @param limit the limit; empty for an allergen or food
   * @param value the figure; unknown for an allergen or food
   * @param outcome whether it is kept
   * @param because for an allergen or food: the foods that break it or leave it open, each once;
   *     else empty
   */
  public record Result(
      String rule, Optional<Limit> limit, Quantity value, Outcome outcome, List<String> because) {
    /** Copies the list. */
    public Result {
      because = List.copyOf(because);
    }
  }

  /** Copies the list. */
  public GoalCheck {
    results = List.copyOf(results);
  }

  /**
   * Holds a goal against a worksheet that was worked out under the goal's own policy, if it has
   * one. A line of 0 g counts for allergens and foods: the formula still names the food.
   *
   * @param goal the goal
   * @param sheet the worksheet
   * @return the check
   */
  public static GoalCheck of(Goal goal, Worksheet sheet) {
    List<Result> results = new ArrayList<>();
    for (Limit limit : goal.limits()) {
      Quantity value = sheet.figure(limit.figure(), limit.basis());
      results.add(
          new Result(
              limit.inWords(), Optional.of(limit), value, outcome(limit, value), List.of()));
    }
    for (String word : goal.withoutAllergens()) {
      results.add(without(word, sheet));
    }
    for (String slug : goal.withoutFoods()) {
      List<String> lines =
          sheet.lines().stream()
              .filter(line -> line.line().food().equals(slug))
              .map(WorksheetLine::name)
              .distinct()
              .toList();
      Outcome outcome = lines.isEmpty() ? Outcome.MET : Outcome.BROKEN;
      results.add(
          new Result("no " + slug, Optional.empty(), Quantity.UNKNOWN, outcome, lines));
    }
    return new GoalCheck(goal, results);
  }

  /**
   * How the goal stands as a whole.
   *
   * @return broken when any rule is, else unknown when any is, else met
   */
  public Outcome outcome() {
    if (results.stream().anyMatch(result -> result.outcome() == Outcome.BROKEN)) {
      return Outcome.BROKEN;
    }
    return results.stream().anyMatch(result -> result.outcome() == Outcome.UNKNOWN)
        ? Outcome.UNKNOWN
        : Outcome.MET;
  }

  private static Outcome outcome(Limit limit, Quantity value) {
    double least = limit.atLeast().orElse(Double.NEGATIVE_INFINITY);
    double most = limit.atMost().orElse(Double.POSITIVE_INFINITY);
    least -= slack(least);
    most += slack(most);
    if (value.low() >= least && value.high() <= most) {
      return Outcome.MET;
    }
    return value.high() < least || value.low() > most ? Outcome.BROKEN : Outcome.UNKNOWN;
  }

  private static double slack(double bound) {
    return Double.isFinite(bound) ? ROUNDING * Math.max(1, bound) : 0;
  }

  private static Result without(String word, Worksheet sheet) {
    Set<Allergen> forbidden = Allergen.group(word);
    Set<String> containing = new LinkedHashSet<>();
    Set<String> unknown = new LinkedHashSet<>();
    for (WorksheetLine line : sheet.lines()) {
      Optional<Set<Allergen>> contained = line.food().flatMap(Food::allergens);
      if (contained.isEmpty()) {
        unknown.add(line.name());
      } else if (contained.get().stream().anyMatch(forbidden::contains)) {
        containing.add(line.name());
      }
    }
    String rule = "no " + word;
    if (!containing.isEmpty()) {
      return new Result(
          rule, Optional.empty(), Quantity.UNKNOWN, Outcome.BROKEN, List.copyOf(containing));
    }
    Outcome outcome = unknown.isEmpty() ? Outcome.MET : Outcome.UNKNOWN;
    return new Result(
        rule, Optional.empty(), Quantity.UNKNOWN, outcome, List.copyOf(unknown));
  }
}
