package io.ovenmark.measure;

/** Shows what a person wrote within a sentence. */
public final class Quoting {
  private static final int LONGEST = 40;

  private Quoting() {}

  /**
   * Quotes a text on one line, cut after {@value #LONGEST} characters.
   *
   * @param text any text, not null
   * @return the text in double quotes
   */
  public static String quote(String text) {
    String line = tidy(text.length() > 4 * LONGEST ? text.substring(0, 4 * LONGEST) : text);
    if (line.codePointCount(0, line.length()) > LONGEST) {
      line = line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "…";
    }
    return '"' + line + '"';
  }

  /**
   * Removes blanks at both ends and makes every run of blanks in between one space. Blanks are
   * white space, line breaks, control characters and the no-break and thin spaces that word
   * processors put between a number and its unit.
   *
   * @param text any text, not null
   * @return the text on one line
   */
  static String tidy(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean blank =
          Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c);
      if (!blank) {
        out.append(c);
      } else if (out.length() > 0 && out.charAt(out.length() - 1) != ' ') {
        out.append(' ');
      }
    }
    int end = out.length();
    return out.substring(0, end > 0 && out.charAt(end - 1) == ' ' ? end - 1 : end);
  }
}
