package io.ovenmark.notebook;

import java.util.Optional;

/** Refuses what was decided by looking at a revision that is not the newest any more. */
public final class Moved {
  private Moved() {}

  /**
   * The refusal.
   *
   * @param now the newest revision, which the writer has not seen
   * @return a conflict that names it
   */
  public static Refusal to(Revision now) {
    return new Refusal(
        Refusal.Reason.CONFLICT,
        now.address().toString(),
        "The newest revision is another one by now: "
            + now.address()
            + ", “"
            + now.note()
            + "”, by "
            + now.author().name()
            + ".",
        "Nothing was written. Look at it, then decide again.");
  }

  /**
   * The newest revision of a line of history, as long as it is the one that the writer saw.
   *
   * @param notebook the notebook
   * @param line the line of history
   * @param seen commit id of the revision that the writer saw; empty when that does not matter
   * @return the newest revision
   * @throws Refusal when it is another one
   */
  public static Revision checked(Notebook notebook, Address line, Optional<String> seen) {
    Revision now = notebook.newest(line);
    if (seen.filter(commit -> !commit.equals(now.commit().hex())).isPresent()) {
      throw to(now);
    }
    return now;
  }
}
