package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.ShowGoal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a goal. */
@Command(
    name = "show",
    header = "Show a goal and how formulas stand to it.",
    description = "Show a goal rule by rule, and how every formula that states it stands to it"
        + " now.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark goal show low-carb-bun")
final class GoalShowCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "GOAL", description = "Its short name.")
  private String slug;

  @Override
  ExitCode run(Desk desk) {
    KitchenViews.GoalSheet goal = new ShowGoal(desk).call(slug);
    print(goal, out -> GoalSheetText.print(goal, out));
    return ExitCode.DONE;
  }
}
