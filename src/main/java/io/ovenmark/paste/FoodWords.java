package io.ovenmark.paste;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Words for foods, brought into one form so that they can be compared. */
final class FoodWords {
  private static final int MOST = 16;

  private static final Set<String> EMPTY =
      Set.of("a", "an", "the", "of", "and", "with", "in", "from", "for", "your", "some", "each");

  private static final Map<String, String> SPELLINGS =
      Map.of(
          "fiber", "fibre",
          "yoghurt", "yogurt",
          "soya", "soy",
          "gelatine", "gelatin",
          "unflavored", "unflavoured",
          "flavored", "flavoured",
          "defated", "defatted");

  /** Say how a food comes or is handled, and leave it the same food. */
  private static final Set<String> DESCRIBING =
      Set.of(
          "small", "medium", "large", "extra", "big", "jumbo", "organic", "fresh", "freshly",
          "fine", "finely", "coarse", "coarsely", "good", "quality", "best", "ripe", "natural",
          "pure", "cold", "chilled", "warm", "lukewarm", "tepid", "hot", "boiling", "room",
          "temperature", "sifted", "melted", "softened", "soft", "chopped", "diced", "minced",
          "grated", "shredded", "sliced", "crushed", "beaten", "whisked", "ground", "peeled",
          "cored", "pitted", "rinsed", "drained", "packed", "heaped", "level", "virgin", "washed",
          "trimmed", "halved", "quartered", "cubed", "crumbled", "lightly", "roughly", "thinly",
          "loosely", "tightly", "very", "raw", "crystal", "overripe", "mashed", "toasted", "cool",
          "cooled", "filtered", "tap", "beat", "separated", "well");

  /** Stand in names of foods that people call without them. */
  private static final Set<String> SILENT = Set.of("raw", "pure", "ripe", "crystal");

  private FoodWords() {}

  /** The words of a text: lower case, singular, without accents and words that say nothing. */
  static Set<String> of(String text) {
    String plain =
        Normalizer.normalize(text.replace("free-range", "organic"), Normalizer.Form.NFD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT)
            .replace("free range", "organic");
    Set<String> words = new LinkedHashSet<>();
    int start = -1;
    for (int i = 0; i <= plain.length() && words.size() < MOST; i++) {
      boolean inside = i < plain.length() && Character.isLetterOrDigit(plain.charAt(i));
      if (inside && start < 0) {
        start = i;
      } else if (!inside && start >= 0) {
        String word = singular(plain.substring(start, i));
        start = -1;
        if (!EMPTY.contains(word)) {
          words.add(SPELLINGS.getOrDefault(word, word));
        }
      }
    }
    return words;
  }

  /** The words that name the food, without those that only describe it. */
  static Set<String> naming(Set<String> words) {
    Set<String> naming = new LinkedHashSet<>(words);
    naming.removeAll(DESCRIBING);
    return naming;
  }

  /** A name's words without those that people leave out. */
  static Set<String> spoken(Set<String> words) {
    Set<String> spoken = new LinkedHashSet<>(words);
    spoken.removeAll(SILENT);
    return spoken;
  }

  /** Whether a text has words, and none of them names a food. */
  static boolean onlyDescribes(String text) {
    return naming(of(text)).isEmpty();
  }

  /** The words of a text as they were written that are among the given ones. */
  static List<String> written(String text, Set<String> among) {
    List<String> written = new ArrayList<>();
    for (String word : text.split("[^\\p{L}\\p{N}-]+")) {
      Set<String> parts = of(word);
      if (!parts.isEmpty() && among.containsAll(parts)) {
        written.add(word);
      }
    }
    return written;
  }

  /** The singular of a lower-case word, by its ending. */
  private static String singular(String word) {
    int length = word.length();
    if (length < 4 || !word.endsWith("s") || word.endsWith("ss") || word.endsWith("us")) {
      return word;
    }
    if (length > 4 && word.endsWith("ies")) {
      return word.substring(0, length - 3) + "y";
    }
    boolean needsE =
        word.endsWith("xes")
            || word.endsWith("ches")
            || word.endsWith("shes")
            || word.endsWith("sses")
            || word.endsWith("oes");
    return word.substring(0, length - (length > 4 && needsE ? 2 : 1));
  }
}
