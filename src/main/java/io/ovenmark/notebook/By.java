package io.ovenmark.notebook;

import static java.util.Objects.requireNonNull;

import io.ovenmark.notebook.store.Author;
import java.time.OffsetDateTime;

/**
 * Who does something, and when.
 *
 * @param author who
 * @param time when
 */
public record By(Author author, OffsetDateTime time) {
  /** Checks that nothing is null. */
  public By {
    requireNonNull(author, "author");
    requireNonNull(time, "time");
  }
}
