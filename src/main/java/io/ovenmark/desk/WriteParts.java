package io.ovenmark.desk;

import io.ovenmark.change.Change;
import io.ovenmark.change.ChangeSentences;
import io.ovenmark.change.Conflict;
import io.ovenmark.change.FormulaDiff;
import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Moved;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.Unknown;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The parts that the records of what was committed are made of. */
final class WriteParts {
  private WriteParts() {}

  static WriteViews.RevisionView revision(Revision revision) {
    return new WriteViews.RevisionView(
        revision.address().toString(),
        revision.address().formula(),
        revision.address().variant().orElse(null),
        revision.number(),
        revision.commit().hex(),
        revision.blob().hex(),
        revision.time().toString(),
        revision.author().name(),
        revision.note());
  }

  static List<WriteViews.ConflictView> conflicts(List<Conflict> conflicts) {
    return conflicts.stream()
        .map(
            each ->
                new WriteViews.ConflictView(
                    each.path(),
                    each.sentence(),
                    each.base().orElse(null),
                    each.ours().orElse(null),
                    each.theirs().orElse(null)))
        .toList();
  }

  /** Refuses a goal that none of these contents has; the main line's come along on commit. */
  static void requireGoal(Formula formula, Contents main, Contents... others) {
    boolean known =
        formula.goal().isEmpty()
            || main.goal(formula.goal().get()).isPresent()
            || Arrays.stream(others).anyMatch(at -> at.goal(formula.goal().get()).isPresent());
    if (known) {
      return;
    }
    String goal = formula.goal().get();
    List<String> goals = main.goals();
    throw new Refusal(
        Refusal.Reason.NOT_FOUND,
        "goal",
        "There is no goal \"" + goal + "\" in this notebook.",
        (goals.isEmpty() ? "" : "Its goals are " + String.join(", ", goals) + ". ")
            + "Add one with: ovenmark goal add "
            + goal);
  }

  /** Refuses when an address means another revision by now than the one that was looked at. */
  static void requireSeen(Revision now, Optional<String> seen) {
    if (seen.filter(commit -> !commit.equals(now.commit().hex())).isPresent()) {
      throw Moved.to(now);
    }
  }

  /** The line of history that an address stands on. */
  static Address line(Address address) {
    return Address.latest(address.formula(), address.variant());
  }

  /** What a person should know about a revision's lines, and what its method names besides them. */
  private static List<String> remarks(Desk desk, Optional<Revision> before, Revision revision) {
    Worksheet sheet = desk.sheet(revision, List.of()).worksheet();
    List<String> remarks = new ArrayList<>();
    for (Unknown unknown : sheet.unknowns()) {
      if (unknown.nutrient().equals("mass")) {
        remarks.add(
            "How much "
                + unknown.line().replace('-', ' ')
                + " weighs is not known: "
                + unknown.why()
                + ".");
      }
    }
    Optional<Worksheet> old =
        before.map(earlier -> desk.sheet(earlier, List.of()).worksheet());
    remarks.addAll(UnweighedFoods.newIn(desk, old, sheet));
    return List.copyOf(remarks);
  }

  /**
   * What a revision changed.
   *
   * @param changes in words
   * @param comparison the revision before against this one, or null when there is none
   * @param remarks why nothing can be said, and what should be known about the lines
   */
  record Changed(
      List<Views.ChangeView> changes,
      ComparisonViews.ComparisonView comparison,
      List<String> remarks) {}

  /** What a revision that was just committed changed; a damaged file before it is no obstacle. */
  static Changed changed(Desk desk, Revision revision) {
    return changed(desk, desk.notebook().before(revision), revision);
  }

  /** The same, against another revision than the one before it. */
  static Changed changed(Desk desk, Optional<Revision> before, Revision revision) {
    try {
      if (before.isEmpty()) {
        return new Changed(List.of(), null, remarks(desk, before, revision));
      }
      List<Views.ChangeView> changes =
          changes(
              desk.units(),
              desk.notebook().formula(before.get()),
              desk.notebook().at(before.get().commit()),
              desk.notebook().formula(revision),
              desk.notebook().at(revision.commit()));
      ComparisonViews.ComparisonView comparison =
          new CompareRevisions(desk).call(before.get().address(), revision.address());
      return new Changed(changes, comparison, remarks(desk, before, revision));
    } catch (UnreadableException | StoreException e) {
      return new Changed(
          List.of(),
          null,
          List.of(
              "A file of "
                  + before.orElse(revision).address()
                  + " cannot be read, so nothing is said about what changed."));
    }
  }

  /** What differs between two formulas, in words, with the names of the foods. */
  static List<Views.ChangeView> changes(
      ShownUnits units,
      Formula from,
      Contents fromFoods,
      Formula to,
      Contents toFoods) {
    ChangeSentences sentences =
        new ChangeSentences(
            id ->
                to.line(id)
                    .or(() -> from.line(id))
                    .map(found -> name(found.food(), toFoods, fromFoods))
                    .orElse(id),
            food -> name(food, toFoods, fromFoods),
            units);
    return FormulaDiff.between(from, to).stream()
        .map(change -> new Views.ChangeView(kind(change), sentences.of(change)))
        .toList();
  }

  private static String name(String food, Contents now, Contents old) {
    return now.food(food).or(() -> old.food(food)).map(Food::name).orElse(food.replace('-', ' '));
  }

  private static String kind(Change change) {
    return change
        .getClass()
        .getSimpleName()
        .replaceAll("([a-z])([A-Z])", "$1_$2")
        .toLowerCase(Locale.ROOT);
  }
}
