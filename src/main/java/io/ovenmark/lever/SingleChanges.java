package io.ovenmark.lever;

import io.ovenmark.formula.Yield;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every change of one line that keeps all conditions. The line moves along a straight path on which
 * each condition holds between two places; where all of them hold, the place nearest to the present
 * is taken. With a fixed batch the other lines that may move give or take in proportion.
 */
final class SingleChanges {
  /** Places on a path that are no further apart are one place. */
  private static final double SAME = 1e-9;

  private final Dough dough;
  private final Question question;
  private final List<Row> rows = new ArrayList<>();
  private final Optional<Division> division;

  SingleChanges(
      Dough dough, Question question, Optional<Division> division, List<Condition> conditions) {
    this.dough = dough;
    this.question = question;
    this.division = division;
    for (Condition condition : conditions) {
      if (condition.kind() != Condition.Kind.DIVISION) {
        rows.addAll(condition.rows());
      }
    }
  }

  /** The point with all lines as they are, the batch divided as asked. */
  double[] start() {
    return divided(dough.start());
  }

  /** Whether that keeps all conditions already. */
  boolean startIsEnough() {
    double[] start = start();
    return rows.stream().allMatch(row -> row.violation(start) <= SAME);
  }

  /**
   * A line's own change.
   *
   * @param line its place
   * @return the point; empty when the line cannot move or no mass of it will do
   */
  Optional<double[]> of(int line) {
    if (!dough.isMovable(line) || question.keep().contains(dough.id(line))) {
      return Optional.empty();
    }
    double[] from = start();
    double[] next = from.clone();
    next[line] += 1;
    if (question.batchFixed() && !balance(line, next)) {
      return Optional.empty();
    }
    double[] to = divided(next);
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (Row row : rows) {
      double at = row.at(from);
      double slope = row.at(to) - at;
      double scale = Math.max(row.scale(), Double.MIN_NORMAL);
      if (Math.abs(slope) <= SAME * scale) {
        if (row.violation(from) > SAME) {
          return Optional.empty();
        }
        continue;
      }
      double one = (row.low() - at) / slope;
      double other = (row.high() - at) / slope;
      low = Math.max(low, Math.min(one, other));
      high = Math.min(high, Math.max(one, other));
    }
    if (low > high + SAME * Math.max(1, Math.abs(low))) {
      return Optional.empty();
    }
    double step = low > high ? (low + high) / 2 : Math.min(Math.max(0, low), high);
    double[] point = from.clone();
    for (int i = 0; i < point.length; i++) {
      point[i] += step * (to[i] - from[i]);
    }
    return Math.abs(step) <= Dough.UNMOVED ? Optional.empty() : Optional.of(point);
  }

  /** Takes from the other lines that may move what the line gained; false when there are none. */
  private boolean balance(int line, double[] point) {
    double others = 0;
    for (int i = 0; i < dough.lines(); i++) {
      others += isOther(i, line) ? dough.grams(i) : 0;
    }
    for (int i = 0; i < dough.lines(); i++) {
      point[i] -= isOther(i, line) ? dough.grams(line) / others : 0;
    }
    return others > 0;
  }

  private boolean isOther(int i, int line) {
    return i != line && dough.isMovable(i) && !question.keep().contains(dough.id(i));
  }

  /** Brings the number of pieces of a point to what the division demands. */
  double[] divided(double[] point) {
    double[] next = point.clone();
    if (division.isPresent()) {
      Yield yield = division.get().yield();
      double dough100 = new Row(dough.batch(), 0, 0).at(point) * dough.keptShare();
      double pieces =
          yield.pieces().isPresent()
              ? yield.pieces().get()
              : dough100 / yield.doughPerPieceGrams().orElseThrow();
      next[dough.lines()] = pieces / dough.pieces();
    }
    return next;
  }
}
