package io.ovenmark.publish.label;

/** Whether figures meet the condition of a claim. */
public enum Verdict {
  /** They do, whatever the unknown turns out to be. */
  MEETS("would meet"),
  /** They do not, whatever the unknown turns out to be. */
  MISSES("would miss"),
  /** It depends on what is not known. */
  CANNOT_BE_TOLD("cannot be told");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /**
   * In words and in JSON.
   *
   * @return such as {@code would meet}
   */
  public String words() {
    return words;
  }

  /** Both have to be met. */
  Verdict and(Verdict other) {
    if (this == MISSES || other == MISSES) {
      return MISSES;
    }
    return this == MEETS ? other : this;
  }

  /** One has to be met. */
  Verdict or(Verdict other) {
    if (this == MEETS || other == MEETS) {
      return MEETS;
    }
    return this == MISSES ? other : this;
  }
}
