package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.change.Change;
import io.ovenmark.change.ChangeSentences;
import io.ovenmark.change.FormulaDiff;
import io.ovenmark.formula.Formula;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Quantity;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.VariantWriter;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.TagFacts;
import io.ovenmark.pantry.Food;
import io.ovenmark.search.StepFacts;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes the rows of a timeline: light ones of what the commit says, whole ones with figures. */
final class TimelineRows {
  private final Desk desk;

  /** What is looked up for each revision. */
  record Shelf(
      List<Bake> bakes, Map<String, List<String>> addresses, Map<CommitId, TagFacts> published) {}

  TimelineRows(Desk desk) {
    this.desk = desk;
  }

  /** What the rows of a formula are made with. */
  Shelf shelf(String formula) {
    return new Shelf(
        desk.notebook().bakes(formula),
        desk.revisionsByContent(formula),
        desk.notebook().published(formula));
  }

  /** The same for light rows, which name no revisions of bakes. */
  Shelf lightShelf(String formula) {
    return new Shelf(
        desk.notebook().bakes(formula), Map.of(), desk.notebook().published(formula));
  }

  /** A row without changes, figures and bakes. */
  TimelineViews.SpineEntry light(Revision revision, Shelf shelf) {
    TagFacts tag = shelf.published().get(revision.commit());
    return new TimelineViews.SpineEntry(
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
        Desk.bakesOf(revision.blob().hex(), shelf.bakes()).size());
  }

  /** A whole row; the revision before may be null. */
  Views.TimelineEntry entry(Revision revision, Revision before, Shelf shelf) {
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
    ChangeSentences sentences = sentences(before, from.get(), after, to.get());
    return FormulaDiff.between(from.get(), to.get()).stream()
        .map(change -> new Views.ChangeView(kind(change), sentences.of(change)))
        .toList();
  }

  /** Sentences of what changed of some foods; none when one of the two cannot be read. */
  List<String> changesOf(Revision before, Revision after, Set<String> foods) {
    Optional<Formula> from = desk.readable(before);
    Optional<Formula> to = desk.readable(after);
    if (from.isEmpty() || to.isEmpty()) {
      return List.of();
    }
    ChangeSentences sentences = sentences(before, from.get(), after, to.get());
    return FormulaDiff.between(from.get(), to.get()).stream()
        .filter(change -> StepFacts.foodsOf(change, to.get()).stream().anyMatch(foods::contains))
        .map(sentences::of)
        .toList();
  }

  private ChangeSentences sentences(Revision before, Formula from, Revision after, Formula to) {
    Contents old = desk.notebook().at(before.commit());
    Contents now = desk.notebook().at(after.commit());
    return new ChangeSentences(
        id ->
            to.line(id).or(() -> from.line(id)).map(found -> name(found.food(), now, old)).orElse(id),
        food -> name(food, now, old),
        desk.units());
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

  /** Ratios, masses, and the macros of a piece. */
  static FigureSet figures(Worksheet worksheet) {
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
