package io.ovenmark.compare;

import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Finds the lines of two formulas that belong together.
 *
 * <ol>
 *   <li>Lines of the same id belong together; another food makes them replaced.
 *   <li>Of the rest, lines of the same food belong together, the first with the first.
 *   <li>Of the rest, a removed and an added line are taken for replaced when they are of one order
 *       (masses, or masses of dry matter, within a factor of 4) and either both are marked as
 *       flour; or neither is, they have a neighbour in common (the nearest line before or after
 *       that is in both formulas, or the end of the list), and they are of the same kind, for dry
 *       foods also of the same {@link FoodRole}, or else of the same telling role, as egg white and
 *       whey isolate are. The closest fit is taken first; every line is in one pair at most.
 * </ol>
 *
 * <p>All rules are the same in both directions.
 */
final class LineAlignment {
  /** Two masses are the same when no kitchen scale tells them apart: 0.1 g and 0.1 %. */
  private static final double SAME_GRAMS = 0.1;

  private static final double SAME_SHARE = 0.001;

  private final List<WorksheetLine> from;
  private final List<WorksheetLine> to;
  private final int[] partnerOfFrom;
  private final int[] partnerOfTo;

  private record Candidate(int from, int to, int rank, int place, double ratio, String foods) {}

  private LineAlignment(List<WorksheetLine> from, List<WorksheetLine> to) {
    this.from = from;
    this.to = to;
    this.partnerOfFrom = new int[from.size()];
    this.partnerOfTo = new int[to.size()];
    Arrays.fill(partnerOfFrom, -1);
    Arrays.fill(partnerOfTo, -1);
  }

  /**
   * Pairs the lines of two worksheets.
   *
   * @param from the earlier
   * @param to the later
   * @param moved ids of the lines that moved
   * @return in the order of the later, a removed line behind the line that it stood behind
   */
  static List<LineComparison> of(Worksheet from, Worksheet to, Set<String> moved) {
    LineAlignment alignment = new LineAlignment(from.lines(), to.lines());
    alignment.pairById();
    alignment.pairByFood();
    alignment.pairByRole();
    return alignment.rows(moved);
  }

  private void pair(int i, int j) {
    partnerOfFrom[i] = j;
    partnerOfTo[j] = i;
  }

  private void pairById() {
    Map<String, Integer> ids = new HashMap<>();
    for (int j = 0; j < to.size(); j++) {
      ids.put(to.get(j).line().id(), j);
    }
    for (int i = 0; i < from.size(); i++) {
      Integer j = ids.get(from.get(i).line().id());
      if (j != null) {
        pair(i, j);
      }
    }
  }

  private void pairByFood() {
    Map<String, Deque<Integer>> foods = new HashMap<>();
    for (int j = 0; j < to.size(); j++) {
      if (partnerOfTo[j] < 0) {
        foods.computeIfAbsent(to.get(j).line().food(), food -> new ArrayDeque<>()).add(j);
      }
    }
    for (int i = 0; i < from.size(); i++) {
      Deque<Integer> same = foods.get(from.get(i).line().food());
      if (partnerOfFrom[i] < 0 && same != null && !same.isEmpty()) {
        pair(i, same.remove());
      }
    }
  }

