package io.ovenmark.cli;

import io.ovenmark.desk.KitchenViews;

/** Prints a goal and how the formulas stand to it. */
final class GoalSheetText {
  private GoalSheetText() {}

  static void print(KitchenViews.GoalSheet goal, Output out) {
    out.line(goal.name() + " (" + goal.goal() + ")");
    goal.rules().forEach(rule -> out.wrapped("  " + rule, "    "));
    if (goal.netCarbohydrateRule() != null) {
      out.wrapped("  net carbohydrate = " + goal.netCarbohydrateRule(), "    ");
    }
    if (goal.note() != null) {
      out.blank();
      out.wrapped(goal.note(), "");
    }
    if (goal.formulas().isEmpty()) {
      out.blank();
      out.line("No formula states this goal yet. Set it with:");
      out.line("  ovenmark revise FORMULA --set goal=" + goal.goal() + " --note \"…\"");
    }
    for (KitchenViews.GoalStanding standing : goal.formulas()) {
      String name = standing.address() + " · " + standing.name();
      if (standing.standing() == null) {
        out.heading(name + ": cannot be worked out");
        ProblemText.print(standing.problems(), out);
      } else {
        out.heading(name + ": " + Figures.met(standing.standing().met()));
        GoalText.rules(standing.standing(), out);
      }
    }
  }
}
