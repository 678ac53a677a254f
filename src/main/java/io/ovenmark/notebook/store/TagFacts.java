package io.ovenmark.notebook.store;

import java.time.OffsetDateTime;

/**
 * A tag and the commit it names.
 *
 * @param name the name without {@code refs/tags/}
 * @param commit the commit, also through a tag of a tag
 * @param time when the tag was made; for a tag without an own object the commit's author time
 * @param message the tag's message without its final line break, empty for a tag without one
 */
public record TagFacts(String name, CommitId commit, OffsetDateTime time, String message) {}
