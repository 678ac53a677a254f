package io.ovenmark.desk;

import java.util.List;
import java.util.Map;

/**
 * A food as a form says it, in texts that may still be half typed.
 *
 * @param food its short name; null or empty for a new food that is named after its name
 * @param line the variant whose own copy it is about; null for the main line, or for the variant
 *     that alone keeps it
 * @param seen the commit that the form's facts were read at; null for a new food
 * @param facts facts by name, as {@link io.ovenmark.pantry.FoodFacts} words them; what is not named
 *     stays
 * @param weights what household measures weigh, all of them; null when they stay
 * @param label figures of a package label in the place of the figures per 100 g; null for none
 * @param variants whether variants whose copies say the same are changed too
 * @param picks {@code mine} or {@code theirs} by name of a fact that both sides changed
 * @param answered the commit of the other side that the picks answer; null when there are none
 */
public record FoodForm(
    String food,
    String line,
    String seen,
    Map<String, String> facts,
    List<Weight> weights,
    Label label,
    Boolean variants,
    Map<String, String> picks,
    String answered) {
  /** Copies, and takes what is missing as empty. */
  public FoodForm {
    food = food == null ? "" : food.strip();
    facts = facts == null ? Map.of() : Map.copyOf(facts);
    weights = weights == null ? null : List.copyOf(weights);
    variants = variants == null ? Boolean.TRUE : variants;
    picks = picks == null ? Map.of() : Map.copyOf(picks);
  }

  /**
   * What a household measure weighs.
   *
   * @param measure its name
   * @param grams such as {@code 9 g}
   */
  public record Weight(String measure, String grams) {
    /** Takes what is missing as empty. */
    public Weight {
      measure = measure == null ? "" : measure.strip();
      grams = grams == null ? "" : grams.strip();
    }
  }

  /**
   * What stands on a package.
   *
   * @param panel {@code US} or {@code EU}
   * @param serving what the figures are for, such as {@code 30 g}; empty for 100 g
   * @param figures as printed, by key of the figure; empty for what is not printed
   * @param keepUnstated whether figures that the label does not state stay as they were; else they
   *     become unknown
   */
  public record Label(
      String panel, String serving, Map<String, String> figures, Boolean keepUnstated) {
    /** Copies, and takes what is missing as empty. */
    public Label {
      panel = panel == null ? "" : panel;
      serving = serving == null ? "" : serving.strip();
      figures = figures == null ? Map.of() : Map.copyOf(figures);
      keepUnstated = keepUnstated == null ? Boolean.FALSE : keepUnstated;
    }
  }
}