  private void pairByRole() {
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i < from.size(); i++) {
      for (int j = 0; partnerOfFrom[i] < 0 && j < to.size(); j++) {
        if (partnerOfTo[j] < 0) {
          candidate(i, j).ifPresent(candidates::add);
        }
      }
    }
    candidates.sort(
        Comparator.comparingInt(Candidate::rank)
            .thenComparingInt(Candidate::place)
            .thenComparingDouble(Candidate::ratio)
            .thenComparingInt(candidate -> candidate.from + candidate.to)
            .thenComparing(Candidate::foods));
    for (Candidate candidate : candidates) {
      if (partnerOfFrom[candidate.from] < 0 && partnerOfTo[candidate.to] < 0) {
        pair(candidate.from, candidate.to);
      }
    }
  }

  private Optional<Candidate> candidate(int i, int j) {
    WorksheetLine a = from.get(i);
    WorksheetLine b = to.get(j);
    OptionalDouble before = FoodRole.weighed(a);
    OptionalDouble after = FoodRole.weighed(b);
    if (before.isEmpty() || after.isEmpty() || a.food().isEmpty() || b.food().isEmpty()) {
      return Optional.empty();
    }
    double grams = before.getAsDouble();
    double others = after.getAsDouble();
    int place = place(i, j);
    int rank = rank(a, b);
    if (rank < 0 || rank > 0 && place > 1 || !FoodRole.ofOneOrder(a, grams, b, others)) {
      return Optional.empty();
    }
    String one = a.line().food();
    String other = b.line().food();
    String foods = one.compareTo(other) < 0 ? one + " " + other : other + " " + one;
    double ratio = Math.max(grams, others) / Math.min(grams, others);
    return Optional.of(new Candidate(i, j, rank, place, ratio, foods));
  }

  private static int rank(WorksheetLine a, WorksheetLine b) {
    if (a.line().flour() || b.line().flour()) {
      return a.line().flour() && b.line().flour() ? 0 : -1;
    }
    FoodKind kind = a.food().orElseThrow().kind();
    boolean sameKind = kind == b.food().orElseThrow().kind();
    FoodRole role = FoodRole.of(a.food().orElseThrow());
    if (role == FoodRole.of(b.food().orElseThrow())) {
      return sameKind ? 1 : role.tellsEnough() ? 2 : -1;
    }
    return sameKind && kind != FoodKind.DRY ? 3 : -1;
  }

  /** How many of the two nearest neighbours differ: 0, 1 or 2. */
  private int place(int i, int j) {
    int before = nearest(partnerOfFrom, i, -1);
    int after = nearest(partnerOfFrom, i, 1);
    int beforeThere = nearest(partnerOfTo, j, -1);
    int afterThere = nearest(partnerOfTo, j, 1);
    int differing = same(before, beforeThere) ? 0 : 1;
    return differing + (same(after, afterThere) ? 0 : 1);
  }

  private boolean same(int i, int j) {
    return i < 0 || j < 0 ? i < 0 && j < 0 : partnerOfFrom[i] == j;
  }

  private static int nearest(int[] partners, int start, int step) {
    for (int i = start + step; i >= 0 && i < partners.length; i += step) {
      if (partners[i] >= 0) {
        return i;
      }
    }
    return -1;
  }

  private List<LineComparison> rows(Set<String> moved) {
    List<LineComparison> rows = new ArrayList<>();
    removedBehind(-1, rows);
    for (int j = 0; j < to.size(); j++) {
      int i = partnerOfTo[j];
      rows.add(i < 0 ? added(to.get(j)) : paired(from.get(i), to.get(j), moved));
      if (i >= 0) {
        removedBehind(i, rows);
      }
    }
    return List.copyOf(rows);
  }

  /** The run of removed lines that begins right behind a line of the earlier formula. */
  private void removedBehind(int index, List<LineComparison> rows) {
    for (int i = index + 1; i < from.size() && partnerOfFrom[i] < 0; i++) {
      rows.add(removed(from.get(i)));
    }
  }

  private static LineComparison added(WorksheetLine line) {
    return single(line, LineChange.ADDED, Optional.empty(), Optional.of(line), line.grams());
  }

  private static LineComparison removed(WorksheetLine line) {
    Quantity delta = Quantity.ZERO.minus(line.grams());
    return single(line, LineChange.REMOVED, Optional.of(line), Optional.empty(), delta);
  }

  private static LineComparison single(
      WorksheetLine line,
      LineChange change,
      Optional<WorksheetLine> before,
      Optional<WorksheetLine> after,
      Quantity delta) {
    return new LineComparison(
        line.line().id(),
        line.name(),
        Optional.empty(),
        change,
        before,
        after,
        delta,
        OptionalDouble.empty(),
        false);
  }

  private static LineComparison paired(WorksheetLine a, WorksheetLine b, Set<String> moved) {
    boolean replaced = !a.line().food().equals(b.line().food());
    Amount before = a.line().amount();
    Amount after = b.line().amount();
    boolean sameMass = a.grams().equals(b.grams());
    Quantity delta =
        sameMass && (a.grams().isKnown() || !replaced && before.equals(after))
            ? Quantity.ZERO
            : b.grams().minus(a.grams());
    OptionalDouble percent =
        delta.isKnown() && a.grams().isKnown() && a.grams().low() > 0
            ? OptionalDouble.of(100 * delta.low() / a.grams().low())
            : OptionalDouble.empty();
    return new LineComparison(
        b.line().id(),
        b.name(),
        replaced ? Optional.of(a.name()) : Optional.empty(),
        replaced ? LineChange.REPLACED : change(before, after, a.grams(), delta),
        Optional.of(a),
        Optional.of(b),
        delta,
        percent,
        moved.contains(b.line().id()));
  }

  private static LineChange change(Amount before, Amount after, Quantity grams, Quantity delta) {
    if (delta.equals(Quantity.ZERO)) {
      return before.writtenAs(after) ? LineChange.SAME : LineChange.REWRITTEN;
    }
    boolean otherMeasure = !before.measure().equals(after.measure());
    boolean tooLittleToWeigh =
        delta.isKnown()
            && Math.abs(delta.low()) <= SAME_GRAMS
            && Math.abs(delta.low()) <= SAME_SHARE * grams.low();
    return otherMeasure && tooLittleToWeigh ? LineChange.REWRITTEN : LineChange.CHANGED;
  }
}
