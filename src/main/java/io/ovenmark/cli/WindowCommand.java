package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FindWindow;
import io.ovenmark.desk.WindowOrder;
import io.ovenmark.desk.WindowViews;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds where oven temperature and time keep every limit. */
@Command(
    name = "window",
    header = "Find the oven temperatures and times at which every limit holds.",
    description = {
      "From the pieces of a formula's bakes: at which oven temperatures and times every limit"
          + " holds, how sure that is, and which two or three pieces to bake next. With too few"
          + " pieces it says what is missing.",
      "It never says that a piece is safe; measure the core and follow local food codes."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark window seeded-lupin-bun",
      "  ovenmark window seeded-lupin-bun --pieces all --limit \"core at least 71 C\""
          + " --limit \"crust 2 to 3\" --limit \"no gummy crumb\"",
      "  ovenmark window seeded-lupin-bun --along dose"
    })
final class WindowCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "Which revision.")
  private String address;

  @Option(
      names = "--limit",
      paramLabel = "LIMIT",
      description = {
        "What a piece must be: \"core at least 71 °C\", \"crust 2 to 3\", \"no gummy crumb\","
            + " \"with even crumb\", \"cooking value at least 6 min\". May be repeated.",
        "Default: what the pieces propose."
      })
  private List<String> limits;

  @Option(
      names = "--pieces",
      paramLabel = "revision|dough|all",
      description =
          "Which pieces: of this revision, of all revisions with the same dough, or of the whole"
              + " line of history; default: of this revision when they make a map, else of the"
              + " same dough.")
  private String pieces;

  @Option(
      names = "--along",
      paramLabel = "minutes|dose",
      description = "What runs beside the oven temperature: time (default), or the thermal dose of"
          + " logged cores.")
  private String along;

  @Option(
      names = "--oven",
      paramLabel = "RANGE",
      description = "What the oven can be set to, such as \"180 to 220 C\".")
  private String oven;

  @Option(
      names = "--time",
      paramLabel = "RANGE",
      description = "Likewise, such as \"14 to 30 min\".")
  private String time;

  @Option(
      names = "--reference",
      paramLabel = "TEMPERATURE",
      description = "Reference temperature of the thermal dose; default: 100 °C.")
  private String reference;

  @Option(
      names = "--z",
      paramLabel = "CELSIUS",
      description = "Rise that makes the dose's rate tenfold; default: 33 °C (from memory).")
  private String z;

  @Override
  ExitCode run(Desk desk) {
    WindowOrder order = new WindowOrder(pieces, limits, along, oven, time, reference, z);
    WindowViews.WindowSheet sheet = new FindWindow(desk).call(desk.address(address), order);
    print(sheet, out -> WindowText.print(sheet, desk.units(), out));
    return ExitCode.DONE;
  }
}
