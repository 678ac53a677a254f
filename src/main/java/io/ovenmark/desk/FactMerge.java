package io.ovenmark.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Two people's changes of the same thing, fact by fact. What only one of them changed is taken;
 * what both changed to something different is a clash, unless a pick says whose is taken.
 *
 * @param merged the facts of both; of a clash, mine
 * @param clashes what needs a choice, in the order of the facts
 * @param fromThem names of facts that only the other one changed
 */
record FactMerge(
    Map<String, String> merged, List<KitchenWork.Clash> clashes, List<String> fromThem) {
  /** The pick that takes what I typed. */
  static final String MINE = "mine";

  /** The pick that takes what the other one saved. */
  static final String THEIRS = "theirs";

  /**
   * Merges; a fact that a side lacks counts as empty.
   *
   * @param base the facts that I began with
   * @param mine as I typed them
   * @param theirs as they are now
   * @param picks {@code mine} or {@code theirs} by name of the fact; may lack any
   */
  static FactMerge of(
      Map<String, String> base,
      Map<String, String> mine,
      Map<String, String> theirs,
      Map<String, String> picks) {
    Set<String> names = new LinkedHashSet<>(theirs.keySet());
    names.addAll(mine.keySet());
    names.addAll(base.keySet());
    Map<String, String> merged = new LinkedHashMap<>();
    List<KitchenWork.Clash> clashes = new ArrayList<>();
    List<String> fromThem = new ArrayList<>();
    for (String name : names) {
      String before = base.getOrDefault(name, "");
      String my = mine.getOrDefault(name, "");
      String their = theirs.getOrDefault(name, "");
      boolean theyChanged = !their.equals(before);
      boolean clash = theyChanged && !my.equals(before) && !my.equals(their);
      String picked = picks.getOrDefault(name, "");
      if (clash && !picked.equals(MINE) && !picked.equals(THEIRS)) {
        clashes.add(new KitchenWork.Clash(name, name, before, my, their));
      }
      boolean takeTheirs = clash ? picked.equals(THEIRS) : theyChanged;
      if (takeTheirs && !my.equals(their)) {
        fromThem.add(name);
      }
      merged.put(name, takeTheirs ? their : my);
    }
    return new FactMerge(merged, List.copyOf(clashes), List.copyOf(fromThem));
  }
}
