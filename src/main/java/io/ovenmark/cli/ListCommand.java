package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FigureSet;
import io.ovenmark.desk.ListFormulas;
import io.ovenmark.desk.Views;
import io.ovenmark.worksheet.Figure;
import picocli.CommandLine.Command;

/** Lists the formulas of a notebook. */
@Command(
    name = "list",
    header = "List the formulas.",
    description = {
      "List the formulas of the notebook with their variants, what a piece has, and whether the"
          + " goal is met."
    },
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
    if (answer.formulas().isEmpty()) {
      out.blank();
      out.line("No formulas yet. Begin one with: ovenmark new \"Seeded lupin bun\"");
      return;
    }
    out.blank();
    Table table =
        new Table("formula", ">rev.", ">net carb., g", ">protein, g", ">liquid", ">bakes", "goal");
    boolean edited = false;
    for (Views.FormulaEntry entry : answer.formulas()) {
      edited |= entry.editedByHand();
      table.row(
          entry.formula() + (entry.editedByHand() ? " *" : ""),
          String.valueOf(entry.revisions()),
          figure(entry.perPiece(), Figure.NET_CARBOHYDRATE),
          figure(entry.perPiece(), Figure.PROTEIN),
          figure(entry.ratios(), Figure.LIQUID_RATIO),
          entry.bakes() == 0 ? "" : String.valueOf(entry.bakes()),
          entry.problems().isEmpty() ? goal(entry.goal(), entry.goalMet()) : "cannot be read");
      for (Views.VariantEntry variant : entry.variants()) {
        table.row(
            "  /" + variant.variant(),
            String.valueOf(variant.revisions()),
            "",
            "",
            "",
            "",
            goal(variant.goal(), variant.goalMet()));
      }
    }
    out.table(table);
    if (edited) {
      out.blank();
      out.line("* edited by hand on disk, not yet a revision");
    }
    answer.formulas().forEach(entry -> problems(entry, out));
  }

  private static String figure(FigureSet figures, Figure figure) {
    return figures == null ? "" : Figures.cell(figures.figures().get(figure.key()));
  }

  private static String goal(String goal, Boolean met) {
    return goal == null ? "" : goal + ": " + Figures.met(met);
  }

  private static void problems(Views.FormulaEntry entry, Output out) {
    for (Views.ProblemView problem : entry.problems()) {
      out.blank();
      out.line(problem.where());
      out.wrapped("  " + problem.message() + " " + problem.hint(), "  ");
    }
  }
}
