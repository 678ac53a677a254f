package io.ovenmark.desk;

import io.ovenmark.goal.GoalCheck;
import io.ovenmark.goal.Limit;
import io.ovenmark.lever.LineNames;
import io.ovenmark.lever.Wish;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.List;

/**
 * What can be asked of a formula before anything was: its figures as they are, the limits of its
 * goal, and its lines.
 *
 * <pre>{@code
 * LeverViews.LeverStart start = new OfferWishes(desk).call(Address.parse("seeded-lupin-bun"));
 * start.wishes().get(0).wish();   // liquid ratio 1.06
 * }</pre>
 */
public final class OfferWishes {
  private static final List<Figure> FIGURES =
      List.of(
          Figure.LIQUID_RATIO,
          Figure.DOUGH_MOISTURE,
          Figure.NET_CARBOHYDRATE,
          Figure.PROTEIN,
          Figure.FIBRE,
          Figure.FAT,
          Figure.ENERGY,
          Figure.SODIUM,
          Figure.DOUGH_PER_PIECE,
          Figure.BATCH_MASS,
          Figure.BAKED_PER_PIECE);

  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public OfferWishes(Desk desk) {
    this.desk = desk;
  }

  /**
   * Looks at a formula.
   *
   * @param address which state
   * @return what can be asked of it
   * @throws Refusal when there is no such state
   */
  public LeverViews.LeverStart call(Address address) {
    FindLevers.State state = FindLevers.state(desk, address);
    Worksheet sheet = state.sheet().worksheet();
    List<LeverViews.WishOffer> wishes = new ArrayList<>();
    state.sheet()
        .goal()
        .map(GoalCheck::goal)
        .ifPresent(
            goal -> goal.limits().forEach(limit -> wishes.add(offer(limit, sheet))));
    for (Figure figure : FIGURES) {
      Basis basis = sheet.pieces().isUnknown() ? Basis.DOUGH_100_G : Basis.PIECE;
      Quantity now = sheet.figure(figure, basis);
      if (now.isKnown() && !sheet.lines().isEmpty()) {
        wishes.add(offer(figure, basis, now));
      }
    }
    return new LeverViews.LeverStart(
        state.shown().toString(),
        state.shown().formula(),
        state.shown().variant().orElse(null),
        state.number(),
        state.revision().map(revision -> revision.commit().hex()).orElse(null),
        sheet.formula().name(),
        state.sheet().goal().map(check -> check.goal().name()).orElse(null),
        wishes,
        lines(sheet),
        "free",
        sheet.formula().yield().doughPerPieceGrams().isEmpty() ? "fixed" : "free",
        Cautions.of(sheet));
  }

  /** A limit of the goal, as it stands there. */
  private LeverViews.WishOffer offer(Limit limit, Worksheet sheet) {
    Wish wish = new Wish(limit);
    return new LeverViews.WishOffer(
        wish.inWords(ShownUnits.AS_WRITTEN),
        label(limit.figure(), limit.basis()),
        text(limit.figure(), wish.of(sheet)),
        true,
        wish.isMet(sheet));
  }

  /** A figure at the value that it has, to be changed. */
  private LeverViews.WishOffer offer(Figure figure, Basis basis, Quantity now) {
    String unit = figure.unit().isEmpty() ? "" : " " + figure.unit();
    return new LeverViews.WishOffer(
        label(figure, basis) + " " + FigureText.number(now.low()) + unit,
        label(figure, basis),
        text(figure, now),
        false,
        true);
  }

  private static String label(Figure figure, Basis basis) {
    if (!figure.isMacro()) {
      return figure.label();
    }
    return figure.label()
        + switch (basis) {
          case PIECE -> " a piece";
          case BATCH -> " a batch";
          default -> " per " + basis.label();
        };
  }

  private String text(Figure figure, Quantity value) {
    return figure.isWeighed() ? desk.units().mass(value) : FigureText.of(value, figure.unit());
  }

  private static List<LeverViews.LineOffer> lines(Worksheet sheet) {
    List<String> names = LineNames.of(sheet);
    List<LeverViews.LineOffer> lines = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      WorksheetLine line = sheet.lines().get(i);
      lines.add(
          new LeverViews.LineOffer(
              line.line().id(),
              names.get(i),
              line.line().amount().toString(),
              FigureSet.number(line.grams())));
    }
    return lines;
  }
}
