package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ShowTasting;
import io.ovenmark.desk.TastingViews;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints the sheets of a tasting. */
@Command(
    name = "sheet",
    header = "Print the tasters' sheets.",
    description =
        "Print the sheets of a tasting as the tasters see them: codes in the order of tasting, and"
            + " nothing that tells the samples apart. They are the same each time.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark tasting sheet seeded-lupin-bun 2026-10-10-1 --sheet 3")
final class TastingSheetCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "FORMULA", description = "Short name of the formula.")
  private String formula;

  @Parameters(index = "1", paramLabel = "TASTING", description = "Name of the tasting.")
  private String id;

  @Option(names = "--sheet", paramLabel = "N", description = "Only the sheet of this number.")
  private Integer sheet;

  @Override
  ExitCode run(Desk desk) {
    ShowTasting verb = new ShowTasting(desk);
    if (sheet != null) {
      TastingViews.TasterSheet one = verb.sheet(formula, id, sheet);
      print(one, out -> TastingText.sheet(one, out));
    } else {
      TastingViews.TasterSheets all = verb.sheets(formula, id);
      print(
          all,
          out -> all.sheets().forEach(each -> TastingText.sheet(each, out)));
    }
    return ExitCode.DONE;
  }
}
