package io.ovenmark.desk;

import io.ovenmark.json.Extras;
import io.ovenmark.notebook.Address;
import io.ovenmark.story.StoryPlan;
import java.util.List;
import java.util.Optional;

/**
 * What somebody chose for a story, as it is typed or sent. Every part may be null or blank.
 *
 * @param title its title; null for the formula's name
 * @param by who tells it; null for nobody
 * @param opening the words before the first step
 * @param closing the words after the last step
 * @param figures keys of the figures whose way is drawn; null or empty for the usual ones
 * @param steps what is told; null or empty for every bake that taught something
 */
public record StoryOrder(
    String title,
    String by,
    String opening,
    String closing,
    List<String> figures,
    List<StepOrder> steps) {
  /**
   * A step.
   *
   * @param revision number along the line of history
   * @param heading its heading; null for the revision's note
   * @param words what the author says
   * @param photo path of a photo of the formula, or {@code none}; null for one of its bakes
   * @param figure key of the figure that moved; null for the most telling one
   */
  public record StepOrder(
      int revision, String heading, String words, String photo, String figure) {}

  /** Copies the lists; null becomes empty. */
  public StoryOrder {
    figures = figures == null ? List.of() : List.copyOf(figures);
    steps = steps == null ? List.of() : List.copyOf(steps);
  }

  /**
   * As a plan for a line of history.
   *
   * @param line the formula or variant
   * @param extras fields of the kept story that this program does not know
   * @return the plan
   * @throws io.ovenmark.notebook.Refusal when a text is too long or steps are out of order
   */
  StoryPlan plan(Address line, Extras extras) {
    return Asked.read(
        "story",
        () ->
            new StoryPlan(
                line.formula(),
                line.variant(),
                Optional.ofNullable(title),
                Optional.ofNullable(by),
                Optional.ofNullable(opening),
                Optional.ofNullable(closing),
                figures,
                steps.stream().map(StoryOrder::step).toList(),
                extras));
  }

  private static StoryPlan.Step step(StepOrder step) {
    return new StoryPlan.Step(
        step.revision(),
        Optional.ofNullable(step.heading()),
        Optional.ofNullable(step.words()),
        Optional.ofNullable(step.photo()),
        Optional.ofNullable(step.figure()),
        Extras.NONE);
  }
}
