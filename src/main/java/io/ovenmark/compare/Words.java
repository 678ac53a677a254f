package io.ovenmark.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Building blocks of sentences. */
final class Words {
  private static final List<String> NUMBERS =
      List.of(
          "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  private Words() {}

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String listed(List<String> items) {
    int last = items.size() - 1;
    return last < 1
        ? String.join("", items)
        : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
  }

  /** At most so many items, or one more, else the rest counted: {@code a, b and 3 more}. */
  static String listed(List<String> items, int most) {
    if (items.size() <= most + 1) {
      return listed(items);
    }
    return String.join(", ", items.subList(0, most)) + " and " + (items.size() - most) + " more";
  }

  static String number(int count) {
    return count < NUMBERS.size() ? NUMBERS.get(count) : Integer.toString(count);
  }

  static String counted(int count, String one, String many) {
    return number(count) + " " + (count == 1 ? one : many);
  }

  /** The same text with a capital at its beginning, where its script has capitals. */
  static String capital(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.codePointAt(0);
    int length = Character.charCount(first);
    return text.substring(0, length).toUpperCase(Locale.ROOT) + text.substring(length);
  }

  /**
   * Names for lines inside sentences: the food's name up to its first comma, in full where two
   * lines would read the same, with the line's id where even that does not tell them apart.
   */
  static Map<String, String> spokenNames(List<LineComparison> lines) {
    Map<String, Integer> shortNames = new HashMap<>();
    Map<String, Integer> fullNames = new HashMap<>();
    for (LineComparison line : lines) {
      shortNames.merge(brief(line.name()), 1, Integer::sum);
      fullNames.merge(line.name(), 1, Integer::sum);
    }
    Map<String, String> spoken = new HashMap<>();
    for (LineComparison line : lines) {
      String name = brief(line.name());
      if (shortNames.get(name) > 1) {
        boolean twins = fullNames.get(line.name()) > 1;
        name = twins ? line.name() + " (" + line.id() + ")" : line.name();
      }
      spoken.put(key(line), name);
    }
    return spoken;
  }

  /** Ids are unique on each side only: a removed line may have the id of none that is left. */
  static String key(LineComparison line) {
    return (line.after().isPresent() ? "+" : "-") + line.id();
  }

  /** A name up to its first comma. */
  static String brief(String name) {
    int comma = name.indexOf(',');
    return comma > 0 ? name.substring(0, comma) : name;
  }
}
