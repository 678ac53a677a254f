package io.ovenmark.desk;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.window.Axis;
import io.ovenmark.window.BakeWindow;
import io.ovenmark.window.BakedPiece;
import io.ovenmark.window.LimitFit;
import io.ovenmark.window.NextBake;
import io.ovenmark.window.WindowLimit;
import io.ovenmark.window.WindowMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Turns a bake window into the record of its answer. */
final class WindowSheetMaker {
  private static final int NAMED = 4;

  private final ShownUnits units;
  private final FindWindow.Found found;
  private final BakeWindow window;
  private final WindowSentences sentences;

  WindowSheetMaker(Desk desk, FindWindow.Found found) {
    this.units = desk.units();
    this.found = found;
    this.window = found.window();
    this.sentences = new WindowSentences(units, window.axis());
  }

  WindowViews.WindowSheet sheet() {
    FindLevers.State state = found.state();
    List<String> cautions = new ArrayList<>();
    cautions.add(
        "The window is a fit to what was noted of bakes. It never says that a piece is safe:"
            + " measure the core, 71 °C (160 °F) for egg (USDA Food Safety and Inspection"
            + " Service), and follow local food codes and licensed practice.");
    cautions.addAll(Cautions.of(state.sheet().worksheet()));
    return new WindowViews.WindowSheet(
        state.shown().toString(),
        state.shown().formula(),
        state.shown().variant().orElse(null),
        state.number(),
        state.sheet().worksheet().formula().name(),
        sentences.summary(window),
        asked(),
        found.choices(),
        window.pieces().stream().map(this::piece).toList(),
        limits(),
        window.missing().stream()
            .map(
                each -> new WindowViews.MissingView(each.what(), each.sentence(), each.remedy()))
            .toList(),
        window.map().map(this::map).orElse(null),
        window.next().stream().map(this::next).toList(),
        window.next().stream()
            .map(each -> setting(each.celsius()) + " " + minutes(each.minutes()))
            .collect(Collectors.joining(", ")),
        window.map().isPresent() ? sentences.model(found.question().dose()) : List.of(),
        remarks(),
        cautions);
  }

  private WindowViews.AskedView asked() {
    return new WindowViews.AskedView(
        found.choice().key(),
        window.limits().stream().map(limit -> limit.text(units)).toList(),
        found.question().limits().isEmpty(),
        window.axis() == Axis.MINUTES ? "minutes" : "dose",
        found.question().dose().referenceCelsius(),
        found.question().dose().zCelsius());
  }

  private WindowViews.PieceView piece(BakedPiece piece) {
    List<String> breaks = new ArrayList<>();
    List<String> open = new ArrayList<>();
    for (WindowLimit limit : window.limits()) {
      Optional<Boolean> kept = limit.isKept(piece);
      if (kept.isEmpty()) {
        open.add(limit.text(units));
      } else if (!kept.get()) {
        breaks.add(limit.text(units));
      }
    }
    return new WindowViews.PieceView(
        piece.bake(),
        piece.piece(),
        piece.address(),
        BakeViews.number(piece.ovenCelsius()),
        BakeViews.number(piece.minutes()),
        BakeViews.number(piece.coreCelsius()),
        BakeViews.number(piece.crustShade()),
        BakeViews.number(piece.dose()),
        piece.findings().stream().map(BakeViews::finding).toList(),
        piece.lookedAt(),
        BakeViews.number(piece.liking()),
        window.keepsAll(piece).orElse(null),
        breaks,
        open,
        window.onMap().contains(piece));
  }

  private List<WindowViews.LimitView> limits() {
    if (window.fits().isEmpty()) {
      return window.limits().stream()
          .map(
              limit -> {
                List<Boolean> known =
                    window.pieces().stream().flatMap(p -> limit.isKept(p).stream()).toList();
                int kept = (int) known.stream().filter(each -> each).count();
                return new WindowViews.LimitView(
                    limit.text(units), known.size(), kept, null, null, null, null, null, null);
              })
          .toList();
    }
    return window.fits().stream().map(this::limit).toList();
  }

