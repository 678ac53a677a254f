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
  /** Checks that nothing is null. */
  public Problem {
    requireNonNull(file, "file");
    requireNonNull(at, "at");
    requireNonNull(field, "field");
    requireNonNull(message, "message");
    requireNonNull(hint, "hint");
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
