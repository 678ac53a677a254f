package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ListFormulas;
import io.ovenmark.desk.Views;
import picocli.CommandLine.Command;

/** Lists the formulas of a notebook. */
@Command(
    name = "list",
    description = "List the formulas of the notebook with their variants and goals.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark list")
final class ListCommand extends DeskCommand {
  @Override
  ExitCode run(Desk desk) {
    Views.FormulaList answer = new ListFormulas(desk).call();
    print(answer, out -> text(answer, out));
    return ExitCode.DONE;
  }

  private static void text(Views.FormulaList answer, Output out) {
    out.line(answer.title());
    Table table = new Table("", "");
    answer.formulas().forEach(entry -> table.row(entry.latest(), entry.name()));
    out.table(table);
  }
}
