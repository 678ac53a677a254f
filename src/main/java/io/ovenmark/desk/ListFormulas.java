package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
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
      entries.add(entry(slug, edited.contains(slug)));
    }
    return new Views.FormulaList(
        settings.title(),
        notebook.folder().toString(),
        settings.temperatureUnit(),
        settings.massUnit(),
        entries);
  }

  private Views.FormulaEntry entry(String slug, boolean edited) {
    Notebook notebook = desk.notebook();
    Address line = Address.latest(slug, Optional.empty());
    Revision newest = notebook.newest(line);
    List<Bake> bakes = List.of();
    Desk.Sheet sheet = null;
    List<Views.ProblemView> problems = new ArrayList<>();
    try {
      bakes = notebook.bakes(slug);
      sheet = desk.sheet(line, newest, bakes);
    } catch (UnreadableException e) {
      e.problems().stream().map(ListFormulas::problem).forEach(problems::add);
    }
    Optional<Desk.Sheet> readable = Optional.ofNullable(sheet);
    Optional<Worksheet> worksheet = readable.map(Desk.Sheet::worksheet);
    Optional<GoalCheck> goal = readable.flatMap(Desk.Sheet::goal);
    return new Views.FormulaEntry(
        slug,
        worksheet.map(w -> w.formula().name()).orElse(slug),
        worksheet.flatMap(w -> w.formula().goal()).orElse(null),
        goal.map(check -> check.goal().name()).orElse(null),
        goal.map(check -> GoalViews.met(check.outcome())).orElse(null),
        worksheet.flatMap(w -> w.formula().reference()).orElse(null),
        newest.number(),
        newest.address().toString(),
        newest.time().toString(),
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
      Revision newest = desk.notebook().newest(line);
      Optional<Desk.Sheet> sheet = Optional.empty();
      try {
        sheet = Optional.of(desk.sheet(line, newest, bakes));
      } catch (UnreadableException damaged) {
        // what is wrong is told where the variant itself is shown
      }
      Optional<GoalCheck> goal = sheet.flatMap(Desk.Sheet::goal);
      entries.add(
          new Views.VariantEntry(
              name,
              newest.address().toString(),
              desk.notebook().forkNumber(line),
              newest.number(),
              sheet.flatMap(s -> s.worksheet().formula().goal()).orElse(null),
              goal.map(check -> check.goal().name()).orElse(null),
              goal.map(check -> GoalViews.met(check.outcome())).orElse(null),
              newest.time().toString(),
              newest.note()));
    }
    return entries;
  }

  static Views.ProblemView problem(Problem problem) {
    return new Views.ProblemView(problem.where(), problem.message(), problem.hint());
  }
}
