package io.ovenmark.change;

import com.github.difflib.algorithm.Change;
import com.github.difflib.algorithm.myers.MyersDiffWithLinearSpace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The one place that calls the text diff library, with an algorithm of our own choosing rather than
 * its changeable default.
 */
final class ListDiff {
  /** Above this many differing items the differing middle counts as replaced as a whole. */
  private static final int GREATEST = 6000;

  private ListDiff() {}

  /**
   * A stretch that differs: items {@code fromStart} up to (not with) {@code fromEnd} gave way to
   * items {@code toStart} up to {@code toEnd}. Indexes count from 0; either stretch may be empty,
   * not both.
   */
  record Hunk(int fromStart, int fromEnd, int toStart, int toEnd) {}

  /**
   * Where two lists differ.
   *
   * @return stretches in order, none touching the next; what lies between them is equal
   */
  static <T> List<Hunk> hunks(List<T> from, List<T> to) {
    int head = 0;
    int least = Math.min(from.size(), to.size());
    while (head < least && from.get(head).equals(to.get(head))) {
      head++;
    }
    int tail = 0;
    while (tail < least - head
        && from.get(from.size() - 1 - tail).equals(to.get(to.size() - 1 - tail))) {
      tail++;
    }
    int fromEnd = from.size() - tail;
    int toEnd = to.size() - tail;
    if (head == fromEnd && head == toEnd) {
      return List.of();
    }
    if (head == fromEnd || head == toEnd || fromEnd + toEnd - 2 * head > GREATEST) {
      return List.of(new Hunk(head, fromEnd, head, toEnd));
    }
    return hunks(from.subList(head, fromEnd), to.subList(head, toEnd), head);
  }

  private static <T> List<Hunk> hunks(List<T> from, List<T> to, int offset) {
    List<Change> changes = new ArrayList<>(
        new MyersDiffWithLinearSpace<T>().computeDiff(from, to, null));
    changes.sort(
        Comparator.comparingInt((Change change) -> change.startOriginal)
            .thenComparingInt(change -> change.startRevised));
    List<Hunk> hunks = new ArrayList<>();
    for (Change change : changes) {
      Hunk next =
          new Hunk(
              change.startOriginal + offset,
              change.endOriginal + offset,
              change.startRevised + offset,
              change.endRevised + offset);
      Hunk last = hunks.isEmpty() ? null : hunks.get(hunks.size() - 1);
      if (last != null && last.fromEnd() == next.fromStart() && last.toEnd() == next.toStart()) {
        hunks.set(
            hunks.size() - 1,
            new Hunk(last.fromStart(), next.fromEnd(), last.toStart(), next.toEnd()));
      } else {
        hunks.add(next);
      }
    }
    return hunks;
  }
}
