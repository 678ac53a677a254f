package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ShowBake;
import io.ovenmark.desk.Views;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a bake. */
@Command(
    name = "show",
    header = "Show a bake piece by piece.",
    description = "Show a bake piece by piece, with its findings and photos.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark bake show seeded-lupin-bun",
      "  ovenmark bake show seeded-lupin-bun 2026-10-03-1"
    })
final class BakeShowCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "FORMULA", description = "The formula.")
  private String formula;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "BAKE",
      description = "The bake, such as 2026-09-14-1; default: the newest.")
  private String id;

  @Override
  ExitCode run(Desk desk) {
    ShowBake verb = new ShowBake(desk);
    String slug = desk.address(formula).formula();
    Views.BakeView bake = id == null ? verb.newest(slug) : verb.call(slug, id);
    print(bake, out -> BakeText.print(bake, out));
    return ExitCode.DONE;
  }
}
