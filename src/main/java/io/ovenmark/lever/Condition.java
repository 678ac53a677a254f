package io.ovenmark.lever;

import java.util.List;

/**
 * One condition in words, with the rows that it is made of: what a person asked for, or what cannot
 * be otherwise.
 *
 * @param kind what sort of condition
 * @param words the condition as a person would say it
 * @param rows the rows, all of which hold
 */
record Condition(Kind kind, String words, List<Row> rows) {
  /** What sort of condition. */
  enum Kind {
    /** A figure that was asked for. */
    WISH,
    /** A line that must stay. */
    KEEP,
    /** What a line may weigh. */
    LIMIT,
    /** The batch mass must stay. */
    BATCH,
    /** How the batch is divided. */
    DIVISION,
    /** No line grows, and no batch shrinks, beyond sense. */
    SENSE,
    /** No line weighs less than nothing. */
    NATURE
  }

  Condition {
    rows = List.copyOf(rows);
  }
}
