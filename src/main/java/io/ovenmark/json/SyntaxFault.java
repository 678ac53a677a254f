package io.ovenmark.json;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.io.JsonEOFException;

/**
 * Says in a baker's words why a text is not JSON. What the parser reports is only used to tell the
 * cases apart; the sentence is made from what stands at the place.
 */
final class SyntaxFault {
  /** What to do with a file of which the end is missing. */
  static final String RESTORE =
      "Restore the missing end from an earlier revision, or close what is open.";

  private static final String CLOSERS = "]}";
  private static final String TYPOGRAPHIC_QUOTES = "“”„‟«»‘’‚‛`´";

  private final String text;
  private final String report;
  private final int at;

  private SyntaxFault(String text, String report, int at) {
    this.text = text;
    this.report = report;
    this.at = at;
  }

  /**
   * Turns what the parser found into a problem.
   *
   * @param file the name used in the message
   * @param text the whole text without byte order mark
   * @param found what the parser found
   * @return the problem at the place where something must be changed
   */
  static Problem of(String file, String text, JsonParseException found) {
    String report = found.getOriginalMessage();
    int offset = (int) found.getLocation().getCharOffset();
    int at = Math.min(Math.max(0, offset), text.length());
    if (found instanceof JsonEOFException || report.startsWith("Unexpected end-of-input")) {
      return ended(file, text, report);
    }
    boolean word = report.startsWith("Unrecognized token") || report.startsWith("Non-standard");
    if (word || report.contains("numeric value")) {
      int start = startOfWord(text, at);
      String rest = text.substring(start).strip();
      if (!rest.isEmpty() && isBegun(rest)) {
        return ended(file, text, report);
      }
      at = start;
    } else if (report.startsWith("Illegal character") && at > 0 && !isControl(text, at)) {
      at--;
    }
    String[] said = new SyntaxFault(text, report, at).sentence();
    return new Problem(file, position(text, at), "", said[0], said[1]);
  }