  private WindowViews.LimitView limit(LimitFit fit) {
    return new WindowViews.LimitView(
        fit.limit().text(units),
        fit.known(),
        fit.kept(),
        sentences.effects(fit),
        fit.perFifthMoreTime().value(),
        fit.perFifthMoreTime().deviation(),
        fit.perTenDegrees().value(),
        fit.perTenDegrees().deviation(),
        BakeViews.number(fit.noise()));
  }

  private WindowViews.MapView map(WindowMap map) {
    return new WindowViews.MapView(
        map.range().fromCelsius(),
        map.range().toCelsius(),
        map.range().from(),
        map.range().to(),
        map.celsius(),
        map.along(),
        map.chances(),
        spans(map.likely()),
        spans(map.possible()),
        map.failing().stream()
            .map(
                each ->
                    new WindowViews.FailingView(
                        each.limit().text(units), each.words(), spans(each.spans())))
            .toList(),
        new WindowViews.BestView(
            map.best().celsius(),
            map.best().along(),
            map.best().chance(),
            map.best().low(),
            map.best().high(),
            map.best().sureness().words(),
            map.best().weakest().map(limit -> limit.text(units)).orElse(null)));
  }

  private static List<WindowViews.SpanView> spans(List<WindowMap.Span> spans) {
    return spans.stream()
        .map(span -> new WindowViews.SpanView(span.celsius(), span.from(), span.to()))
        .toList();
  }

  private WindowViews.NextView next(NextBake next) {
    return new WindowViews.NextView(
        setting(next.celsius()),
        next.celsius(),
        next.minutes(),
        next.settles().map(each -> each.limit().text(units)).orElse(null),
        next.settles().map(NextBake.Settled::chance).orElse(null),
        next.settles().map(NextBake.Settled::share).orElse(null),
        sentences.next(next, window));
  }

  private String setting(double celsius) {
    return sentences.heat(celsius);
  }

  private static String minutes(double minutes) {
    return FigureText.number(minutes) + " min";
  }

  private List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    found.choices().stream()
        .filter(choice -> choice.pieces().equals(found.choice().key()))
        .filter(choice -> choice.doughs() > 1)
        .findFirst()
        .ifPresent(
            choice ->
                remarks.add(
                    "The pieces are of " + choice.doughs() + " doughs. What the dough did is laid"
                        + " to heat and time here, so take the map as a hint."));
    List<BakedPiece> placeless =
        window.pieces().stream().filter(piece -> !window.onMap().contains(piece)).toList();
    if (!placeless.isEmpty() && window.axis() == Axis.MINUTES) {
      remarks.add(
          "Not on the map, because oven temperature or time is unknown: " + names(placeless) + ".");
    }
    if (!placeless.isEmpty() && window.axis() == Axis.DOSE) {
      remarks.add(
          "Not on the map, because the core was not logged, so that the dose is unknown: "
              + names(placeless) + ".");
    }
    List<BakedPiece> unseen =
        window.onMap().stream().filter(piece -> !piece.lookedAt()).toList();
    boolean asksFindings =
        window.limits().stream().anyMatch(limit -> limit instanceof WindowLimit.Finding);
    if (!unseen.isEmpty() && asksFindings) {
      remarks.add(
          "Nothing was noted about what was seen or tasted of " + names(unseen)
              + ": its findings are unknown, not absent.");
    }
    if (window.axis() == Axis.DOSE) {
      remarks.add(
          "A dose cannot be set on an oven; the pieces worth baking stand on the map of minutes.");
    }
    return remarks;
  }

  private static String names(List<BakedPiece> pieces) {
    String names =
        pieces.stream()
            .limit(NAMED)
            .map(piece -> piece.piece() + " of " + piece.bake())
            .collect(Collectors.joining(", "));
    int more = pieces.size() - NAMED;
    return more > 0 ? names + " and " + more + " more" : names;
  }
}
