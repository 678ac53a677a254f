package io.ovenmark.compare;

import java.util.Locale;

/** What became of a line. */
public enum LineChange {
  /** Only in the later formula. */
  ADDED,
  /** Only in the earlier formula. */
  REMOVED,
  /** The same food, another mass, or masses of which one is not known. */
  CHANGED,
  /** Another food in the same role. */
  REPLACED,
  /** Written differently, weighs the same. */
  REWRITTEN,
  /** Nothing that is weighed differs. */
  SAME;

  /**
   * The name in JSON.
   *
   * @return such as {@code added}
   */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
