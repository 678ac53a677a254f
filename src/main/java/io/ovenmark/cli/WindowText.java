package io.ovenmark.cli;

import io.ovenmark.desk.Views;
import io.ovenmark.desk.WindowViews;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.ShownUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Prints a bake window. */
final class WindowText {
  private final WindowViews.WindowSheet sheet;
  private final ShownUnits units;
  private final Output out;

  private WindowText(WindowViews.WindowSheet sheet, ShownUnits units, Output out) {
    this.sheet = sheet;
    this.units = units;
    this.out = out;
  }

  static void print(WindowViews.WindowSheet sheet, ShownUnits units, Output out) {
    WindowText text = new WindowText(sheet, units, out);
    text.head();
    text.missing();
    text.map();
    text.limits();
    text.next();
    text.pieces();
    text.tail();
  }

  private void head() {
    out.line(sheet.name());
    out.line(sheet.address());
    out.blank();
    out.wrapped(
        "Limits: "
            + (sheet.asked().limits().isEmpty()
                ? "none"
                : String.join(", ", sheet.asked().limits()))
            + (sheet.asked().proposed() && !sheet.asked().limits().isEmpty()
                ? " (proposed by the pieces)"
                : ""),
        "  ");
    out.wrapped(
        "Pieces: "
            + sheet.choices().stream()
                .map(
                    choice ->
                        choice.words() + " " + choice.count()
                            + (choice.pieces().equals(sheet.asked().pieces()) ? " (taken)" : ""))
                .collect(Collectors.joining(", ")),
        "  ");
    out.blank();
    out.wrapped(sheet.summary(), "");
  }

  private void missing() {
    for (WindowViews.MissingView each : sheet.missing()) {
      out.blank();
      out.wrapped(each.sentence(), "");
      out.wrapped("  " + each.remedy(), "  ");
    }
  }

  private void map() {
    WindowViews.MapView map = sheet.map();
    if (map == null) {
      return;
    }
    out.heading(
        sheet.asked().along().equals("minutes")
            ? "Pieces in 100 that keep all limits, by oven and minutes"
            : "Pieces in 100 that keep all limits, by oven and thermal dose");
    List<String> heads = new ArrayList<>();
    heads.add(">");
    map.along().forEach(time -> heads.add(">" + FigureText.number(time)));
    Table table = new Table(heads.toArray(String[]::new)).indent(2);
    for (int row = map.temperaturesC().size() - 1; row >= 0; row--) {
      List<String> cells = new ArrayList<>();
      cells.add(heat(map.temperaturesC().get(row)));
      map.chances().get(row).forEach(c -> cells.add(Long.toString(Math.round(c * 100))));
      table.row(cells.toArray(String[]::new));
    }
    out.table(table);
  }

  private void limits() {
    out.heading("Limits");
    for (WindowViews.LimitView limit : sheet.limits()) {
      out.wrapped(
          "  " + limit.limit() + ": kept by " + limit.kept() + " of "
              + Figures.counted(limit.known(), "piece", "pieces") + " known."
              + (limit.sentence() == null ? "" : " " + limit.sentence()),
          "    ");
    }
  }

  private void next() {
    if (sheet.next().isEmpty()) {
      return;
    }
    out.heading("To bake next");
    for (WindowViews.NextView next : sheet.next()) {
      out.wrapped(
          "  " + next.temperature() + ", " + FigureText.number(next.minutes()) + " min. "
              + next.sentence(),
          "    ");
    }
  }

  private void pieces() {
    if (sheet.pieces().isEmpty()) {
      return;
    }
    out.heading("Pieces");
    Table table =
        new Table("", "bake", ">oven", ">min", ">core", ">crust", ">dose", "all kept", "findings")
            .indent(2);
    for (WindowViews.PieceView piece : sheet.pieces()) {
      table.row(
          piece.piece(),
          piece.bake(),
          heat(piece.temperatureC()),
          Figures.cell(piece.minutes()),
          heat(piece.coreC()),
          Figures.cell(piece.crustShade()),
          Figures.cell(piece.dose()),
          piece.keeps() == null ? "not known" : piece.keeps() ? "yes" : "no",
          piece.findings().stream()
              .map(Views.FindingView::word)
              .collect(Collectors.joining(", ")));
    }
    out.table(table.withoutEmptyColumns());
  }

  private void tail() {
    if (!sheet.remarks().isEmpty()) {
      out.blank();
      sheet.remarks().forEach(remark -> out.wrapped(remark, "  "));
    }
    if (!sheet.model().isEmpty()) {
      out.heading("How it was worked out");
      sheet.model().forEach(each -> out.wrapped("  " + each, "    "));
    }
    out.heading("To mind");
    sheet.cautions().forEach(caution -> out.wrapped("  " + caution, "    "));
  }

  private String heat(Double celsius) {
    return celsius == null
        ? ""
        : FigureText.number(units.inDegrees(celsius)) + " " + units.degreeUnit();
  }
}
