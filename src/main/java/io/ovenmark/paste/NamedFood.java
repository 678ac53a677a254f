package io.ovenmark.paste;

import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A food with everything that it is called.
 *
 * @param food the food
 * @param inPantry whether it is the notebook's
 * @param names its short name, its name, then other names; at least one has words
 * @param words the words of all names
 */
record NamedFood(Food food, boolean inPantry, List<Name> names, Set<String> words) {

  /**
   * One name.
   *
   * @param text as it is shown
   * @param words its words, at least one
   * @param joined its words in a row, for those who write them as one
   * @param own whether it is the food's own name and not another one
   */
  record Name(String text, Set<String> words, String joined, boolean own) {

    /** Whether a food is called just so, with words beside that tell which of its kind. */
    boolean isCalled(Set<String> asked, Set<String> describing) {
      if (words.containsAll(asked)) {
        Set<String> more = new HashSet<>(FoodWords.spoken(words));
        more.removeAll(asked);
        return describing.containsAll(more);
      }
      return joined.equals(String.join("", asked));
    }
  }

  /** Whether it shares a word, or a name written as one word; else no need to look further. */
  boolean mayBe(Set<String> asked, String joined, String joinedNaming) {
    return !Collections.disjoint(asked, words)
        || names.stream()
            .anyMatch(
                name -> name.joined().equals(joined) || name.joined().equals(joinedNaming));
  }

  static NamedFood of(Food food, boolean inPantry) {
    List<Name> names = new ArrayList<>();
    Set<String> words = new HashSet<>();
    add(food.slug().replace('-', ' '), true, names, words);
    add(food.name(), true, names, words);
    BuiltInPantry.otherNames(food.slug()).forEach(name -> add(name, false, names, words));
    return new NamedFood(food, inPantry, List.copyOf(names), Set.copyOf(words));
  }

  private static void add(String text, boolean own, List<Name> names, Set<String> words) {
    Set<String> of = FoodWords.of(text);
    if (!of.isEmpty()) {
      names.add(new Name(text, of, String.join("", of), own));
      words.addAll(of);
    }
  }
}
