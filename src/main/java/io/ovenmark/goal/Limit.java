package io.ovenmark.goal;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.math.BigDecimal;
import java.util.OptionalDouble;

/**
 * A limit on one figure.
 *
 * @param figure which figure
 * @param basis for what it is stated; always {@link Basis#PIECE} for figures that are not
 *     macros
 * @param atLeast least value that keeps the limit; empty for none
 * @param atMost greatest value that keeps the limit; empty for none
 * @param extras unknown fields
 */
public record Limit(
    Figure figure, Basis basis, OptionalDouble atLeast, OptionalDouble atMost, Extras extras) {
  /** Checks that there is at least one bound, none negative, and that they are not reversed. */
  public Limit {
    requireNonNull(figure, "figure");
    requireNonNull(basis, "basis");
    requireNonNull(extras, "extras");
    if (!figure.isMacro()) {
      basis = Basis.PIECE;
    }
    if (!usable(atLeast) || !usable(atMost)) {
      throw new IllegalArgumentException(
          "A bound on " + figure.label() + " is negative or no number.\nUse 0 or more.");
    }
    if (atLeast.isEmpty() && atMost.isEmpty()) {
      throw new IllegalArgumentException(
          "The limit on " + figure.label() + " has no bound.\nAdd at_least or at_most.");
    }
    if (atLeast.isPresent() && atMost.isPresent() && atLeast.getAsDouble() > atMost.getAsDouble()) {
      throw new IllegalArgumentException(
          "The bounds on " + figure.label() + " contradict each other.\n"
              + "Make at_least no greater than at_most.");
    }
  }

  /**
   * The limit in words.
   *
   * @return such as {@code at most 4 g net carbohydrate a piece} or {@code liquid ratio at most
   *     0.9}
   */
  public String inWords() {
    return inWords(ShownUnits.AS_WRITTEN);
  }

  /**
   * The limit in words.
   *
   * @param units how masses of the bench are shown
   * @return such as {@code dough a piece at most 3.4 oz}
   */
  public String inWords(ShownUnits units) {
    String unit = figure.unit().isEmpty() ? "" : " " + figure.unit();
    StringBuilder out = new StringBuilder();
    if (atLeast.isPresent()) {
      out.append("at least ").append(bound(atLeast.getAsDouble(), unit, units));
    }
    if (atMost.isPresent()) {
      out.append(out.isEmpty() ? "" : " and ");
      out.append("at most ").append(bound(atMost.getAsDouble(), unit, units));
    }
    if (!figure.isMacro()) {
      return figure.label() + " " + out;
    }
    out.append(' ').append(figure.label());
    return out.append(
            switch (basis) {
              case PIECE -> " a piece";
              case BATCH -> " a batch";
              case DOUGH_100_G -> " per 100 g dough";
              case BAKED_100_G -> " per 100 g baked";
            })
        .toString();
  }

  private String bound(double value, String unit, ShownUnits units) {
    return figure.isWeighed() ? units.grams(plain(value)) : plain(value) + unit;
  }

  private static boolean usable(OptionalDouble bound) {
    return bound.isEmpty() || Double.isFinite(bound.getAsDouble()) && bound.getAsDouble() >= 0;
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
