package io.ovenmark.desk;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.NotebookSettings;
import io.ovenmark.notebook.Revision;
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
    desk.listedRows().begin();
    for (String slug : contents.formulas()) {
      notebook
          .newestIfAny(Address.latest(slug, Optional.empty()))
          .ifPresent(newest -> entries.add(entry(slug, newest, edited.contains(slug))));
    }
    desk.listedRows().end();
    return new Views.FormulaList(
        settings.title(),
        notebook.folder().toString(),
        settings.temperatureUnit(),
        settings.massUnit(),
        entries);
  }

  private Views.FormulaEntry entry(String slug, Revision newest, boolean edited) {
    ListedRows.Row row =
        desk.listedRows().row(desk, Address.latest(slug, Optional.empty()), newest);
    return new Views.FormulaEntry(
        slug,
        row.name(),
        row.goal(),
        row.goalName(),
        row.goalMet(),
        row.reference(),
        newest.number(),
        newest.address().toString(),
        Json.time(newest.time()),
        newest.note(),
        row.ratios(),
        row.perPiece(),
        row.bakes(),
        variants(slug),
        edited,
        row.problems());
  }

  List<Views.VariantEntry> variants(String slug) {
    List<Views.VariantEntry> entries = new ArrayList<>();
    for (String name : desk.notebook().variants(slug)) {
      Address line = Address.latest(slug, Optional.of(name));
      Optional<Revision> found = desk.notebook().newestIfAny(line);
      if (found.isEmpty()) {
        continue;
      }
      Revision newest = found.get();
      ListedRows.Row row = desk.listedRows().row(desk, line, newest);
      entries.add(
          new Views.VariantEntry(
              name,
              newest.address().toString(),
              desk.notebook().forkNumber(line),
              newest.number(),
              row.goal(),
              row.goalName(),
              row.goalMet(),
              Json.time(newest.time()),
              newest.note()));
    }
    return entries;
  }
}
