package io.ovenmark.change;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * One place where two sides made different things of the same base, so that a person must choose.
 * With the sides swapped, a merge finds the same conflicts, with {@code ours} and {@code theirs}
 * swapped.
 *
 * @param path names the place and is unique within a merge: {@code name}, {@code description},
 *     {@code goal}, {@code reference}, {@code lines.<id>} (the line as a whole), {@code
 *     lines.<id>.food}, {@code .amount}, {@code .note}, {@code lines.<id>.extras.<name>}, {@code
 *     method.3}, {@code method.3-5}, {@code method.after.2} (steps are numbered from 1, in the
 *     base), {@code bake.<id>}, {@code bake.<id>.<field>}, {@code bake.<id>.extras.<name>},
 *     {@code yield} (pieces or dough mass a piece), {@code yield.handling_loss_percent}, {@code
 *     extras.<name>}
 * @param sentence what happened, for people, one line, not escaped
 * @param base what stood there before, as text; empty when nothing did
 * @param ours what the first side made of it; empty when it has nothing there
 * @param theirs what the second side made of it; empty when it has nothing there
 */
public record Conflict(
    String path,
    String sentence,
    Optional<String> base,
    Optional<String> ours,
    Optional<String> theirs) {
  /** Checks that nothing is null. */
  public Conflict {
    requireNonNull(path, "path");
    requireNonNull(sentence, "sentence");
    requireNonNull(base, "base");
    requireNonNull(ours, "ours");
    requireNonNull(theirs, "theirs");
  }
}
