package io.ovenmark.notebook;

import static java.util.Objects.requireNonNull;

import java.time.OffsetDateTime;

/**
 * Unfinished work that is not a revision yet: what somebody was typing.
 *
 * @param id its name; letters, digits and hyphens
 * @param kind what it is a draft of, such as {@code formula} or {@code bake}; one lower-case word
 * @param version 1 for a new one, one more with every save
 * @param time when it was saved last
 * @param author the name of who saved it last
 * @param content what was typed, as those who keep it write it; JSON
 */
public record Draft(
    String id, String kind, long version, OffsetDateTime time, String author, String content) {
  /** Checks that nothing is null. */
  public Draft {
    requireNonNull(id, "id");
    requireNonNull(kind, "kind");
    requireNonNull(time, "time");
    requireNonNull(author, "author");
    requireNonNull(content, "content");
  }
}
