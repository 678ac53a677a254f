package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.measure.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** Turns bakes into the records of answers. */
final class BakeViews {
  private BakeViews() {}

  /**
   * One bake.
   *
   * @param revisions addresses of the revisions that have the baked content
   */
  static Views.BakeView view(Bake bake, List<String> revisions) {
    return new Views.BakeView(
        bake.formula(),
        bake.id(),
        bake.address(),
        bake.blob(),
        List.copyOf(revisions),
        Json.time(bake.time()),
        bake.baker().orElse(null),
        bake.ambient().orElse(null),
        bake.note().orElse(null),
        bake.findings(),
        bake.pieces().stream().map(BakeViews::piece).toList(),
        bake.photos().stream().map(BakeViews::photo).toList(),
        summary(bake.pieces()));
  }

  static Views.PieceView piece(Piece piece) {
    return new Views.PieceView(
        piece.id(),
        piece.temperature().map(Temperature::toString).orElse(null),
        celsius(piece.temperature()),
        number(piece.minutes()),
        piece.rack().orElse(null),
        number(piece.doughGrams()),
        number(piece.bakedGrams()),
        number(piece.lossPercent()),
        number(piece.widthMillimetres()),
        number(piece.heightMillimetres()),
        number(piece.spreadFactor()),
        piece.core().map(Temperature::toString).orElse(null),
        celsius(piece.core()),
        piece.coreLog().stream()
            .map(
                point ->
                    new Views.CorePointView(
                        point.minutes(),
                        point.temperature().toString(),
                        point.temperature().celsius()))
            .toList(),
        number(piece.crustShade()),
        piece.findings().stream().map(BakeViews::finding).toList(),
        piece.liking(),
        number(piece.meanLiking()),
        piece.attributes().stream()
            .map(a -> new Views.AttributeView(a.name(), a.scores()))
            .toList(),
        piece.verdict().orElse(null),
        piece.note().orElse(null));
  }

  static Views.FindingView finding(String word) {
    return new Views.FindingView(
        word, FindingVocabulary.of(word).map(FindingVocabulary::merit).orElse(null));
  }

  static Views.PhotoView photo(Photo photo) {
    return new Views.PhotoView(
        photo.file(),
        photo.caption().orElse(null),
        photo.alternative().orElse(null),
        photo.taken().map(Json::time).orElse(null),
        photo.marks().stream()
            .map(mark -> new Views.MarkView(mark.piece(), mark.x(), mark.y()))
            .toList());
  }

  static Views.BakeSummary summary(List<Piece> pieces) {
    List<Double> scores = pieces.stream().flatMap(piece -> piece.liking().stream()).toList();
    return new Views.BakeSummary(
        pieces.size(),
        number(values(pieces, Piece::heightMillimetres).mapToDouble(d -> d).max()),
        number(scores.stream().mapToDouble(d -> d).average()),
        scores.size(),
        number(values(pieces, Piece::lossPercent).mapToDouble(d -> d).average()),
        number(values(pieces, Piece::spreadFactor).mapToDouble(d -> d).average()),
        number(
            pieces.stream()
                .flatMap(piece -> piece.core().stream())
                .mapToDouble(Temperature::celsius)
                .min()));
  }

  private static Stream<Double> values(List<Piece> pieces, Function<Piece, OptionalDouble> figure) {
    return pieces.stream().map(figure).filter(OptionalDouble::isPresent).map(v -> v.getAsDouble());
  }

  static Double celsius(Optional<Temperature> temperature) {
    return temperature.map(Temperature::celsius).orElse(null);
  }

  static Double number(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }
}
