package io.ovenmark.cli;

import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.Views;
import io.ovenmark.measure.FigureText;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Prints a bake piece by piece. */
final class BakeText {
  private BakeText() {}

  /** A bake that was committed. */
  static void written(KitchenViews.BakeWritten written, Output out) {
    print(written.bake(), out);
    if (!written.remarks().isEmpty()) {
      out.blank();
      WrittenText.remarks(written.remarks(), out);
    }
  }

  /** The whole bake. */
  static void print(Views.BakeView bake, Output out) {
    List<String> head = new ArrayList<>();
    head.add(bake.formula() + " " + bake.id());
    head.add(Figures.minute(bake.time()));
    if (bake.baker() != null) {
      head.add(bake.baker());
    }
    out.wrapped(String.join(" · ", head), "  ");
    out.wrapped("Of " + revisions(bake), "  ");
    remark("Room and oven", bake.ambient(), out);
    remark("Note", bake.note(), out);
    if (!bake.findings().isEmpty()) {
      remark("Findings", String.join(", ", bake.findings()), out);
    }
    pieces(bake.pieces(), out);
    photos(bake.photos(), out);
  }

  private static String revisions(Views.BakeView bake) {
    if (bake.revisions().isEmpty()) {
      return bake.address() + ", a content that no revision has";
    }
    List<String> others =
        bake.revisions().stream().filter(each -> !each.equals(bake.address())).toList();
    String known = bake.revisions().contains(bake.address()) ? bake.address() : null;
    if (known == null) {
      return String.join(", ", bake.revisions()) + " (noted then as " + bake.address() + ")";
    }
    return known + (others.isEmpty() ? "" : ", the same content as " + String.join(", ", others));
  }

  private static void remark(String what, String text, Output out) {
    if (text != null) {
      out.wrapped(what + ": " + text, "  ");
    }
  }

  private static void pieces(List<Views.PieceView> pieces, Output out) {
    if (pieces.isEmpty()) {
      return;
    }
    Table table =
        new Table(
            "", ">oven", ">min", ">dough, g", ">baked, g", ">loss, %", ">w, mm", ">h, mm", ">core",
            ">crust", ">liking");
    for (Views.PieceView piece : pieces) {
      table.row(
          piece.id(),
          piece.temperature() == null ? "" : piece.temperature(),
          Figures.cell(piece.minutes()),
          Figures.cell(piece.doughG()),
          Figures.cell(piece.bakedG()),
          Figures.cell(piece.lossPercent()),
          Figures.cell(piece.widthMm()),
          Figures.cell(piece.heightMm()),
          piece.core() == null ? "" : piece.core(),
          Figures.cell(piece.crustShade()),
          Figures.cell(piece.meanLiking()));
    }
    out.blank();
    out.table(table.withoutEmptyColumns());
    pieces.forEach(piece -> words(piece, out));
  }

  /** What does not fit into columns. */
  private static void words(Views.PieceView piece, Output out) {
    List<String> words = new ArrayList<>();
    if (!piece.findings().isEmpty()) {
      words.add(
          piece.findings().stream()
              .map(Views.FindingView::word)
              .collect(Collectors.joining(", ")));
    }
    for (Views.AttributeView attribute : piece.attributes()) {
      words.add(
          attribute.name() + " "
              + attribute.scores().stream()
                  .map(FigureText::signed)
                  .collect(Collectors.joining(", ")));
    }
    if (!piece.coreLog().isEmpty()) {
      words.add(
          "core "
              + piece.coreLog().stream()
                  .map(
                      point ->
                          FigureText.number(point.minutes()) + " min " + point.temperature())
                  .collect(Collectors.joining(", ")));
    }
    if (piece.rack() != null) {
      words.add("rack " + piece.rack());
    }
    if (piece.verdict() != null) {
      words.add("verdict: " + piece.verdict());
    }
    if (piece.note() != null) {
      words.add(piece.note());
    }
    if (!words.isEmpty()) {
      out.wrapped("  " + piece.id() + ": " + String.join(" · ", words), "    ");
    }
  }

  private static void photos(List<Views.PhotoView> photos, Output out) {
    if (photos.isEmpty()) {
      return;
    }
    out.heading("Photos");
    for (Views.PhotoView photo : photos) {
      List<String> parts = new ArrayList<>();
      parts.add(photo.file());
      if (photo.caption() != null) {
        parts.add(photo.caption());
      }
      if (!photo.marks().isEmpty()) {
        parts.add(
            "marked: "
                + photo.marks().stream()
                    .map(Views.MarkView::piece)
                    .collect(Collectors.joining(", ")));
      }
      out.wrapped("  " + String.join(" · ", parts), "    ");
    }
  }
}
