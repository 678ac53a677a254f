package io.ovenmark.formula;

import io.ovenmark.measure.Slug;
import java.util.List;
import java.util.Optional;

/** The words in which an edit is refused: a sentence and, after a line break, a remedy. */
final class EditMessages {
  private static final int LONGEST_TEXT = 40;
  private static final int MOST_NAMES = 12;

  private EditMessages() {}

  static IllegalArgumentException refuse(String sentence, String remedy) {
    return new IllegalArgumentException(sentence + "\n" + remedy);
  }

  /** Refuses a name that is not among those that exist, which it lists. */
  static IllegalArgumentException unknown(
      String sentence, String wrong, String listing, List<String> names) {
    String more = names.size() > MOST_NAMES ? ", …" : "";
    String shown = String.join(", ", names.subList(0, Math.min(MOST_NAMES, names.size())));
    String guess =
        nearest(wrong, names).map(name -> "; did you mean \"" + name + "\"?").orElse(".");
    return refuse(sentence, listing + " " + shown + more + guess);
  }

  /** A person's text within a sentence: one line, at most 40 characters, in quotes. */
  static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    int count = 0;
    String stripped = text.strip();
    for (int i = 0; i < stripped.length(); ) {
      int c = stripped.codePointAt(i);
      i += Character.charCount(c);
      if (count++ == LONGEST_TEXT) {
        out.append('…');
        break;
      }
      out.appendCodePoint(Character.isISOControl(c) ? ' ' : c);
    }
    return out.append('"').toString();
  }

  /** The name that a slip of the keyboard may have meant; empty when none is near. */
  static Optional<String> nearest(String wrong, List<String> names) {
    if (wrong.isEmpty() || wrong.length() > Slug.LONGEST) {
      return Optional.empty();
    }
    String best = null;
    int least = Math.max(1, wrong.length() / 3) + 1;
    for (String name : names) {
      int distance = distance(wrong, name);
      if (distance < least) {
        best = name;
        least = distance;
      }
    }
    if (best == null) {
      List<String> parts =
          names.stream().filter(name -> ("-" + name + "-").contains("-" + wrong + "-")).toList();
      best = parts.size() == 1 ? parts.get(0) : null;
    }
    return Optional.ofNullable(best);
  }

  /** Letters to insert, drop, exchange, or swap with their neighbour, each touched once. */
  private static int distance(String a, String b) {
    int[][] steps = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          steps[i][j] = i + j;
          continue;
        }
        int exchanged = steps[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        steps[i][j] = Math.min(exchanged, Math.min(steps[i - 1][j], steps[i][j - 1]) + 1);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          steps[i][j] = Math.min(steps[i][j], steps[i - 2][j - 2] + 1);
        }
      }
    }
    return steps[a.length()][b.length()];
  }
}
