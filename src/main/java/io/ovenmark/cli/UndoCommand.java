package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.UndoLast;
import io.ovenmark.desk.WriteViews;
import io.ovenmark.notebook.Address;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Takes the last change back. */
@Command(
    name = "undo",
    header = "Take the last change back.",
    description = {
      "Take the last change of the notebook back, whatever it was: a revision, a bake, a food. The"
          + " change stays in the history, and undoing once more does it again. Name a variant to"
          + " take back its own last change."
    },
    footerHeading = "%nExamples:%n",
    footer = {"  ovenmark undo", "  ovenmark undo seeded-lupin-bun/egg-free"})
final class UndoCommand extends WritingCommand {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FORMULA/VARIANT",
      description = "The variant; without it the main line.")
  private String variant;

  @Override
  ExitCode run(Desk desk) {
    Optional<Address> line = Optional.ofNullable(variant).map(desk::address);
    if (line.isPresent()
        && (line.get().variant().isEmpty()
            || line.get().point().kind() != Address.Point.Kind.LATEST)) {
      throw usage(
          "Undo takes back the last change of the whole main line, or of a variant named as"
              + " FORMULA/VARIANT. To take a formula back to an earlier revision use: ovenmark"
              + " restore "
              + line.get().line()
              + "@N");
    }
    WriteViews.Undone undone = new UndoLast(desk).call(line, by(desk));
    print(undone, out -> text(undone, out));
    return ExitCode.DONE;
  }

  private static void text(WriteViews.Undone undone, Output out) {
    out.wrapped("Taken back: “" + undone.undone() + "”", "  ");
    for (WriteViews.UndoneFormula formula : undone.formulas()) {
      out.line(
          formula.address() == null
              ? "  " + formula.formula() + " is gone from the notebook"
              : "  now " + formula.address());
      formula.changes().forEach(change -> out.wrapped("    " + change.sentence(), "      "));
    }
    out.line(
        "To take this back: ovenmark undo"
            + (undone.line().equals("main") ? "" : " " + undone.line()));
  }
}
