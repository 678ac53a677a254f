package io.ovenmark.worksheet;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The composition of parts weighed together, where the mass of some parts may be unknown. Total and
 * mass depend on the same masses, so dividing one interval by the other would give bounds that no
 * dough can have. Instead: whatever the parts of unknown mass weigh, the composition lies between
 * the extremes of the composition of the rest and of each such part.
 */
final class Mixture {
  private static final Quantity HUNDRED = Quantity.known(100);

  private final List<Macros> open = new ArrayList<>();
  private final double[] low = new double[Figure.macros().size()];
  private final double[] high = new double[Figure.macros().size()];
  private double grams;
  private double greatestWater;
  private double greatestOpenWater;

  /**
   * Adds a part.
   *
   * @param per100g composition of 100 g of it
   * @param mass its mass; of one known only within bounds the least counts as known and the rest as
   *     unknown
   */
  void add(Macros per100g, Quantity mass) {
    double hundreds = mass.low() / 100;
    if (hundreds > 0) {
      grams += mass.low();
      for (Figure figure : Figure.macros()) {
        Quantity part = per100g.get(figure);
        low[figure.ordinal()] += part.low() * hundreds;
        high[figure.ordinal()] += part.high() * hundreds;
      }
      greatestWater += water(per100g).high() * hundreds;
    }
    if (mass.high() > mass.low()) {
      open.add(per100g);
      greatestOpenWater = Math.max(greatestOpenWater, water(per100g).high());
    }
  }

  /**
   * Composition of 100 g of the whole.
   *
   * @return unknown when there is nothing
   */
  Macros per100g() {
    return Macros.of(this::per100g);
  }

  /**
   * One figure of 100 g of lines weighed together, by the same rule.
   *
   * @param lines the lines
   * @param per100g what 100 g of a food hold
   * @return unknown when there is nothing
   */
  static Quantity per100g(List<WorksheetLine> lines, Function<Food, Quantity> per100g) {
    double low = 0;
    double high = 0;
    double grams = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (WorksheetLine line : lines) {
      Quantity part = line.food().map(per100g).orElse(Quantity.UNKNOWN);
      double hundreds = line.grams().low() / 100;
      if (hundreds > 0) {
        grams += line.grams().low();
        low += part.low() * hundreds;
        high += part.high() * hundreds;
      }
      if (line.grams().high() > line.grams().low()) {
        least = Math.min(least, part.low());
        most = Math.max(most, part.high());
      }
    }
    if (grams > 0) {
      least = Math.min(least, low * 100 / grams);
      most = Math.max(most, high * 100 / grams);
    }
    return least <= most ? Quantity.between(least, most) : Quantity.UNKNOWN;
  }

  /**
   * Water in percent of the mass. As no food holds more than 100 g of water in 100 g, unknown water
   * leaves an upper bound here.
   *
   * @return unknown when there is nothing, or when all from 0 to 100 is possible
   */
  Quantity moisturePercent() {
    double least = per100g(Figure.WATER).low();
    double most = Math.max(greatestOpenWater, grams > 0 ? greatestWater * 100 / grams : 0);
    boolean nothing = grams == 0 && open.isEmpty();
    return nothing || least == 0 && most >= 100
        ? Quantity.UNKNOWN
        : Quantity.between(least, Math.max(least, most));
  }

  private Quantity per100g(Figure figure) {
    if (grams == 0 && open.isEmpty()) {
      return Quantity.UNKNOWN;
    }
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    if (grams > 0) {
      least = low[figure.ordinal()] * 100 / grams;
      most = high[figure.ordinal()] * 100 / grams;
    }
    for (Macros part : open) {
      least = Math.min(least, part.get(figure).low());
      most = Math.max(most, part.get(figure).high());
    }
    return Quantity.between(least, most);
  }

  private static Quantity water(Macros per100g) {
    return per100g.get(Figure.WATER).noMoreThan(HUNDRED);
  }
}
