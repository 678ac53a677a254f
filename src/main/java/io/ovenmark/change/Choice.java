package io.ovenmark.change;

/** Which side settles a conflict. */
public enum Choice {
  /** What the first side made of it. */
  OURS,
  /** What the second side made of it. */
  THEIRS,
  /** What stood there before both, so that neither change is taken. */
  BASE
}
