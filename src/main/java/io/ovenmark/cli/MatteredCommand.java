package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.MatteredViews;
import io.ovenmark.desk.ShowMattered;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows which changes went together with which outcomes. */
@Command(
    name = "mattered",
    header = "Show which changes went together with which outcomes.",
    description = {
      "Show what mattered over all bakes of a formula: for height, width, spread, loss, core, crust,"
          + " liking and each finding the changes that went together with it, by how much, how"
          + " surely, and how often each was changed alone. It is association, not proof."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark mattered seeded-lupin-bun",
      "  ovenmark mattered seeded-lupin-bun --outcome \"gummy crumb\" --all",
      "  ovenmark mattered seeded-lupin-bun --variants --outcome height"
    })
final class MatteredCommand extends DeskCommand {
  @Parameters(
      index = "0",
      paramLabel = "ADDRESS",
      description = "A formula or variant; a revision stands for its whole line of history.")
  private String address;

  @Option(names = "--variants", description = "Look at the bakes of all variants too.")
  private boolean variants;

  @Option(
      names = "--outcome",
      paramLabel = "OUTCOME",
      description = "Only this outcome: height, liking, or a finding such as \"gummy crumb\".")
  private String outcome;

  @Option(
      names = "--all",
      description = "List every change that was looked at, not only the surest of each outcome.")
  private boolean all;

  @Override
  ExitCode run(Desk desk) {
    MatteredViews.MatteredSheet sheet =
        new ShowMattered(desk)
            .call(desk.address(address), variants, Optional.ofNullable(outcome));
    print(sheet, out -> MatteredText.print(sheet, all, out));
    return ExitCode.DONE;
  }
}
