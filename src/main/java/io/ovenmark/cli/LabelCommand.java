package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.LabelChoices;
import io.ovenmark.desk.LabelViews;
import io.ovenmark.desk.ShowLabel;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what the figures of a formula would be on a label. */
@Command(
    name = "label",
    header = "Show the figures of a formula as a label would state them.",
    description = {
      "Show what a piece and 100 g hold, as dough and as baked, rounded by the rules of the United"
          + " States (21 CFR 101.9) and of the European Union (guidance of December 2012), each"
          + " beside the unrounded amount; with allergens, and the claims that the figures would"
          + " meet or miss. What is not known exactly is never declared.",
      "It is an aid for development, not an approved label: local law and licensed practice decide."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark label seeded-lupin-bun --us --reference bread",
      "  ovenmark label seeded-lupin-bun@5 --eu --loss 12"
    })
final class LabelCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "Which revision.")
  private String address;

  @Option(names = "--us", description = "By the rules of the United States; default: both.")
  private boolean unitedStates;

  @Option(names = "--eu", description = "By the rules of the European Union; default: both.")
  private boolean europeanUnion;

  @Option(
      names = "--loss",
      paramLabel = "PERCENT",
      description = "An allowance for the loss on baking; default: what was weighed.")
  private String loss;

  @Option(
      names = "--energy",
      paramLabel = "RULE",
      description =
          "Energy by foods, \"US factors\" or \"EU factors\"; default: the notebook's rule in the"
              + " United States, EU factors in the European Union.")
  private String energy;

  @Option(
      names = "--reference",
      paramLabel = "AMOUNT",
      description =
          "The reference amount by which United States claims are judged: bread, biscuits, muffins,"
              + " sweet-bread, cookies, crackers, brownies, light-cake, cake, heavy-cake, or a"
              + " mass.")
  private String reference;

  @Override
  ExitCode run(Desk desk) {
    List<String> regions = new ArrayList<>();
    if (unitedStates) {
      regions.add("us");
    }
    if (europeanUnion) {
      regions.add("eu");
    }
    LabelViews.LabelSheet sheet =
        new ShowLabel(desk)
            .call(desk.address(address), new LabelChoices(loss, energy, reference, regions));
    print(sheet, out -> LabelText.print(sheet, out));
    return ExitCode.DONE;
  }
}
