package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.ReplaceFood;
import io.ovenmark.desk.ReplaceOrder;
import io.ovenmark.desk.ReplaceViews;
import io.ovenmark.desk.WriteViews;
import io.ovenmark.notebook.Address;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds the foods that can stand in for a line. */
@Command(
    name = "replace",
    header = "Find the foods that can stand in for a line, and how much of each.",
    description = {
      "Find the foods of the pantry and of the built-in table that can stand in for a line, with"
          + " the amount that keeps one of its figures, and what else would move: those of the same"
          + " kind first, then those that keep the goal, then those that disturb the rest least."
          + " Foods that are not proposed are named with the reason.",
      "With --with one food is told in full; --draft makes it a draft for the pages, --apply the"
          + " next revision. Name the revision then (seeded-lupin-bun@12), so that it is refused"
          + " when a newer one came since."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark replace seeded-lupin-bun lupin-flour --keep protein",
      "  ovenmark replace seeded-lupin-bun butter-unsalted --goal dairy-free-bun",
      "  ovenmark replace seeded-lupin-bun butter-unsalted --with oil-olive --draft"
    })
final class ReplaceCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "Which revision.")
  private String address;

  @Parameters(index = "1", paramLabel = "LINE", description = "The line whose food gives way.")
  private String line;

  @Option(
      names = "--keep",
      paramLabel = "FIGURE",
      description =
          "What of the line stays: protein, dry, fat, water or mass; default: the water of a"
              + " liquid, the fat of a fat, the dry mass of the rest.")
  private String keep;

  @Option(
      names = "--goal",
      paramLabel = "GOAL",
      description = "The goal it is held to; default: the formula's own. none for no goal.")
  private String goal;

  @Option(
      names = "--with",
      paramLabel = "FOOD",
      description = "Tell of this food alone, with everything that moves.")
  private String with;

  @Option(
      names = "--readable",
      paramLabel = "GRAMS",
      description = "What the scale can show: 0.1g (default), 1g, 5g, or exact.")
  private String readable;

  @Option(names = "--all", description = "List every food, not only the first of each kind.")
  private boolean all;

  @Option(names = "--draft", description = "Begin a draft with the food of --with.")
  private boolean draft;

  @Option(names = "--apply", description = "Commit the food of --with as the next revision.")
  private boolean apply;

  @Option(
      names = "--note",
      paramLabel = "TEXT",
      description = "The note of that revision; default: what gave way to what.")
  private String note;

  @Override
  ExitCode run(Desk desk) {
    if ((draft || apply) && with == null) {
      throw usage("--draft and --apply need --with, the food that shall stand in.");
    }
    if (draft && apply) {
      throw usage("Give --draft or --apply, not both.");
    }
    if (note != null && !apply) {
      throw usage("--note is for the revision that --apply commits.");
    }
    ReplaceFood verb = new ReplaceFood(desk);
    Address which = desk.address(address);
    ReplaceOrder order = new ReplaceOrder(line, keep, goal, with, readable);
    if (draft) {
      DraftViews.DraftView begun = verb.draft(which, order, by(desk));
      print(begun, out -> ReplaceText.draft(begun, out));
      return ExitCode.DONE;
    }
    if (apply) {
      WriteViews.RevisionWritten written =
          verb.apply(which, order, Optional.ofNullable(note), by(desk));
      print(written, out -> WrittenText.print(written, out));
      return written.outcome().equals("conflict") ? ExitCode.CONFLICT : ExitCode.DONE;
    }
    ReplaceViews.ReplaceSheet sheet = verb.call(which, order);
    print(sheet, out -> new ReplaceText(sheet, all, out).print(with != null));
    return ExitCode.DONE;
  }
}
