package io.ovenmark.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The bake window of a formula: where on the map of oven temperature × time every limit holds.
 *
 * <p>Each measure is fitted with three coefficients, a middle, a slope along the logarithm of time
 * and one along the oven's temperature ({@link LinearFit}); each finding with the same three in a
 * logistic regression with normal priors about no effect (Laplace). So few, and drawn towards no
 * effect, because four to thirty pieces settle no curved surface: it would follow the scatter. What
 * is not known of the coefficients is carried into every chance.
 *
 * <pre>{@code
 * BakeWindow window = BakeWindow.of(pieces, limits, Axis.MINUTES, Optional.empty(), false);
 * window.map().ifPresent(map -> map.best().chance());
 * }</pre>
 *
 * @param pieces all pieces that were asked about
 * @param onMap those with oven temperature and time (or dose)
 * @param axis what runs along the map
 * @param limits the limits
 * @param fits what was fitted for each; empty without a map
 * @param missing why there is no map; empty when there is one
 * @param map the map; empty when something is missing
 * @param next the pieces worth baking, the one that tells most first
 */
public record BakeWindow(
    List<BakedPiece> pieces,
    List<BakedPiece> onMap,
    Axis axis,
    List<WindowLimit> limits,
    List<LimitFit> fits,
    List<Missing> missing,
    Optional<WindowMap> map,
    List<NextBake> next) {
  private static final double BESIDE_CELSIUS = 10;
  private static final double BESIDE_TIME = 1.15;
  private static final double COOLEST = 80;
  private static final double HOTTEST = 300;

  /** Copies. */
  public BakeWindow {
    pieces = List.copyOf(pieces);
    onMap = List.copyOf(onMap);
    limits = List.copyOf(limits);
    fits = List.copyOf(fits);
    missing = List.copyOf(missing);
    next = List.copyOf(next);
  }

  /**
   * Works the window out.
   *
   * @param pieces the pieces
   * @param limits the limits
   * @param axis what runs along the map
   * @param range what the map shows and what may be baked next; empty for a little beyond the
   *     pieces
   * @param fahrenheit whether the oven is set in °F
   * @return the window, or what is missing for one
   */
  public static BakeWindow of(
      List<BakedPiece> pieces,
      List<WindowLimit> limits,
      Axis axis,
      Optional<OvenRange> range,
      boolean fahrenheit) {
    List<Axes.Point> points = new ArrayList<>();
    for (BakedPiece piece : pieces) {
      OptionalDouble along = axis.of(piece);
      if (piece.ovenCelsius().isPresent() && along.isPresent()) {
        points.add(
            new Axes.Point(piece, piece.ovenCelsius().getAsDouble(), along.getAsDouble()));
      }
    }
    List<BakedPiece> onMap = points.stream().map(Axes.Point::piece).toList();
    List<Missing> missing = Missing.in(points, pieces.size(), limits, axis);
    if (!missing.isEmpty()) {
      List<NextBake> first =
          axis == Axis.MINUTES && isSettledByBaking(missing)
              ? FirstBakes.beside(points, fahrenheit)
              : List.of();
      return new BakeWindow(
          pieces, onMap, axis, limits, List.of(), missing, Optional.empty(), first);
    }
    Axes axes = Axes.about(points);
    OvenRange shown = range.orElseGet(() -> beyond(points, fahrenheit));
    List<Response> responses =
        limits.stream().map(limit -> Response.of(limit, points, axes)).toList();
    MapMaker maker = new MapMaker(responses, axes, shown);
    List<NextBake> next =
        axis == Axis.MINUTES
            ? new NextBakes(maker, responses, axes, shown).find()
            : List.of();
    return new BakeWindow(
        pieces,
        onMap,
        axis,
        limits,
        responses.stream().map(LimitFit::of).toList(),
        List.of(),
        Optional.of(maker.map()),
        next);
  }

  private static boolean isSettledByBaking(List<Missing> missing) {
    return missing.stream().anyMatch(each -> !each.what().equals("limit"));
  }

  /** A little more than what was baked: further out the fit is not to be believed. */
  private static OvenRange beyond(List<Axes.Point> points, boolean fahrenheit) {
    double coolest = points.stream().mapToDouble(Axes.Point::ovenCelsius).min().orElseThrow();
    double hottest = points.stream().mapToDouble(Axes.Point::ovenCelsius).max().orElseThrow();
    double shortest = points.stream().mapToDouble(Axes.Point::along).min().orElseThrow();
    double longest = points.stream().mapToDouble(Axes.Point::along).max().orElseThrow();
    return OvenRange.of(
        Math.max(Math.min(COOLEST, coolest), coolest - BESIDE_CELSIUS),
        Math.min(Math.max(HOTTEST, hottest), hottest + BESIDE_CELSIUS),
        shortest / BESIDE_TIME,
        longest * BESIDE_TIME,
        fahrenheit);
  }

  /**
   * How a piece fares with the limits.
   *
   * @param piece the piece
   * @return true when it keeps all, false when it breaks one, empty when that is not known
   */
  public Optional<Boolean> keepsAll(BakedPiece piece) {
    boolean open = limits.isEmpty();
    for (WindowLimit limit : limits) {
      Optional<Boolean> kept = limit.isKept(piece);
      if (kept.isPresent() && !kept.get()) {
        return Optional.of(false);
      }
      open |= kept.isEmpty();
    }
    return open ? Optional.empty() : Optional.of(true);
  }
}
