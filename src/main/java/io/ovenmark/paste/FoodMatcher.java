package io.ovenmark.paste;

import static java.util.Objects.requireNonNull;

import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.FoodSearch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Says which foods pasted words may mean: those of a notebook, then those of the built-in table. A
 * food is certain when it alone is called by just these words; plural, order, spelling and words
 * that only describe, such as "organic", do not count. Everything else is a choice.
 *
 * <pre>{@code
 * FoodMatch match = FoodMatcher.of(pantry).match(IngredientLine.read("3 large egg whites"));
 * }</pre>
 */
public final class FoodMatcher {
  private static final double OF_WORDS = 0.7;
  private static final double LEAST_SCORE = 0.3;
  private static final double WORST_BELOW_BEST = 0.4;
  private static final double NOT_QUITE = 0.95;
  private static final double SAME_BEGINNING = 0.04;
  private static final double MISSPELT = 0.25;
  private static final int LONGEST_SEARCH = 80;
  private static final int MOST_MISSPELT = 3;

  private final List<NamedFood> foods;
  private final FoodSearch own;
  private final Map<Set<String>, Food> chosen;

  private FoodMatcher(List<NamedFood> foods, FoodSearch own, Map<Set<String>, Food> chosen) {
    this.foods = foods;
    this.own = own;
    this.chosen = chosen;
  }

  private static final class BuiltIn {
    private static final List<NamedFood> FOODS =
        BuiltInPantry.all().stream().map(food -> NamedFood.of(food, false)).toList();
  }

  /** How well a food fits. */
  private record Fit(
      NamedFood named,
      NamedFood.Name name,
      Set<String> shared,
      double score,
      boolean exact,
      boolean asWritten,
      int described) {
    String why() {
      return exact
          ? "called \"" + name.text() + "\""
          : "has " + String.join(", ", shared.stream().map(word -> '"' + word + '"').toList());
    }
  }

  /**
   * A matcher for a notebook.
   *
   * @param pantry the notebook's foods; they stand in the place of built-in ones of the same short
   *     name
   * @return the matcher
   */
  public static FoodMatcher of(List<Food> pantry) {
    List<NamedFood> foods = new ArrayList<>();
    Set<String> slugs = new HashSet<>();
    for (Food food : pantry) {
      if (slugs.add(food.slug())) {
        foods.add(NamedFood.of(food, true));
      }
    }
    BuiltIn.FOODS.stream().filter(each -> !slugs.contains(each.food().slug())).forEach(foods::add);
    return new FoodMatcher(List.copyOf(foods), FoodSearch.of(pantry, Map.of()), Map.of());
  }

  /**
   * The same matcher with a choice made.
   *
   * @param words the words that a line has for its food, such as {@code almond meal}
   * @param food what they mean from now on
   * @return a new matcher
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when there
   *     are no words
   */
  public FoodMatcher choosing(String words, Food food) {
    requireNonNull(food, "food");
    Set<String> key = FoodWords.of(words);
    if (key.isEmpty()) {
      throw new IllegalArgumentException(
          "There are no words to choose a food for.\nWrite the words of the line, such as"
              + " \"almond meal\".");
    }
    Map<Set<String>, Food> all = new HashMap<>(chosen);
    all.put(key, food);
    return new FoodMatcher(foods, own, Map.copyOf(all));
  }

  /**
   * Finds a food by its short name.
   *
   * @param slug the short name
   * @return the notebook's or the built-in food; empty when there is none
   */
  public Optional<Food> find(String slug) {
    return foods.stream().map(NamedFood::food).filter(f -> f.slug().equals(slug)).findFirst();
  }

  /**
   * Whether two ways of writing a food come to the same words.
   *
   * @param one such as {@code almond meal}
   * @param other such as {@code Almond meals}
   * @return true when a choice for the one holds for the other
   */
  public static boolean sameWords(String one, String other) {
    return FoodWords.of(one).equals(FoodWords.of(other));
  }

  /** Whether a choice was made for exactly these words. */
  boolean isChosen(String words) {
    return chosen.containsKey(FoodWords.of(words));
  }

  /**
   * Finds the foods that a line may mean.
   *
   * @param line the line
   * @return the foods; none for a line without words for a food
   */
  public FoodMatch match(IngredientLine line) {
    return match(line.food(), line.descriptors());
  }

  /**
   * Finds the foods that words may mean.
   *
   * @param food the words for the food
   * @param described words beside them that may tell foods apart, such as "unsalted"
   * @return the foods
   */
  public FoodMatch match(String food, String described) {
    Set<String> words = FoodWords.of(food);
    if (words.isEmpty()) {
      return FoodMatch.NONE;
    }
    if (chosen.containsKey(words)) {
      return chosen(chosen.get(words));
    }
    Set<String> describing = FoodWords.of(described);
    List<Fit> fits = new ArrayList<>();
    String joined = String.join("", words);
    String naming = String.join("", FoodWords.naming(words));
    for (NamedFood each : foods) {
      if (each.mayBe(words, joined, naming)) {
        fit(each, words, describing).ifPresent(fits::add);
      }
    }
    if (fits.isEmpty()) {
      return misspelt(food);
    }
    fits.sort(
        Comparator.comparing(Fit::exact)
            .thenComparing(Fit::described)
            .thenComparing(Fit::score)
            .thenComparing(fit -> fit.named().inPantry())
            .reversed());
    Optional<Fit> certain = certain(fits);
    certain.ifPresent(fit -> fits.add(0, fits.remove(fits.indexOf(fit))));
    double least = fits.get(0).score() - WORST_BELOW_BEST;
    List<FoodCandidate> candidates =
        fits.stream()
            .filter(fit -> fit.exact() || fit.score() >= least)
            .limit(FoodMatch.MOST)
            .map(FoodMatcher::candidate)
            .toList();
    return new FoodMatch(
        certain.isPresent() ? FoodMatch.Certainty.CERTAIN : FoodMatch.Certainty.DOUBTFUL,
        candidates,
        certain.map(fit -> leftOut(food, words, fit)).orElse(List.of()));
  }

