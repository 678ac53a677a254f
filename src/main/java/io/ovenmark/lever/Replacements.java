package io.ovenmark.lever;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodWork;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The foods that can stand in for a line, each with the mass that keeps a chosen figure of that
 * line, and everything that would move. With <i>g</i> the mass of the line, <i>a</i> what 100 g of
 * its food hold of the kept figure and <i>b</i> what 100 g of the other hold, the mass is <i>g</i>
 * × <i>a</i> ÷ <i>b</i>.
 *
 * <pre>{@code
 * Replacements found =
 *     Replacements.of(sheet, "lupin-flour", Kept.PROTEIN, Optional.of(goal), foods, Readings.FINE);
 * }</pre>
 *
 * <p>Foods of the same kind come first; within a kind those that keep most of the goal's rules, and
 * of those the ones that disturb the rest least. A loss on baking that was weighed is taken to
 * stay.
 *
 * @param before the formula as it is
 * @param line the line that is replaced
 * @param kept which figure stays
 * @param keptGrams how much of it the line holds
 * @param goal what the formula is held to; empty for nothing
 * @param reading what the scale can show in grams, 0 for exact
 * @param answers the foods that can stand in, best first
 * @param setAside those that are not proposed, and why, in the order in which they were given
 */
public record Replacements(
    Worksheet before,
    WorksheetLine line,
    Kept kept,
    double keptGrams,
    Optional<Goal> goal,
    double reading,
    List<Replacement> answers,
    List<SetAside> setAside) {

  /** More than so many times the mass, or less than this part of it, is no replacement. */
  private static final double OUT_OF_PROPORTION = 10;

  /** A line may carry a tonne. */
  private static final double GREATEST_GRAMS = 1_000_000;

  private static final Comparator<Replacement> BEST_FIRST =
      Comparator.comparing((Replacement each) -> !each.sameKind())
          .thenComparing(each -> rules(each, GoalCheck.Outcome.BROKEN))
          .thenComparing(each -> rules(each, GoalCheck.Outcome.UNKNOWN))
          .thenComparing(Replacement::disturbance)
          .thenComparing(each -> each.standIn().food().slug());

  /** Checks that nothing is null and copies the lists. */
  public Replacements {
    requireNonNull(before, "before");
    requireNonNull(line, "line");
    requireNonNull(kept, "kept");
    requireNonNull(goal, "goal");
    answers = List.copyOf(answers);
    setAside = List.copyOf(setAside);
  }

  /**
   * Finds them.
   *
   * @param before the formula worked out, under the goal's own policy if it has one
   * @param id the line that is replaced
   * @param kept which figure of it stays
   * @param goal what the formula is held to; empty for nothing
   * @param foods the foods to choose from; the line's own is left out
   * @param reading what the scale can show in grams, 0 for exact
   * @return the answers
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when there
   *     is no such line, or it holds none, or an unknown amount, of what is to be kept
   */
  public static Replacements of(
      Worksheet before,
      String id,
      Kept kept,
      Optional<Goal> goal,
      List<StandIn> foods,
      double reading) {
    WorksheetLine line =
        before.line(id)
            .orElseThrow(
                () ->
                    bad(
                        "There is no line \"" + id + "\" in this formula.",
                        "Its lines are "
                            + String.join(
                                ", ", before.lines().stream().map(l -> l.line().id()).toList())
                            + "."));
    double held = held(line, kept);
    List<Replacement> answers = new ArrayList<>();
    List<SetAside> setAside = new ArrayList<>();
    for (StandIn standIn : foods) {
      if (standIn.food().slug().equals(line.line().food())) {
        continue;
      }
      Optional<SetAside> reason = reason(line, kept, held, goal, standIn);
      if (reason.isPresent()) {
        setAside.add(reason.get());
      } else {
        answers.add(answer(before, line, grams(kept, held, standIn.food()), goal, standIn,
            reading));
      }
    }
    answers.sort(BEST_FIRST);
    List<Replacement> numbered = new ArrayList<>();
    for (Replacement answer : answers) {
      numbered.add(answer.numbered(numbered.size() + 1));
    }
    return new Replacements(before, line, kept, held, goal, reading, numbered, setAside);
  }

  /**
   * How much of a figure a line holds.
   *
   * @param line the line
   * @param kept which figure
   * @return grams; known in part or not at all where the mass or the food's figure is
   */
  public static Quantity holds(WorksheetLine line, Kept kept) {
    return line.food()
        .map(food -> kept.per100g(food).times(line.grams()).dividedBy(100))
        .orElse(Quantity.UNKNOWN);
  }

  private static double held(WorksheetLine line, Kept kept) {
    if (line.food().isEmpty()) {
      throw bad(
          "The pantry has no food \"" + line.line().food() + "\", so that nothing can be kept.",
          "Add the food, or correct the line.");
    }
    if (!line.grams().isKnown() || line.grams().low() <= 0) {
      throw bad(
          "The line " + line.name() + " weighs "
              + (line.grams().isKnown() ? "nothing" : "an unknown mass") + ".",
          "Give it a mass in grams first.");
    }
    Quantity held = holds(line, kept);
    if (!held.isKnown()) {
      throw bad(
          "The " + kept.label() + " of " + line.name() + " is not known, so that nothing can keep"
              + " it.",
          "Keep its mass, or enter the figure from the package in the pantry.");
    }
    if (held.low() <= 0) {
      throw bad(
          "There is no " + kept.label() + " in " + line.name() + " to keep.",
          "Keep " + Kept.usual(line.food().get()).label() + " instead.");
    }
    return held.low();
  }

  private static Food own(WorksheetLine line) {
    return line.food().orElseThrow();
  }

  private static double grams(Kept kept, double held, Food food) {
    return held / kept.per100g(food).low() * 100;
  }

  private static Optional<SetAside> reason(
      WorksheetLine line, Kept kept, double held, Optional<Goal> goal, StandIn standIn) {
    Food food = standIn.food();
    Optional<String> forbidden = goal.flatMap(rules -> forbidden(rules, food));
    if (forbidden.isPresent()) {
      return Optional.of(new SetAside(standIn, SetAside.Why.FORBIDDEN, forbidden.get()));
    }
    Quantity per100g = kept.per100g(food);
    if (!per100g.isKnown()) {
      return Optional.of(
          new SetAside(
              standIn, SetAside.Why.UNKNOWN, "its " + kept.label() + " is not known"));
    }
    if (per100g.low() <= 0) {
      return Optional.of(
          new SetAside(standIn, SetAside.Why.NOTHING, "it has no " + kept.label()));
    }
    Set<FoodWork> works = FoodWork.of(food);
    works.removeIf(work -> !work.decidesAmount());
    if (!works.isEmpty() && works.stream().noneMatch(FoodWork.of(own(line))::contains)) {
      return Optional.of(
          new SetAside(
              standIn,
              SetAside.Why.OTHER_WORK,
              "it is " + works.iterator().next().label()
                  + ", and taste or strength decides its amount"));
    }
    double grams = grams(kept, held, food);
    double times = grams / line.grams().low();
    if (times > OUT_OF_PROPORTION || times < 1 / OUT_OF_PROPORTION || grams > GREATEST_GRAMS) {
      return Optional.of(
          new SetAside(
              standIn,
              SetAside.Why.OUT_OF_PROPORTION,
              "it would take " + FigureText.number(grams) + " g for "
                  + FigureText.number(line.grams().low()) + " g"));
    }
    return Optional.empty();
  }

  private static Optional<String> forbidden(Goal goal, Food food) {
    if (goal.withoutFoods().contains(food.slug())) {
      return Optional.of("the goal " + goal.name() + " is without " + food.slug());
    }
    Set<String> found = new LinkedHashSet<>();
    for (String word : goal.withoutAllergens()) {
      food.allergens().orElse(Set.of()).stream()
          .filter(Allergen.group(word)::contains)
          .forEach(
              allergen ->
                  found.add(
                      allergen.key().equals(word) ? word : allergen.key() + " (" + word + ")"));
    }
    return found.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "contains " + String.join(", ", found) + ", which the goal " + goal.name()
                + " is without");
  }

  private static Replacement answer(
      Worksheet before,
      WorksheetLine line,
      double grams,
      Optional<Goal> goal,
      StandIn standIn,
      double reading) {
    Food food = standIn.food();
    Amount exact = Amount.grams(BigDecimal.valueOf(grams));
    Amount weigh =
        Measured.of(
                Line.of(line.line().id(), food.slug(), exact),
                Optional.of(food),
                Quantity.known(grams),
                1,
                reading)
            .amount();
    Worksheet after = workOut(before, line, food, exact);
    Worksheet weighed = workOut(before, line, food, weigh);
    return new Replacement(
        0,
        standIn,
        FoodWork.sameKind(own(line), food),
        grams,
        weigh,
        after,
        weighed,
        Disturbance.of(before, after, List.of(), List.of()),
        goal.map(rules -> GoalCheck.of(rules, weighed)),
        Structure.of(own(line), food));
  }

  private static Worksheet workOut(
      Worksheet before, WorksheetLine line, Food food, Amount amount) {
    Map<String, Food> foods = new HashMap<>();
    before.lines().forEach(each -> each.food().ifPresent(f -> foods.put(f.slug(), f)));
    foods.putIfAbsent(food.slug(), food);
    return Worksheet.of(
        replaced(before.formula(), line.line().id(), food.slug(), amount),
        slug -> Optional.ofNullable(foods.get(slug)),
        before.policy(),
        before.bakedYield());
  }

  /**
   * A formula with another food on a line, which keeps its id, its place and its note.
   *
   * @param formula the formula
   * @param id the line
   * @param food slug of the food that stands in
   * @param amount how much of it
   * @return a new formula
   */
  public static Formula replaced(Formula formula, String id, String food, Amount amount) {
    return formula.withLines(
        formula.lines().stream()
            .map(
                each ->
                    each.id().equals(id) ? each.withFood(food).withAmount(amount) : each)
            .toList());
  }

  private static long rules(Replacement answer, GoalCheck.Outcome outcome) {
    return answer.goal()
        .map(
            check -> check.results().stream().filter(each -> each.outcome() == outcome).count())
        .orElse(0L);
  }

  private static IllegalArgumentException bad(String sentence, String remedy) {
    return new IllegalArgumentException(sentence + "\n" + remedy);
  }

  /**
   * Finds the answer for a food.
   *
   * @param food its slug
   * @return the answer, empty when it is not proposed
   */
  public Optional<Replacement> answer(String food) {
    return answers.stream()
        .filter(each -> each.standIn().food().slug().equals(food))
        .findFirst();
  }
}
