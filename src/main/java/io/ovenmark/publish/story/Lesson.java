package io.ovenmark.publish.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the bakes of a revision taught, compared with those of the revision that was baked before
 * it.
 *
 * @param revision the revision's number along its line
 * @param first whether it is the first that was baked
 * @param findings how many findings came or went
 * @param move the measured figure that shows most; empty when none was known on both sides
 * @param verdict whether somebody noted a verdict of a piece
 */
public record Lesson(
    int revision, boolean first, int findings, Optional<Move> move, boolean verdict) {
  /** How many steps are proposed at most: as many as somebody reads in one go. */
  public static final int MOST_PROPOSED = 12;

  private static final double NOTICED = 1;

  /**
   * Whether it taught something: it was the first bake, a finding came or went, a figure moved by
   * as much as is noticed at the bench, or somebody wrote a verdict.
   *
   * @return true when it did
   */
  public boolean taught() {
    return first || findings > 0 || verdict || strength() >= NOTICED;
  }

  /**
   * What it taught, in few words.
   *
   * @return such as {@code 3 findings changed, liking moved}; empty when it taught nothing
   */
  public String why() {
    List<String> parts = new ArrayList<>();
    if (first) {
      parts.add("the first bake");
    }
    if (findings > 0) {
      parts.add(findings == 1 ? "1 finding changed" : findings + " findings changed");
    }
    move.filter(each -> each.strength() >= NOTICED)
        .ifPresent(each -> parts.add(each.label().split(",")[0] + " moved"));
    if (verdict) {
      parts.add("a verdict was noted");
    }
    return String.join(", ", parts);
  }

  private double strength() {
    return move.map(Move::strength).orElse(0.0);
  }

  private double weight() {
    return strength() + 2 * findings + (verdict ? 1 : 0);
  }

  /**
   * The revisions that are proposed for a story.
   *
   * @param lessons those of all baked revisions, in their order
   * @return numbers in rising order: each that taught something; of more than {@value
   *     #MOST_PROPOSED} the first, the last, and those between that taught most
   */
  public static List<Integer> proposed(List<Lesson> lessons) {
    List<Lesson> taught = lessons.stream().filter(Lesson::taught).toList();
    if (taught.size() <= MOST_PROPOSED) {
      return taught.stream().map(Lesson::revision).toList();
    }
    List<Lesson> chosen =
        new ArrayList<>(
            taught.subList(1, taught.size() - 1).stream()
                .sorted(
                    Comparator.comparingDouble(Lesson::weight)
                        .reversed()
                        .thenComparing(Lesson::revision))
                .limit(MOST_PROPOSED - 2)
                .toList());
    chosen.add(taught.get(0));
    chosen.add(taught.get(taught.size() - 1));
    return chosen.stream().map(Lesson::revision).sorted().toList();
  }
}
