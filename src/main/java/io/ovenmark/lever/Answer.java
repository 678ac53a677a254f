package io.ovenmark.lever;

import io.ovenmark.formula.Yield;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;

/**
 * A change that grants all wishes.
 *
 * @param number by which it is asked for, from 1
 * @param kind what sort of change
 * @param line the line that was moved on purpose; empty unless it is a single change
 * @param lines the lines that move, in the formula's order
 * @param yield how the batch is divided afterwards; empty when that stays
 * @param after the formula with the exact masses, worked out
 * @param weighed the same with what a scale can show
 * @param moves what else it moves: figures before and exactly after, those asked for included
 * @param disturbance how much it disturbs the rest, see {@link Levers}
 */
public record Answer(
    int number,
    Kind kind,
    Optional<String> line,
    List<LineMove> lines,
    Optional<Yield> yield,
    Worksheet after,
    Worksheet weighed,
    List<FigureMove> moves,
    double disturbance) {
  /** What sort of change. */
  public enum Kind {
    /** The lines stay, the batch is divided in another way. */
    DIVISION("division"),
    /** One line moves; with a fixed batch the others give or take in proportion. */
    SINGLE("single"),
    /** All lines that may move do, each as little as possible. */
    COMBINED("combined");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    /**
     * The name in JSON.
     *
     * @return such as {@code single}
     */
    public String key() {
      return key;
    }
  }

  /** Copies the lists. */
  public Answer {
    lines = List.copyOf(lines);
    moves = List.copyOf(moves);
  }

  Answer numbered(int next) {
    return new Answer(
        next, kind, line, lines, yield, after, weighed, moves, disturbance);
  }
}
