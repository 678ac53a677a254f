package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.ListBakes;
import io.ovenmark.desk.Views;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the bakes of a formula. */
@Command(
    name = "list",
    header = "List the bakes of a formula.",
    description = "List the bakes of a formula, of its main line and all variants, oldest first.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark bake list seeded-lupin-bun")
final class BakeListCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "FORMULA", description = "The formula.")
  private String formula;

  @Override
  ExitCode run(Desk desk) {
    KitchenViews.BakeList answer = new ListBakes(desk).call(desk.address(formula).formula());
    print(answer, out -> text(answer, out));
    return ExitCode.DONE;
  }

  private static void text(KitchenViews.BakeList answer, Output out) {
    if (answer.bakes().isEmpty() && answer.problems().isEmpty()) {
      out.line(answer.name() + " has not been baked yet.");
      out.line("Record a bake with: ovenmark bake add " + answer.formula());
      return;
    }
    out.line(answer.name());
    for (Views.BakeView bake : answer.bakes()) {
      List<String> parts = new ArrayList<>(BakeLine.of(bake));
      parts.add(1, "of " + bake.address());
      out.parts("  ", parts, "    ");
    }
    ProblemText.print(answer.problems(), out);
  }
}
