package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ForkVariant;
import io.ovenmark.desk.WriteViews;
import io.ovenmark.notebook.Address;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Branches a variant. */
@Command(
    name = "variant",
    header = "Branch a variant for another goal.",
    description = {
      "Branch a variant of a formula for another dietary goal. It begins as the revision it is"
          + " branched from and has its own revisions from there; improvements of the main line can"
          + " be carried over later."
    },
    footerHeading = "%nExample:%n",
    footer =
        "  ovenmark variant seeded-lupin-bun seed-free --from 2 --note \"For guests without"
            + " seeds\"")
final class VariantCommand extends WritingCommand {
  @Parameters(
      index = "0",
      paramLabel = "FORMULA",
      description = "The formula; FORMULA@N branches from revision N.")
  private String formula;

  @Parameters(
      index = "1",
      paramLabel = "NAME",
      description = "Name of the variant, such as egg-free.")
  private String name;

  @Option(
      names = "--from",
      paramLabel = "N",
      description = "The revision to branch from; default: the newest.")
  private Integer from;

  @Option(
      names = "--goal",
      paramLabel = "GOAL",
      description = "The goal it is for; default: the formula's own.")
  private String goal;

  @Option(names = "--note", paramLabel = "TEXT", description = "Why; default: \"Begin NAME\".")
  private String note;

  @Override
  ExitCode run(Desk desk) {
    Address start = desk.address(formula);
    if (from != null) {
      if (start.point().kind() != Address.Point.Kind.LATEST || from < 1) {
        throw usage("--from must be the number of a revision, given once.");
      }
      start = start.at(from);
    }
    String why = note != null ? note : "Begin " + name;
    WriteViews.VariantMade made =
        new ForkVariant(desk).call(start, name, Optional.ofNullable(goal), why, by(desk));
    print(made, out -> text(made, out));
    return ExitCode.DONE;
  }

  private void text(WriteViews.VariantMade made, Output out) {
    String line = made.from().formula() + "/" + name;
    out.line("Branched " + line + " from " + made.from().address());
    WrittenText.remarks(made.remarks(), out);
    GoalText.print(made.goal(), out);
    out.blank();
    out.line("Revise it with: ovenmark revise " + line + " --set … --note \"…\"");
  }
}
