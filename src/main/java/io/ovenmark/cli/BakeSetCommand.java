package io.ovenmark.cli;

import io.ovenmark.desk.ChangeBake;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds to a bake what is known later. */
@Command(
    name = "set",
    header = "Add to a bake what is known later.",
    description = {
      "Add to a bake what is known later: masses after cooling, the tasters' scores, findings.",
      "A piece whose letter the bake has is changed in what is written; name= with nothing behind"
          + " it takes a value back. Another letter adds a piece."
    },
    footerHeading = "%nExample:%n",
    footer =
        "  ovenmark bake set seeded-lupin-bun 2026-10-03-1 --piece \"a baked=91g liking=7,8\"")
final class BakeSetCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "FORMULA", description = "The formula.")
  private String formula;

  @Parameters(index = "1", paramLabel = "BAKE", description = "The bake, such as 2026-09-14-1.")
  private String id;

  @Option(names = "--piece", paramLabel = "TEXT", description = "A piece; may be repeated.")
  private List<String> pieces = new ArrayList<>();

  @Option(
      names = "--finding",
      paramLabel = "WORDS",
      description = "A fault or merit of the whole tray; may be repeated.")
  private List<String> findings = new ArrayList<>();

  @Option(names = "--note", paramLabel = "TEXT", description = "Takes the place of its note.")
  private String note;

  @Override
  ExitCode run(Desk desk) {
    ChangeBake.Changes changes =
        new ChangeBake.Changes(pieces, findings, Optional.ofNullable(note));
    KitchenViews.BakeWritten written =
        new ChangeBake(desk).call(desk.address(formula).formula(), id, changes, by(desk));
    print(written, out -> BakeText.written(written, out));
    return ExitCode.DONE;
  }
}