  /**
   * Line and column of a place in a text; a line ends with LF, CR LF or CR.
   *
   * @param text the text
   * @param offset how many characters precede the place
   * @return the position
   */
  static Position position(String text, int offset) {
    int line = 1;
    int start = 0;
    for (int i = 0; i < offset; i++) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
        line++;
        start = i + 1;
      }
    }
    return new Position(line, offset - start + 1);
  }

  private static Problem ended(String file, String text, String report) {
    String message =
        report.contains("closing quote") || report.contains("escape sequence")
            ? "The file ends inside a text in quotes."
            : "The file ends before it is complete.";
    return new Problem(file, position(text, text.length()), "", message, RESTORE);
  }

  private String[] sentence() {
    if (conflictMarker()) {
      return said(
          "A mark of an unsettled Git merge stands here.",
          "Keep one of the two sides and remove the lines with <<<<<<<, ======= and >>>>>>>.");
    }
    if (TYPOGRAPHIC_QUOTES.indexOf(here()) >= 0 || here() == '\'') {
      return said(
          "The character " + here() + " stands where a straight double quote belongs.",
          "Use straight double quotes (\") around names and texts.");
    }
    if (report.contains("comment")) {
      return said(
          "A comment stands here, which JSON does not have.", "Keep the remark in a \"note\".");
    }
    if (report.startsWith("Unrecognized token")) {
      return said(
          "The word " + word() + " stands without quotes.",
          "Put texts in double quotes; write true, false and null in small letters.");
    }
    if (report.startsWith("Non-standard token")) {
      return said(
          "The word " + word() + " is not a number.", "Write null for a figure that is unknown.");
    }
    if (report.startsWith("Illegal")) {
      return controlCharacter();
    }
    if (report.contains("surrogate")) {
      return said(
          "A name holds only one half of an escaped character before this place.",
          "Write the character itself instead of its escape.");
    }
    if (report.contains("escape")) {
      return said(
          "A backslash in a text is followed by something that has no meaning here.",
          "Write \\\\ for a backslash itself.");
    }
    if (report.contains("numeric value")) {
      return number();
    }
    if (report.contains("close marker")) {
      return said(
          report.contains("no open")
              ? "The bracket " + here() + " closes nothing."
              : "The bracket "
                  + here()
                  + " stands where "
                  + (here() == ']' ? '}' : ']')
                  + " belongs.",
          "Check the brackets from here upwards.");
    }
    return misplaced();
  }

  private String[] misplaced() {
    if (report.contains("colon")) {
      return said("A colon is missing after a name.", "Write names as in \"name\": value.");
    }
    if (before() == ',' && CLOSERS.indexOf(here()) >= 0) {
      return said(
          "A comma stands before the closing bracket " + here() + ".",
          "Remove the comma after the last entry.");
    }
    if (report.contains("expecting comma")) {
      return isDigit(before()) && Character.isLetter(here())
          ? said(
              "The word " + word() + " follows a number without quotes.",
              "Put an amount and its unit in quotes together, such as \"150 g\".")
          : said(
              "A comma is missing before the character " + here() + ".",
              "Put one comma between two entries.");
    }
    if (report.contains("start field name")) {
      return before() == ',' && isDigit(here())
          ? said(
              "A number stands after a comma where a name belongs.",
              "Write decimals with a point, such as 1.5.")
          : said(
              "The character " + here() + " stands where a name in quotes belongs.",
              "Write names as in \"name\": value.");
    }
    if (here() == '.') {
      return said("A number begins with a point.", "Write a 0 before the point, such as 0.5.");
    }
    if (here() == ',' || CLOSERS.indexOf(here()) >= 0) {
      return said("A value is missing before the character " + here() + ".", "Write the value.");
    }
    return said(
        "The character " + here() + " cannot begin a value.",
        "Look for a missing quote, comma or bracket here or on the line before.");
  }

  private String[] number() {
    if (report.contains("eading zero")) {
      return said("The number " + word() + " begins with a needless 0.", "Remove the 0.");
    }
    if (here() == '+') {
      return said("The number " + word() + " has a plus sign.", "Remove the sign.");
    }
    return said(
        "The number " + word() + " is not complete.", "Write it with digits, such as 0.5 or 150.");
  }

  private String[] controlCharacter() {
    if (here() == '\n' || here() == '\r') {
      return said(
          "A text in quotes runs over the end of its line.",
          "Close the quote on this line, or write \\n for a line break within the text.");
    }
    if (here() == '\t') {
      return said("A tab stands in a text in quotes.", "Write a space, or \\t for a tab.");
    }
    return said("An invisible control character stands here.", "Remove it.");
  }

  private boolean conflictMarker() {
    boolean lineStart = at == 0 || text.charAt(at - 1) == '\n';
    return lineStart
        && (text.startsWith("<<<<<<<", at)
            || text.startsWith("=======", at)
            || text.startsWith(">>>>>>>", at)
            || text.startsWith("|||||||", at));
  }

  private char here() {
    return at < text.length() ? text.charAt(at) : ' ';
  }

  private char before() {
    int i = at - 1;
    while (i >= 0 && Character.isWhitespace(text.charAt(i))) {
      i--;
    }
    return i < 0 ? ' ' : text.charAt(i);
  }

  private String word() {
    int end = at;
    while (end < text.length() && end - at < 40 && isWordPart(text.charAt(end))) {
      end++;
    }
    return text.substring(at, Math.max(end, Math.min(at + 1, text.length())));
  }

  private static int startOfWord(String text, int from) {
    int start = from;
    while (start > 0 && isWordPart(text.charAt(start - 1))) {
      start--;
    }
    return start;
  }

  private static boolean isWordPart(char c) {
    return Character.isLetterOrDigit(c) || c == '+' || c == '-' || c == '.' || c == '_';
  }

  private static boolean isBegun(String rest) {
    return "true".startsWith(rest)
        || "false".startsWith(rest)
        || "null".startsWith(rest)
        || rest.matches("-?[0-9]+\\.");
  }

  private static boolean isControl(String text, int at) {
    return at < text.length() && Character.isISOControl(text.charAt(at));
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static String[] said(String message, String hint) {
    return new String[] {message, hint};
  }
}
