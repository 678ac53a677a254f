package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.compare.Side;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A line of history with the bakes of each revision. A content that stands twice, because it was
 * restored, has its bakes where they were baked: at the newest revision of that content that was
 * there when they went into the oven.
 */
final class StoryLine {
  private final Desk desk;
  private final Address line;
  private final List<Stop> stops;
  private final List<Bake> all;

  /**
   * A revision with its bakes.
   *
   * @param address its address on this line
   * @param revision the revision
   * @param bakes the bakes that are told with it, oldest first
   */
  record Stop(Address address, Revision revision, List<Bake> bakes) {
    int number() {
      return revision.number();
    }

    String date() {
      return revision.time().toLocalDate().toString();
    }
  }

  private StoryLine(Desk desk, Address line, List<Stop> stops, List<Bake> all) {
    this.desk = desk;
    this.line = line;
    this.stops = stops;
    this.all = all;
  }

  /** Reads the line that an address is on. */
  static StoryLine of(Desk desk, Address address) {
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          address.toString(),
          "A story is told of revisions.",
          "Save the edited file as a revision first, or name the formula alone.");
    }
    Address line =
        address.point().kind() == Address.Point.Kind.LATEST
            ? Address.latest(address.formula(), address.variant())
            : WriteParts.line(desk.notebook().revision(address).address());
    List<Revision> revisions = desk.notebook().revisions(line);
    if (revisions.isEmpty()) {
      desk.notebook().newest(line);
    }
    int fork = line.variant().isPresent() ? desk.notebook().forkNumber(line) : 0;
    List<Bake> all = new ArrayList<>(desk.notebook().bakes(line.formula()));
    all.sort(
        Comparator.comparing((Bake bake) -> bake.time().toInstant()).thenComparing(Bake::id));
    List<List<Bake>> bakes = new ArrayList<>();
    revisions.forEach(revision -> bakes.add(new ArrayList<>()));
    for (Bake bake : all) {
      int at = place(revisions, bake);
      if (at >= 0) {
        bakes.get(at).add(bake);
      }
    }
    List<Stop> stops = new ArrayList<>();
    for (int i = 0; i < revisions.size(); i++) {
      Revision revision = revisions.get(i);
      Address own =
          revision.number() > fork
              ? revision.address()
              : Address.latest(line.formula(), Optional.empty()).at(revision.number());
      stops.add(new Stop(own, revision, List.copyOf(bakes.get(i))));
    }
    return new StoryLine(desk, line, List.copyOf(stops), List.copyOf(all));
  }

  private static int place(List<Revision> revisions, Bake bake) {
    int found = -1;
    for (int i = 0; i < revisions.size(); i++) {
      Revision revision = revisions.get(i);
      boolean same = revision.blob().hex().equals(bake.blob());
      if (same && (found < 0 || !revision.time().isAfter(bake.time()))) {
        found = i;
      }
    }
    return found;
  }

  Address line() {
    return line;
  }

  List<Stop> stops() {
    return stops;
  }

  /** All bakes of the formula and its variants, oldest first. */
  List<Bake> all() {
    return all;
  }

  /** The revision of a number. */
  Stop stop(int number) {
    return stops.stream()
        .filter(stop -> stop.number() == number)
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.NOT_FOUND,
                    line.line() + "@" + number,
                    line.line() + " has no revision " + number + ".",
                    "Its revisions are " + stops.get(0).number() + " to "
                        + stops.get(stops.size() - 1).number() + "."));
  }

  /** Its figures; empty when a file that they rest on is damaged. */
  Optional<Desk.Sheet> sheet(Stop stop) {
    return desk.attempt(stop.address(), stop.revision(), all).sheet();
  }

  /** What it is compared as, with the bakes that are told with it. */
  Side side(Stop stop) {
    Desk.Sheet sheet = desk.sheet(stop.address(), stop.revision(), all);
    return new Side(
        stop.address().toString(),
        Optional.of(stop.revision().time()),
        Optional.of(stop.revision().note()),
        sheet.worksheet(),
        sheet.goal(),
        stop.bakes());
  }

  /** The goal that a revision has. */
  Optional<Goal> goal(Stop stop) {
    return sheet(stop).flatMap(Desk.Sheet::goal).map(GoalCheck::goal);
  }

  Optional<Worksheet> worksheet(Stop stop) {
    return sheet(stop).map(Desk.Sheet::worksheet);
  }
}
