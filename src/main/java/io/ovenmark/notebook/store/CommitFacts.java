package io.ovenmark.notebook.store;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What a commit says about itself.
 *
 * @param id the commit
 * @param parents its parents in order, the line it continues first; empty for a first commit
 * @param author who made it
 * @param time when it was authored, to the second, with the author's own offset
 * @param subject the first paragraph of the message in one line
 * @param body the rest of the message without the trailers, empty if there is none
 * @param trailers the {@code Key: value} lines of the last paragraph in their order
 */
public record CommitFacts(
    CommitId id,
    List<CommitId> parents,
    Author author,
    OffsetDateTime time,
    String subject,
    String body,
    Map<String, String> trailers) {

  /** Copies the collections. */
  public CommitFacts {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(author, "author");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(body, "body");
    parents = List.copyOf(parents);
    trailers = CommitMessage.copy(trailers);
  }
}
