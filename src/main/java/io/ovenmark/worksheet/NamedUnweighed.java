package io.ovenmark.worksheet;

import io.ovenmark.formula.Formula;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A food that the method names although no line weighs it: the butter for the tin, the seeds that
 * an earlier revision had. What is not weighed is in no figure and in no allergen statement.
 *
 * <pre>{@code
 * List<NamedUnweighed> left = NamedUnweighed.in(sheet, List.of());
 * }</pre>
 *
 * <p>A food is recognised by its name before the first comma: by all of it, by two or more words at
 * its beginning or end, and, for a food of the built-in table, by its last word where that alone
 * means a food ({@code butter} for unsalted butter). Plural and singular are the same. It is a help
 * against oversights and finds neither every food nor only foods; common practice, no source.
 *
 * @param step number of the step, from 1
 * @param words the words as the step has them
 */
public record NamedUnweighed(int step, String words) {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}]+");

  /** Words at the end of a name that alone do not mean the food. */
  private static final Set<String> NOT_ALONE =
      Set.of(
          "water", "white", "powder", "kernel", "seed", "meal", "isolate", "peptide", "crystal",
          "cream", "extract", "zest", "peel", "germ", "bran", "fibre", "gum", "gluten", "juice",
          "half", "tartar", "soda");

  private static final Set<String> JOINING = Set.of("and", "of", "in", "with", "no", "or");
  private static final Set<String> NOT_USED = Set.of("no", "not", "without", "never", "instead");
  private static final Set<String> LIKENESS =
      Set.of("sized", "size", "coloured", "colored", "brown", "shaped", "like", "free");

  private static final Names TABLE = Names.ofTable();

  private record Word(String plain, int start, int end) {}

  /** The phrases by which foods are known, their words divided by spaces, and the longest. */
  private record Names(Set<String> phrases, int longest) {
    static Names ofTable() {
      Set<String> phrases = new HashSet<>();
      for (Food food : BuiltInPantry.all()) {
        List<String> name = ownName(food);
        phrases.addAll(phrases(name));
        String last = name.get(name.size() - 1);
        if (!NOT_ALONE.contains(last)) {
          phrases.add(last);
        }
      }
      return of(phrases);
    }

    static Names of(Set<String> phrases) {
      int longest = 0;
      for (String phrase : phrases) {
        longest = Math.max(longest, phrase.split(" ").length);
      }
      return new Names(Set.copyOf(phrases), longest);
    }

    Names and(Collection<Food> foods) {
      Set<String> all = new HashSet<>(phrases);
      foods.forEach(food -> all.addAll(phrases(ownName(food))));
      return all.size() == phrases.size() ? this : of(all);
    }

    private static Set<String> phrases(List<String> name) {
      Set<String> phrases = new HashSet<>();
      for (int length = 2; length <= name.size(); length++) {
        add(phrases, name.subList(0, length));
        add(phrases, name.subList(name.size() - length, name.size()));
      }
      if (name.size() == 1 && !NOT_ALONE.contains(name.get(0))) {
        phrases.add(name.get(0));
      }
      return phrases;
    }

    private static void add(Set<String> phrases, List<String> words) {
      boolean cut = JOINING.contains(words.get(0)) || JOINING.contains(words.get(words.size() - 1));
      if (!cut) {
        phrases.add(String.join(" ", words));
      }
    }

    private static List<String> ownName(Food food) {
      List<String> name = plain(food.name().split(",", 2)[0]);
      return name.isEmpty() ? plain(food.slug()) : name;
    }
  }

  /**
   * Finds them.
   *
   * @param sheet the formula with its foods
   * @param known foods that can be named besides those of the built-in table
   * @return each once for a step, in the order of the method
   */
  public static List<NamedUnweighed> in(Worksheet sheet, Collection<Food> known) {
    Formula formula = sheet.formula();
    Names names = TABLE.and(known);
    List<Set<String>> weighed = new ArrayList<>();
    for (WorksheetLine line : sheet.lines()) {
      Set<String> own = new HashSet<>(plain(line.name()));
      own.addAll(plain(line.line().food()));
      weighed.add(own);
    }
    List<NamedUnweighed> found = new ArrayList<>();
    for (int step = 0; step < formula.method().size(); step++) {
      for (String words : named(formula.method().get(step), names, weighed)) {
        found.add(new NamedUnweighed(step + 1, words));
      }
    }
    return List.copyOf(found);
  }

  private static List<String> named(String text, Names names, List<Set<String>> weighed) {
    List<Word> words = words(text);
    List<String> found = new ArrayList<>();
    Set<String> said = new HashSet<>();
    int at = 0;
    while (at < words.size()) {
      int length = Math.min(names.longest(), words.size() - at);
      while (length > 0 && !names.phrases().contains(phrase(words, at, length))) {
        length--;
      }
      if (length > 0
          && isUsed(words, at, length)
          && !isWeighed(words.subList(at, at + length), weighed)
          && said.add(phrase(words, at, length))) {
        found.add(text.substring(words.get(at).start(), words.get(at + length - 1).end()));
      }
      at += Math.max(1, length);
    }
    return found;
  }

  private static boolean isUsed(List<Word> words, int at, int length) {
    boolean denied = at > 0 && NOT_USED.contains(words.get(at - 1).plain());
    boolean instead = at > 1 && words.get(at - 2).plain().equals("instead");
    int next = at + length;
    boolean likened = next < words.size() && LIKENESS.contains(words.get(next).plain());
    return !denied && !instead && !likened;
  }

  private static boolean isWeighed(List<Word> phrase, List<Set<String>> weighed) {
    List<String> plain = phrase.stream().map(Word::plain).toList();
    return weighed.stream().anyMatch(own -> own.containsAll(plain));
  }

  private static String phrase(List<Word> words, int at, int length) {
    return String.join(
        " ", words.subList(at, at + length).stream().map(Word::plain).toList());
  }

  private static List<Word> words(String text) {
    List<Word> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(text);
    while (matcher.find()) {
      List<String> plain = plain(matcher.group());
      if (plain.size() == 1) {
        words.add(new Word(plain.get(0), matcher.start(), matcher.end()));
      }
    }
    return words;
  }

  private static List<String> plain(String text) {
    return Words.of(text).stream().map(Words::singular).toList();
  }
}
