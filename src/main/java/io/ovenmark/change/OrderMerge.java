package io.ovenmark.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Merges the orders of two lists of ids.
 *
 * @param ids the merged order
 * @param contested whether both sides put what they share with the base in another order, each its
 *     own
 */
record OrderMerge(List<String> ids, boolean contested) {

  /**
   * Follows the side that reordered what the base has, and ours when both or none did. What only
   * the other side has comes after its nearest earlier neighbour of that side, and after what the
   * followed side added there.
   *
   * @param sides ids in the order of each side
   * @param kept the ids of the result, each on one of the two sides at least
   * @return the order
   */
  static OrderMerge of(Three<List<String>> sides, Set<String> kept) {
    boolean oursMoved = reordered(sides.base(), sides.ours());
    boolean theirsMoved = reordered(sides.base(), sides.theirs());
    boolean followTheirs = theirsMoved && !oursMoved;
    List<String> leading = followTheirs ? sides.theirs() : sides.ours();
    List<String> other = followTheirs ? sides.ours() : sides.theirs();
    Set<String> inLeading = new HashSet<>(leading);
    Set<String> elsewhere = new HashSet<>(other);
    elsewhere.addAll(sides.base());
    List<String> result = new ArrayList<>(leading);
    result.removeIf(id -> !kept.contains(id));
    int next = 0;
    for (String id : other) {
      if (!kept.contains(id)) {
        continue;
      }
      if (inLeading.contains(id)) {
        next = result.indexOf(id) + 1;
        continue;
      }
      while (next < result.size() && !elsewhere.contains(result.get(next))) {
        next++;
      }
      result.add(next++, id);
    }
    boolean contested =
        oursMoved && theirsMoved && !common(sides.ours(), sides.theirs(), sides.base())
            .equals(common(sides.theirs(), sides.ours(), sides.base()));
    return new OrderMerge(List.copyOf(result), contested);
  }

  private static boolean reordered(List<String> base, List<String> side) {
    return !common(base, side, base).equals(common(side, base, base));
  }

  private static List<String> common(List<String> order, List<String> one, List<String> two) {
    Set<String> both = new HashSet<>(one);
    both.retainAll(new HashSet<>(two));
    return order.stream().filter(both::contains).toList();
  }
}
