package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.VariantWriter;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.Allergen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * How a variant would stand with the main line's improvements carried over.
 *
 * @param goal its goal, if it has one
 * @param cautions what it would contain that it does not contain now
 */
record CarryFigures(Optional<Views.GoalView> goal, List<String> cautions) {
  CarryFigures {
    cautions = List.copyOf(cautions);
  }

  /**
   * Works the merged formula out.
   *
   * @param desk the desk
   * @param newest the variant's newest revision
   * @param merged what would become of its formula
   * @return goal and cautions; nothing of both when a file that they rest on is damaged
   */
  static CarryFigures of(Desk desk, Revision newest, Formula merged) {
    Notebook notebook = desk.notebook();
    Contents base = new VariantWriter(notebook).common(newest.address());
    Contents ours = notebook.latest(newest.address());
    Contents theirs = notebook.latest();
    try {
      Desk.Sheet after =
          desk.draft(
              merged,
              slug -> carried(slug, base::food, ours::food, theirs::food),
              slug -> carried(slug, base::goal, ours::goal, theirs::goal),
              newest.address());
      Desk.Sheet before = desk.sheet(newest, List.of());
      List<String> cautions = new ArrayList<>();
      Set<Allergen> added = new TreeSet<>(after.worksheet().allergens());
      added.removeAll(before.worksheet().allergens());
      added.forEach(
          each ->
              cautions.add(
                  "It would contain " + each.key() + ", which the variant does not contain now."));
      List<String> unknown = new ArrayList<>(after.worksheet().allergensUnknownIn());
      unknown.removeAll(before.worksheet().allergensUnknownIn());
      if (!unknown.isEmpty()) {
        cautions.add(
            "Allergens are unknown in "
                + String.join(", ", unknown)
                + ": read the packages before it is served.");
      }
      return new CarryFigures(
          after.goal().map(check -> GoalViews.view(check, desk.units())), cautions);
    } catch (UnreadableException | StoreException e) {
      if (Refusals.problems(e).isEmpty()) {
        throw e;
      }
      return new CarryFigures(Optional.empty(), List.of());
    }
  }

  /** The main line's file, unless the variant has one of its own. */
  private static <T> Optional<T> carried(
      String slug,
      Function<String, Optional<T>> base,
      Function<String, Optional<T>> ours,
      Function<String, Optional<T>> theirs) {
    Optional<T> own = ours.apply(slug);
    return own.equals(base.apply(slug)) ? theirs.apply(slug) : own;
  }
}
