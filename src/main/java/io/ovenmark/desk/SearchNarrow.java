package io.ovenmark.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Counts the words with which what was found can be narrowed. */
final class SearchNarrow {
  private final Map<String, Integer> findings = new TreeMap<>();
  private final Map<String, Integer> ingredients = new TreeMap<>();
  private final Map<String, Integer> people = new TreeMap<>();

  void add(SearchShelf.Step step) {
    step.facts().foods().forEach(food -> ingredients.merge(food, 1, Integer::sum));
    people.merge(step.revision().author().name(), 1, Integer::sum);
  }

  void add(SearchShelf.Tray tray) {
    tray.facts().findings().forEach(finding -> findings.merge(finding, 1, Integer::sum));
    tray.facts().baker().ifPresent(baker -> people.merge(baker, 1, Integer::sum));
  }

  /** The most frequent of each, then by their names. */
  SearchViews.Narrow view(SearchShelf.View view, int most) {
    return new SearchViews.Narrow(
        choices(findings, most, UnaryOperator.identity()),
        choices(ingredients, most, view::foodName),
        choices(people, most, UnaryOperator.identity()));
  }

  private static List<SearchViews.Choice> choices(
      Map<String, Integer> counts, int most, UnaryOperator<String> name) {
    List<SearchViews.Choice> choices = new ArrayList<>();
    counts.forEach(
        (value, count) -> choices.add(new SearchViews.Choice(value, name.apply(value), count)));
    choices.sort(Comparator.comparingInt(SearchViews.Choice::count).reversed());
    return List.copyOf(choices.subList(0, Math.min(most, choices.size())));
  }
}
