package io.ovenmark.notebook;

import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import java.time.OffsetDateTime;
import java.util.Map;

/**
 * One committed state of a formula.
 *
 * @param address its line of history and number; named by its commit when it is on no line of
 *     history, as on a branch that was merged
 * @param number its number along its line of history, 1 or more
 * @param commit the commit that made it
 * @param path the formula's file at that commit; differs from the present one after a renaming
 * @param blob the formula's content
 * @param time when it was committed
 * @param author who did
 * @param note the first line of the commit's message
 * @param details the rest of the message, without the trailers that Ovenmark writes; empty when
 *     there is none
 * @param trailers what the commit says for programs, such as {@code Restores}
 * @param merge whether it joins two lines of history
 */
public record Revision(
    Address address,
    int number,
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
}
