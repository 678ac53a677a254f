package io.ovenmark.lever;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;

/**
 * A figure before and after.
 *
 * @param figure which
 * @param basis for what; without meaning for figures that are not macros
 * @param from before
 * @param to after
 */
public record FigureMove(Figure figure, Basis basis, Quantity from, Quantity to) {
  /** What differs by less than this share does not move. */
  private static final double NOTHING = 1e-9;

  /**
   * The figures that differ between two worksheets: batch, division, ratios and the macros of a
   * piece, or of 100 g of dough where the batch is not divided.
   *
   * @param before a worksheet
   * @param after another of the same foods
   * @return in a fixed order
   */
  public static List<FigureMove> between(Worksheet before, Worksheet after) {
    Basis basis = before.pieces().isUnknown() ? Basis.DOUGH_100_G : Basis.PIECE;
    List<FigureMove> moves = new ArrayList<>();
    for (Figure figure : Figure.values()) {
      FigureMove move =
          new FigureMove(
              figure, basis, before.figure(figure, basis), after.figure(figure, basis));
      if (!move.isStill()) {
        moves.add(move);
      }
    }
    return List.copyOf(moves);
  }

  /** Whether nothing moved but by arithmetic. */
  boolean isStill() {
    return same(from, to);
  }

  private static boolean same(Quantity one, Quantity other) {
    return same(one.low(), other.low()) && same(one.high(), other.high());
  }

  private static boolean same(double one, double other) {
    return one == other
        || Math.abs(one - other) <= NOTHING * Math.max(1e-3, Math.abs(one) + Math.abs(other));
  }

  /**
   * The difference.
   *
   * @return after less before; not known when either is not
   */
  public Quantity delta() {
    return from.isKnown() && to.isKnown()
        ? Quantity.known(to.low() - from.low())
        : to.minus(from);
  }

  /**
   * The figure's name with its basis.
   *
   * @return such as {@code net carbohydrate a piece} or {@code liquid ratio}
   */
  public String name() {
    if (!figure.isMacro()) {
      return figure.label();
    }
    return figure.label() + (basis == Basis.PIECE ? " a piece" : " per " + basis.label());
  }

  /**
   * Before and after in words.
   *
   * @param units how masses of the bench are shown
   * @return such as {@code 3.87 → 3.64 g}
   */
  public String change(ShownUnits units) {
    return figure.isWeighed()
        ? units.massChange(from, to)
        : FigureText.change(from, to, figure.unit());
  }

  /**
   * The difference in words.
   *
   * @param units how masses of the bench are shown
   * @return such as {@code −0.23 g}
   */
  public String difference(ShownUnits units) {
    if (figure.isWeighed()) {
      return units.massDifference(delta());
    }
    String unit = figure.unit().isEmpty() ? "" : " " + figure.unit();
    return FigureText.signed(delta()) + unit;
  }
}
