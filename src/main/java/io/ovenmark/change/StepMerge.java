package io.ovenmark.change;

import io.ovenmark.change.ListDiff.Hunk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Merges methods with whole steps as units. Neighbouring steps may be changed by one side each; the
 * same step, or the same gap between steps, may not.
 */
final class StepMerge {
  private record Edit(boolean ours, int start, int end, List<String> steps) {
    boolean inserts() {
      return start == end;
    }

    boolean touches(Edit other) {
      if (inserts() || other.inserts()) {
        Edit inserted = inserts() ? this : other;
        Edit around = inserts() ? other : this;
        int gap = inserted.start;
        boolean grows = around.steps.size() > around.end - around.start;
        return around.inserts()
            ? gap == around.start
            : grows
                ? around.start <= gap && gap <= around.end
                : around.start < gap && gap < around.end;
      }
      return start < other.end && other.start < end;
    }
  }

  private StepMerge() {}

  static List<String> merge(Three<List<String>> methods, Pick pick) {
    List<String> base = methods.base();
    List<Edit> edits = new ArrayList<>(edits(true, base, methods.ours()));
    edits.addAll(edits(false, base, methods.theirs()));
    edits.sort(
        Comparator.comparingInt(Edit::start)
            .thenComparingInt(Edit::end)
            .thenComparing(edit -> !edit.ours()));
    List<String> result = new ArrayList<>();
    int done = 0;
    for (int i = 0; i < edits.size(); ) {
      List<Edit> group = new ArrayList<>();
      group.add(edits.get(i++));
      while (i < edits.size() && touchesAny(group, edits.get(i))) {
        group.add(edits.get(i++));
      }
      int start = group.get(0).start();
      int end = group.stream().mapToInt(Edit::end).max().orElse(start);
      result.addAll(base.subList(done, start));
      Three<List<String>> sides =
          new Three<>(
              base.subList(start, end),
              applied(base, start, end, group, true),
              applied(base, start, end, group, false));
      result.addAll(
          pick.value(path(start, end), what(start, end), sides, steps -> joined(steps)));
      done = end;
    }
    result.addAll(base.subList(done, base.size()));
    return result;
  }

  private static boolean touchesAny(List<Edit> group, Edit edit) {
    return group.stream().anyMatch(other -> other.ours() != edit.ours() && other.touches(edit));
  }

  private static List<Edit> edits(boolean ours, List<String> base, List<String> side) {
    List<Edit> edits = new ArrayList<>();
    for (Hunk hunk : ListDiff.hunks(base, side)) {
      List<String> steps = side.subList(hunk.toStart(), hunk.toEnd());
      if (hunk.fromEnd() - hunk.fromStart() == steps.size()) {
        for (int i = 0; i < steps.size(); i++) {
          int at = hunk.fromStart() + i;
          edits.add(new Edit(ours, at, at + 1, steps.subList(i, i + 1)));
        }
      } else {
        edits.add(new Edit(ours, hunk.fromStart(), hunk.fromEnd(), steps));
      }
    }
    return edits;
  }

  private static List<String> applied(
      List<String> base, int start, int end, List<Edit> group, boolean ours) {
    List<String> result = new ArrayList<>();
    int done = start;
    for (Edit edit : group) {
      if (edit.ours() == ours) {
        result.addAll(base.subList(done, edit.start()));
        result.addAll(edit.steps());
        done = edit.end();
      }
    }
    result.addAll(base.subList(done, end));
    return result;
  }

  private static String path(int start, int end) {
    if (start == end) {
      return "method.after." + start;
    }
    return "method." + (start + 1) + (end - start == 1 ? "" : "-" + end);
  }

  private static String what(int start, int end) {
    if (start == end) {
      return start == 0 ? "a first step" : "a step after step " + start;
    }
    return end - start == 1 ? "step " + end : "steps " + (start + 1) + " to " + end;
  }

  private static Optional<String> joined(List<String> steps) {
    return steps.isEmpty() ? Optional.empty() : Optional.of(String.join("\n", steps));
  }
}
