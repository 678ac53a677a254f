package io.ovenmark.publish.label;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * A claim that the law allows under a condition, and how the figures stand to it.
 *
 * @param name the claim, such as {@code High fibre}
 * @param verdict whether the unrounded figures meet it
 * @param because the figures that were judged, in words
 * @param condition the published condition
 * @param source where the condition comes from
 * @param further what else the law wants that figures cannot show
 */
public record Claim(
    String name,
    Verdict verdict,
    String because,
    String condition,
    Source source,
    Optional<String> further) {
  /** Checks. */
  public Claim {
    requireNonNull(name, "name");
    requireNonNull(verdict, "verdict");
    requireNonNull(because, "because");
    requireNonNull(condition, "condition");
    requireNonNull(source, "source");
    requireNonNull(further, "further");
  }

  /**
   * Something that is said of food and that figures cannot settle, or that has no definition.
   *
   * @param name the claim
   * @param why why nothing can be told
   * @param source where that comes from
   */
  public record Unjudged(String name, String why, Source source) {}
}
