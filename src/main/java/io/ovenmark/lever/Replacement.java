package io.ovenmark.lever;

import static java.util.Objects.requireNonNull;

import io.ovenmark.goal.GoalCheck;
import io.ovenmark.measure.Amount;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A food that can stand in for a line, and what that does.
 *
 * @param number by which it is asked for, from 1
 * @param standIn the food
 * @param sameKind whether it is of the same kind as what it replaces
 * @param grams the mass that keeps the chosen figure exactly
 * @param weigh what to weigh, as fine as the scale shows
 * @param after the formula with the exact mass, worked out
 * @param weighed the formula with what is weighed, worked out
 * @param disturbance how much it disturbs the rest, see {@link Disturbance}
 * @param goal how the goal stands with what is weighed; empty without goal
 * @param structure what it changes in the work of the dough that figures do not show
 */
public record Replacement(
    int number,
    StandIn standIn,
    boolean sameKind,
    double grams,
    Amount weigh,
    Worksheet after,
    Worksheet weighed,
    double disturbance,
    Optional<GoalCheck> goal,
    List<String> structure) {
  /** Checks that nothing is null and copies the list. */
  public Replacement {
    requireNonNull(standIn, "standIn");
    requireNonNull(weigh, "weigh");
    requireNonNull(after, "after");
    requireNonNull(weighed, "weighed");
    requireNonNull(goal, "goal");
    structure = List.copyOf(structure);
  }

  Replacement numbered(int next) {
    return new Replacement(
        next, standIn, sameKind, grams, weigh, after, weighed, disturbance, goal, structure);
  }

  /**
   * What moves for a basis.
   *
   * @param before the formula as it is
   * @param basis for what; figures that are not macros are told with a piece and with 100 g of
   *     dough, not again with the batch and with 100 g baked
   * @return the figures that differ, in a fixed order
   */
  public List<FigureMove> moves(Worksheet before, Basis basis) {
    List<FigureMove> moves = new ArrayList<>();
    boolean again = basis == Basis.BATCH || basis == Basis.BAKED_100_G;
    for (Figure figure : again ? Figure.macros() : List.of(Figure.values())) {
      FigureMove move =
          new FigureMove(
              figure, basis, before.figure(figure, basis), weighed.figure(figure, basis));
      if (!move.isStill()) {
        moves.add(move);
      }
    }
    return List.copyOf(moves);
  }

  /**
   * The allergens that the formula would newly contain.
   *
   * @param before the formula as it is
   * @return in a fixed order
   */
  public Set<Allergen> gained(Worksheet before) {
    return minus(weighed.allergens(), before.allergens());
  }

  /**
   * The allergens that the formula would no longer contain.
   *
   * @param before the formula as it is
   * @return in a fixed order
   */
  public Set<Allergen> lost(Worksheet before) {
    return minus(before.allergens(), weighed.allergens());
  }

  private static Set<Allergen> minus(Set<Allergen> all, Set<Allergen> without) {
    Set<Allergen> left = EnumSet.noneOf(Allergen.class);
    left.addAll(all);
    left.removeAll(without);
    return Collections.unmodifiableSet(left);
  }
}
