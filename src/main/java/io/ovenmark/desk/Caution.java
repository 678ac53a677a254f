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

  /** The same with more words after its own; blanks add nothing. */
  Caution longer(String more) {
    return more.isBlank() ? this : new Caution(key, words + " " + more.strip());
  }
}
