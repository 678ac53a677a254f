package io.ovenmark.formula;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Slug;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A formula: what to weigh and what to do. Equal when everything is, unknown fields included.
 *
 * @param name its name for people, any script, not blank
 * @param description a sentence or two; empty when there is none
 * @param goal slug of the goal it is developed towards; empty when there is none
 * @param reference slug of the conventional formula it was rebuilt from; empty when there is none
 * @param lines the ingredients in order of use, ids unique
 * @param method the steps in order
 * @param bake the stages in the oven in order, ids unique
 * @param yield what a batch gives
 * @param storage how to keep what was baked; empty when not stated
 * @param extras unknown fields
 */
public record Formula(
    String name,
    Optional<String> description,
    Optional<String> goal,
    Optional<String> reference,
    List<Line> lines,
    List<String> method,
    List<BakeSetting> bake,
    Yield yield,
    Optional<String> storage,
    Extras extras) {

  /** Copies the lists and checks that it is named and that ids are slugs and unique. */
  public Formula {
    requireNonNull(name, "name");
    requireNonNull(description, "description");
    requireNonNull(goal, "goal");
    requireNonNull(reference, "reference");
    lines = List.copyOf(lines);
    method = List.copyOf(method);
    bake = List.copyOf(bake);
    requireNonNull(yield, "yield");
    requireNonNull(storage, "storage");
    requireNonNull(extras, "extras");
    if (name.isBlank()) {
      throw new IllegalArgumentException("A formula needs a name.\nGive it one.");
    }
    goal.ifPresent(Slug::check);
    reference.ifPresent(Slug::check);
    unique(lines.stream().map(Line::id).toList(), "line");
    unique(bake.stream().map(BakeSetting::id).toList(), "bake setting");
  }

  private static void unique(List<String> ids, String what) {
    Set<String> seen = new HashSet<>();
    for (String id : ids) {
      if (!seen.add(id)) {
        throw new IllegalArgumentException(
            "The " + what + " id \"" + id + "\" stands twice.\nGive one of them another id.");
      }
    }
  }

  /**
   * A formula with a name and nothing else.
   *
   * @param name the name
   * @return the formula
   */
  public static Formula named(String name) {
    return new Formula(
        name,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        Yield.UNSTATED,
        Optional.empty(),
        Extras.NONE);
  }

  /**
   * Finds a line.
   *
   * @param id the line's id
   * @return the line, empty when there is none
   */
  public Optional<Line> line(String id) {
    for (Line line : lines) {
      if (line.id().equals(id)) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  /**
   * Finds a stage in the oven.
   *
   * @param id the stage's id
   * @return the stage, empty when there is none
   */
  public Optional<BakeSetting> bakeSetting(String id) {
    return bake.stream().filter(setting -> setting.id().equals(id)).findFirst();
  }

  /**
   * A line id for a food that is not taken yet: the food's slug, else with {@code -2}, {@code -3},
   * shortened where it would be too long.
   *
   * @param food slug of the food
   * @return a free id
   */
  public String freeLineId(String food) {
    return FreeId.of(food, id -> line(id).isPresent());
  }

  /**
   * The same formula under another name.
   *
   * @param next the name
   * @return a new formula
   */
  public Formula withName(String next) {
    return new Formula(
        next, description, goal, reference, lines, method, bake, yield, storage, extras);
  }

  /**
   * The same formula with another description.
   *
   * @param next the description, empty for none
   * @return a new formula
   */
  public Formula withDescription(Optional<String> next) {
    return new Formula(
        name, next, goal, reference, lines, method, bake, yield, storage, extras);
  }

  /**
   * The same formula towards another goal.
   *
   * @param next slug of the goal, empty for none
   * @return a new formula
   */
  public Formula withGoal(Optional<String> next) {
    return new Formula(
        name, description, next, reference, lines, method, bake, yield, storage, extras);
  }

  /**
   * The same formula with another reference.
   *
   * @param next slug of the conventional formula, empty for none
   * @return a new formula
   */
  public Formula withReference(Optional<String> next) {
    return new Formula(
        name, description, goal, next, lines, method, bake, yield, storage, extras);
  }

  /**
   * The same formula with other lines.
   *
   * @param next the lines
   * @return a new formula
   */
  public Formula withLines(List<Line> next) {
    return new Formula(
        name, description, goal, reference, next, method, bake, yield, storage, extras);
  }

  /**
   * The same formula with another method.
   *
   * @param next the steps
   * @return a new formula
   */
  public Formula withMethod(List<String> next) {
    return new Formula(
        name, description, goal, reference, lines, next, bake, yield, storage, extras);
  }

  /**
   * The same formula with other stages in the oven.
   *
   * @param next the stages
   * @return a new formula
   */
  public Formula withBake(List<BakeSetting> next) {
    return new Formula(
        name, description, goal, reference, lines, method, next, yield, storage, extras);
  }

  /**
   * The same formula with another yield.
   *
   * @param next the yield
   * @return a new formula
   */
  public Formula withYield(Yield next) {
    return new Formula(
        name, description, goal, reference, lines, method, bake, next, storage, extras);
  }

  /**
   * The same formula with other words on how to keep what was baked.
   *
   * @param next the words, empty for none
   * @return a new formula
   */
  public Formula withStorage(Optional<String> next) {
    return new Formula(
        name, description, goal, reference, lines, method, bake, yield, next, extras);
  }

  /**
   * The same formula with other unknown fields.
   *
   * @param next the fields
   * @return a new formula
   */
  public Formula withExtras(Extras next) {
    return new Formula(
        name, description, goal, reference, lines, method, bake, yield, storage, next);
  }
}
