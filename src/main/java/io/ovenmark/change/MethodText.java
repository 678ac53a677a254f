package io.ovenmark.change;

import io.ovenmark.change.TextRun.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The difference of prose, word by word: the steps of a method, a note, a description. Words are
 * compared exactly; case, line ends and trailing white space count.
 */
public final class MethodText {
  /** The share of words that two steps must have in common to count as one reworded step. */
  private static final double ALIKE = 0.3;

  private static final int GREATEST_TABLE = 10_000;

  private MethodText() {}

  /**
   * Compares two methods. Within a stretch of differing steps those that share at least three words
   * in ten are paired in order; the rest were removed or added.
   *
   * @param from the steps before
   * @param to the steps after
   * @return what became of each step, in an order in which kept and changed steps rise on both
   *     sides; a step that moved is removed at one place and added at another
   */
  public static List<StepDiff> diff(List<String> from, List<String> to) {
    List<StepDiff> result = new ArrayList<>();
    int i = 0;
    int j = 0;
    for (ListDiff.Hunk hunk : ListDiff.hunks(from, to)) {
      while (i < hunk.fromStart()) {
        result.add(new StepDiff.Kept(i + 1, j + 1, from.get(i)));
        i++;
        j++;
      }
      for (int[] pair : pairs(from, to, hunk)) {
        single(result, from, i, pair[0], to, j, pair[1]);
        i = pair[0] + 1;
        j = pair[1] + 1;
        result.add(new StepDiff.Changed(i, j, words(from.get(i - 1), to.get(j - 1))));
      }
      single(result, from, i, hunk.fromEnd(), to, j, hunk.toEnd());
      i = hunk.fromEnd();
      j = hunk.toEnd();
    }
    while (i < from.size()) {
      result.add(new StepDiff.Kept(i + 1, j + 1, from.get(i)));
      i++;
      j++;
    }
    return List.copyOf(result);
  }

  /**
   * Compares two texts. White space between two changed words counts as changed with them. When
   * more than some thousand words differ, all that lies between the first and the last difference
   * is one removal and one addition.
   *
   * @param from the text before
   * @param to the text after
   * @return the runs in order, never two of the same kind in a row, removed before added; empty
   *     when both texts are
   */
  public static List<TextRun> words(String from, String to) {
    List<String> before = Words.of(from);
    List<String> after = Words.of(to);
    Runs runs = new Runs();
    int i = 0;
    for (ListDiff.Hunk hunk : ListDiff.hunks(before, after)) {
      runs.same(before.subList(i, hunk.fromStart()));
      runs.removed.append(String.join("", before.subList(hunk.fromStart(), hunk.fromEnd())));
      runs.added.append(String.join("", after.subList(hunk.toStart(), hunk.toEnd())));
      i = hunk.fromEnd();
    }
    runs.last(String.join("", before.subList(i, before.size())));
    return List.copyOf(runs.result);
  }

  private static final class Runs {
    private final List<TextRun> result = new ArrayList<>();
    private final StringBuilder removed = new StringBuilder();
    private final StringBuilder added = new StringBuilder();

    void same(List<String> words) {
      String text = String.join("", words);
      if (removed.length() + added.length() > 0
          && text.codePoints().allMatch(Words::isSpace)) {
        removed.append(text);
        added.append(text);
      } else {
        last(text);
      }
    }

    void last(String text) {
      add(Kind.REMOVED, removed.toString());
      add(Kind.ADDED, added.toString());
      add(Kind.SAME, text);
      removed.setLength(0);
      added.setLength(0);
    }

    private void add(Kind kind, String text) {
      if (!text.isEmpty()) {
        result.add(new TextRun(kind, text));
      }
    }
  }

  private static void single(
      List<StepDiff> result,
      List<String> from,
      int fromStart,
      int fromEnd,
      List<String> to,
      int toStart,
      int toEnd) {
    for (int i = fromStart; i < fromEnd; i++) {
      result.add(new StepDiff.Removed(i + 1, from.get(i)));
    }
    for (int j = toStart; j < toEnd; j++) {
      result.add(new StepDiff.Added(j + 1, to.get(j)));
    }
  }

  private static List<int[]> pairs(List<String> from, List<String> to, ListDiff.Hunk hunk) {
    List<Map<String, Integer>> before =
        from.subList(hunk.fromStart(), hunk.fromEnd()).stream().map(MethodText::count).toList();
    List<Map<String, Integer>> after =
        to.subList(hunk.toStart(), hunk.toEnd()).stream().map(MethodText::count).toList();
    List<int[]> pairs = new ArrayList<>();
    if ((long) before.size() * after.size() > GREATEST_TABLE) {
      for (int i = 0; i < Math.min(before.size(), after.size()); i++) {
        if (likeness(before.get(i), after.get(i)) >= ALIKE) {
          pairs.add(new int[] {hunk.fromStart() + i, hunk.toStart() + i});
        }
      }
      return pairs;
    }
    double[][] likeness = new double[before.size()][after.size()];
    double[][] best = new double[before.size() + 1][after.size() + 1];
    for (int i = before.size() - 1; i >= 0; i--) {
      for (int j = after.size() - 1; j >= 0; j--) {
        likeness[i][j] = likeness(before.get(i), after.get(j));
        double paired = likeness[i][j] >= ALIKE ? likeness[i][j] + best[i + 1][j + 1] : 0;
        best[i][j] = Math.max(paired, Math.max(best[i + 1][j], best[i][j + 1]));
      }
    }
    int i = 0;
    int j = 0;
    while (i < before.size() && j < after.size()) {
      if (likeness[i][j] >= ALIKE && best[i][j] == likeness[i][j] + best[i + 1][j + 1]) {
        pairs.add(new int[] {hunk.fromStart() + i++, hunk.toStart() + j++});
      } else if (best[i][j] == best[i + 1][j]) {
        i++;
      } else {
        j++;
      }
    }
    return pairs;
  }

  private static Map<String, Integer> count(String step) {
    Map<String, Integer> counts = new HashMap<>();
    for (String word : Words.of(step)) {
      if (Character.isLetterOrDigit(word.codePointAt(0))) {
        counts.merge(word, 1, Integer::sum);
      }
    }
    return counts;
  }

  private static double likeness(Map<String, Integer> a, Map<String, Integer> b) {
    int all = 0;
    int common = 0;
    for (Map.Entry<String, Integer> word : a.entrySet()) {
      all += word.getValue();
      common += Math.min(word.getValue(), b.getOrDefault(word.getKey(), 0));
    }
    for (int count : b.values()) {
      all += count;
    }
    return all == 0 ? 1 : 2.0 * common / all;
  }
}
