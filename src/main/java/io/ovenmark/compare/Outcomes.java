package io.ovenmark.compare;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Temperature;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What came out of the oven on both sides. What was not measured is unknown and enters no mean.
 *
 * @param from the pieces of the earlier side
 * @param to the pieces of the later side
 * @param figures each measure over all pieces of a side, in the order of {@link Measure}
 * @param findings faults first, then merits, then free words, each by name
 */
public record Outcomes(
    SideOutcomes from,
    SideOutcomes to,
    List<OutcomeFigure> figures,
    List<FindingComparison> findings) {

  /**
   * The pieces of one side.
   *
   * @param bakes how many bakes there are
   * @param pieces all pieces, bake by bake
   * @param photos paths of all photos, bake by bake
   */
  public record SideOutcomes(int bakes, List<PieceOutcome> pieces, List<Photo> photos) {
    /** Copies the lists. */
    public SideOutcomes {
      pieces = List.copyOf(pieces);
      photos = List.copyOf(photos);
    }
  }

  /**
   * One piece and where it belongs.
   *
   * @param bake id of its bake
   * @param time when the bake went into the oven
   * @param piece what was measured, seen and tasted
   * @param trayFindings findings of the whole tray, which hold for each of its pieces
   * @param photos paths of the photos on which it is marked, or on which nothing is
   */
  public record PieceOutcome(
      String bake,
      OffsetDateTime time,
      Piece piece,
      List<String> trayFindings,
      List<String> photos) {
    /** Copies the lists. */
    public PieceOutcome {
      trayFindings = List.copyOf(trayFindings);
      photos = List.copyOf(photos);
    }

    /**
     * The piece with its bake.
     *
     * @return such as {@code 2026-09-09-1 a}
     */
    public String name() {
      return bake + " " + piece.id();
    }
  }

  /** What is compared over the pieces of a side. */
  public enum Measure {
    /** The greatest height. */
    BEST_HEIGHT("best_height_mm", "best height", "mm"),
    /** The mean of all tasters' liking. */
    MEAN_LIKING("mean_liking", "mean liking (1–9)", ""),
    /** The mean loss in the oven. */
    MEAN_LOSS("mean_loss_percent", "mean loss in the oven", "%"),
    /** The mean spread factor, width divided by height. */
    MEAN_SPREAD("mean_spread_factor", "mean spread factor", ""),
    /** The mean core temperature. */
    MEAN_CORE("mean_core_celsius", "mean core temperature", "°C"),
    /** The mean crust shade. */
    MEAN_CRUST("mean_crust_shade", "mean crust shade (0–4)", "");

    private final String key;
    private final String label;
    private final String unit;

    Measure(String key, String label, String unit) {
      this.key = key;
      this.label = label;
      this.unit = unit;
    }

    /**
     * The name in JSON.
     *
     * @return such as {@code best_height_mm}
     */
    public String key() {
      return key;
    }

    /**
     * The name for people.
     *
     * @return such as {@code best height}
     */
    public String label() {
      return label;
    }

    /**
     * The unit.
     *
     * @return such as {@code mm}; empty for none
     */
    public String unit() {
      return unit;
    }
  }

  /**
   * A measure on both sides.
   *
   * @param measure which
   * @param from before; unknown when nothing was measured
   * @param to after; unknown when nothing was measured
   * @param fromCount on how many pieces, for liking how many ratings, it rests before
   * @param toCount the same after
   */
  public record OutcomeFigure(
      Measure measure, Quantity from, Quantity to, int fromCount, int toCount) {

    /**
     * After less before.
     *
     * @return the difference; of either sign and unknown unless both were measured
     */
    public Quantity delta() {
      return from.isKnown() && to.isKnown() ? to.minus(from) : Quantity.ANYTHING;
    }
  }

  /** What became of a finding. */
  public enum Course {
    /** Only on the later side. */
    APPEARED,
    /** Only on the earlier side. */
    GONE,
    /** On both sides. */
    STAYED,
    /** Only one side was baked. */
    NOT_COMPARABLE
  }

  /**
   * A finding on both sides. A tray without pieces counts as one.
   *
   * @param finding its words
   * @param merit whether it is a merit; empty for free words
   * @param fromPieces on how many pieces it was noted before
   * @param fromOf how many pieces there were
   * @param toPieces on how many pieces it was noted after
   * @param toOf how many pieces there are
   * @param course what became of it
   */
  public record FindingComparison(
      String finding,
      Optional<Boolean> merit,
      int fromPieces,
      int fromOf,
      int toPieces,
      int toOf,
      Course course) {}

  /** Copies the lists. */
  public Outcomes {
    figures = List.copyOf(figures);
    findings = List.copyOf(findings);
  }

  /**
   * Whether both sides were baked.
   *
   * @return true when there is something to compare
   */
  public boolean onBothSides() {
    return from.bakes > 0 && to.bakes > 0;
  }

  static Outcomes between(List<Bake> from, List<Bake> to) {
    SideOutcomes before = side(from);
    SideOutcomes after = side(to);
    List<OutcomeFigure> figures = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      List<Double> a = values(measure, before.pieces);
      List<Double> b = values(measure, after.pieces);
      figures.add(
          new OutcomeFigure(measure, result(measure, a), result(measure, b), a.size(), b.size()));
    }
    return new Outcomes(before, after, figures, findings(from, to));
  }

  private static SideOutcomes side(List<Bake> bakes) {
    List<PieceOutcome> pieces = new ArrayList<>();
    List<Photo> photos = new ArrayList<>();
    for (Bake bake : bakes) {
      photos.addAll(bake.photos());
      for (Piece piece : bake.pieces()) {
        List<String> shown =
            bake.photos().stream()
                .filter(photo -> shows(photo, piece.id()))
                .map(Photo::file)
                .toList();
        pieces.add(new PieceOutcome(bake.id(), bake.time(), piece, bake.findings(), shown));
      }
    }
    return new SideOutcomes(bakes.size(), pieces, photos);
  }

  private static boolean shows(Photo photo, String piece) {
    return photo.marks().isEmpty()
        || photo.marks().stream().anyMatch(mark -> mark.piece().equals(piece));
  }

  private static List<Double> values(Measure measure, List<PieceOutcome> pieces) {
    if (measure == Measure.MEAN_LIKING) {
      return pieces.stream().flatMap(outcome -> outcome.piece.liking().stream()).toList();
    }
    Function<Piece, OptionalDouble> value =
        switch (measure) {
          case BEST_HEIGHT -> Piece::heightMillimetres;
          case MEAN_LOSS -> Piece::lossPercent;
          case MEAN_SPREAD -> Piece::spreadFactor;
          case MEAN_CORE ->
              piece ->
                  piece
                      .core()
                      .map(Temperature::celsius)
                      .map(OptionalDouble::of)
                      .orElse(OptionalDouble.empty());
          case MEAN_CRUST -> Piece::crustShade;
          default -> throw new IllegalStateException(measure.toString());
        };
    return pieces.stream()
        .map(outcome -> value.apply(outcome.piece))
        .filter(OptionalDouble::isPresent)
        .map(OptionalDouble::getAsDouble)
        .toList();
  }

  private static Quantity result(Measure measure, List<Double> values) {
    var stream = values.stream().mapToDouble(Double::doubleValue);
    return Quantity.of(measure == Measure.BEST_HEIGHT ? stream.max() : stream.average());
  }

  private static List<FindingComparison> findings(List<Bake> from, List<Bake> to) {
    Map<String, Integer> before = counts(from);
    Map<String, Integer> after = counts(to);
    Map<String, FindingComparison> sorted = new TreeMap<>();
    Set<String> all = new HashSet<>(before.keySet());
    all.addAll(after.keySet());
    for (String finding : all) {
      int a = before.getOrDefault(finding, 0);
      int b = after.getOrDefault(finding, 0);
      Optional<Boolean> merit = FindingVocabulary.of(finding).map(FindingVocabulary::merit);
      Course course =
          from.isEmpty() || to.isEmpty()
              ? Course.NOT_COMPARABLE
              : a == 0 ? Course.APPEARED : b == 0 ? Course.GONE : Course.STAYED;
      String order = merit.map(good -> good ? "1" : "0").orElse("2");
      sorted.put(
          order + finding,
          new FindingComparison(finding, merit, a, pieces(from), b, pieces(to), course));
    }
    return List.copyOf(sorted.values());
  }

  private static Map<String, Integer> counts(List<Bake> bakes) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Bake bake : bakes) {
      Set<String> tray = new HashSet<>(bake.findings().stream().map(Outcomes::plain).toList());
      if (bake.pieces().isEmpty()) {
        tray.forEach(finding -> counts.merge(finding, 1, Integer::sum));
      }
      for (Piece piece : bake.pieces()) {
        Set<String> noted = new HashSet<>(tray);
        piece.findings().forEach(finding -> noted.add(plain(finding)));
        noted.forEach(finding -> counts.merge(finding, 1, Integer::sum));
      }
    }
    return counts;
  }

  private static String plain(String finding) {
    return FindingVocabulary.of(finding)
        .map(FindingVocabulary::word)
        .orElse(finding.strip().toLowerCase(Locale.ROOT));
  }

  private static int pieces(List<Bake> bakes) {
    return bakes.stream().mapToInt(bake -> Math.max(1, bake.pieces().size())).sum();
  }
}
