package io.ovenmark.change;

/**
 * A stretch of words within a changed text. The same and removed runs of a text, put together, are
 * exactly the text before; the same and added ones exactly the text after.
 *
 * @param kind whether it was kept, removed or added
 * @param text the characters, never empty, as written; not escaped for any medium
 */
public record TextRun(Kind kind, String text) {
  /** What became of a run. */
  public enum Kind {
    /** In both texts. */
    SAME,
    /** Only in the text before. */
    REMOVED,
    /** Only in the text after. */
    ADDED
  }
}
