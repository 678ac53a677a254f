package io.ovenmark.compare;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * A field that is written differently on the two sides.
 *
 * @param field where it stands in the file, such as {@code bake.temperature}
 * @param label for people, such as {@code oven temperature}
 * @param from its text before, with its unit; empty when it was not stated
 * @param to its text after, with its unit; empty when it is not stated
 * @param matters false when both mean the same, as the same heat in °C and °F
 */
public record FieldChange(
    String field, String label, Optional<String> from, Optional<String> to, boolean matters) {
  /** Checks that nothing is null. */
  public FieldChange {
    requireNonNull(field, "field");
    requireNonNull(label, "label");
    requireNonNull(from, "from");
    requireNonNull(to, "to");
  }
}
