package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.ListGoals;
import picocli.CommandLine.Command;

/** Lists the goals. */
@Command(
    name = "list",
    header = "List the goals.",
    description = "List the goals of the notebook with the formulas that state them.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark goal list")
final class GoalListCommand extends DeskCommand {
  @Override
  ExitCode run(Desk desk) {
    KitchenViews.GoalList answer = new ListGoals(desk).call();
    print(answer, out -> text(answer, out));
    return ExitCode.DONE;
  }

  private static void text(KitchenViews.GoalList answer, Output out) {
    if (answer.goals().isEmpty()) {
      out.line("The notebook has no goal yet.");
      out.line("Add one with: ovenmark goal add low-carb --limit \"net_carbohydrate_g <= 4\"");
      return;
    }
    boolean first = true;
    for (KitchenViews.GoalEntry goal : answer.goals()) {
      if (!first) {
        out.blank();
      }
      first = false;
      out.line(goal.goal() + " · " + goal.name());
      ProblemText.print(goal.problems(), out);
      if (!goal.rules().isEmpty()) {
        out.wrapped("  " + String.join(" · ", goal.rules()), "  ");
      }
      if (!goal.usedBy().isEmpty()) {
        out.wrapped("  stated by " + String.join(", ", goal.usedBy()), "    ");
      }
    }
  }
}
