package io.ovenmark.cli;

import io.ovenmark.desk.Views;

/** Prints a goal rule by rule. */
final class GoalText {
  private GoalText() {}

  /** Prints it with a heading; nothing when there is none. */
  static void print(Views.GoalView goal, Output out) {
    if (goal == null) {
      return;
    }
    out.heading("Goal: " + goal.name() + ": " + Figures.met(goal.met()));
    rules(goal, out);
  }

  /** Prints its rules alone. */
  static void rules(Views.GoalView goal, Output out) {
    Table table = new Table("", "", "");
    for (Views.GoalRule rule : goal.checks()) {
      table.row(word(rule.met()), rule.rule(), value(rule));
    }
    out.table(table.indent(2));
  }

  private static String word(Boolean met) {
    return met == null ? "open" : met ? "kept" : "broken";
  }

  private static String value(Views.GoalRule rule) {
    if (rule.valueText() != null) {
      return rule.valueText();
    }
    return rule.because().isEmpty()
        ? ""
        : (rule.met() == null ? "not known of " : "") + String.join(", ", rule.because());
  }
}
