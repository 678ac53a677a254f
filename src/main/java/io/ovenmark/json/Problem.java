package io.ovenmark.json;

import static java.util.Objects.requireNonNull;

/**
 * One fault in a file, in the words a person needs to mend it.
 *
 * @param file path of the file as the notebook knows it, not null
 * @param at line and column, {@link Position#NONE} when the fault is the whole file's
 * @param field path of the field such as {@code lines[2].amount}; empty for the whole file
 * @param message one sentence that says what is wrong, not null
 * @param hint one sentence that says what to do, not null
 */
public record Problem(String file, Position at, String field, String message, String hint) {
  private static final int LONGEST = 300;

  /** Checks that nothing is null; puts every text on one line and cuts what is overlong. */
  public Problem {
    file = oneLine(requireNonNull(file, "file"));
    requireNonNull(at, "at");
    field = oneLine(requireNonNull(field, "field"));
    message = oneLine(requireNonNull(message, "message"));
    hint = oneLine(requireNonNull(hint, "hint"));
  }

  private static String oneLine(String text) {
    StringBuilder line = new StringBuilder(Math.min(text.length(), LONGEST + 1));
    for (int i = 0; i < text.length() && line.length() < LONGEST; i++) {
      char c = text.charAt(i);
      line.append(Character.isISOControl(c) ? ' ' : c);
    }
    return text.length() > LONGEST ? line.append('…').toString() : line.toString();
  }

  /**
   * Where the fault is: {@code file:line:column, field}.
   *
   * @return the place, never empty
   */
  public String where() {
    String place = at.line() == 0 ? file : file + ":" + at.line() + ":" + at.column();
    return field.isEmpty() ? place : place + ", field " + field;
  }

  /** The whole problem in one line: place, sentence, remedy. */
  @Override
  public String toString() {
    return where() + ": " + message + " " + hint;
  }
}
