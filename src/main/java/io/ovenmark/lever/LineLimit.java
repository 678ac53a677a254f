package io.ovenmark.lever;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;

/**
 * What a line may weigh.
 *
 * @param line id of the line
 * @param atLeastGrams least mass, 0 or more
 * @param atMostGrams greatest mass, infinity for none; not below the least
 */
public record LineLimit(String line, double atLeastGrams, double atMostGrams) {
  /** Checks the bounds. */
  public LineLimit {
    requireNonNull(line, "line");
    if (!(atLeastGrams >= 0 && atLeastGrams < Double.POSITIVE_INFINITY)
        || !(atMostGrams >= atLeastGrams)) {
      throw new IllegalArgumentException(
          "The limits on " + line + " contradict each other.\n"
              + "Give a least mass that is no more than the greatest.");
    }
  }

  /**
   * A line that shall not weigh less.
   *
   * @param line id of the line
   * @param grams the least mass
   * @return the limit
   */
  public static LineLimit atLeast(String line, double grams) {
    return new LineLimit(line, grams, Double.POSITIVE_INFINITY);
  }

  /**
   * A line that shall not weigh more.
   *
   * @param line id of the line
   * @param grams the greatest mass
   * @return the limit
   */
  public static LineLimit atMost(String line, double grams) {
    return new LineLimit(line, 0, grams);
  }

  /**
   * A line that may change by a share of what it is.
   *
   * @param line id of the line
   * @param grams what it weighs
   * @param percent how far it may go either way, 0 or more; from 100 on it may go to nothing
   * @return the limit
   */
  public static LineLimit within(String line, double grams, double percent) {
    double span = grams * percent / 100;
    return new LineLimit(line, Math.max(0, grams - span), grams + span);
  }

  /**
   * The limit in words.
   *
   * @param name name of the line for people
   * @param units how masses are shown
   * @return such as {@code water at most 180 g}
   */
  public String inWords(String name, ShownUnits units) {
    String least = units.mass(Quantity.known(atLeastGrams));
    if (atMostGrams == Double.POSITIVE_INFINITY) {
      return name + " at least " + least;
    }
    String most = units.mass(Quantity.known(atMostGrams));
    return atLeastGrams == 0
        ? name + " at most " + most
        : name + " between "
            + FigureText.of(units.inMassUnit(Quantity.known(atLeastGrams))) + " and " + most;
  }
}
