package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.RestoreRevision;
import io.ovenmark.desk.WriteViews;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes an earlier revision back. */
@Command(
    name = "restore",
    header = "Take an earlier revision back.",
    description = {
      "Take the content of an earlier revision back as the newest one. Nothing is lost: the"
          + " revisions in between stay, and the bakes of that content are found again."
    },
    footerHeading = "%nExample:%n",
    footer = "  ovenmark restore seeded-lupin-bun@2 --note \"Back to the drier dough\"")
final class RestoreCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "The revision to take back.")
  private String address;

  @Option(
      names = "--into",
      paramLabel = "FORMULA[/VARIANT]",
      description = "The line of history that receives it; default: its own.")
  private String into;

  @Option(names = "--note", paramLabel = "TEXT", description = "Why; default: \"Back to ADDRESS\".")
  private String note;

  @Override
  ExitCode run(Desk desk) {
    Address earlier = desk.address(address);
    if (earlier.point().kind() == Address.Point.Kind.LATEST && into == null) {
      throw usage("Say which revision, as in " + earlier + "@2.");
    }
    if (earlier.point().kind() == Address.Point.Kind.EDITED) {
      throw usage("A file edited by hand is no revision; commit it with: ovenmark revise.");
    }
    Address line = into == null ? earlier : desk.address(into);
    RestoreRevision verb = new RestoreRevision(desk);
    String why = note != null ? note : verb.note(earlier);
    WriteViews.RevisionWritten written = verb.call(earlier, line, why, by(desk));
    if (written.outcome().equals("conflict")) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          written.revision().address(),
          "Somebody committed " + written.revision().address() + " at the same moment.",
          "Look at it, then repeat the command.");
    }
    print(written, out -> WrittenText.print(written, out));
    return ExitCode.DONE;
  }
}
