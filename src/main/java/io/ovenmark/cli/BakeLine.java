package io.ovenmark.cli;

import io.ovenmark.desk.Views;
import io.ovenmark.measure.FigureText;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A bake on one line. */
final class BakeLine {
  private BakeLine() {}

  /** Name, pieces, what was measured, findings. */
  static List<String> of(Views.BakeView bake) {
    Views.BakeSummary summary = bake.summary();
    List<String> parts = new ArrayList<>();
    parts.add(bake.id());
    parts.add(Figures.counted(summary.pieces(), "piece", "pieces"));
    if (summary.bestHeightMm() != null) {
      parts.add("up to " + FigureText.number(summary.bestHeightMm()) + " mm high");
    }
    if (summary.meanLossPercent() != null) {
      parts.add(FigureText.number(summary.meanLossPercent()) + " % lost on baking");
    }
    if (summary.meanLiking() != null) {
      parts.add(
          "liking "
              + FigureText.number(summary.meanLiking())
              + " of 9 ("
              + Figures.counted(summary.tasters(), "score", "scores")
              + ")");
    }
    Set<String> findings = new LinkedHashSet<>(bake.findings());
    bake.pieces().forEach(piece -> piece.findings().forEach(each -> findings.add(each.word())));
    if (!findings.isEmpty()) {
      parts.add(String.join(", ", findings));
    }
    if (!bake.photos().isEmpty()) {
      parts.add(Figures.counted(bake.photos().size(), "photo", "photos"));
    }
    return List.copyOf(parts);
  }
}
