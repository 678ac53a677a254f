package io.ovenmark.cli;

import io.ovenmark.desk.CarryOver;
import io.ovenmark.desk.Choices;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.WriteViews;
import io.ovenmark.notebook.Address;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Carries the main line's improvements into a variant. */
@Command(
    name = "carry",
    header = "Carry improvements into a variant.",
    description = {
      "Carry what the main line improved since the fork, or since the last time, into a variant."
          + " The two are merged line by line; where both changed the same, nothing is written,"
          + " both sides are shown and the exit code is 3."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark carry seeded-lupin-bun/egg-free --preview",
      "  ovenmark carry seeded-lupin-bun/egg-free --take all=variant --note \"Hotter oven\""
    })
final class CarryCommand extends WritingCommand {
  private static final String OURS = "variant";
  private static final String THEIRS = "main";

  @Parameters(index = "0", paramLabel = "FORMULA/VARIANT", description = "The variant.")
  private String variant;

  @Option(names = "--preview", description = "Show what it would give; write nothing.")
  private boolean preview;

  @Option(
      names = "--take",
      paramLabel = "FIELD=SIDE",
      description =
          "Settle a conflict: water.amount=variant, =main or =before; all=variant for all of them.")
  private List<String> takes;

  @Option(
      names = "--note",
      paramLabel = "TEXT",
      description = "Why; default: \"Carry over FORMULA@N\".")
  private String note;

  @Override
  ExitCode run(Desk desk) {
    Address address = desk.address(variant);
    if (address.point().kind() != Address.Point.Kind.LATEST) {
      throw usage("Improvements are carried into the newest revision: leave out \"@\".");
    }
    Choices choices = Takes.read(takes, OURS, THEIRS);
    CarryOver verb = new CarryOver(desk);
    WriteViews.CarryWritten answer =
        preview ? verb.preview(address, choices) : carry(desk, verb, address, choices);
    boolean conflict = answer.outcome().equals("conflict");
    if (json()) {
      out().json(answer);
    } else if (conflict && !preview) {
      conflict(answer, err());
    } else {
      text(answer, out());
    }
    return conflict && !preview ? ExitCode.CONFLICT : ExitCode.DONE;
  }

  private WriteViews.CarryWritten carry(
      Desk desk, CarryOver verb, Address address, Choices choices) {
    String why = note;
    if (why == null) {
      why = "Carry over " + verb.preview(address, Choices.NONE).from().address();
    }
    return verb.call(address, choices, why, by(desk));
  }

  private void text(WriteViews.CarryWritten answer, Output out) {
    String address = answer.revision().address();
    switch (answer.outcome()) {
      case "nothing" ->
          out.wrapped(
              "Nothing to carry: "
                  + address
                  + " holds everything of "
                  + answer.from().address()
                  + " already.",
              "");
      case "carried" -> {
        WrittenText.revision(answer.revision(), out);
        out.line("  carries " + answer.from().address());
        WrittenText.changes(answer.changes(), answer.comparison(), out);
        if (answer.changes().isEmpty()) {
          out.line("The formula stays as it is.");
        }
      }
      default -> {
        out.line("Carrying " + answer.from().address() + " into " + address + " would give:");
        answer.changes().forEach(change -> out.wrapped("  " + change.sentence(), "    "));
        if (answer.changes().isEmpty()) {
          out.line("  no change of the formula");
        }
        if (!answer.conflicts().isEmpty()) {
          out.blank();
          out.line("To be chosen (--take FIELD=variant or FIELD=main):");
          WrittenText.conflicts(answer.conflicts(), OURS, THEIRS, out);
        }
      }
    }
    WrittenText.remarks(answer.notes(), out);
    answer
        .keptAsInVariant()
        .forEach(file -> out.wrapped(file + " stays as the variant has it.", "  "));
  }

  private static void conflict(WriteViews.CarryWritten answer, Output err) {
    err.wrapped(
        "ovenmark: Nothing was carried: "
            + answer.revision().address()
            + " and "
            + answer.from().address()
            + " changed the same.",
        "  ");
    WrittenText.conflicts(answer.conflicts(), OURS, THEIRS, err);
    String field = WrittenText.shortField(answer.conflicts().get(0));
    err.blank();
    err.wrapped(
        "  hint:  Repeat the command with a --take for each field, such as --take "
            + field
            + "=variant or --take "
            + field
            + "=main, or --take all=variant.",
        "         ");
  }
}
