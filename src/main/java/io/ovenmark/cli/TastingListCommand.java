package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ShowTasting;
import io.ovenmark.desk.TastingViews;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists tastings. */
@Command(
    name = "list",
    header = "List the tastings.",
    description = "List the tastings of a formula, newest first, or of all formulas.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark tasting list seeded-lupin-bun")
final class TastingListCommand extends DeskCommand {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FORMULA",
      description = "Short name of a formula; default: all.")
  private String formula;

  @Override
  ExitCode run(Desk desk) {
    ShowTasting verb = new ShowTasting(desk);
    if (formula == null) {
      TastingViews.AllTastings all = verb.all();
      print(all, out -> TastingText.list(all.tastings(), all.problems(), out));
    } else {
      TastingViews.TastingList list = verb.list(desk.address(formula));
      print(list, out -> TastingText.list(list.tastings(), list.problems(), out));
    }
    return ExitCode.DONE;
  }
}
