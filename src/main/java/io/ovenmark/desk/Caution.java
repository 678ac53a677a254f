package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

/**
 * Something to mind when a formula is baked and eaten. It can be worded longer, never shorter.
 *
 * @param key its name, such as {@code egg}
 * @param words what to mind, in sentences
 */
record Caution(String key, String words) {
  /** Checks. */
  Caution {
    requireNonNull(key, "key");
    requireNonNull(words, "words");
  }

  /**
   * The same with more words after its own. What begins with its own words goes on from them;
   * blanks, and what is but a part of its own words, add nothing.
   */
  Caution longer(String more) {
    String said = more.strip();
    if (words.contains(said)) {
      return this;
    }
    return new Caution(key, said.startsWith(words) ? said : words + " " + said);
  }
}
