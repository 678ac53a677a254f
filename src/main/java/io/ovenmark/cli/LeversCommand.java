package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.FindLevers;
import io.ovenmark.desk.LeverOrder;
import io.ovenmark.desk.LeverViews;
import io.ovenmark.desk.OfferWishes;
import io.ovenmark.desk.WriteViews;
import io.ovenmark.notebook.Address;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds what to change so that figures come to wanted values. */
@Command(
    name = "levers",
    header = "Find what to change so that a figure comes to a wanted value.",
    description = {
      "Find what to change so that figures come to wanted values: every change of one line, those"
          + " that disturb the rest least first, and the best change of all lines together; or why"
          + " it cannot be done, and how near one can come.",
      "With --draft an answer becomes a draft, to be looked at and changed on its page before it"
          + " is saved; with --apply it becomes the next revision at once. Name the revision then"
          + " (seeded-lupin-bun@12), so that it is refused when a newer one came since."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark levers seeded-lupin-bun --want \"liquid ratio 0.85\" --keep egg-whole",
      "  ovenmark levers seeded-lupin-bun --want \"protein a piece at least 15 g\" --within 25",
      "  ovenmark levers seeded-lupin-bun --want \"dough a piece 80 g\" --draft 1"
    })
final class LeversCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "Which revision.")
  private String address;

  @Option(
      names = "--want",
      paramLabel = "WISH",
      description = {
        "A figure and what it shall come to: \"liquid ratio 0.80\", \"dough a piece 95 g\","
            + " \"dough moisture 52 to 55 %%\", \"protein a piece at least 9 g\", \"fibre per 100 g"
            + " baked at least 10 g\"; goal for the limits of the formula's goal.",
        "May be repeated; all wishes are granted together. Without one, what can be asked is"
            + " listed."
      })
  private List<String> want;

  @Option(
      names = "--keep",
      paramLabel = "LINE",
      split = ",",
      description = "Lines that must stay, with commas between or repeated.")
  private List<String> keep;

  @Option(
      names = "--at-least",
      paramLabel = "LINE=AMOUNT",
      description = "What a line shall weigh at least.")
  private List<String> atLeast;

  @Option(
      names = "--at-most",
      paramLabel = "LINE=AMOUNT",
      description = "What a line shall weigh at most.")
  private List<String> atMost;

  @Option(
      names = "--within",
      paramLabel = "[LINE=]PERCENT",
      description = "How far a line may change either way, such as water=10%%; 20%% is for all.")
  private List<String> within;

  @Option(
      names = "--batch",
      paramLabel = "free|fixed",
      description = "Whether the batch mass must stay; default: free.")
  private String batch;

  @Option(
      names = "--pieces",
      paramLabel = "fixed|free",
      description =
          "Whether the number of pieces stays, or the dough a piece does and the number follows;"
              + " default: what the formula states.")
  private String pieces;

  @Option(
      names = "--readable",
      paramLabel = "GRAMS",
      description = "What the scale can show: 0.1g (default), 1g, 5g, or exact.")
  private String readable;

  @Option(
      names = "--apply",
      paramLabel = "N",
      description = "Commit the answer of that number as the next revision.")
  private Integer apply;

  @Option(
      names = "--draft",
      paramLabel = "N",
      description = "Begin a draft from the answer of that number, with a note proposed.")
  private Integer draft;

  @Option(
      names = "--note",
      paramLabel = "TEXT",
      description = "The note of that revision; default: what was asked and what moved.")
  private String note;

  @Override
  ExitCode run(Desk desk) {
    if (note != null && apply == null) {
      throw usage("--note is for the revision that --apply commits.");
    }
    if (apply != null && draft != null) {
      throw usage("Give --apply or --draft, not both.");
    }
    if (want == null) {
      if (apply != null || draft != null) {
        throw usage("--apply and --draft need what was asked for, with --want.");
      }
      LeverViews.LeverStart start = new OfferWishes(desk).call(desk.address(address));
      print(start, out -> LeverStartText.print(start, out));
      return ExitCode.DONE;
    }
    FindLevers verb = new FindLevers(desk);
    Address which = desk.address(address);
    LeverOrder order =
        new LeverOrder(want, keep, atLeast, atMost, within, batch, pieces, readable);
    if (apply != null) {
      WriteViews.RevisionWritten written =
          verb.apply(which, order, apply, Optional.ofNullable(note), by(desk));
      print(written, out -> WrittenText.print(written, out));
      return written.outcome().equals("conflict") ? ExitCode.CONFLICT : ExitCode.DONE;
    }
    if (draft != null) {
      DraftViews.DraftView begun =
          verb.draft(which, order, draft, Optional.empty(), by(desk));
      print(begun, out -> LeverStartText.print(begun, out));
      return ExitCode.DONE;
    }
    LeverViews.LeverSheet sheet = verb.call(which, order);
    print(sheet, out -> LeversText.print(sheet, out));
    return ExitCode.DONE;
  }
}
