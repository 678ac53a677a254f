package io.ovenmark.change;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A line that was removed and one that was added in its place: a candidate for "replaced by". Place
 * and flour mark agree; whether the two foods play the same role is for one who knows foods to say.
 *
 * @param removed a line of the earlier formula whose id the later one has not
 * @param added a line of the later formula whose id the earlier one has not
 */
public record LinePair(Line removed, Line added) {

  private record Place(Optional<String> after, Optional<String> before, boolean flour) {}

  /**
   * Pairs removed with added lines that stand between the same neighbours and have the same flour
   * mark. A neighbour is the nearest line whose id is in both formulas; the ends of the list count
   * as neighbours. Where several stand in one place the first is paired with the first, and so on;
   * those left over stay single. Every line is in at most one pair.
   *
   * @param from the earlier formula
   * @param to the later formula
   * @return pairs in the order of the earlier formula
   */
  public static List<LinePair> atSamePlace(Formula from, Formula to) {
    Set<String> common = new HashSet<>();
    from.lines().forEach(line -> common.add(line.id()));
    Set<String> later = new HashSet<>();
    to.lines().forEach(line -> later.add(line.id()));
    common.retainAll(later);
    Map<Line, Place> removed = places(from.lines(), common);
    Map<Place, List<Line>> added = new HashMap<>();
    places(to.lines(), common)
        .forEach((line, place) -> added.computeIfAbsent(place, p -> new ArrayList<>()).add(line));
    List<LinePair> pairs = new ArrayList<>();
    removed.forEach(
        (line, place) -> {
          List<Line> candidates = added.getOrDefault(place, List.of());
          if (!candidates.isEmpty()) {
            pairs.add(new LinePair(line, candidates.remove(0)));
          }
        });
    return List.copyOf(pairs);
  }

  private static Map<Line, Place> places(List<Line> lines, Set<String> common) {
    Map<Line, Place> result = new LinkedHashMap<>();
    List<Line> waiting = new ArrayList<>();
    Optional<String> after = Optional.empty();
    for (Line line : lines) {
      if (common.contains(line.id())) {
        Optional<String> before = Optional.of(line.id());
        for (Line single : waiting) {
          result.put(single, new Place(after, before, single.flour()));
        }
        waiting.clear();
        after = before;
      } else {
        waiting.add(line);
      }
    }
    for (Line single : waiting) {
      result.put(single, new Place(after, Optional.empty(), single.flour()));
    }
    return result;
  }
}
