package io.ovenmark.search;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Writes words so that those that people take for the same are the same: without accents and vowel
 * points, in small letters, of one form for letters that have several (final sigma, the Arabic
 * alefs, ligatures, wide forms).
 */
final class Fold {
  /** Letters that Unicode does not take apart, though people type them without their marks. */
  private static final Map<Integer, String> ALIKE =
      Map.ofEntries(
          Map.entry((int) 'ß', "ss"),
          Map.entry((int) 'æ', "ae"),
          Map.entry((int) 'œ', "oe"),
          Map.entry((int) 'ø', "o"),
          Map.entry((int) 'đ', "d"),
          Map.entry((int) 'ł', "l"),
          Map.entry((int) 'ı', "i"),
          Map.entry((int) 'ς', "σ"),
          Map.entry((int) 'ة', "ه"),
          Map.entry((int) 'ى', "ي"),
          Map.entry((int) 'ـ', ""));

  private static final String ARTICLE = "ال";
  private static final int SHORTEST_WITH_ARTICLE = 5;

  private Fold() {}

  /**
   * A word and where it stands.
   *
   * @param folded as it is compared
   * @param start its first character in the text
   * @param end behind its last character
   */
  record Word(String folded, int start, int end) {
    /** The word without the Arabic article, or itself. */
    String bare() {
      return folded.startsWith(ARTICLE) && folded.length() >= SHORTEST_WITH_ARTICLE
          ? folded.substring(ARTICLE.length())
          : folded;
    }
  }

  /** The words of a text in order. Each ideograph is a word of its own. */
  static List<Word> words(String text) {
    List<Word> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    int start = -1;
    int at = 0;
    while (at < text.length()) {
      int point = text.codePointAt(at);
      int next = at + Character.charCount(point);
      if (point < 128) {
        if (Character.isLetterOrDigit(point)) {
          start = start < 0 ? at : start;
          word.append((char) Character.toLowerCase(point));
        } else {
          start = end(words, word, start, at);
        }
      } else if (Character.isIdeographic(point)) {
        end(words, word, start, at);
        words.add(new Word(folded(point), at, next));
        start = -1;
      } else if (Character.isLetterOrDigit(point)) {
        start = start < 0 ? at : start;
        word.append(folded(point));
      } else if (!joins(point)) {
        start = end(words, word, start, at);
        addNumber(words, point, at, next);
      }
      at = next;
    }
    end(words, word, start, at);
    return words;
  }

  /** A text as it is searched: its words, a space before, between and behind them. */
  static String text(List<String> texts) {
    StringBuilder folded = new StringBuilder(" ");
    for (String text : texts) {
      for (Word word : words(text)) {
        folded.append(word.folded()).append(' ');
        if (!word.bare().equals(word.folded())) {
          folded.append(word.bare()).append(' ');
        }
      }
    }
    return folded.toString();
  }

  private static int end(List<Word> words, StringBuilder word, int start, int end) {
    if (word.length() > 0) {
      words.add(new Word(word.toString(), start, end));
      word.setLength(0);
    }
    return -1;
  }

  /** Marks over letters and unseen characters do not part a word. */
  private static boolean joins(int point) {
    return switch (Character.getType(point)) {
      case Character.NON_SPACING_MARK,
          Character.COMBINING_SPACING_MARK,
          Character.ENCLOSING_MARK,
          Character.FORMAT -> true;
      default -> false;
    };
  }

  /** Fractions such as ½ are numbers made of several: 1 and 2. */
  private static void addNumber(List<Word> words, int point, int at, int next) {
    if (Character.getType(point) == Character.OTHER_NUMBER) {
      for (String part : folded(point).split(" ", -1)) {
        if (!part.isEmpty()) {
          words.add(new Word(part, at, next));
        }
      }
    }
  }

  private static String folded(int point) {
    StringBuilder folded = new StringBuilder();
    Normalizer.normalize(Character.toString(point), Normalizer.Form.NFKD)
        .codePoints()
        .forEach(
            each -> {
              if (Character.isLetterOrDigit(each)) {
                int small = Character.toLowerCase(each);
                folded.append(ALIKE.getOrDefault(small, Character.toString(small)));
              } else if (!joins(each)) {
                folded.append(' ');
              }
            });
    return folded.toString().strip();
  }
}
