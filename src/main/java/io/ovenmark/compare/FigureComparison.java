package io.ovenmark.compare;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.List;
import java.util.Optional;

/**
 * A figure on both sides and what moved it.
 *
 * @param figure which figure
 * @param basis for what it is stated; empty for figures that are not macros
 * @param from before
 * @param to after
 * @param delta after less before; known also when nothing that enters the figure differs
 * @param contributions the causes, lines in their order, then the others in the order of {@link
 *     Contribution.Cause}; they add up to the delta; empty unless both sides are exactly known
 */
public record FigureComparison(
    Figure figure,
    Optional<Basis> basis,
    Quantity from,
    Quantity to,
    Quantity delta,
    List<Contribution> contributions) {
  /** Copies the list. */
  public FigureComparison {
    requireNonNull(figure, "figure");
    requireNonNull(basis, "basis");
    requireNonNull(from, "from");
    requireNonNull(to, "to");
    requireNonNull(delta, "delta");
    contributions = List.copyOf(contributions);
  }

  /**
   * The figure with its basis, for people.
   *
   * @return such as {@code net carbohydrate a piece}
   */
  public String name() {
    return figure.label() + basis.map(FigureComparison::of).orElse("");
  }

  /**
   * Whether a difference can be seen with three significant figures.
   *
   * @return true when the two read differently
   */
  public boolean showsChange() {
    return !FigureText.looksTheSame(from, to);
  }

  /**
   * One of its sides in words.
   *
   * @param side {@link #from} or {@link #to}
   * @param units how masses of the bench are shown
   * @return such as {@code at least 3.1 g}
   */
  public String text(Quantity side, ShownUnits units) {
    return figure.isWeighed() ? units.mass(side) : FigureText.of(side, figure.unit());
  }

  /**
   * Both sides in words.
   *
   * @param units how masses of the bench are shown
   * @return such as {@code 3.9 → 3.4 g}
   */
  public String change(ShownUnits units) {
    return figure.isWeighed()
        ? units.massChange(from, to)
        : FigureText.change(from, to, figure.unit());
  }

  /**
   * The difference in words, without its unit.
   *
   * @param units how masses of the bench are shown
   * @return such as {@code −0.5}
   */
  public String difference(ShownUnits units) {
    return FigureText.signed(figure.isWeighed() ? units.inMassUnit(delta) : delta);
  }

  private static String of(Basis basis) {
    return switch (basis) {
      case PIECE -> " a piece";
      case BATCH -> " a batch";
      case DOUGH_100_G -> " per 100 g dough";
      case BAKED_100_G -> " per 100 g baked";
    };
  }
}
