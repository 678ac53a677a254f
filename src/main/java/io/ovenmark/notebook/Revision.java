package io.ovenmark.notebook;

import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import java.time.OffsetDateTime;
import java.util.Map;

/**
 * One committed state of a formula.
 *
 * @param address its line of history and number
 * @param commit the commit that made it
 * @param path the formula's file at that commit; differs from the present one after a renaming
 * @param blob the formula's content
 * @param time when it was committed
 * @param author who did
 * @param note the first line of the commit's message
 * @param details the rest of the message; empty when there is none
 * @param trailers what the commit says for programs, such as {@code Restores}
 * @param merge whether it joins two lines of history
 */
public record Revision(
    Address address,
    CommitId commit,
    String path,
    BlobId blob,
    OffsetDateTime time,
    Author author,
    String note,
    String details,
    Map<String, String> trailers,
    boolean merge) {
  /** Copies the trailers. */
  public Revision {
    trailers = Map.copyOf(trailers);
  }

  /**
   * Its number along its line of history.
   *
   * @return 1 or more
   */
  public int number() {
    return address.point().number();
  }
}
