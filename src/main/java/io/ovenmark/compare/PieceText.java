package io.ovenmark.compare;

import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.compare.Outcomes.PieceOutcome;
import io.ovenmark.compare.Outcomes.SideOutcomes;
import io.ovenmark.measure.FigureText;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Prints pieces of a bake, one entry each; what was not measured is left out. */
final class PieceText {
  private PieceText() {}

  static void print(SideOutcomes side, String mark, TextLayout out) {
    if (side.bakes() == 0) {
      out.entry("  " + mark, "no bake");
    }
    for (PieceOutcome piece : side.pieces()) {
      out.entry("  " + mark, piece.name() + ": " + words(piece));
    }
    for (Photo photo : side.photos()) {
      String caption = photo.caption().map(text -> " · " + text).orElse("");
      out.entry("  " + mark, photo.file() + caption);
    }
  }

  private static String words(PieceOutcome outcome) {
    Piece piece = outcome.piece();
    List<String> parts = new ArrayList<>();
    piece.temperature().ifPresent(heat -> parts.add(heat.toString().replace('-', '−')));
    add(parts, "", piece.minutes(), " min");
    piece.rack().ifPresent(rack -> parts.add("rack " + rack));
    add(parts, "", piece.heightMillimetres(), " mm high");
    add(parts, "loss ", piece.lossPercent(), " %");
    add(parts, "spread ", piece.spreadFactor(), "");
    piece.core().ifPresent(core -> parts.add("core " + core.toString().replace('-', '−')));
    add(parts, "crust ", piece.crustShade(), " of 4");
    add(parts, "liking ", piece.meanLiking(), " (n " + piece.liking().size() + ")");
    Set<String> findings = new LinkedHashSet<>(piece.findings());
    findings.addAll(outcome.trayFindings());
    parts.addAll(findings);
    piece.verdict().ifPresent(parts::add);
    return parts.isEmpty() ? "nothing noted" : String.join(", ", parts);
  }

  private static void add(List<String> parts, String before, OptionalDouble value, String after) {
    if (value.isPresent()) {
      parts.add(before + FigureText.number(value.getAsDouble()) + after);
    }
  }
}
