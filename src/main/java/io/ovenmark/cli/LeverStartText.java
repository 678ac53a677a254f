package io.ovenmark.cli;

import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.LeverViews;

/** Prints what can be asked of a formula, and the draft that an answer became. */
final class LeverStartText {
  private LeverStartText() {}

  static void print(LeverViews.LeverStart start, Output out) {
    out.line(start.name());
    out.line(start.address());
    if (start.wishes().stream().anyMatch(LeverViews.WishOffer::fromGoal)) {
      out.heading("Limits of the goal “" + start.goal() + "”");
      wishes(start, true, out);
    }
    if (start.lines().isEmpty()) {
      out.blank();
      out.line("The formula has no lines yet, so there is nothing to change.");
      return;
    }
    out.heading("Figures as they are");
    wishes(start, false, out);
    out.heading("Lines");
    Table lines = new Table("line", ">amount", "name").indent(2);
    start.lines().forEach(line -> lines.row(line.line(), line.entered(), line.name()));
    out.table(lines);
    out.blank();
    out.wrapped(
        "Ask for one of them at another value, such as: ovenmark levers " + start.address()
            + " --want \"" + example(start) + "\"",
        "  ");
  }

  private static void wishes(LeverViews.LeverStart start, boolean fromGoal, Output out) {
    for (LeverViews.WishOffer offer : start.wishes()) {
      if (offer.fromGoal() == fromGoal) {
        out.wrapped(
            fromGoal
                ? "  " + offer.wish() + " (now " + offer.nowText() + ", "
                    + (offer.granted() ? "kept" : "not kept for certain") + ")"
                : "  " + offer.figure() + " " + offer.nowText(),
            "    ");
      }
    }
  }

  private static String example(LeverViews.LeverStart start) {
    return start.wishes().isEmpty() ? "liquid ratio 0.85" : start.wishes().get(0).wish();
  }

  /** A draft that was begun. */
  static void print(DraftViews.DraftView draft, Output out) {
    out.wrapped("Draft " + draft.id() + " of " + draft.base().address() + ".", "  ");
    out.wrapped("  “" + draft.note() + "”", "  ");
    out.wrapped("Look at it, change and save it with: ovenmark view, page /drafts/" + draft.id()
        + ".", "  ");
  }
}
