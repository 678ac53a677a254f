package io.ovenmark.desk;

import io.ovenmark.goal.Goal;
import io.ovenmark.goal.Limit;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.publish.story.Move;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The figures that moved from one revision to another. */
final class StoryMoves {
  private static final List<TrendFigure> MEASURED =
      List.of(
          TrendFigure.Outcome.LIKING,
          TrendFigure.Outcome.HEIGHT,
          TrendFigure.Outcome.LOSS,
          TrendFigure.Outcome.SPREAD,
          TrendFigure.Outcome.CRUST,
          TrendFigure.Outcome.WIDTH,
          TrendFigure.Outcome.CORE);

  /** What a reader needs no explanation of. */
  private static final Set<TrendFigure> PLAIN =
      Set.of(TrendFigure.Outcome.LIKING, TrendFigure.Outcome.HEIGHT);

  private static final List<TrendFigure> OF_THE_DOUGH =
      List.of(
          new TrendFigure.Worked(Figure.LIQUID_RATIO, Basis.PIECE),
          new TrendFigure.Worked(Figure.DOUGH_MOISTURE, Basis.PIECE),
          new TrendFigure.Worked(Figure.DOUGH_PER_PIECE, Basis.PIECE));

  /** A figure that misses a limit by less than this share of it misses it by arithmetic only. */
  private static final double ROUNDING = 1e-9;

  private final StoryLine line;
  private final ShownUnits units;

  StoryMoves(StoryLine line, ShownUnits units) {
    this.line = line;
    this.units = units;
  }

  /** Those that differ and are known on both sides, the most telling first. */
  List<Move> between(StoryLine.Stop before, StoryLine.Stop after) {
    Optional<Goal> goal = line.goal(after).or(() -> line.goal(before));
    Map<String, TrendFigure> figures = new LinkedHashMap<>();
    goal.map(Goal::limits).orElse(List.of()).stream()
        .map(limit -> new TrendFigure.Worked(limit.figure(), limit.basis()))
        .forEach(figure -> figures.put(figure.key(), figure));
    MEASURED.forEach(figure -> figures.put(figure.key(), figure));
    OF_THE_DOUGH.forEach(figure -> figures.putIfAbsent(figure.key(), figure));
    List<Move> moves = new ArrayList<>();
    figures.values().forEach(figure -> move(figure, goal, before, after).ifPresent(moves::add));
    moves.sort(
        Comparator.comparingInt((Move move) -> rank(move, figures.get(move.key())))
            .thenComparing(Comparator.comparingDouble(Move::strength).reversed()));
    return moves;
  }

  /** What bakes show first; empty when none was measured on both sides. */
  Optional<Move> measured(StoryLine.Stop before, StoryLine.Stop after) {
    return between(before, after).stream()
        .filter(move -> MEASURED.stream().anyMatch(figure -> figure.key().equals(move.key())))
        .findFirst();
  }

  /**
   * A limit that turned goes first, then what everybody sees and tastes, then what else was
   * measured, then what was worked out or would hardly be noticed.
   */
  private static int rank(Move move, TrendFigure figure) {
    if (move.turned()) {
      return 0;
    }
    if (!figure.isMeasured() || move.strength() < 1) {
      return 3;
    }
    return PLAIN.contains(figure) ? 1 : 2;
  }

  private Optional<Move> move(
      TrendFigure figure, Optional<Goal> goal, StoryLine.Stop before, StoryLine.Stop after) {
    Double from = figure.value(line.worksheet(before), before.bakes(), units).value();
    Double to = figure.value(line.worksheet(after), after.bakes(), units).value();
    if (from == null || to == null) {
      return Optional.empty();
    }
    String unit = figure.unit(units);
    Quantity one = Quantity.known(from);
    Quantity other = Quantity.known(to);
    if (FigureText.looksTheSame(one, other)) {
      return Optional.empty();
    }
    boolean turned =
        goal.flatMap(figure::limit)
            .filter(limit -> turned(figure, limit, before, after))
            .isPresent();
    return Optional.of(
        new Move(
            figure.key(),
            figure.label(),
            unit,
            from,
            to,
            FigureText.of(one, unit),
            FigureText.of(other, unit),
            (FigureText.signed(to - from) + " " + unit).strip(),
            turned));
  }

  /** Whether a limit is kept on exactly one of two sides that are both exactly known. */
  private boolean turned(
      TrendFigure figure, Limit limit, StoryLine.Stop before, StoryLine.Stop after) {
    return keeps(figure, limit, before) != keeps(figure, limit, after);
  }

  private boolean keeps(TrendFigure figure, Limit limit, StoryLine.Stop stop) {
    double value =
        figure
            .value(line.worksheet(stop), stop.bakes(), ShownUnits.AS_WRITTEN)
            .value();
    double least = limit.atLeast().orElse(Double.NEGATIVE_INFINITY);
    double most = limit.atMost().orElse(Double.POSITIVE_INFINITY);
    return value >= least * (1 - ROUNDING) && value <= most * (1 + ROUNDING);
  }
}
