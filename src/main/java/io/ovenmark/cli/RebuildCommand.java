package io.ovenmark.cli;

import io.ovenmark.desk.BesideReference;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.RebuildViews;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sets a formula beside the conventional one that it was rebuilt from. */
@Command(
    name = "rebuild",
    header = "Set a formula beside the conventional one that it was rebuilt from.",
    description =
        "Set a formula beside the conventional one that it was rebuilt from: lines by the part that"
            + " they play in the dough, with mass, share of the batch and what each brings to a"
            + " piece, and the pieces side by side.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark rebuild seeded-lupin-bun",
      "  ovenmark rebuild seeded-lupin-bun/egg-free --reference wheat-bun@1"
    })
final class RebuildCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "The rebuild.")
  private String address;

  @Option(
      names = "--reference",
      paramLabel = "ADDRESS",
      description = "The conventional formula; default: the one that the formula names.")
  private String reference;

  @Override
  ExitCode run(Desk desk) {
    RebuildViews.RebuildSheet sheet =
        new BesideReference(desk)
            .call(desk.address(address), Optional.ofNullable(reference).map(desk::address));
    print(sheet, out -> RebuildText.print(sheet, out));
    return ExitCode.DONE;
  }
}
