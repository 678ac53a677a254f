package io.ovenmark.desk;

import java.util.Comparator;
import java.util.List;

/** Finds the names that a slip of the keyboard, or a shortened name, may have meant. */
final class NearNames {
  private static final int MOST = 3;

  private NearNames() {}

  /**
   * The nearest names.
   *
   * @param wrong what was written
   * @param names what exists
   * @return at most three, the nearest first, names that are equally near in the given order
   */
  static List<String> of(String wrong, List<String> names) {
    int allowed = Math.max(1, wrong.length() / 3);
    return names.stream()
        .filter(name -> distance(wrong, name) <= allowed)
        .sorted(Comparator.comparingInt(name -> distance(wrong, name)))
        .limit(MOST)
        .toList();
  }

  /** Letters to insert, drop or exchange; none for words that the name has as a part. */
  private static int distance(String wrong, String name) {
    if (("-" + name + "-").contains("-" + wrong + "-")) {
      return 0;
    }
    int[] above = new int[name.length() + 1];
    for (int j = 0; j <= name.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= wrong.length(); i++) {
      int[] row = new int[name.length() + 1];
      row[0] = i;
      for (int j = 1; j <= name.length(); j++) {
        int exchanged = above[j - 1] + (wrong.charAt(i - 1) == name.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(exchanged, Math.min(above[j], row[j - 1]) + 1);
      }
      above = row;
    }
    return above[name.length()];
  }
}
