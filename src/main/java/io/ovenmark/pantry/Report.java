package io.ovenmark.pantry;

import io.ovenmark.json.Position;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import java.util.ArrayList;
import java.util.List;

/** Gathers the faults of rows: all are counted, the first are kept. */
final class Report {
  static final int MOST_SHOWN = 100;

  private final List<Problem> problems = new ArrayList<>();
  private long count;

  void add(String file, Position at, String column, String message, String hint) {
    count++;
    if (problems.size() < MOST_SHOWN) {
      problems.add(new Problem(file, at, column, message, hint));
    }
  }

  List<Problem> problems() {
    return problems;
  }

  long count() {
    return count;
  }

  /** Refuses a file as a whole. */
  static UnreadableException refusal(
      String file, Position at, String column, String message, String hint) {
    return new UnreadableException(List.of(new Problem(file, at, column, message, hint)));
  }
}
