package io.ovenmark.tasting;

/** Refusals of values: a sentence and, after a line break, a remedy. */
final class Faults {
  private Faults() {}

  static IllegalArgumentException bad(String sentence, String remedy) {
    return new IllegalArgumentException(sentence + "\n" + remedy);
  }

  static void require(boolean holds, String sentence, String remedy) {
    if (!holds) {
      throw bad(sentence, remedy);
    }
  }
}
