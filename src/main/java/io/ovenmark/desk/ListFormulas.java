package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.NotebookSettings;
import io.ovenmark.notebook.Revision;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lists the formulas of a notebook with their variants. A formula whose file is damaged is listed
 * with what is wrong; the others are not affected.
 */
public final class ListFormulas {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ListFormulas(Desk desk) {
    this.desk = desk;
  }

  /**
   * Lists them.
   *
   * @return the formulas by short name
   */
  public Views.FormulaList call() {
    Notebook notebook = desk.notebook();
    Contents contents = notebook.latest();
    NotebookSettings settings = contents.settings();
    Set<String> edited = notebook.handEdits().keySet();
    List<Views.FormulaEntry> entries = new ArrayList<>();
    for (String slug : contents.formulas()) {
      notebook
          .newestIfAny(Address.latest(slug, Optional.empty()))
          .ifPresent(newest -> entries.add(entry(slug, newest, edited.contains(slug))));
    }
    return new Views.FormulaList(
        settings.title(),
        notebook.folder().toString(),
        settings.temperatureUnit(),
        settings.massUnit(),
        entries);
  }

  private Views.FormulaEntry entry(String slug, Revision newest, boolean edited) {
    Notebook notebook = desk.notebook();
    Address line = Address.latest(slug, Optional.empty());
    List<Bake> bakes = notebook.bakes(slug);
    Desk.Attempt attempt = desk.attempt(line, newest, bakes);
    List<Views.ProblemView> problems = new ArrayList<>(attempt.problems());
    problems.addAll(Refusals.views(notebook.bakeProblems(slug)));
    Optional<Formula> formula = desk.readable(newest);
    Optional<Worksheet> worksheet = attempt.sheet().map(Desk.Sheet::worksheet);
    Optional<GoalCheck> goal = attempt.sheet().flatMap(Desk.Sheet::goal);
    return new Views.FormulaEntry(
        slug,
        formula.map(Formula::name).orElse(slug),
        formula.flatMap(Formula::goal).orElse(null),
        goal.map(check -> check.goal().name()).orElse(null),
        goal.map(check -> GoalViews.met(check.outcome())).orElse(null),
        formula.flatMap(Formula::reference).orElse(null),
        newest.number(),
        newest.address().toString(),
        Json.time(newest.time()),
        newest.note(),
        worksheet.map(ShowFormula::ratios).orElse(null),
        worksheet.map(w -> FigureSet.of(w.macros().get(Basis.PIECE))).orElse(null),
        bakes.size(),
        variants(slug, bakes),
        edited,
        problems);
  }

  List<Views.VariantEntry> variants(String slug, List<Bake> bakes) {
    List<Views.VariantEntry> entries = new ArrayList<>();
    for (String name : desk.notebook().variants(slug)) {
      Address line = Address.latest(slug, Optional.of(name));
      Optional<Revision> found = desk.notebook().newestIfAny(line);
      if (found.isEmpty()) {
        continue;
      }
      Revision newest = found.get();
      Optional<GoalCheck> goal =
          desk.attempt(line, newest, bakes).sheet().flatMap(Desk.Sheet::goal);
      entries.add(
          new Views.VariantEntry(
              name,
              newest.address().toString(),
              desk.notebook().forkNumber(line),
              newest.number(),
              desk.readable(newest).flatMap(Formula::goal).orElse(null),
              goal.map(check -> check.goal().name()).orElse(null),
              goal.map(check -> GoalViews.met(check.outcome())).orElse(null),
              Json.time(newest.time()),
              newest.note()));
    }
    return entries;
  }
}
