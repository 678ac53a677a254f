package io.ovenmark.notebook.store;

/**
 * The id of a commit: forty lower-case hexadecimal digits.
 *
 * @param hex the digits, never null; upper case is accepted and lowered
 */
public record CommitId(String hex) implements Comparable<CommitId> {

  /**
   * Checks the digits.
   *
   * @throws IllegalArgumentException if they are not forty hexadecimal digits
   */
  public CommitId {
    hex = HexId.check("CommitId", hex);
  }

  /** The first ten digits, enough to tell ids apart when shown to a person. */
  public String abbreviated() {
    return hex.substring(0, HexId.ABBREVIATED_LENGTH);
  }

  @Override
  public int compareTo(CommitId other) {
    return hex.compareTo(other.hex);
  }

  @Override
  public String toString() {
    return hex;
  }
}
