package io.ovenmark.change;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How texts and numbers stand inside a sentence for people. */
final class Texts {
  private static final int LONGEST = 80;

  private Texts() {}

  /** The shortest plain decimal of a number; empty stays empty. */
  static Optional<String> plain(OptionalDouble value) {
    return value.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new BigDecimal(Double.toString(value.getAsDouble()))
                .stripTrailingZeros()
                .toPlainString());
  }

  /** A difference with its sign, four significant digits: {@code +22} or {@code −22}. */
  static String signed(BigDecimal difference) {
    BigDecimal rounded = difference.round(new MathContext(4)).stripTrailingZeros();
    String digits = rounded.abs().toPlainString();
    return (rounded.signum() < 0 ? "−" : "+") + digits;
  }

  /**
   * Someone else's text on one line of at most 80 characters: control characters and the marks that
   * turn the writing direction become a space. Nothing is escaped; whoever shows it does that.
   */
  static String shown(String text) {
    StringBuilder out = new StringBuilder();
    int count = 0;
    boolean gap = false;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      if (Character.isWhitespace(c) || Character.isISOControl(c) || turnsDirection(c)) {
        gap = out.length() > 0;
        continue;
      }
      if (count++ == LONGEST) {
        return out.append('…').toString();
      }
      if (gap) {
        out.append(' ');
        gap = false;
      }
      out.appendCodePoint(c);
    }
    return out.toString();
  }

  static String quoted(String text) {
    return "\"" + shown(text) + "\"";
  }

  /** A slug read as words: {@code lupin-flour} becomes {@code lupin flour}. */
  static String words(String slug) {
    return slug.replace('-', ' ');
  }

  /** The same text with a capital at its beginning, where its script has capitals. */
  static String capital(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.codePointAt(0);
    return new StringBuilder()
        .appendCodePoint(Character.toTitleCase(first))
        .append(text, Character.charCount(first), text.length())
        .toString();
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String listed(List<String> items) {
    int last = items.size() - 1;
    return last < 1
        ? String.join("", items)
        : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
  }

  static String counted(int count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  private static boolean turnsDirection(int c) {
    return c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
  }
}
