package io.ovenmark.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Words that are looked for. A text has them when each begins one of its words, whatever the
 * accents and the case: {@code gumm} finds {@code Gummy}, {@code ψωμι} finds {@code ψωμί}.
 *
 * <pre>{@code
 * Words words = Words.of("gummy crum");
 * boolean found = words.areIn(Words.searchable(List.of("Still a gummy crumb")));
 * }</pre>
 */
public final class Words {
  private static final int SNIPPET = 200;
  private static final int BEFORE = 60;

  private final List<String> folded;

  private Words(List<String> folded) {
    this.folded = List.copyOf(folded);
  }

  /**
   * The words of a text.
   *
   * @param text as a person types it; may have none
   * @return the words
   */
  public static Words of(String text) {
    return new Words(Fold.words(text).stream().map(Fold.Word::folded).distinct().toList());
  }

  /**
   * Texts in the form in which words are looked for in them.
   *
   * @param texts the texts
   * @return a form to keep, for {@link #areIn} and {@link #areWholeIn}
   */
  public static String searchable(List<String> texts) {
    return Fold.text(texts);
  }

  /**
   * Whether there is no word to look for.
   *
   * @return true when every text has them
   */
  public boolean isEmpty() {
    return folded.isEmpty();
  }

  /**
   * Whether each of the words begins a word there.
   *
   * @param searchable see {@link #searchable}
   * @return true when all do, also when there are none
   */
  public boolean areIn(String searchable) {
    for (String word : folded) {
      if (!searchable.contains(" " + word)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether each of the words stands there as a whole word.
   *
   * @param searchable see {@link #searchable}
   * @return true when all do, also when there are none
   */
  public boolean areWholeIn(String searchable) {
    for (String word : folded) {
      if (!searchable.contains(" " + word + " ")) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether these are exactly the words of a text, in their order.
   *
   * @param text a text
   * @return true when nothing else stands there
   */
  public boolean areAllOf(String text) {
    return !isEmpty() && folded.equals(of(text).folded);
  }

  /**
   * A piece of a text.
   *
   * @param text its characters
   * @param match whether it is a word that was looked for
   */
  public record Run(String text, boolean match) {}

  /**
   * Shows where a text has some of the words. A long text is cut around the first of them.
   *
   * @param text as it was written
   * @return its pieces in order; none when it has none of the words
   */
  public List<Run> marked(String text) {
    List<Fold.Word> matches = new ArrayList<>();
    for (Fold.Word word : Fold.words(text)) {
      if (folded.stream().anyMatch(w -> word.folded().startsWith(w) || word.bare().startsWith(w))) {
        matches.add(word);
      }
    }
    return matches.isEmpty() ? List.of() : runs(text, matches);
  }

  /**
   * The beginning of a text without marks.
   *
   * @param text as it was written
   * @return one piece
   */
  public static List<Run> beginning(String text) {
    return runs(text, List.of());
  }

  private static List<Run> runs(String text, Collection<Fold.Word> matches) {
    int first = matches.stream().mapToInt(Fold.Word::start).findFirst().orElse(0);
    int start = text.length() <= SNIPPET || first <= BEFORE ? 0 : space(text, first - BEFORE);
    int end = text.length() - start <= SNIPPET ? text.length() : space(text, start + SNIPPET);
    List<Run> runs = new ArrayList<>();
    int at = start;
    for (Fold.Word word : matches) {
      if (word.end() <= end && word.start() >= at) {
        add(runs, text.substring(at, word.start()), false);
        add(runs, text.substring(word.start(), word.end()), true);
        at = word.end();
      }
    }
    add(runs, text.substring(at, Math.max(at, end)), false);
    if (start > 0) {
      runs.add(0, new Run("… ", false));
    }
    if (end < text.length()) {
      runs.add(new Run(Character.isWhitespace(text.charAt(end - 1)) ? "…" : " …", false));
    }
    return List.copyOf(runs);
  }

  /** The last space before a place, near enough; else the place, not within a character. */
  private static int space(String text, int place) {
    int space = text.lastIndexOf(' ', place);
    if (space >= place - BEFORE / 2 && space > 0) {
      return space + 1;
    }
    return Character.isLowSurrogate(text.charAt(place)) ? place + 1 : place;
  }

  private static void add(List<Run> runs, String text, boolean match) {
    if (!text.isEmpty()) {
      runs.add(new Run(text, match));
    }
  }
}
