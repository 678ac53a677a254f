package io.ovenmark.pantry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds foods by what people call them: plural or singular, words in any order, beginnings of
 * words, a slip of one letter in a long word.
 */
public final class FoodSearch {
  private static final int WHOLE = 8;
  private static final int BEGINNING = 4;
  private static final int PART = 2;
  private static final int NEARLY = 1;
  private static final int SAME_NAME = 1000;

  private final List<Entry> entries;

  private FoodSearch(List<Entry> entries) {
    this.entries = entries;
  }

  private record Entry(Food food, List<Set<String>> names, Set<String> words) {}

  private record Hit(Food food, int matched, int score, int order) {}

  /**
   * Prepares a search over some foods.
   *
   * @param foods the foods in the order in which equally good hits are given
   * @param otherNames by short name, further names divided by semicolons; may lack any food
   * @return the search
   */
  public static FoodSearch of(List<Food> foods, Map<String, String> otherNames) {
    List<Entry> entries = new ArrayList<>();
    for (Food food : foods) {
      List<Set<String>> names = new ArrayList<>();
      names.add(words(food.slug()));
      names.add(words(food.name()));
      for (String other : otherNames.getOrDefault(food.slug(), "").split(";")) {
        if (!other.isBlank()) {
          names.add(words(other));
        }
      }
      Set<String> all = new LinkedHashSet<>();
      names.forEach(all::addAll);
      entries.add(new Entry(food, List.copyOf(names), all));
    }
    return new FoodSearch(List.copyOf(entries));
  }

  /**
   * Finds foods by words. A food one of whose names has exactly these words comes first, then those
   * that match best; when no food matches every word, those that match the most are given.
   *
   * @param query such as {@code almond meal}, {@code eggs} or {@code APF}
   * @return the foods, best first; empty when no word fits or there is none
   */
  public List<Food> search(String query) {
    Set<String> wanted = words(query);
    if (wanted.isEmpty()) {
      return List.of();
    }
    List<Hit> hits = new ArrayList<>();
    int most = 1;
    for (Entry entry : entries) {
      Hit hit = hit(entry, wanted, hits.size());
      hits.add(hit);
      most = Math.max(most, hit.matched());
    }
    int needed = most;
    return hits.stream()
        .filter(hit -> hit.matched() >= needed)
        .sorted(
            Comparator.comparingInt(Hit::score).reversed().thenComparingInt(Hit::order))
        .map(Hit::food)
        .toList();
  }

  private static Hit hit(Entry entry, Set<String> wanted, int order) {
    int matched = 0;
    int score = 0;
    for (String word : wanted) {
      int best = 0;
      for (String own : entry.words()) {
        best = Math.max(best, likeness(word, own));
      }
      matched += best > 0 ? 1 : 0;
      score += best * 10;
    }
    int leastExtra = Integer.MAX_VALUE;
    for (Set<String> name : entry.names()) {
      if (name.equals(wanted)) {
        score += SAME_NAME;
      }
      boolean holdsAll = name.containsAll(wanted);
      leastExtra = holdsAll ? Math.min(leastExtra, name.size() - wanted.size()) : leastExtra;
    }
    score += leastExtra == Integer.MAX_VALUE ? 0 : Math.max(0, 9 - leastExtra);
    return new Hit(entry.food(), matched, score, order);
  }

  private static int likeness(String word, String own) {
    if (own.equals(word)) {
      return WHOLE;
    }
    if (word.length() >= 2 && own.startsWith(word)) {
      return BEGINNING;
    }
    if (word.length() >= 4 && own.contains(word)) {
      return PART;
    }
    return word.length() >= 5 && oneSlip(word, own) ? NEARLY : 0;
  }

  /** Whether one letter was changed, left out, added, or two neighbours were swapped. */
  static boolean oneSlip(String a, String b) {
    if (Math.abs(a.length() - b.length()) > 1) {
      return false;
    }
    int start = 0;
    int shorter = Math.min(a.length(), b.length());
    while (start < shorter && a.charAt(start) == b.charAt(start)) {
      start++;
    }
    int end = 0;
    while (end < shorter - start
        && a.charAt(a.length() - 1 - end) == b.charAt(b.length() - 1 - end)) {
      end++;
    }
    int leftA = a.length() - start - end;
    int leftB = b.length() - start - end;
    boolean swapped =
        leftA == 2
            && leftB == 2
            && a.charAt(start) == b.charAt(start + 1)
            && a.charAt(start + 1) == b.charAt(start);
    return swapped || (leftA <= 1 && leftB <= 1);
  }

  private static Set<String> words(String text) {
    Set<String> words = new LinkedHashSet<>();
    for (String word : Words.of(text)) {
      words.add(Words.singular(word));
    }
    return words;
  }
}
