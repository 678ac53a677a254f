package io.ovenmark.cli;

import io.ovenmark.desk.LeverViews;
import io.ovenmark.desk.ScaleViews;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Figure;

/** Prints a scaled formula. */
final class ScaleText {
  private static final double SMALLEST_ERROR_PERCENT = 0.05;
  private static final double WORTH_TELLING = 0.001;

  private ScaleText() {}

  static void print(ScaleViews.ScaleSheet sheet, Output out) {
    out.line(sheet.name());
    out.line(sheet.address());
    out.blank();
    out.wrapped(sheet.summary(), "");
    sizes(sheet, out);
    lines(sheet, out);
    rounding(sheet, out);
    CostText.print(sheet.cost(), out);
    if (!sheet.remarks().isEmpty()) {
      out.blank();
      sheet.remarks().forEach(remark -> out.wrapped(remark, "  "));
    }
    out.heading("Allergens and cautions");
    sheet.cautions().forEach(caution -> out.wrapped("  " + caution, "    "));
  }

  private static void sizes(ScaleViews.ScaleSheet sheet, Output out) {
    if (sheet.handlingLossPercent() != null) {
      out.line(FigureText.number(sheet.handlingLossPercent()) + " % lost on handling.");
    }
    Quantity baked = sheet.yield().figures().get(Figure.BAKED_PER_PIECE.key());
    if (baked.isKnown()) {
      out.wrapped(
          "A piece weighs " + FigureText.of(baked, "g") + " when baked, at a loss of "
              + FigureText.number(sheet.bakingLossPercent()) + " %.",
          "  ");
    }
    if (sheet.tin() != null) {
      ScaleViews.TinView tin = sheet.tin();
      out.wrapped(
          "The " + tin.tin() + " holds " + FigureText.number(tin.volumeMl()) + " ml, "
              + tin.because() + ": " + FigureText.number(tin.doughG()) + " g of dough.",
          "  ");
    }
    for (ScaleViews.HandView hand : sheet.atHand()) {
      out.wrapped(
          "Of " + FigureText.number(hand.haveG()) + " g " + hand.food() + " it takes "
              + FigureText.number(hand.usedG()) + " g" + (hand.scarcest() ? ", the scarcest" : "")
              + "; " + FigureText.number(Math.max(0, hand.leftG())) + " g are left.",
          "  ");
    }
  }

  private static void lines(ScaleViews.ScaleSheet sheet, Output out) {
    Table table = new Table("line", ">formula", ">measure", ">exact, g", ">error");
    for (ScaleViews.LineView line : sheet.lines()) {
      boolean off =
          line.errorPercent() != null && Math.abs(line.errorPercent()) >= SMALLEST_ERROR_PERCENT;
      table.row(
          line.name(),
          line.entered(),
          line.measure(),
          line.exactG() == null ? "not known" : FigureText.number(line.exactG()),
          off ? FigureText.signed(line.errorPercent()) + " %" : "");
    }
    out.blank();
    out.table(table);
  }

  private static void rounding(ScaleViews.ScaleSheet sheet, Output out) {
    if (sheet.readableG() == 0) {
      return;
    }
    Table table = new Table("", ">exact → measured", ">error").indent(2);
    for (LeverViews.MoveView move : sheet.rounding()) {
      if (isWorthTelling(move)) {
        table.row(move.label(), move.changeText(), move.deltaText());
      }
    }
    if (table.isEmpty()) {
      out.blank();
      out.line("Measuring moves no figure by a thousandth or more.");
    } else {
      out.heading("What measuring to " + FigureText.number(sheet.readableG()) + " g moves");
      out.table(table);
    }
  }

  private static boolean isWorthTelling(LeverViews.MoveView move) {
    return move.from() == null
        || move.delta() == null
        || Math.abs(move.delta()) >= WORTH_TELLING * Math.abs(move.from());
  }
}
