package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.store.StoreException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The newest formula of every line of history, to find out who uses a food or a goal. */
final class LinesInUse {
  private final List<Use> uses = new ArrayList<>();

  /** A line of history and its newest formula; those that cannot be read are left out. */
  record Use(Address line, Formula formula) {}

  LinesInUse(Notebook notebook) {
    Contents main = notebook.latest();
    for (String slug : main.formulas()) {
      add(Address.latest(slug, Optional.empty()), main);
      for (String variant : notebook.variants(slug)) {
        Address line = Address.latest(slug, Optional.of(variant));
        add(line, notebook.latest(line));
      }
    }
  }

  /** Adds what can be read; what is wrong is told where the formula itself is shown. */
  private void add(Address line, Contents contents) {
    try {
      contents.formula(line.formula()).ifPresent(found -> uses.add(new Use(line, found)));
    } catch (UnreadableException | StoreException e) {
      Refusals.problemsOf(e);
    }
  }

  /** Those that fit, main lines by short name, each followed by its variants. */
  List<Use> where(Predicate<Formula> fits) {
    return uses.stream().filter(use -> fits.test(use.formula())).toList();
  }

  /** All of them. */
  List<Use> all() {
    return List.copyOf(uses);
  }

  /** Those with a food. */
  List<Use> using(String food) {
    return where(f -> f.lines().stream().anyMatch(line -> line.food().equals(food)));
  }

  /** The lines of history with a food. */
  List<String> withFood(String food) {
    return using(food).stream().map(use -> use.line().line()).toList();
  }

  /** Those that state a goal. */
  List<Use> stating(String goal) {
    return where(f -> f.goal().equals(Optional.of(goal)));
  }

  /** The lines of history that state a goal. */
  List<String> withGoal(String goal) {
    return stating(goal).stream().map(use -> use.line().line()).toList();
  }
}
