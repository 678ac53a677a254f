package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Revision;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The development timeline of a formula: what changed from revision to revision, what that made of
 * the figures, and the bakes. It can be had as a whole, or first what the commits say and then the
 * rest of those rows that somebody looks at.
 */
public final class ShowTimeline {
  private final Desk desk;

  /** A revision and the one before it, null for the first. */
  private record Placed(Revision revision, Revision before) {
    String line() {
      return revision.address().line();
    }
  }

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
    TimelineRows rows = new TimelineRows(desk);
    TimelineRows.Shelf shelf = rows.shelf(line.formula());
    List<Views.TimelineEntry> entries =
        placed(line).stream()
            .map(each -> rows.entry(each.revision(), each.before(), shelf))
            .toList();
    TimelineViews.SpineView head = head(line, List.of(), shelf.bakes());
    return new Views.TimelineView(
        head.formula(),
        head.name(),
        head.variant(),
        head.goal(),
        entries,
        head.variants(),
        head.editedByHand(),
        head.problems());
  }

  /**
   * Draws up what the commits say, without what has to be worked out.
   *
   * @param line as for {@link #call}
   * @return the same revisions in the same order
   */
  public TimelineViews.SpineView spine(Address line) {
    TimelineRows rows = new TimelineRows(desk);
    TimelineRows.Shelf shelf = rows.lightShelf(line.formula());
    List<TimelineViews.SpineEntry> entries =
        placed(line).stream().map(each -> rows.light(each.revision(), shelf)).toList();
    return head(line, entries, shelf.bakes());
  }

  /**
   * Draws up some rows of timelines.
   *
   * @param addresses numbered revisions, all of one formula
   * @return their whole rows, in the given order
   * @throws io.ovenmark.notebook.Refusal when there is no such revision
   */
  public TimelineViews.Rows rows(List<Address> addresses) {
    List<Views.TimelineEntry> entries = new ArrayList<>();
    TimelineRows rows = new TimelineRows(desk);
    Map<String, TimelineRows.Shelf> shelves = new HashMap<>();
    Map<String, List<Revision>> lines = new HashMap<>();
    for (Address address : addresses) {
      Revision revision = desk.notebook().revision(address);
      List<Revision> line =
          lines.computeIfAbsent(address.line(), name -> desk.notebook().revisions(address));
      int at = line.indexOf(revision);
      entries.add(
          rows.entry(
              revision,
              at > 0 ? line.get(at - 1) : null,
              shelves.computeIfAbsent(address.formula(), rows::shelf)));
    }
    return new TimelineViews.Rows(entries);
  }

  private TimelineViews.SpineView head(
      Address line, List<TimelineViews.SpineEntry> entries, List<Bake> bakes) {
    Notebook notebook = desk.notebook();
    String slug = line.formula();
    Revision newest = notebook.newest(line);
    Optional<Desk.Sheet> sheet =
        desk.attempt(Address.latest(slug, line.variant()), newest, bakes).sheet();
    return new TimelineViews.SpineView(
        slug,
        desk.readable(newest).map(Formula::name).orElse(slug),
        line.variant().orElse(null),
        sheet
            .flatMap(Desk.Sheet::goal)
            .map(check -> GoalViews.view(check, desk.units()))
            .orElse(null),
        sheet.map(found -> TimelineRows.figures(found.worksheet())).orElse(null),
        entries,
        new ListFormulas(desk).variants(slug),
        notebook.handEdit(slug).isPresent(),
        Refusals.views(notebook.bakeProblems(slug)));
  }

  private List<Placed> placed(Address line) {
    Notebook notebook = desk.notebook();
    Map<String, List<Placed>> lines = new LinkedHashMap<>();
    if (line.variant().isPresent()) {
      addLine(lines, line, 0);
    } else {
      addLine(lines, Address.latest(line.formula(), Optional.empty()), 0);
      for (String variant : notebook.variants(line.formula())) {
        Address branch = Address.latest(line.formula(), Optional.of(variant));
        addLine(lines, branch, notebook.forkNumber(branch));
      }
    }
    return newestFirst(lines);
  }

  private void addLine(Map<String, List<Placed>> lines, Address line, int after) {
    if (desk.notebook().nextNumber(line) == 1) {
      return;
    }
    Revision before = null;
    for (Revision revision : desk.notebook().revisions(line)) {
      if (revision.number() > after) {
        Placed placed = new Placed(revision, before);
        lines.computeIfAbsent(placed.line(), name -> new ArrayList<>()).add(placed);
      }
      before = revision;
    }
  }

  /**
   * By time, newest first; revisions of one line never change places, whatever their clocks say.
   */
  private static List<Placed> newestFirst(Map<String, List<Placed>> lines) {
    List<Placed> all = new ArrayList<>();
    while (!lines.isEmpty()) {
      String newest = null;
      for (Map.Entry<String, List<Placed>> each : lines.entrySet()) {
        if (newest == null || last(each.getValue()).isAfter(last(lines.get(newest)))) {
          newest = each.getKey();
        }
      }
      List<Placed> line = lines.get(newest);
      all.add(line.remove(line.size() - 1));
      if (line.isEmpty()) {
        lines.remove(newest);
      }
    }
    return all;
  }

  private static OffsetDateTime last(List<Placed> line) {
    return line.get(line.size() - 1).revision().time();
  }
}
