package io.ovenmark.desk;

import java.util.List;
import java.util.Map;

/**
 * A goal as a form says it, in texts that may still be half typed.
 *
 * @param goal its short name; null or empty for a new goal that is named after its name
 * @param seen the commit that the form's facts were read at; null for a new goal
 * @param name its name for people
 * @param note anything else
 * @param limits limits on figures
 * @param withoutAllergens allergens it must be free of, {@code gluten} included
 * @param withoutFoods short names of foods it must not contain
 * @param subtract shares that net carbohydrate leaves out, by {@code fibre}, {@code polyols} and
 *     {@code allulose}; null when it follows the notebook
 * @param variants whether variants whose copies say the same are changed too
 * @param picks {@code mine} or {@code theirs} by name of a fact that both sides changed
 * @param answered the commit of the other side that the picks answer; null when there are none
 */
public record GoalForm(
    String goal,
    String seen,
    String name,
    String note,
    List<Limit> limits,
    List<String> withoutAllergens,
    List<String> withoutFoods,
    Map<String, String> subtract,
    Boolean variants,
    Map<String, String> picks,
    String answered) {
  /** Copies, and takes what is missing as empty. */
  public GoalForm {
    goal = goal == null ? "" : goal.strip();
    name = name == null ? "" : name.strip();
    note = note == null ? "" : note.strip();
    limits = limits == null ? List.of() : List.copyOf(limits);
    withoutAllergens = withoutAllergens == null ? List.of() : List.copyOf(withoutAllergens);
    withoutFoods = withoutFoods == null ? List.of() : List.copyOf(withoutFoods);
    subtract = subtract == null ? null : Map.copyOf(subtract);
    variants = variants == null ? Boolean.TRUE : variants;
    picks = picks == null ? Map.of() : Map.copyOf(picks);
  }

  /**
   * A limit on a figure.
   *
   * @param figure key of the figure
   * @param per key of what it is stated for; without meaning for a figure of the formula
   * @param atLeast least value; empty for none
   * @param atMost greatest value; empty for none
   */
  public record Limit(String figure, String per, String atLeast, String atMost) {
    /** Takes what is missing as empty. */
    public Limit {
      figure = figure == null ? "" : figure;
      per = per == null ? "" : per;
      atLeast = atLeast == null ? "" : atLeast.strip();
      atMost = atMost == null ? "" : atMost.strip();
    }
  }
}
