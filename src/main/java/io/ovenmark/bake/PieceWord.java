package io.ovenmark.bake;

import io.ovenmark.measure.Quoting;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One word of a piece's text: a bare one, or a name with its value.
 *
 * @param name what stands before the sign of equality; empty for a bare word
 * @param text the value as one text, without quotes
 * @param parts the value's parts between commas, those in quotes undivided; empty for no value
 * @param quoted whether any of it stood in quotes
 */
record PieceWord(String name, String text, List<String> parts, boolean quoted) {
  /** Words that belong to the number before them: {@code 190 °C}, {@code 24 min}. */
  private static final Set<String> UNITS =
      Set.of(
          "C", "c", "F", "f", "°C", "°c", "°F", "°f", "ºC", "ºF", "°", "min", "mins", "minutes", "h",
          "g", "kg", "oz", "mm", "cm", "in");

  PieceWord {
    parts = List.copyOf(parts);
  }

  /** Splits a text into its words. */
  static List<PieceWord> split(String text) {
    List<PieceWord> words = new ArrayList<>();
    Cursor cursor = new Cursor(text);
    while (cursor.skipSpace()) {
      words.add(cursor.word());
    }
    return words;
  }

  static IllegalArgumentException bad(String sentence, String remedy) {
    return new IllegalArgumentException(sentence + "\n" + remedy);
  }

  /** A place in the text. */
  private static final class Cursor {
    private final String text;
    private int at;

    Cursor(String text) {
      this.text = text;
    }

    /** Goes to the next word; false at the end. */
    boolean skipSpace() {
      while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
        at++;
      }
      return at < text.length();
    }

    PieceWord word() {
      String name = name();
      List<String> parts = new ArrayList<>();
      StringBuilder whole = new StringBuilder();
      boolean quoted = false;
      boolean more = true;
      while (more) {
        boolean here = at < text.length() && isQuote(text.charAt(at));
        String part = here ? quotedPart() : plainPart();
        quoted |= here;
        whole.append(part);
        if (here || !part.isEmpty()) {
          parts.add(part);
        }
        more = at < text.length() && text.charAt(at) == ',';
        if (more) {
          whole.append(',');
          at++;
        }
      }
      if (!quoted) {
        String unit = unit(whole);
        if (!unit.isEmpty()) {
          whole.append(unit);
          parts.set(parts.size() - 1, parts.get(parts.size() - 1) + unit);
        }
      }
      return new PieceWord(name, whole.toString(), parts, quoted);
    }

    /** Letters up to a sign of equality; without one the place stays. */
    private String name() {
      int end = at;
      while (end < text.length() && isNameCharacter(text.charAt(end))) {
        end++;
      }
      if (end == at || end == text.length() || text.charAt(end) != '=') {
        return "";
      }
      String name = text.substring(at, end);
      at = end + 1;
      return name;
    }

    private String quotedPart() {
      char quote = closing(text.charAt(at));
      int end = text.indexOf(quote, at + 1);
      while (end >= 0 && end + 1 < text.length() && !isEnd(text.charAt(end + 1))) {
        end = text.indexOf(quote, end + 1);
      }
      if (end < 0) {
        throw bad(
            "A quote is not closed in the piece " + Quoting.quote(text) + ".",
            "Put one quote before and one after the words.");
      }
      String part = text.substring(at + 1, end);
      at = end + 1;
      return part;
    }

    private String plainPart() {
      int start = at;
      while (at < text.length() && !isEnd(text.charAt(at))) {
        at++;
      }
      return text.substring(start, at);
    }

    /** Takes the next word when it is the unit of the number before. */
    private String unit(CharSequence number) {
      int before = at;
      boolean digit =
          number.length() > 0 && Character.isDigit(number.charAt(number.length() - 1));
      if (digit && skipSpace()) {
        String next = plainPart();
        if (UNITS.contains(next)) {
          return next.equals("°") ? "" : next;
        }
      }
      at = before;
      return "";
    }

    private static boolean isNameCharacter(char c) {
      return Character.isLetterOrDigit(c) || c == '.' || c == '_' || c == '-';
    }

    private static boolean isEnd(char c) {
      return Character.isWhitespace(c) || c == ',';
    }

    private static boolean isQuote(char c) {
      return c == '\'' || c == '"' || c == '“' || c == '‘' || c == '„';
    }

    private static char closing(char opening) {
      return switch (opening) {
        case '“' -> '”';
        case '‘' -> '’';
        case '„' -> '“';
        default -> opening;
      };
    }
  }
}
