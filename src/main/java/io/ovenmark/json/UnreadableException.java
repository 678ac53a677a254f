package io.ovenmark.json;

import java.util.List;

/** A file that cannot be used as it stands; carries every fault that was found in it. */
public final class UnreadableException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<Problem> problems;

  /**
   * Makes the exception.
   *
   * @param problems what is wrong, at least one, in file order
   */
  public UnreadableException(List<Problem> problems) {
    super(problems.isEmpty() ? "unreadable" : problems.get(0).toString());
    this.problems = List.copyOf(problems);
  }

  /**
   * What is wrong.
   *
   * @return the faults in file order, never empty
   */
  public List<Problem> problems() {
    return problems;
  }
}
