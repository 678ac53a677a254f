package io.ovenmark.story;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Slug;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The story of a line of history as somebody chose to tell it. What is worked out (figures, what
 * changed, what was seen) is not in it, so that it never goes stale.
 *
 * @param formula slug of the formula
 * @param variant name of the variant; empty for the main line
 * @param title its title; empty for the formula's name
 * @param by who tells it; empty when nobody shall be named
 * @param opening the words before the first step; empty for none
 * @param closing the words after the last step; empty for none
 * @param figures keys of the figures whose way is drawn, at most {@value #MOST_FIGURES}; empty for
 *     those of the goal and of the bakes
 * @param steps what is told, in the order of the revisions, each revision once, at most
 *     {@value #MOST_STEPS}; empty for every bake that taught something
 * @param extras unknown fields
 */
public record StoryPlan(
    String formula,
    Optional<String> variant,
    Optional<String> title,
    Optional<String> by,
    Optional<String> opening,
    Optional<String> closing,
    List<String> figures,
    List<Step> steps,
    Extras extras) {
  /** The most steps. */
  public static final int MOST_STEPS = 40;

  /** The most figures whose way is drawn. */
  public static final int MOST_FIGURES = 6;

  /** The most signs of a title or heading. */
  public static final int LONGEST_LINE = 120;

  /** The most signs of any other text. */
  public static final int LONGEST_TEXT = 2000;

  /** What a step says instead of a photo's path when it shall have none. */
  public static final String NO_PHOTO = "none";

  /**
   * A revision that is told of.
   *
   * @param revision its number along the line, 1 or more
   * @param heading its heading; empty for the revision's note
   * @param words what the author says of it; empty for nothing
   * @param photo path of its photo, or {@value #NO_PHOTO}; empty for one of its bakes
   * @param figure key of the figure that is shown to have moved; empty for the most telling one
   * @param extras unknown fields
   */
  public record Step(
      int revision,
      Optional<String> heading,
      Optional<String> words,
      Optional<String> photo,
      Optional<String> figure,
      Extras extras) {
    /** Checks and takes blanks away. */
    public Step {
      if (revision < 1) {
        throw new IllegalArgumentException(
            "Revisions are numbered from 1.\nWrite the number of a revision.");
      }
      heading = said("The heading", heading, LONGEST_LINE);
      words = said("The text of a step", words, LONGEST_TEXT);
      photo = said("The photo", photo, LONGEST_TEXT);
      figure = said("The figure", figure, LONGEST_LINE);
      requireNonNull(extras, "extras");
    }

    /**
     * A revision told as it is.
     *
     * @param revision its number, 1 or more
     * @return a step without own words
     */
    public static Step of(int revision) {
      return new Step(
          revision,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Extras.NONE);
    }
  }

  /** Checks, copies and takes blanks away. */
  public StoryPlan {
    Slug.check(formula);
    variant.ifPresent(Slug::check);
    title = said("The title", title, LONGEST_LINE);
    by = said("The name of who tells it", by, LONGEST_LINE);
    opening = said("The opening", opening, LONGEST_TEXT);
    closing = said("The closing", closing, LONGEST_TEXT);
    figures = List.copyOf(figures);
    steps = List.copyOf(steps);
    requireNonNull(extras, "extras");
    if (figures.size() > MOST_FIGURES) {
      throw new IllegalArgumentException(
          "A story draws at most " + MOST_FIGURES + " figures.\nTake some out.");
    }
    if (steps.size() > MOST_STEPS) {
      throw new IllegalArgumentException(
          "A story has at most " + MOST_STEPS + " steps.\nTake some out.");
    }
    int last = 0;
    Set<String> seen = new HashSet<>();
    for (Step step : steps) {
      if (step.revision <= last) {
        throw new IllegalArgumentException(
            "Revision " + step.revision + " stands after revision " + last
                + ".\nPut the steps in the order of their revisions, each once.");
      }
      last = step.revision;
    }
    for (String figure : figures) {
      if (!seen.add(figure)) {
        throw new IllegalArgumentException(
            "The figure \"" + figure + "\" stands twice.\nTake one out.");
      }
    }
  }

  /**
   * A story in which nothing was chosen yet.
   *
   * @param formula slug of the formula
   * @param variant name of the variant; empty for the main line
   * @return the plan
   */
  public static StoryPlan untold(String formula, Optional<String> variant) {
    return new StoryPlan(
        formula,
        variant,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        Extras.NONE);
  }

  /**
   * The same story with other steps.
   *
   * @param next the steps
   * @return a new plan
   */
  public StoryPlan withSteps(List<Step> next) {
    return new StoryPlan(
        formula, variant, title, by, opening, closing, figures, next, extras);
  }

  /**
   * Where it is kept in the notebook, on the main line of history.
   *
   * @return {@code stories/<formula>.json}, of a variant {@code stories/<formula>/<variant>.json}
   */
  public String path() {
    return "stories/" + formula + variant.map(name -> "/" + name).orElse("") + ".json";
  }

  private static Optional<String> said(String what, Optional<String> text, int most) {
    Optional<String> said = text.map(String::strip).filter(each -> !each.isEmpty());
    if (said.isPresent() && said.get().codePointCount(0, said.get().length()) > most) {
      throw new IllegalArgumentException(
          what + " is longer than " + most + " signs.\nShorten it.");
    }
    return said;
  }
}
