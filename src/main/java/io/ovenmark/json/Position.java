package io.ovenmark.json;

/**
 * Where a value begins in its file.
 *
 * @param line line number, from 1; 0 when the value was not read from a file
 * @param column column in characters, from 1; 0 when the value was not read from a file
 */
public record Position(int line, int column) {
  /** The position of a value that was made in memory. */
  public static final Position NONE = new Position(0, 0);
}
