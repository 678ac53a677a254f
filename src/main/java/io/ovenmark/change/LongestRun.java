package io.ovenmark.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The fewest items that must move to turn one order into another. */
final class LongestRun {
  private LongestRun() {}

  /**
   * All items but a longest increasing subsequence; among several of the same length always the
   * same one. Takes n log n steps.
   *
   * @param from distinct items
   * @param to the same items in another order
   * @return the moved ones in the order of {@code to}
   */
  static List<String> moved(List<String> from, List<String> to) {
    Map<String, Integer> place = new HashMap<>();
    from.forEach(item -> place.put(item, place.size()));
    int[] lastOfLength = new int[to.size() + 1];
    int[] before = new int[to.size()];
    int[] tails = new int[to.size()];
    int longest = 0;
    for (int i = 0; i < to.size(); i++) {
      int value = place.get(to.get(i));
      int found = Arrays.binarySearch(tails, 0, longest, value);
      int length = -found - 1;
      tails[length] = value;
      lastOfLength[length] = i;
      before[i] = length == 0 ? -1 : lastOfLength[length - 1];
      longest = Math.max(longest, length + 1);
    }
    Set<String> stayed = new HashSet<>();
    for (int i = longest == 0 ? -1 : lastOfLength[longest - 1]; i >= 0; i = before[i]) {
      stayed.add(to.get(i));
    }
    List<String> moved = new ArrayList<>(to);
    moved.removeAll(stayed);
    return moved;
  }
}
