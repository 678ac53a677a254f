package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.change.Change;
import io.ovenmark.change.ChangeSentences;
import io.ovenmark.change.FormulaDiff;
import io.ovenmark.formula.Formula;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Quantity;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.VariantWriter;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.TagFacts;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The development timeline of a formula: what changed from revision to revision, what that made of
 * the figures, and the bakes.
 */
public final class ShowTimeline {
  private final Desk desk;

  /** What is looked up for each revision. */
  private record Shelf(
      List<Bake> bakes, Map<String, List<String>> addresses, Map<CommitId, TagFacts> published) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShowTimeline(Desk desk) {
    this.desk = desk;
  }

  /**
   * Draws it up.
   *
   * @param line a formula, for the main line with all variants, or one variant, for its line of
   *     history from the beginning
   * @return the revisions, newest first
   */
  public Views.TimelineView call(Address line) {
    Notebook notebook = desk.notebook();
    String slug = line.formula();
    List<Bake> bakes = notebook.bakes(slug);
    Shelf shelf = new Shelf(bakes, desk.revisionsByContent(slug), notebook.published(slug));
    List<Views.TimelineEntry> entries = new ArrayList<>();
    Address main = Address.latest(slug, Optional.empty());
    if (line.variant().isPresent()) {
      addLine(entries, line, 0, shelf);
    } else {
      addLine(entries, main, 0, shelf);
      for (String variant : notebook.variants(slug)) {
        Address branch = Address.latest(slug, Optional.of(variant));
        addLine(entries, branch, notebook.forkNumber(branch), shelf);
      }
    }
    newestFirst(entries);
    Revision newest = notebook.newest(line);
    Optional<Desk.Sheet> sheet =
        desk.attempt(Address.latest(slug, line.variant()), newest, bakes).sheet();
    return new Views.TimelineView(
        slug,
        desk.readable(newest).map(Formula::name).orElse(slug),
        line.variant().orElse(null),
        sheet
            .flatMap(Desk.Sheet::goal)
            .map(check -> GoalViews.view(check, desk.units()))
            .orElse(null),
        entries,
        new ListFormulas(desk).variants(slug, bakes),
        notebook.handEdit(slug).isPresent(),
        Refusals.views(notebook.bakeProblems(slug)));
  }

  /**
   * By time, newest first; revisions of one line never change places, whatever their clocks say.
   */
  private static void newestFirst(List<Views.TimelineEntry> entries) {
    Map<String, List<Views.TimelineEntry>> lines = new LinkedHashMap<>();
    for (Views.TimelineEntry entry : entries) {
      lines
          .computeIfAbsent(String.valueOf(entry.variant()), name -> new ArrayList<>())
          .add(entry);
    }
    entries.clear();
    while (!lines.isEmpty()) {
      String newest = null;
      for (Map.Entry<String, List<Views.TimelineEntry>> each : lines.entrySet()) {
        if (newest == null || later(last(each.getValue()), last(lines.get(newest)))) {
          newest = each.getKey();
        }
      }
      List<Views.TimelineEntry> line = lines.get(newest);
      entries.add(line.remove(line.size() - 1));
      if (line.isEmpty()) {
        lines.remove(newest);
      }
    }
  }

  private static Views.TimelineEntry last(List<Views.TimelineEntry> line) {
    return line.get(line.size() - 1);
  }

  private static boolean later(Views.TimelineEntry a, Views.TimelineEntry b) {
    return OffsetDateTime.parse(a.time()).isAfter(OffsetDateTime.parse(b.time()));
  }

  private void addLine(
      List<Views.TimelineEntry> entries,
      Address line,
      int after,
      Shelf shelf) {
    if (desk.notebook().nextNumber(line) == 1) {
      return;
    }
    Revision before = null;
    for (Revision revision : desk.notebook().revisions(line)) {
      if (revision.number() > after) {
        entries.add(entry(revision, before, shelf));
      }
      before = revision;
    }
  }

  private Views.TimelineEntry entry(
      Revision revision, Revision before, Shelf shelf) {
    Desk.Attempt attempt = desk.attempt(revision.address(), revision, shelf.bakes());
    TagFacts tag = shelf.published().get(revision.commit());
    Optional<GoalCheck> goal = attempt.sheet().flatMap(Desk.Sheet::goal);
    return new Views.TimelineEntry(
        revision.address().toString(),
        revision.number(),
        revision.address().variant().orElse(null),
        revision.commit().hex(),
        revision.blob().hex(),
        Json.time(revision.time()),
        revision.author().name(),
        revision.note(),
        revision.details().isEmpty() ? null : revision.details(),
        revision.merge(),
        firstWord(revision.trailers().get(FormulaWriter.RESTORES)),
        firstWord(revision.trailers().get(VariantWriter.CARRIES)),
        tag == null ? null : tag.message(),
        before == null ? List.of() : changes(before, revision),
        attempt.sheet().map(sheet -> figures(sheet.worksheet())).orElse(null),
        goal.map(check -> GoalViews.met(check.outcome())).orElse(null),
        Desk.views(
            Desk.bakesOf(revision.blob().hex(), shelf.bakes()), shelf.addresses()),
        attempt.problems());
  }

  /** What changed; nothing when one of the two cannot be read. */
  private List<Views.ChangeView> changes(Revision before, Revision after) {
    Optional<Formula> from = desk.readable(before);
    Optional<Formula> to = desk.readable(after);
    if (from.isEmpty() || to.isEmpty()) {
      return List.of();
    }
    Contents old = desk.notebook().at(before.commit());
    Contents now = desk.notebook().at(after.commit());
    ChangeSentences sentences =
        new ChangeSentences(
            id ->
                to.get().line(id)
                    .or(() -> from.get().line(id))
                    .map(found -> name(found.food(), now, old))
                    .orElse(id),
            food -> name(food, now, old),
            desk.units());
    return FormulaDiff.between(from.get(), to.get()).stream()
        .map(change -> new Views.ChangeView(kind(change), sentences.of(change)))
        .toList();
  }

  /** The name of a food for people; its short name when its file is damaged. */
  private static String name(String food, Contents now, Contents old) {
    try {
      return now.food(food).or(() -> old.food(food)).map(Food::name).orElse(food);
    } catch (UnreadableException damaged) {
      return food;
    }
  }

  private static String kind(Change change) {
    return change
        .getClass()
        .getSimpleName()
        .replaceAll("([a-z])([A-Z])", "$1_$2")
        .toLowerCase(Locale.ROOT);
  }

  private static FigureSet figures(Worksheet worksheet) {
    Map<String, Quantity> figures = new LinkedHashMap<>();
    for (Figure figure : Figure.values()) {
      if (!figure.isMacro()) {
        figures.put(figure.key(), worksheet.figure(figure, Basis.PIECE));
      }
    }
    for (Figure figure : Figure.macros()) {
      figures.put(figure.key(), worksheet.figure(figure, Basis.PIECE));
    }
    return new FigureSet(figures);
  }

  private static String firstWord(String text) {
    return text == null ? null : text.split(" ", 2)[0];
  }
}
