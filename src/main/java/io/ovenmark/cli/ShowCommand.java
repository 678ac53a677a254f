package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ShowFormula;
import io.ovenmark.desk.Views;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a revision worked out. */
@Command(
    name = "show",
    header = "Show a revision worked out.",
    description = {
      "Show a revision worked out: grams, percentages, yield, ratios, macros, goal, allergens and"
          + " bakes.",
      "ADDRESS is a formula for its newest revision (seeded-lupin-bun), with a number or commit for"
          + " another (seeded-lupin-bun@5), with a variant (seeded-lupin-bun/egg-free@10), or with"
          + " @edited for the file that was edited by hand."
    },
    footerHeading = "%nExample:%n",
    footer = "  ovenmark show seeded-lupin-bun@2")
final class ShowCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "Which revision.")
  private String address;

  @Override
  ExitCode run(Desk desk) {
    Views.FormulaSheet sheet = new ShowFormula(desk).call(desk.address(address));
    print(sheet, out -> SheetText.print(sheet, out));
    return ExitCode.DONE;
  }
}
