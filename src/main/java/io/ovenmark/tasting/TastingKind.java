package io.ovenmark.tasting;

import io.ovenmark.measure.Quoting;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What the tasters of a tasting are asked to do. */
public enum TastingKind {
  /** Three pieces, two of which are alike: which is the odd one? */
  TRIANGLE("triangle", "Triangle", 2, 2, "Which of the three samples is the odd one out?"),
  /** Two samples: which is preferred? */
  PREFERENCE("preference", "Paired preference", 2, 2, "Which of the two samples do you prefer?"),
  /** Several samples, put in order of liking. */
  RANKING("ranking", "Ranking", 2, 12, "Put the samples in order: the one you like best first."),
  /** How much each sample is liked, from 1 to 9. */
  LIKING("liking", "Liking 1–9", 1, 12, "How much do you like each sample?"),
  /** Liking, and for each attribute whether there is too little, too much or just enough. */
  JUST_ABOUT_RIGHT(
      "just-about-right",
      "Just about right",
      1,
      12,
      "How much do you like each sample, and what would you change?");

  private final String key;
  private final String label;
  private final int least;
  private final int most;
  private final String question;

  TastingKind(String key, String label, int least, int most, String question) {
    this.key = key;
    this.label = label;
    this.least = least;
    this.most = most;
    this.question = question;
  }

  /**
   * The name in files and on the command line.
   *
   * @return such as {@code just-about-right}
   */
  public String key() {
    return key;
  }

  /**
   * The name for people.
   *
   * @return such as {@code Paired preference}
   */
  public String label() {
    return label;
  }

  /**
   * How many different samples it needs at least.
   *
   * @return 1 or 2
   */
  public int leastSamples() {
    return least;
  }

  /**
   * How many different samples it can have.
   *
   * @return 2 or 12
   */
  public int mostSamples() {
    return most;
  }

  /**
   * What is asked when the organiser does not word it.
   *
   * @return one sentence
   */
  public String question() {
    return question;
  }

  /**
   * Reads a kind.
   *
   * @param text its key in any case, with blanks or underscores for hyphens
   * @return the kind
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static TastingKind parse(String text) {
    String key = text.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    Optional<TastingKind> found =
        Arrays.stream(values()).filter(kind -> kind.key.equals(key)).findFirst();
    return found.orElseThrow(
        () ->
            Faults.bad(
                Quoting.quote(text) + " is not a kind of tasting.",
                "Use triangle, preference, ranking, liking or just-about-right."));
  }

  /** Whether the tasters score each sample. */
  boolean isScored() {
    return this == LIKING || this == JUST_ABOUT_RIGHT;
  }
}
