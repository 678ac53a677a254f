package io.ovenmark.cli;

import io.ovenmark.desk.StoryViews;

/** Prints what a story tells, step by step. */
final class StoryText {
  private StoryText() {}

  static void print(StoryViews.StorySheet sheet, Output out) {
    out.line(sheet.title());
    out.line(sheet.span());
    out.wrapped(status(sheet), "");
    int number = 1;
    for (StoryViews.StepView step : sheet.steps()) {
      out.blank();
      out.wrapped(number++ + ". " + step.heading(), "   ");
      out.line("   " + step.address() + " · " + step.date());
      if (step.words() != null) {
        step.words().lines().forEach(line -> out.wrapped("   “" + line + "”", "   "));
      }
      step.changed().forEach(text -> out.wrapped("   Changed: " + text, "     "));
      step.seen().forEach(text -> out.wrapped("   " + text, "     "));
      if (step.move() != null) {
        StoryViews.MoveView move = step.move();
        out.wrapped(
            "   Moved: " + move.label() + ", ○ " + move.fromText() + " → ● " + move.toText() + " ("
                + move.differenceText() + ")",
            "     ");
      }
      if (step.credit() != null) {
        out.wrapped("   " + step.credit(), "     ");
      }
      out.wrapped("   Photo: " + (step.photo() == null ? "none" : step.photo()), "     ");
    }
    out.heading("At the end: the card of " + sheet.card());
    sheet.cautions().forEach(text -> out.wrapped("  " + text, "    "));
  }

  private static String status(StoryViews.StorySheet sheet) {
    if (sheet.proposed()) {
      return "These are the bakes that taught something; choose others with --steps.";
    }
    return sheet.kept()
        ? "As the notebook keeps it."
        : "As chosen here; keep it with --keep.";
  }
}
