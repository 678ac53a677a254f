package io.ovenmark.pantry;

import io.ovenmark.measure.Quantity;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;

/**
 * A figure for every {@link Nutrient}, each possibly unknown; per 100 g of a food, or in some mass.
 * Immutable; equal when all figures are.
 */
public final class Nutrients {
  /** All unknown. */
  public static final Nutrients UNKNOWN = of(Map.of());

  /** All zero: the composition of nothing. */
  public static final Nutrients NONE = UNKNOWN.map(figure -> Quantity.ZERO);

  private final Quantity[] figures;

  private Nutrients(Quantity[] figures) {
    this.figures = figures;
  }

  /**
   * Takes known figures; the rest is unknown.
   *
   * @param known the figures
   * @return the nutrients
   */
  public static Nutrients of(Map<Nutrient, Quantity> known) {
    Quantity[] figures = new Quantity[Nutrient.values().length];
    Arrays.fill(figures, Quantity.UNKNOWN);
    known.forEach((nutrient, figure) -> figures[nutrient.ordinal()] = figure);
    return new Nutrients(figures);
  }

  /**
   * One figure.
   *
   * @param nutrient which
   * @return the figure, never null
   */
  public Quantity get(Nutrient nutrient) {
    return figures[nutrient.ordinal()];
  }

  /**
   * Replaces one figure.
   *
   * @param nutrient which
   * @param figure the new figure
   * @return new nutrients
   */
  public Nutrients with(Nutrient nutrient, Quantity figure) {
    Quantity[] next = figures.clone();
    next[nutrient.ordinal()] = figure;
    return new Nutrients(next);
  }

  /**
   * Adds figure by figure.
   *
   * @param other the addend
   * @return the sum
   */
  public Nutrients plus(Nutrients other) {
    return combine(other, Quantity::plus);
  }

  /**
   * Multiplies every figure by an exact number.
   *
   * @param factor the factor
   * @return the product
   */
  public Nutrients times(double factor) {
    return map(figure -> figure.times(factor));
  }

  /**
   * Multiplies every figure by a quantity that is not negative.
   *
   * @param factor the factor, possibly unknown
   * @return the product
   */
  public Nutrients times(Quantity factor) {
    return map(figure -> figure.times(factor));
  }

  /**
   * Divides every figure by a quantity that is not negative.
   *
   * @param divisor the divisor, possibly unknown
   * @return the quotient
   */
  public Nutrients dividedBy(Quantity divisor) {
    return map(figure -> figure.dividedBy(divisor));
  }

  /**
   * All figures.
   *
   * @return by nutrient, in the order of {@link Nutrient}
   */
  public Map<Nutrient, Quantity> toMap() {
    Map<Nutrient, Quantity> map = new EnumMap<>(Nutrient.class);
    for (Nutrient nutrient : Nutrient.values()) {
      map.put(nutrient, get(nutrient));
    }
    return map;
  }

  private Nutrients map(UnaryOperator<Quantity> change) {
    Quantity[] next = new Quantity[figures.length];
    for (int i = 0; i < next.length; i++) {
      next[i] = change.apply(figures[i]);
    }
    return new Nutrients(next);
  }

  private Nutrients combine(Nutrients other, BinaryOperator<Quantity> join) {
    Quantity[] next = new Quantity[figures.length];
    for (int i = 0; i < next.length; i++) {
      next[i] = join.apply(figures[i], other.figures[i]);
    }
    return new Nutrients(next);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Nutrients that && Arrays.equals(figures, that.figures);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(figures);
  }

  @Override
  public String toString() {
    return toMap().toString();
  }
}
