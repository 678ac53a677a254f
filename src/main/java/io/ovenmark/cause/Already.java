package io.ovenmark.cause;

import io.ovenmark.bake.Piece;
import io.ovenmark.cause.Plan.Factor;
import io.ovenmark.cause.Plan.Setting;
import io.ovenmark.cause.Plan.SoFar;
import io.ovenmark.formula.Formula;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** What earlier bakes say of the settings of a plan. */
final class Already {
  /** Ovens no further apart count as the same setting; common practice, no source. */
  private static final double NEAR_DEGREES = 5;

  /** Times that differ by no more than this share count as the same; common practice, no source. */
  private static final double NEAR_TIME = 0.12;

  private final Turn turn;
  private final Parts parts;
  private final List<Baked> bakes;

  Already(Turn turn, Parts parts, List<Baked> bakes) {
    this.turn = turn;
    this.parts = parts;
    this.bakes = bakes;
  }

  /** Whether dough, tray and steam of a bake are those of a recipe. */
  static boolean isOf(Recipe recipe, Baked baked) {
    Formula formula = baked.side().sheet().formula();
    return recipe.sameDough(formula) && recipe.sameStages(formula);
  }

  /** What earlier bakes say of a recipe. */
  SoFar of(Recipe recipe) {
    int pieces = 0;
    int with = 0;
    Set<String> ids = new LinkedHashSet<>();
    for (Baked baked : bakes) {
      if (baked.isJudged() && isOf(recipe, baked)) {
        List<Piece> found = baked.with(turn.finding());
        for (Piece piece : baked.bake().pieces()) {
          if (isNear(recipe, piece)) {
            pieces++;
            with += found.contains(piece) ? 1 : 0;
            ids.add(baked.bake().id());
          }
        }
      }
    }
    return new SoFar(pieces, with, List.copyOf(ids));
  }

  private boolean isNear(Recipe recipe, Piece piece) {
    boolean sameRack =
        parts.all().stream().noneMatch(part -> part.name().equals("rack"))
            || recipe.rack().equals(piece.rack());
    if (!sameRack
        || recipe.temperature().isEmpty()
        || recipe.minutes().isEmpty()
        || piece.temperature().isEmpty()
        || piece.minutes().isEmpty()) {
      return false;
    }
    double minutes = recipe.minutes().getAsDouble();
    return isNear(
            piece.temperature().get().celsius(),
            recipe.temperature().get().celsius(),
            NEAR_DEGREES,
            each -> each.temperature().map(Temperature::celsius))
        && isNear(
            piece.minutes().getAsDouble(),
            minutes,
            NEAR_TIME * minutes,
            each ->
                each.minutes().isPresent()
                    ? Optional.of(each.minutes().getAsDouble())
                    : Optional.empty());
  }

  /** Within a span of its level, and nearer to it than to the other level, where there is one. */
  private boolean isNear(
      double value, double own, double span, Function<Recipe, Optional<Double>> level) {
    double away = Math.abs(value - own);
    return away <= span
        && Stream.of(parts.earlier(), parts.later())
            .flatMap(each -> level.apply(each).stream())
            .filter(other -> other != own)
            .allMatch(other -> away < Math.abs(value - other));
  }

  /** What baked settings that differ in one factor alone say already. */
  static List<String> pairs(List<Factor> factors, List<Setting> settings) {
    List<String> pairs = new ArrayList<>();
    for (int factor = 0; factor < factors.size(); factor++) {
      for (Setting before : settings) {
        for (Setting after : settings) {
          if (differOnlyIn(factor, before, after)
              && before.soFar().pieces() > 0
              && after.soFar().pieces() > 0) {
            pairs.add(
                "The " + factors.get(factor).name() + " alone, settings " + before.number()
                    + " and " + after.number() + ": found on " + shares(before.soFar())
                    + " pieces, then on " + shares(after.soFar()) + ".");
          }
        }
      }
    }
    return pairs;
  }

  private static String shares(SoFar soFar) {
    return soFar.with() + " of " + soFar.pieces();
  }

  private static boolean differOnlyIn(int factor, Setting before, Setting after) {
    boolean only = !before.levels().get(factor) && after.levels().get(factor);
    for (int i = 0; i < before.levels().size(); i++) {
      only &= i == factor || before.levels().get(i).equals(after.levels().get(i));
    }
    return only;
  }
}
