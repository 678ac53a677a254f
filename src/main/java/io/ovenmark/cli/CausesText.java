package io.ovenmark.cli;

import io.ovenmark.desk.CauseViews;
import io.ovenmark.measure.FigureText;
import java.util.List;

/** Prints findings and their causes. */
final class CausesText {
  private final CauseViews.CauseSheet sheet;
  private final Output out;

  private CausesText(CauseViews.CauseSheet sheet, Output out) {
    this.sheet = sheet;
    this.out = out;
  }

  static void print(CauseViews.CauseSheet sheet, Output out) {
    CausesText text = new CausesText(sheet, out);
    out.line(sheet.name());
    out.line(sheet.address());
    out.blank();
    if (sheet.inquiry() == null) {
      text.overview();
    } else {
      text.inquiry(sheet.inquiry());
    }
    if (sheet.unjudgedBakes() > 0) {
      out.blank();
      out.wrapped(
          "Nothing was noted on " + sheet.unjudgedBakes() + " more "
              + (sheet.unjudgedBakes() == 1 ? "bake" : "bakes") + ", which tells nothing.",
          "");
    }
    out.heading("To mind");
    sheet.cautions().forEach(caution -> out.wrapped("  " + caution, "    "));
  }

  private void overview() {
    if (sheet.findings().isEmpty()) {
      out.wrapped(
          "No bake up to here has a finding. Note what you see with: ovenmark bake set", "");
      return;
    }
    Table table = new Table("finding", "now", ">bakes with it", "newest", "most likely");
    for (CauseViews.FindingRow row : sheet.findings()) {
      table.row(
          row.word(),
          row.standing(),
          row.bakes() + " of " + row.judged(),
          row.last(),
          row.likely() == null ? "" : row.likely());
    }
    out.table(table);
    out.blank();
    out.wrapped(
        "For one of them: ovenmark causes " + sheet.address() + " \""
            + sheet.findings().get(0).word() + "\"",
        "");
  }

  private void inquiry(CauseViews.InquiryView inquiry) {
    out.wrapped(inquiry.summary(), "");
    turns(inquiry);
    causes(inquiry);
    if (!inquiry.plans().isEmpty()) {
      out.heading(
          "Bakes that tell the changes apart, "
              + inquiry.pieces() + (inquiry.pieces() == 1 ? " piece" : " pieces")
              + " of each setting");
      inquiry.plans().forEach(plan -> new PlanText(plan, out).print());
    }
    if (!inquiry.remarks().isEmpty()) {
      out.blank();
      inquiry.remarks().forEach(remark -> out.wrapped("  " + remark, "    "));
    }
  }

  private void turns(CauseViews.InquiryView inquiry) {
    if (inquiry.turns().isEmpty()) {
      return;
    }
    out.heading("What changed");
    for (CauseViews.TurnView turn : inquiry.turns()) {
      out.wrapped(
          "  " + (turn.came() ? "● came" : "○ went") + ": " + turn.from() + " ("
              + turn.fromAddress() + ") → " + turn.to() + " (" + turn.toAddress() + ")",
          "    ");
      out.wrapped("    " + turn.sentence(), "    ");
      for (CauseViews.ChangedView change : turn.changes()) {
        out.wrapped(
            "      " + change.name() + (change.detail().isEmpty() ? "" : ": " + change.detail()),
            "        ");
      }
      if (turn.likeForLike() != null) {
        out.wrapped("    " + turn.likeForLike(), "    ");
      }
    }
  }

  private void causes(CauseViews.InquiryView inquiry) {
    if (inquiry.causes().isEmpty()) {
      return;
    }
    out.heading("Common causes, those first whose figure moved with it");
    for (CauseViews.CauseView cause : inquiry.causes()) {
      out.wrapped(
          "  " + cause.number() + ". " + cause.cause() + " (" + cause.standingText() + ")",
          "     ");
      out.wrapped("     " + cause.figure(), "     ");
      cause.details().forEach(detail -> out.wrapped("     " + detail, "     "));
      out.wrapped("     " + cause.advice(), "     ");
      if (cause.wish() != null) {
        out.wrapped(
            "     ovenmark levers " + sheet.address() + " --want \"" + cause.wish() + "\"",
            "       ");
      } else if (cause.draft()) {
        out.wrapped(
            "     ovenmark causes " + sheet.address() + " \"" + inquiry.finding()
                + "\" --against " + cause.number(),
            "       ");
      }
    }
    List<String> sources =
        inquiry.causes().stream().map(CauseViews.CauseView::source).distinct().toList();
    out.wrapped(
        "  Causes, their order and first steps: "
            + String.join("; ", sources.isEmpty() ? List.of() : sources) + ".",
        "  ");
  }

  /** A number or a word for none. */
  static String number(Double value, String unit) {
    return value == null ? "unknown" : FigureText.number(value) + " " + unit;
  }
}
