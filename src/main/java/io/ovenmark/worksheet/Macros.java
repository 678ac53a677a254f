package io.ovenmark.worksheet;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.Quantity;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;

/** A quantity for each macro ({@link Figure#macros}), each possibly unknown. Immutable. */
public final class Macros {
  /** All zero. */
  public static final Macros NONE = of(figure -> Quantity.ZERO);

  /** All unknown. */
  public static final Macros UNKNOWN = of(figure -> Quantity.UNKNOWN);

  private final Quantity[] figures;

  private Macros(Quantity[] figures) {
    this.figures = figures;
  }

  /**
   * Works out every macro.
   *
   * @param figure gives the quantity of each
   * @return the macros
   */
  public static Macros of(Function<Figure, Quantity> figure) {
    Quantity[] figures = new Quantity[Figure.macros().size()];
    for (Figure each : Figure.macros()) {
      figures[each.ordinal()] = requireNonNull(figure.apply(each), "quantity");
    }
    return new Macros(figures);
  }

  /**
   * One macro.
   *
   * @param figure a macro
   * @return its quantity
   * @throws IllegalArgumentException when the figure is not a macro
   */
  public Quantity get(Figure figure) {
    if (!figure.isMacro()) {
      throw new IllegalArgumentException(figure + " is not a macro");
    }
    return figures[figure.ordinal()];
  }

  /**
   * Adds macro by macro.
   *
   * @param other the addend
   * @return the sum
   */
  public Macros plus(Macros other) {
    Quantity[] sum = figures.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] = sum[i].plus(other.figures[i]);
    }
    return new Macros(sum);
  }

  /**
   * Multiplies every macro.
   *
   * @param factor a quantity that is not negative
   * @return the product
   */
  public Macros times(Quantity factor) {
    Quantity[] product = figures.clone();
    for (int i = 0; i < product.length; i++) {
      product[i] = product[i].times(factor);
    }
    return new Macros(product);
  }

  /**
   * Divides every macro.
   *
   * @param divisor a quantity that is not negative
   * @return the quotient
   */
  public Macros dividedBy(Quantity divisor) {
    Quantity[] quotient = figures.clone();
    for (int i = 0; i < quotient.length; i++) {
      quotient[i] = quotient[i].dividedBy(divisor);
    }
    return new Macros(quotient);
  }

  /**
   * Replaces one macro.
   *
   * @param figure a macro
   * @param quantity its new quantity
   * @return new macros
   * @throws IllegalArgumentException when the figure is not a macro
   */
  public Macros with(Figure figure, Quantity quantity) {
    if (!figure.isMacro()) {
      throw new IllegalArgumentException(figure + " is not a macro");
    }
    Quantity[] next = figures.clone();
    next[figure.ordinal()] = requireNonNull(quantity, "quantity");
    return new Macros(next);
  }

  /**
   * All macros.
   *
   * @return by figure, in order
   */
  public Map<Figure, Quantity> toMap() {
    Map<Figure, Quantity> map = new EnumMap<>(Figure.class);
    Figure.macros().forEach(figure -> map.put(figure, get(figure)));
    return map;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Macros that && Arrays.equals(figures, that.figures);
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
