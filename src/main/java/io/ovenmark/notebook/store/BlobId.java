package io.ovenmark.notebook.store;

/**
 * The id of the content of a file, as Git hashes it: forty lower-case hexadecimal digits.
 *
 * @param hex the digits, never null; upper case is accepted and lowered
 */
public record BlobId(String hex) implements Comparable<BlobId> {

  /**
   * Checks the digits.
   *
   * @throws IllegalArgumentException if they are not forty hexadecimal digits
   */
  public BlobId {
    hex = HexId.check("BlobId", hex);
  }

  /** The first ten digits, enough to tell ids apart when shown to a person. */
  public String abbreviated() {
    return hex.substring(0, HexId.ABBREVIATED_LENGTH);
  }

  @Override
  public int compareTo(BlobId other) {
    return hex.compareTo(other.hex);
  }

  @Override
  public String toString() {
    return hex;
  }
}
