package io.ovenmark.publish.story;

import io.ovenmark.publish.card.Card;
import java.util.List;
import java.util.Optional;

/**
 * A story before it is laid out: words and numbers as they are published. What is not known says
 * so.
 *
 * @param title its title
 * @param name the formula's name
 * @param by who tells it; empty when nobody is named
 * @param span such as {@code 13 revisions and 12 bakes, 2026-06-02 to 2026-10-05}
 * @param opening the words before the first step; empty for none
 * @param closing the words after the last step; empty for none
 * @param cover the picture of the title; empty when there is none
 * @param steps what is told, oldest first
 * @param arcs the ways of the key figures
 * @param card the card of the last step's revision, without a photo
 */
public record Story(
    String title,
    String name,
    Optional<String> by,
    String span,
    Optional<String> opening,
    Optional<String> closing,
    Optional<StoryPhoto> cover,
    List<Step> steps,
    List<Arc> arcs,
    Card card) {
  /** Copies the lists. */
  public Story {
    steps = List.copyOf(steps);
    arcs = List.copyOf(arcs);
  }

  /**
   * A revision that is told of.
   *
   * @param number its place in the story, from 1
   * @param address the revision, such as {@code seeded-lupin-bun@5}
   * @param date its day, as {@code 2026-07-15}
   * @param heading its heading
   * @param words what the author says; empty for nothing
   * @param changed what changed since the step before, in sentences; empty in the first step
   * @param credit what may be credited to what, where more than one thing changed; empty else
   * @param seen what was measured, seen and tasted, in sentences; says so when it was not baked
   * @param move the figure that moved; empty in the first step and when none is known on both sides
   * @param photo its picture; empty when there is none
   */
  public record Step(
      int number,
      String address,
      String date,
      String heading,
      Optional<String> words,
      List<String> changed,
      Optional<String> credit,
      List<String> seen,
      Optional<Move> move,
      Optional<StoryPhoto> photo) {
    /** Copies the lists. */
    public Step {
      changed = List.copyOf(changed);
      seen = List.copyOf(seen);
    }
  }

  /**
   * The step before another.
   *
   * @param step a step of this story
   * @return the one before it; empty for the first
   */
  public Optional<Step> before(Step step) {
    return step.number() == 1 ? Optional.empty() : Optional.of(steps.get(step.number() - 2));
  }
}
