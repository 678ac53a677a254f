package io.ovenmark.cli;

import io.ovenmark.demo.DemoNotebook;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ListFormulas;
import io.ovenmark.desk.Views;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the demo notebook. */
@Command(
    name = "demo",
    header = "Write the demo notebook.",
    description = {
      "Write the demo notebook to a folder: the Saltmarsh bench, an invented test bench with its"
          + " formulas, revisions, variants, bakes and drawn photos. Everything in it may be tried"
          + " out."
    },
    footerHeading = "%nExample:%n",
    footer = "  ovenmark demo saltmarsh")
final class DemoCommand extends Verb {
  @Parameters(index = "0", paramLabel = "DIR", description = "An empty or new folder.")
  private Path folder;

  @Option(names = "--json", description = "Print the list of its formulas as JSON.")
  private boolean json;

  @Override
  public Integer call() {
    Path place = file(folder);
    refuseUnlessEmpty(place);
    err().line("Writing the demo notebook, which takes a few seconds …");
    DemoNotebook.create(place, (done, total) -> {});
    try (Desk desk = new Desk(Notebook.open(place))) {
      Views.FormulaList list = new ListFormulas(desk).call();
      if (json) {
        out().json(list);
      } else {
        text(list, out());
      }
    }
    return ExitCode.DONE.number();
  }

  private static void refuseUnlessEmpty(Path place) {
    boolean empty;
    try (Stream<Path> files = Files.isDirectory(place) ? Files.list(place) : Stream.empty()) {
      empty = files.findAny().isEmpty() && (Files.isDirectory(place) || !Files.exists(place));
    } catch (IOException e) {
      empty = false;
    }
    if (!empty) {
      throw new Refusal(
          Refusal.Reason.EXISTS,
          place.toString(),
          "The demo needs a folder of its own, and there is something here already.",
          "Name a new or empty folder.");
    }
  }

  private static void text(Views.FormulaList list, Output out) {
    out.line("Wrote the demo notebook “" + list.title() + "” to " + list.folder());
    Table table = new Table("", "", ">");
    for (Views.FormulaEntry entry : list.formulas()) {
      table.row(
          entry.formula(),
          entry.name(),
          Figures.counted(entry.revisions(), "revision", "revisions"),
          entry.variants().isEmpty()
              ? ""
              : Figures.counted(entry.variants().size(), "variant", "variants"));
    }
    out.table(table.indent(2));
    out.line("Look at it with: ovenmark list --notebook " + list.folder());
  }
}
