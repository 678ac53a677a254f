package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.PlanTasting;
import io.ovenmark.desk.TastingViews;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Adds sheets to a tasting. */
@Command(
    name = "more",
    header = "Add sheets for more tasters.",
    description =
        "Add sheets for more tasters. Those that there are stay as they are, and the orders go on"
            + " where they stopped.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark tasting more seeded-lupin-bun 2026-10-10-1 6")
final class TastingMoreCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "FORMULA", description = "Short name of the formula.")
  private String formula;

  @Parameters(index = "1", paramLabel = "TASTING", description = "Name of the tasting.")
  private String id;

  @Parameters(index = "2", paramLabel = "N", description = "How many more.")
  private int more;

  @Override
  ExitCode run(Desk desk) {
    TastingViews.TastingSheet tasting =
        new PlanTasting(desk).more(formula, id, more, by(desk));
    print(tasting, out -> TastingText.planned(tasting, out));
    return ExitCode.DONE;
  }
}
