package io.ovenmark.cli;

import io.ovenmark.desk.LabelViews;
import io.ovenmark.measure.FigureText;
import io.ovenmark.worksheet.Basis;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Prints a label's figures: for each basis the declared amount, the unrounded one behind it. */
final class LabelText {
  private LabelText() {}

  static void print(LabelViews.LabelSheet sheet, Output out) {
    out.line(sheet.name());
    out.line(sheet.address());
    if (sheet.foodsChangedSince()) {
      out.wrapped(
          "Foods, goal or settings changed since this revision, and these figures are those of"
              + " today.",
          "  ");
    }
    out.blank();
    out.wrapped(sheet.aid(), "");
    out.blank();
    out.line(
        "Piece: " + FigureText.of(sheet.piece().figures().get("dough_g"), "g") + " dough, "
            + FigureText.of(sheet.piece().figures().get("baked_g"), "g") + " baked.");
    out.wrapped(sheet.loss().words(), "  ");
    sheet.remarks().forEach(remark -> out.wrapped(remark, "  "));
    sheet.regions().forEach(region -> print(region, out));
    out.heading("Cautions");
    sheet.cautions().forEach(caution -> out.wrapped("  " + caution, "    "));
  }

  private static void print(LabelViews.RegionView region, Output out) {
    out.heading(region.name());
    out.wrapped("  " + region.energy(), "  ");
    for (Basis basis : List.of(Basis.PIECE, Basis.DOUGH_100_G, Basis.BAKED_100_G)) {
      amounts(region, basis, out);
    }
    rules(region, out);
    missing(region, out);
    allergens(region, out);
    claims(region, out);
    region.notes().forEach(note -> out.wrapped("  " + note, "    "));
  }

  private static void amounts(LabelViews.RegionView region, Basis basis, Output out) {
    Table table = new Table(basis.label(), ">declared", ">unrounded", ">% Daily Value").indent(2);
    for (LabelViews.RowView row : region.rows()) {
      LabelViews.AmountView amount = row.amounts().get(basis.key());
      table.row(
          (row.part() ? "  " : "") + row.label(),
          amount.declared() == null ? "not declared" : amount.declared(),
          amount.text(),
          amount.dailyValueDeclared() == null ? "" : amount.dailyValueDeclared());
    }
    out.blank();
    out.table(table.withoutEmptyColumns());
  }

  private static void rules(LabelViews.RegionView region, Output out) {
    out.blank();
    out.line("  Rules of rounding");
    Set<String> told = new LinkedHashSet<>();
    for (LabelViews.RowView row : region.rows()) {
      String names =
          String.join(
              ", ",
              region.rows().stream()
                  .filter(each -> each.rule().equals(row.rule()))
                  .filter(each -> each.source().equals(row.source()))
                  .map(LabelViews.RowView::label)
                  .toList());
      told.add(names + ": " + row.rule() + ". " + source(row.source()) + ".");
    }
    told.forEach(rule -> out.wrapped("    " + rule, "      "));
    if (region.dailyValues() != null) {
      out.wrapped("    " + region.dailyValues() + ".", "      ");
    }
    for (LabelViews.RowView row : region.rows()) {
      if (row.note() != null) {
        out.wrapped("    " + row.label() + ": " + row.note(), "      ");
      }
    }
  }

  private static void missing(LabelViews.RegionView region, Output out) {
    Set<String> told = new LinkedHashSet<>();
    region.rows().forEach(row -> told.addAll(row.missing()));
    if (!told.isEmpty()) {
      out.blank();
      out.line("  Not known");
      told.forEach(words -> out.wrapped("    " + words, "      "));
    }
  }

  private static void allergens(LabelViews.RegionView region, Output out) {
    out.blank();
    out.line("  Allergens: " + source(region.allergenSource()));
    if (region.allergens().isEmpty()) {
      out.line("    The foods state none of them.");
    }
    for (LabelViews.AllergenView each : region.allergens()) {
      out.wrapped("    " + each.name() + ": " + String.join("; ", each.foods()), "      ");
    }
    if (!region.allergensUnknownIn().isEmpty()) {
      out.wrapped("    Unknown in: " + String.join("; ", region.allergensUnknownIn()), "      ");
    }
    region.allergenNotes().forEach(note -> out.wrapped("    " + note, "      "));
  }

  private static void claims(LabelViews.RegionView region, Output out) {
    for (String verdict : List.of("would meet", "would miss", "cannot be told")) {
      List<LabelViews.ClaimView> claims =
          region.claims().stream().filter(each -> each.verdict().equals(verdict)).toList();
      if (!claims.isEmpty()) {
        out.blank();
        out.line("  Claims: " + verdict);
        claims.forEach(claim -> print(claim, out));
      }
    }
    out.blank();
    out.line("  Claims that figures cannot judge");
    for (LabelViews.UnjudgedView each : region.unjudged()) {
      out.wrapped(
          "    " + each.claim() + ": " + each.why() + " " + source(each.source()) + ".", "      ");
    }
    out.blank();
  }

  private static void print(LabelViews.ClaimView claim, Output out) {
    out.wrapped(
        "    " + claim.claim() + ": " + claim.because() + ". Condition: " + claim.condition()
            + ". " + source(claim.source()) + "."
            + (claim.further() == null ? "" : " " + claim.further()),
        "      ");
  }

  private static String source(LabelViews.SourceView source) {
    return source.standing().equals("read")
        ? source.law()
        : source.law() + " (" + source.standing() + ")";
  }
}
