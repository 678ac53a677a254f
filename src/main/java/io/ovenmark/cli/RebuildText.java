package io.ovenmark.cli;

import io.ovenmark.desk.CostViews;
import io.ovenmark.desk.RebuildViews;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Figure;
import java.util.List;
import java.util.Locale;

/** Prints a formula beside its reference. */
final class RebuildText {
  private static final int LONGEST_NAME = 34;

  private RebuildText() {}

  static void print(RebuildViews.RebuildSheet sheet, Output out) {
    out.line(sheet.reference().name() + FigureText.ARROW + sheet.rebuild().name());
    out.line("○ " + sheet.reference().address() + "   ● " + sheet.rebuild().address());
    out.blank();
    out.wrapped(sheet.summary(), "");
    out.heading("Lines, by the part that they play");
    Table table =
        new Table("", ">g", ">% batch", ">net c., g", ">protein, g", ">fat, g", ">kcal").indent(2);
    for (RebuildViews.PartView part : sheet.parts()) {
      row(table, part.part().toUpperCase(Locale.ROOT), "○", part.from());
      row(table, "", "●", part.to());
      for (RebuildViews.RowView line : part.lines()) {
        if (line.from() != null) {
          row(table, "  ", "○", line.from());
        }
        if (line.to() != null) {
          row(table, "  ", "●", line.to());
        }
      }
    }
    out.table(table);
    out.wrapped("Net carbohydrate, protein, fat and energy are what each brings to a piece.", "  ");
    figures("A piece", sheet.pieces(), out);
    figures("The formula", sheet.batch(), out);
    goal(sheet.goal(), out);
    out.heading("Allergens");
    out.wrapped("  Only in the rebuild: " + words(sheet.allergensGained()), "    ");
    out.wrapped("  Only in the reference: " + words(sheet.allergensLost()), "    ");
    cost(sheet.cost(), out);
    list("What the figures do not show", sheet.structure(), out);
    list("To know", sheet.remarks(), out);
    list("To mind", sheet.cautions(), out);
  }

  private static void row(
      Table table, String start, String shape, RebuildViews.ShareView share) {
    String name = share.name() == null ? "" : share.name();
    String brief =
        name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME - 1) + "…" : name;
    table.row(
        (start + " " + shape + " " + brief).stripTrailing(),
        cell(share, "grams"),
        cell(share, "percent_of_batch"),
        cell(share, Figure.NET_CARBOHYDRATE.key()),
        cell(share, Figure.PROTEIN.key()),
        cell(share, Figure.FAT.key()),
        cell(share, Figure.ENERGY.key()));
  }

  private static String cell(RebuildViews.ShareView share, String key) {
    Quantity value = share.figures().figures().get(key);
    if (value.isKnown()) {
      return FigureText.number(value.low());
    }
    return value.isUnknown() ? "?" : "≥ " + FigureText.number(value.low());
  }

  private static void figures(
      String heading, List<RebuildViews.FigureView> figures, Output out) {
    out.heading(heading);
    Table table = new Table("", ">○ reference", ">● rebuild", ">change").indent(2);
    for (RebuildViews.FigureView figure : figures) {
      table.row(figure.label(), figure.fromText(), figure.toText(), figure.deltaText());
    }
    out.table(table);
  }

  private static void goal(RebuildViews.GoalView goal, Output out) {
    if (goal == null) {
      return;
    }
    out.heading("Goal: " + goal.name());
    for (RebuildViews.RuleView rule : goal.rules()) {
      out.wrapped(
          "  " + rule.rule() + ": ○ " + Figures.met(rule.from()) + because(rule.fromText()) + ", ● "
              + Figures.met(rule.to()) + because(rule.toText()),
          "    ");
    }
  }

  private static String because(String text) {
    return text.isEmpty() ? "" : " (" + text + ")";
  }

  private static void cost(CostViews.CostDifference cost, Output out) {
    if (cost.perPiece().isEmpty()) {
      return;
    }
    out.heading("Cost of a piece");
    for (CostViews.MoneyDifference each : cost.perPiece()) {
      out.wrapped(
          "  ○ " + each.fromText() + ", ● " + each.toText() + ", change "
              + (each.delta() == null ? "unknown" : each.deltaText()),
          "    ");
    }
    if (!cost.unpriced().isEmpty()) {
      out.wrapped("  Without a price: " + words(cost.unpriced()), "    ");
    }
  }

  private static String words(List<String> list) {
    return list.isEmpty() ? "none" : String.join(", ", list);
  }

  private static void list(String heading, List<String> sentences, Output out) {
    if (!sentences.isEmpty()) {
      out.heading(heading);
      sentences.forEach(sentence -> out.wrapped("  " + sentence, "    "));
    }
  }
}
