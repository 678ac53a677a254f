package io.ovenmark.publish.label;

/**
 * Where a rule or a value comes from, and how far that was checked for this program.
 *
 * @param law such as {@code 21 CFR 101.62(b)(2)}
 * @param standing how it is known
 */
public record Source(String law, Standing standing) {
  /** How a rule is known here. */
  public enum Standing {
    /** The text, or the authority's own summary of it, was read. */
    READ("read"),
    /** Another document that reprints or sums it up was read. */
    SECOND_HAND("second hand"),
    /** Known from memory only. */
    FROM_MEMORY("from memory");

    private final String words;

    Standing(String words) {
      this.words = words;
    }

    /**
     * In words.
     *
     * @return such as {@code from memory}
     */
    public String words() {
      return words;
    }
  }

  /** A law whose text was read. */
  static Source read(String law) {
    return new Source(law, Standing.READ);
  }

  /** A law that was read in another document. */
  static Source secondHand(String law) {
    return new Source(law, Standing.SECOND_HAND);
  }

  /** A law as remembered. */
  static Source fromMemory(String law) {
    return new Source(law, Standing.FROM_MEMORY);
  }

  /**
   * For people.
   *
   * @return the law, and how it is known unless it was read
   */
  public String inWords() {
    return standing == Standing.READ ? law : law + " (" + standing.words() + ")";
  }
}
