package io.ovenmark.tasting;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Range;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What a taster said about one plate.
 *
 * @param code the plate's code
 * @param liking from 1 (dislike extremely) to 9 (like extremely); empty when not said
 * @param attributes what was said of each attribute, names unique; those left out were not said
 * @param extras unknown fields
 */
public record Score(
    String code, OptionalDouble liking, List<Attribute> attributes, Extras extras) {
  /** The scale of liking. */
  public static final Range LIKING = new Range(1, 9);

  /**
   * One attribute.
   *
   * @param name such as {@code sweet}
   * @param score from −2 (much too little) over 0 (just about right) to 2 (much too much)
   * @param extras unknown fields
   */
  public record Attribute(String name, int score, Extras extras) {
    /** The greatest distance from just about right. */
    public static final int MOST = 2;

    /** Checks the score. */
    public Attribute {
      Faults.require(!name.isBlank(), "An attribute has no name.", "Name it, such as sweet.");
      Faults.require(
          Math.abs(score) <= MOST,
          "The score " + score + " of " + name + " is out of range.",
          "Use -2 (much too little), -1, 0 (just about right), 1 or 2 (much too much).");
      requireNonNull(extras, "extras");
    }
  }

  /** Checks and copies. */
  public Score {
    Serving.checkedCode(code);
    LIKING.check("The liking of " + code, liking);
    attributes = List.copyOf(attributes);
    Set<String> seen = new HashSet<>();
    for (Attribute each : attributes) {
      Faults.require(
          seen.add(each.name()),
          "The attribute " + each.name() + " is scored twice for " + code + ".",
          "Score it once.");
    }
    requireNonNull(extras, "extras");
  }

  /** Whether nothing was said. */
  boolean isEmpty() {
    return liking.isEmpty() && attributes.isEmpty() && extras.isEmpty();
  }

  /** The score of an attribute; empty when not said. */
  OptionalInt attribute(String name) {
    return attributes.stream()
        .filter(each -> each.name().equals(name))
        .mapToInt(Attribute::score)
        .findFirst();
  }
}
