package io.ovenmark.pantry;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Small help with English words, so that names that people write otherwise are found the same. */
public final class Words {
  private Words() {}

  /**
   * The words of a text.
   *
   * @param text any text
   * @return its words in lower case without accents; letters and digits only
   */
  public static List<String> of(String text) {
    String plain = text;
    if (!text.chars().allMatch(c -> c < 128)) {
      plain = Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    }
    plain = plain.toLowerCase(Locale.ROOT);
    List<String> words = new ArrayList<>();
    int start = -1;
    for (int i = 0; i <= plain.length(); i++) {
      boolean inside = i < plain.length() && Character.isLetterOrDigit(plain.charAt(i));
      if (inside && start < 0) {
        start = i;
      } else if (!inside && start >= 0) {
        words.add(plain.substring(start, i));
        start = -1;
      }
    }
    return words;
  }

  /**
   * The singular of a lower-case word, by its ending; good enough to compare two words that were
   * both treated so.
   *
   * @param word a word as {@link #of} gives it
   * @return the singular, the word itself when it is none
   */
  public static String singular(String word) {
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
