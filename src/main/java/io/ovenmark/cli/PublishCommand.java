package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.PublishRevision;
import io.ovenmark.desk.WriteViews;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Marks a revision as published. */
@Command(
    name = "publish",
    header = "Mark a revision as published.",
    description = {
      "Mark a revision as published, with an annotated Git tag. Whether it meets its goal is said,"
          + " and decided by you."
    },
    footerHeading = "%nExample:%n",
    footer = "  ovenmark publish seeded-lupin-bun@3 --note \"The breakfast bun of this winter\"")
final class PublishCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "The revision.")
  private String address;

  @Option(
      names = "--note",
      paramLabel = "TEXT",
      required = true,
      description = "What is published, and where.")
  private String note;

  @Override
  ExitCode run(Desk desk) {
    WriteViews.Published published =
        new PublishRevision(desk).call(desk.address(address), note, by(desk));
    print(
        published,
        out -> {
          out.line("Published " + published.revision().address() + " as " + published.tag());
          out.wrapped("  “" + published.note() + "”", "  ");
          WrittenText.remarks(published.remarks(), out);
          if (published.goal() != null && !Boolean.TRUE.equals(published.goal().met())) {
            out.line("  See why with: ovenmark show " + published.revision().address());
          }
        });
    return ExitCode.DONE;
  }
}
