package io.ovenmark.lever;

import io.ovenmark.formula.Yield;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a batch is divided in every answer: into a number of pieces, or into pieces of a dough mass
 * from which the number follows.
 *
 * @param yield what the formula states then
 * @param row the condition that it is so
 * @param wish the wish that asks for it; empty when it stays as it is
 * @param words the condition in words
 */
record Division(Yield yield, Row row, Optional<Wish> wish, String words) {

  /**
   * The division that a question asks for.
   *
   * @return empty when the formula does not say how it is divided and no wish does
   * @throws IllegalArgumentException when a number of pieces is wished that is not whole
   */
  static Optional<Division> of(Dough dough, Question question, ShownUnits units) {
    Figure pinned = question.piecesFixed() ? Figure.PIECES : Figure.DOUGH_PER_PIECE;
    Optional<Wish> wish =
        question.wishes().stream().filter(each -> each.figure() == pinned).findFirst();
    boolean known = dough.pieces() > 0 && dough.sheet().doughPerPieceGrams().isKnown();
    if (dough.pieces() == 0 || !known && !question.piecesFixed()) {
      return Optional.empty();
    }
    Yield before = dough.sheet().formula().yield();
    if (question.piecesFixed()) {
      double count = wish.map(Division::whole).orElse(0.0);
      if (wish.isEmpty() || isWithin(wish.get(), Math.round(dough.pieces()))) {
        count = Math.max(1, Math.round(dough.pieces()));
      }
      Yield yield =
          new Yield(
              Optional.of((int) count), OptionalDouble.empty(), before.handlingLossPercent());
      Row row = Row.bounds(
          dough.unknowns(), dough.lines(), count / dough.pieces(), count / dough.pieces());
      String words =
          FigureText.number(count) + (count == 1 ? " piece" : " pieces");
      return Optional.of(
          new Division(yield, row, wish, wish.map(w -> w.inWords(units)).orElse(words)));
    }
    double now = dough.sheet().doughPerPieceGrams().low();
    double grams =
        wish.map(w -> Math.min(Math.max(now, w.least()), w.most())).orElse(now);
    Yield yield =
        new Yield(Optional.empty(), OptionalDouble.of(grams), before.handlingLossPercent());
    Row row = dough.figure(Figure.DOUGH_PER_PIECE, Basis.PIECE, false).equal(grams);
    String words = "dough a piece stays at " + units.mass(Quantity.known(grams));
    return Optional.of(
        new Division(yield, row, wish, wish.map(w -> w.inWords(units)).orElse(words)));
  }

  private static boolean isWithin(Wish wish, double value) {
    return value >= wish.least() && value <= wish.most();
  }

  private static double whole(Wish wish) {
    double count =
        Double.isFinite(wish.least()) ? Math.ceil(wish.least()) : Math.floor(wish.most());
    if (count < 1 || count > 100_000 || !isWithin(wish, count)) {
      throw new IllegalArgumentException(
          "A batch gives a whole number of pieces, from 1 to 100 000.\n"
              + "Ask for a whole number, or leave the number free and ask for the dough a piece.");
    }
    return count;
  }
}
