package io.ovenmark.demo;

import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Where the pieces of a picture lie, in pixels; known without drawing anything.
 *
 * @param spots one for each piece, in the bake's order
 * @param pixelsPerMillimetre the scale of the picture
 */
record PictureLayout(List<Spot> spots, double pixelsPerMillimetre) {
  /** Width of a picture. */
  static final int WIDTH = 1600;

  /** Height of a picture. */
  static final int HEIGHT = 1200;

  /** Left and right margin of the tray. */
  static final int MARGIN = 40;

  /** Where the tray ends, seen from above. */
  static final int TRAY_BOTTOM = 950;

  /** Where the pieces stand in a picture from the side when they stand in one row. */
  static final int SINGLE_FOOT = 640;

  /** Where the upper of two rows stands. */
  static final int UPPER_FOOT = 410;

  /** Where the lower of two rows stands. */
  static final int LOWER_FOOT = 920;

  /** Room for the upright ruler in a picture from the side. */
  static final int UPRIGHT_RULER = 170;

  private static final double ROOM_ABOVE = 1.34;
  private static final double ROOM_BESIDE = 1.16;
  private static final double LARGEST_ABOVE = 5.2;
  private static final double LARGEST_BESIDE = 7.5;

  /** Share of its width that a rectangle is deep. */
  static final double RECTANGLE_DEPTH = 0.62;

  /**
   * A piece and its place.
   *
   * @param piece the piece
   * @param x middle of the piece
   * @param y middle of the piece; in a picture from the side, where it stands
   * @param width in pixels
   * @param height in pixels: seen from above its depth, from the side its height
   */
  record Spot(Piece piece, double x, double y, double width, double height) {}

  /** Copies the list. */
  PictureLayout {
    spots = List.copyOf(spots);
  }

  /** Pieces on a tray, seen from above: as many to a row as lets them be largest. */
  static PictureLayout above(List<Piece> pieces, PieceShape shape) {
    if (pieces.isEmpty()) {
      return new PictureLayout(List.of(), LARGEST_ABOVE);
    }
    double depth = shape == PieceShape.RECTANGLE ? RECTANGLE_DEPTH : 1;
    double widest = 0;
    for (Piece piece : pieces) {
      widest = Math.max(widest, width(piece, pieces, shape));
    }
    double areaWidth = WIDTH - 2.0 * MARGIN - 60;
    double areaHeight = TRAY_BOTTOM - MARGIN - 40.0;
    int columns = 1;
    double scale = 0;
    for (int n = 1; n <= pieces.size(); n++) {
      int rows = (pieces.size() + n - 1) / n;
      double room = ROOM_ABOVE * widest;
      double fits = Math.min(areaWidth / n / room, areaHeight / rows / (room * depth));
      if (fits > scale) {
        scale = fits;
        columns = n;
      }
    }
    scale = Math.min(scale, LARGEST_ABOVE);
    int rows = (pieces.size() + columns - 1) / columns;
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      int row = i / columns;
      int inRow = Math.min(columns, pieces.size() - row * columns);
      double step = Math.min(areaWidth / inRow, ROOM_ABOVE * 1.15 * widest * scale);
      double x = WIDTH / 2.0 + (i % columns - (inRow - 1) / 2.0) * step;
      double y = MARGIN + 20 + areaHeight * (row + 0.5) / rows;
      long seed = piece.id().hashCode() + 31L * i;
      double width = width(piece, pieces, shape) * scale;
      spots.add(
          new Spot(
              piece,
              x + 14 * Texture.noise(seed, 0.3, 0.7),
              y + 14 * Texture.noise(seed, 5.3, 2.7),
              width,
              width * depth));
    }
    return new PictureLayout(spots, scale);
  }

  /** Pieces cut through and seen from the side, in one row or, from three on, in two. */
  static PictureLayout side(List<Piece> pieces, PieceShape shape) {
    if (pieces.isEmpty()) {
      return new PictureLayout(List.of(), LARGEST_BESIDE);
    }
    int inRow = pieces.size() < 3 ? pieces.size() : (pieces.size() + 1) / 2;
    double widest = 0;
    double highest = 0;
    for (Piece piece : pieces) {
      widest = Math.max(widest, width(piece, pieces, shape));
      highest = Math.max(highest, height(piece, pieces, shape));
    }
    double areaWidth = WIDTH - 2.0 * MARGIN - UPRIGHT_RULER;
    double step = areaWidth / inRow;
    double scale = Math.min(step / (ROOM_BESIDE * widest), (UPPER_FOOT - 50) / highest);
    scale = Math.min(scale, LARGEST_BESIDE);
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      int row = i / inRow;
      int foot = inRow == pieces.size() ? SINGLE_FOOT : row == 0 ? UPPER_FOOT : LOWER_FOOT;
      spots.add(
          new Spot(
              piece,
              MARGIN + UPRIGHT_RULER + (i % inRow + 0.5) * step,
              foot,
              width(piece, pieces, shape) * scale,
              height(piece, pieces, shape) * scale));
    }
    return new PictureLayout(spots, scale);
  }

  /** Marks in the middle of the pieces as seen from above. */
  List<Photo.Mark> marksAbove() {
    return spots.stream().map(spot -> mark(spot.piece(), spot.x(), spot.y())).toList();
  }

  /** Marks in the middle of the cut faces. */
  List<Photo.Mark> marksAside() {
    return spots.stream()
        .map(spot -> mark(spot.piece(), spot.x(), spot.y() - spot.height() / 2))
        .toList();
  }

  private static Photo.Mark mark(Piece piece, double x, double y) {
    return new Photo.Mark(piece.id(), thousandth(x / WIDTH), thousandth(y / HEIGHT));
  }

  private static double thousandth(double share) {
    return Math.round(share * 1000) / 1000.0;
  }

  /** The width, or where it was not measured, that of the other pieces. */
  static double width(Piece piece, List<Piece> pieces, PieceShape shape) {
    return like(piece, pieces, Piece::widthMillimetres, shape.usualWidth());
  }

  /** The height, or where it was not measured, that of the other pieces. */
  static double height(Piece piece, List<Piece> pieces, PieceShape shape) {
    return like(piece, pieces, Piece::heightMillimetres, shape.usualHeight());
  }

  /** The crust shade, or where it was not judged, that of the other pieces. */
  static double crust(Piece piece, List<Piece> pieces) {
    return like(piece, pieces, Piece::crustShade, 2);
  }

  private static double like(
      Piece piece, List<Piece> pieces, Function<Piece, OptionalDouble> measure, double usual) {
    OptionalDouble own = measure.apply(piece);
    return own.isPresent()
        ? own.getAsDouble()
        : pieces.stream()
            .map(measure)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .average()
            .orElse(usual);
  }
}
