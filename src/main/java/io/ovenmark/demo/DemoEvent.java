package io.ovenmark.demo;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.goal.Goal;
import io.ovenmark.pantry.Food;
import io.ovenmark.tasting.Tasting;
import java.time.OffsetDateTime;
import java.util.List;

/** Something that happened on the bench and becomes one step of the notebook's history. */
public sealed interface DemoEvent {

  /**
   * A person of the bench.
   *
   * @param name first name
   * @param email address for commits, in the reserved domain {@code example}
   */
  record Person(String name, String email) {
    /** Checks that nothing is null. */
    public Person {
      requireNonNull(name, "name");
      requireNonNull(email, "email");
    }
  }

  /**
   * When, by whom and why.
   *
   * @param time when
   * @param author by whom
   * @param note the note: a first line, then possibly an empty line and more
   */
  record Moment(OffsetDateTime time, Person author, String note) {
    /** Checks that nothing is null. */
    public Moment {
      requireNonNull(time, "time");
      requireNonNull(author, "author");
      requireNonNull(note, "note");
    }
  }

  /**
   * When, by whom and why.
   *
   * @return the moment
   */
  Moment at();

  /**
   * A goal is written down.
   *
   * @param at when, by whom, why
   * @param goal the goal
   */
  record GoalSet(Moment at, Goal goal) implements DemoEvent {}

  /**
   * A food of the main line's pantry is entered or replaced, as from a package label. Figures of
   * formulas that use it move without a formula changing.
   *
   * @param at when, by whom, why
   * @param food the food
   */
  record FoodEntered(Moment at, Food food) implements DemoEvent {}

  /**
   * A formula begins.
   *
   * @param at when, by whom, why
   * @param address its first revision
   * @param formula the formula
   */
  record FormulaBegun(Moment at, DemoAddress address, Formula formula) implements DemoEvent {}

  /**
   * A formula gets its next revision, on the main line or on a variant.
   *
   * @param at when, by whom, why
   * @param address the revision that comes to be
   * @param formula the formula
   */
  record FormulaRevised(Moment at, DemoAddress address, Formula formula) implements DemoEvent {}

  /**
   * A variant is opened. This alone makes no revision: the variant's first own revision follows and
   * takes the goal.
   *
   * @param at when, by whom, why
   * @param from the revision that it forks from
   * @param name name of the variant
   * @param goal slug of the goal that it is meant for
   */
  record VariantOpened(Moment at, DemoAddress from, String name, String goal)
      implements DemoEvent {}

  /**
   * Improvements of the main line are carried into a variant.
   *
   * @param at when, by whom, why
   * @param from the revision of the main line that is carried
   * @param address the revision of the variant that comes to be
   * @param formula what the merge gives
   */
  record ImprovementsCarried(Moment at, DemoAddress from, DemoAddress address, Formula formula)
      implements DemoEvent {}

  /**
   * An earlier revision is restored as a new one.
   *
   * @param at when, by whom, why
   * @param from the earlier revision
   * @param address the revision that comes to be
   * @param formula the formula, the same as the earlier one
   */
  record RevisionRestored(Moment at, DemoAddress from, DemoAddress address, Formula formula)
      implements DemoEvent {}

  /**
   * A bake is recorded.
   *
   * @param at when, by whom, why
   * @param address the revision that was baked
   * @param bake the bake with the Git blob id of the formula's canonical file and with marks on its
   *     photos
   * @param pictures how to draw the photos, in the bake's order
   */
  record BakeRecorded(Moment at, DemoAddress address, Bake bake, List<DemoPicture> pictures)
      implements DemoEvent {
    /** Copies the list. */
    public BakeRecorded {
      pictures = List.copyOf(pictures);
    }
  }

  /**
   * A tasting is held.
   *
   * @param at when, by whom, why
   * @param tasting the tasting with the Git blob ids of its samples' canonical files
   */
  record TastingHeld(Moment at, Tasting tasting) implements DemoEvent {}

  /**
   * A revision is published.
   *
   * @param at when, by whom, why
   * @param address the revision
   */
  record RevisionPublished(Moment at, DemoAddress address) implements DemoEvent {}
}
