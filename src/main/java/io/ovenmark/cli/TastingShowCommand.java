package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ShowTasting;
import io.ovenmark.desk.TastingViews;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows a tasting and its results. */
@Command(
    name = "show",
    header = "Show a tasting and what its answers tell.",
    description =
        "Show a tasting: its samples, what to mind, its sheets, and what the answers can and cannot"
            + " tell. Which code stands for which sample is told with --key only.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark tasting show seeded-lupin-bun 2026-10-10-1",
      "  ovenmark tasting show seeded-lupin-bun 2026-10-10-1 --key"
    })
final class TastingShowCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "FORMULA", description = "Short name of the formula.")
  private String formula;

  @Parameters(index = "1", paramLabel = "TASTING", description = "Name of the tasting.")
  private String id;

  @Option(names = "--key", description = "Show instead which sample is on which plate.")
  private boolean key;

  @Override
  ExitCode run(Desk desk) {
    ShowTasting verb = new ShowTasting(desk);
    if (key) {
      TastingViews.TastingKey shown = verb.key(formula, id);
      print(shown, out -> TastingText.key(shown, out));
    } else {
      TastingViews.TastingSheet shown = verb.call(formula, id);
      print(shown, out -> TastingText.print(shown, out));
    }
    return ExitCode.DONE;
  }
}
