package io.ovenmark.notebook.store;

import java.util.Objects;
import java.util.Optional;

/**
 * A file that is not the same at two commits.
 *
 * @param from its content at the first, empty if it was not there
 * @param to its content at the second, empty if it is not there
 */
public record Difference(Optional<BlobId> from, Optional<BlobId> to) {

  /** Checks that nothing is null. */
  public Difference {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
  }
}