  private FoodMatch chosen(Food food) {
    boolean inPantry =
        foods.stream().anyMatch(each -> each.inPantry() && each.food().equals(food));
    return new FoodMatch(
        FoodMatch.Certainty.CERTAIN,
        List.of(new FoodCandidate(food, 1, inPantry, "chosen")),
        List.of());
  }

  private static FoodCandidate candidate(Fit fit) {
    return new FoodCandidate(
        fit.named().food(),
        Math.round(fit.score() * 100) / 100.0,
        fit.named().inPantry(),
        fit.why());
  }

  private static List<String> leftOut(String food, Set<String> words, Fit fit) {
    Set<String> left = new LinkedHashSet<>(words);
    if (fit.asWritten()) {
      return List.of();
    }
    left.removeAll(naming(fit.named().food(), words));
    return FoodWords.written(food, left);
  }

  /** The one food that is called just so, if there is one. */
  private static Optional<Fit> certain(List<Fit> fits) {
    List<Fit> best = fits.stream().filter(Fit::exact).toList();
    if (best.isEmpty()) {
      return Optional.empty();
    }
    int described = best.get(0).described();
    best = best.stream().filter(fit -> fit.described() == described).toList();
    if (best.stream().anyMatch(Fit::asWritten)) {
      best = best.stream().filter(Fit::asWritten).toList();
    }
    if (best.size() > 1) {
      best =
          best.stream().filter(fit -> fit.name().own() && fit.named().inPantry()).toList();
    }
    return best.size() == 1 ? Optional.of(best.get(0)) : Optional.empty();
  }

  private static Optional<Fit> fit(NamedFood named, Set<String> words, Set<String> describing) {
    Set<String> naming = naming(named.food(), words);
    Fit best = null;
    for (NamedFood.Name name : named.names()) {
      Fit fit = fit(named, name, words, naming, describing);
      boolean better =
          best == null
              || fit.exact() && !best.exact()
              || fit.exact() == best.exact()
                  && (fit.described() > best.described()
                      || fit.described() == best.described()
                          && (fit.score() > best.score()
                              || fit.asWritten() && !best.asWritten()));
      best = better ? fit : best;
    }
    return best.score() >= LEAST_SCORE || best.exact() ? Optional.of(best) : Optional.empty();
  }

  private static Set<String> naming(Food food, Set<String> words) {
    Set<String> naming = FoodWords.naming(words);
    if (food.kind() == FoodKind.DRY || food.kind() == FoodKind.PRODUCE) {
      naming.remove("unsalted");
    }
    return naming.isEmpty() ? words : naming;
  }

  private static Fit fit(
      NamedFood named,
      NamedFood.Name name,
      Set<String> words,
      Set<String> naming,
      Set<String> describing) {
    boolean asWritten = name.isCalled(words, describing);
    boolean exact = asWritten || name.isCalled(naming, describing);
    Set<String> shared = new LinkedHashSet<>(asWritten ? words : naming);
    int wanted = shared.size();
    shared.retainAll(named.words());
    Set<String> inName = new LinkedHashSet<>(name.words());
    inName.removeIf(word -> !words.contains(word) && !describing.contains(word));
    int described = (int) inName.stream().filter(word -> !words.contains(word)).count();
    double score =
        OF_WORDS * shared.size() / wanted
            + (1 - OF_WORDS) * inName.size() / name.words().size();
    if (shared.isEmpty() && !exact) {
      score = 0;
    } else if (name.words().iterator().next().equals(naming.iterator().next())) {
      score += SAME_BEGINNING;
    }
    return new Fit(
        named,
        name,
        shared,
        exact ? 1 : Math.min(NOT_QUITE, score),
        exact,
        asWritten,
        exact ? described : 0);
  }

  /** Foods whose names are spelled nearly so, or begin so. */
  private FoodMatch misspelt(String food) {
    String words = food.length() > LONGEST_SEARCH ? food.substring(0, LONGEST_SEARCH) : food;
    Map<String, FoodCandidate> near = new LinkedHashMap<>();
    own.search(words).stream().limit(MOST_MISSPELT).forEach(each -> add(near, each, true));
    BuiltInPantry.search(words).stream()
        .limit(MOST_MISSPELT)
        .forEach(each -> add(near, each, false));
    List<FoodCandidate> candidates = List.copyOf(near.values());
    return candidates.isEmpty()
        ? FoodMatch.NONE
        : new FoodMatch(FoodMatch.Certainty.DOUBTFUL, candidates, List.of());
  }

  private static void add(Map<String, FoodCandidate> near, Food food, boolean inPantry) {
    near.putIfAbsent(
        food.slug(), new FoodCandidate(food, MISSPELT, inPantry, "written much like it"));
  }
}
