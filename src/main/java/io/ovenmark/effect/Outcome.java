package io.ovenmark.effect;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.Piece;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Something that came out of the oven.
 *
 * @param key name for programs, such as {@code height_mm} or {@code finding.gummy crumb}
 * @param label in words
 * @param unit such as {@code mm}; empty for a number without unit
 * @param kind its sort
 * @param resolution what one piece can be told apart by at best (common practice, no source)
 */
public record Outcome(String key, String label, String unit, Kind kind, double resolution) {

  /** Sorts of outcomes, which are spoken of in words of their own. */
  public enum Kind {
    /** Height. */
    HEIGHT,
    /** Width. */
    WIDTH,
    /** Width divided by height. */
    SPREAD,
    /** Mass lost in the oven. */
    LOSS,
    /** Temperature in the centre. */
    CORE,
    /** Shade of the crust. */
    CRUST,
    /** Mean liking. */
    LIKING,
    /** How often something was found, in pieces of a hundred. */
    FINDING
  }

  private static final double IN_HUNDRED = 100;
  private static final int OFTEN_ENOUGH = 2;

  private static final Map<Kind, Function<Piece, OptionalDouble>> MEASURES =
      Map.of(
          Kind.HEIGHT, Piece::heightMillimetres,
          Kind.WIDTH, Piece::widthMillimetres,
          Kind.SPREAD, Piece::spreadFactor,
          Kind.LOSS, Piece::lossPercent,
          Kind.CORE, Outcome::core,
          Kind.CRUST, Piece::crustShade,
          Kind.LIKING, Piece::meanLiking);

  private static final List<Outcome> MEASURED =
      List.of(
          new Outcome("height_mm", "height", "mm", Kind.HEIGHT, 1),
          new Outcome("width_mm", "width", "mm", Kind.WIDTH, 1),
          new Outcome("spread_factor", "spread factor", "", Kind.SPREAD, 0.05),
          new Outcome("loss_percent", "loss on baking", "%", Kind.LOSS, 0.5),
          new Outcome("core_celsius", "core temperature", "°C", Kind.CORE, 1),
          new Outcome("crust_shade", "crust shade (0–4)", "", Kind.CRUST, 0.2),
          new Outcome("liking", "liking (1–9)", "", Kind.LIKING, 0.3));

  private static OptionalDouble core(Piece piece) {
    return piece.core().map(Temperature::celsius).map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  /**
   * The outcomes of a history: all that can be measured, then each finding that was noted of two
   * pieces or more, faults first, then merits, then free words.
   */
  static List<Outcome> of(Pieces pieces) {
    List<Outcome> outcomes = new ArrayList<>(MEASURED);
    Map<String, Integer> counts = new TreeMap<>();
    for (int i = 0; i < pieces.count(); i++) {
      for (String finding : pieces.findings(i)) {
        String order =
            FindingVocabulary.of(finding).map(word -> word.merit() ? "1" : "0").orElse("2");
        counts.merge(order + finding, 1, Integer::sum);
      }
    }
    counts.forEach(
        (ordered, count) -> {
          if (count >= OFTEN_ENOUGH) {
            String finding = ordered.substring(1);
            outcomes.add(
                new Outcome(
                    "finding." + finding, finding, "pieces in 100", Kind.FINDING, 30));
          }
        });
    return List.copyOf(outcomes);
  }

  /** The outcome of a piece; not a number when it is unknown. */
  double value(Pieces pieces, int i) {
    if (kind == Kind.FINDING) {
      boolean noted = pieces.findings(i).contains(label);
      return noted ? IN_HUNDRED : pieces.wasLookedAt(i) ? 0 : Double.NaN;
    }
    return MEASURES.get(kind).apply(pieces.piece(i)).orElse(Double.NaN);
  }

  /**
   * The outcome without its scale.
   *
   * @return such as {@code liking} for {@code liking (1–9)}
   */
  public String brief() {
    int scale = label.indexOf(" (");
    return kind != Kind.FINDING && scale > 0 ? label.substring(0, scale) : label;
  }

  /** What the outcome is measured on, in words: {@code the height}. */
  String measured() {
    return switch (kind) {
      case FINDING -> "what was found";
      case CRUST -> "the crust shade";
      case LIKING -> "the liking";
      case SPREAD -> "width and height";
      case LOSS -> "the mass before and after the oven";
      default -> "the " + label;
    };
  }
}
