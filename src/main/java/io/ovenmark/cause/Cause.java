package io.ovenmark.cause;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.FindingVocabulary;
import java.util.Optional;

/**
 * A likely cause of a finding.
 *
 * @param finding of what
 * @param rank from 1 for the most common of this finding
 * @param words the cause in plain words, beginning small
 * @param gauge what it is tested on
 * @param way how that must have moved
 * @param against what one does against it, in plain words
 * @param step size of a first step against it, in percent of the figure or in its own unit, always
 *     above 0; 0 for words
 * @param least the value below which a figure is low whatever it was before, such as a core of 94
 *     °C; empty for none
 * @param source where this is published; empty for common practice
 */
public record Cause(
    FindingVocabulary finding,
    int rank,
    String words,
    Gauge gauge,
    Way way,
    String against,
    double step,
    Optional<Double> least,
    Optional<String> source) {
  /** What is said where no source is. */
  public static final String PRACTICE = "common practice, no source";

  /** Checks that nothing is null and that gauge and way agree. */
  public Cause {
    requireNonNull(finding, "finding");
    requireNonNull(words, "words");
    requireNonNull(against, "against");
    requireNonNull(least, "least");
    requireNonNull(source, "source");
    if (gauge.isWords() != (way == Way.OTHER)) {
      throw new IllegalArgumentException(
          gauge.key() + " cannot move " + way.key() + ": only words are simply other");
    }
    if (!(step >= 0) || (step == 0) != gauge.isWords()) {
      throw new IllegalArgumentException("the first step of a number must be above 0");
    }
  }

  /**
   * Where it is from, for people.
   *
   * @return the source, or that it is common practice
   */
  public String origin() {
    return source.orElse(PRACTICE);
  }
}
