package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.compare.Outcomes;
import io.ovenmark.measure.FigureText;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Says what was measured, seen and tasted of the bakes of a revision. */
final class StorySeen {
  private static final int MOST_VERDICTS = 3;

  private StorySeen() {}

  /**
   * In sentences.
   *
   * @param bakes the bakes that are told of
   * @param findings what was found on them, as the later side of a comparison
   */
  static List<String> of(List<Bake> bakes, List<Outcomes.FindingComparison> findings) {
    if (bakes.isEmpty()) {
      return List.of("Not baked.");
    }
    List<Piece> pieces = bakes.stream().flatMap(bake -> bake.pieces().stream()).toList();
    List<String> sentences = new ArrayList<>();
    sentences.add(measured(bakes.size(), pieces));
    found("Good", findings, each -> each.merit().orElse(false), sentences);
    found("To mend", findings, each -> !each.merit().orElse(true), sentences);
    found("Noted", findings, each -> each.merit().isEmpty(), sentences);
    sentences.addAll(verdicts(pieces));
    return List.copyOf(sentences);
  }

  private static String measured(int bakes, List<Piece> pieces) {
    List<String> parts = new ArrayList<>();
    parts.add(
        pieces.isEmpty()
            ? "No piece was noted one by one"
            : counted(pieces.size(), "piece") + " in " + counted(bakes, "bake"));
    OptionalDouble height =
        pieces.stream().flatMapToDouble(p -> p.heightMillimetres().stream()).max();
    height.ifPresent(mm -> parts.add("up to " + FigureText.number(mm) + " mm high"));
    OptionalDouble loss = pieces.stream().flatMapToDouble(p -> p.lossPercent().stream()).average();
    loss.ifPresent(
        percent ->
            parts.add(
                percent < 0
                    ? FigureText.number(-percent) + " % heavier when baked"
                    : FigureText.number(percent) + " % lost on baking"));
    List<Double> liking = pieces.stream().flatMap(piece -> piece.liking().stream()).toList();
    parts.add(
        liking.isEmpty()
            ? "not tasted"
            : "liking "
                + FigureText.number(liking.stream().mapToDouble(l -> l).average().getAsDouble())
                + " of 9 (" + counted(liking.size(), "score") + ")");
    return String.join(", ", parts) + ".";
  }

  private static String counted(int count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }

  private static void found(
      String heading,
      List<Outcomes.FindingComparison> findings,
      Predicate<Outcomes.FindingComparison> which,
      List<String> sentences) {
    String words =
        findings.stream()
            .filter(each -> each.toPieces() > 0)
            .filter(which)
            .map(
                each ->
                    each.toPieces() == each.toOf()
                        ? each.finding()
                        : each.finding() + " (" + each.toPieces() + " of " + each.toOf() + ")")
            .collect(Collectors.joining(", "));
    if (!words.isEmpty()) {
      sentences.add(heading + ": " + words + ".");
    }
  }

  private static List<String> verdicts(List<Piece> pieces) {
    Set<String> said = new LinkedHashSet<>();
    for (Piece piece : pieces) {
      piece
          .verdict()
          .ifPresent(text -> said.add("Piece " + piece.id() + ": “" + text.strip() + "”"));
    }
    return said.stream().limit(MOST_VERDICTS).toList();
  }
}
