package io.ovenmark.lever;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.MeasureUnit;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * An amount that can be measured at the bench: weighed to what the scale shows, in spoons to an
 * eighth of a teaspoon, or counted. A line stays in the measure it was written in as long as that
 * comes near enough; what is too little for the scale is taken with spoons where the food's weight
 * of a spoon is known. Nothing becomes 0.
 *
 * @param amount what to measure
 * @param grams its mass; unknown when the measure has no known weight
 * @param how by what it is measured
 */
record Measured(Amount amount, Quantity grams, How how) {
  /** By what something is measured. */
  enum How {
    /** On the scale. */
    WEIGHED("weighed"),
    /** With spoons. */
    SPOONS("spoons"),
    /** By number. */
    COUNTED("counted"),
    /** In the measure it was written in, to the last digit. */
    AS_WRITTEN("as written");

    private final String key;

    How(String key) {
      this.key = key;
    }

    String key() {
      return key;
    }
  }

  /** An error of more than this share is worth another measure. */
  private static final double NEAR = 0.05;

  /** More spoons than this are better weighed: a quarter cup. */
  private static final double MOST_TEASPOONS = 12;

  private static final int EIGHTHS = 8;
  private static final int TEASPOONS_OF_A_TABLESPOON = 3;
  private static final int DECIMALS = 6;

  Measured {
    requireNonNull(amount, "amount");
    requireNonNull(grams, "grams");
    requireNonNull(how, "how");
  }

  /**
   * What to measure of a line times a factor.
   *
   * @param line the line
   * @param food its food; empty when the pantry has none
   * @param now the line's mass
   * @param factor how many times as much
   * @param reading what the scale can show in grams, 0 for exact
   */
  static Measured of(
      Line line, Optional<Food> food, Quantity now, double factor, double reading) {
    Amount scaled = times(line.amount(), factor);
    boolean weighed = line.amount().grams().isPresent();
    if (reading == 0 || line.amount().number().signum() == 0 || !now.isKnown() && !weighed) {
      return new Measured(scaled, now.times(factor), How.AS_WRITTEN);
    }
    double exact = now.low() * factor;
    Measured scale = onScale(exact, reading);
    if (weighed) {
      return scale.error(exact) > NEAR ? nearer(scale, spoons(food, exact), exact) : scale;
    }
    Optional<Measured> own =
        line.amount().millilitres().isPresent() ? spoons(food, exact) : counted(food, scaled);
    return own.filter(measured -> measured.error(exact) <= NEAR)
        .orElseGet(() -> nearer(scale, own, exact));
  }

  /** An amount in the measure it was written in, to six decimals. */
  static Amount times(Amount amount, double factor) {
    BigDecimal number =
        amount
            .number()
            .multiply(BigDecimal.valueOf(factor))
            .setScale(DECIMALS, RoundingMode.HALF_UP);
    return Amount.parse(number.stripTrailingZeros().toPlainString() + " " + amount.measure());
  }

  private static Measured nearer(Measured one, Optional<Measured> other, double exact) {
    return other.filter(each -> each.error(exact) < one.error(exact)).orElse(one);
  }

  private double error(double exact) {
    return Math.abs(grams.low() / exact - 1);
  }

  private static Measured onScale(double exact, double reading) {
    double grams = Math.max(reading, Readings.nearest(exact, reading));
    return new Measured(
        Amount.grams(BigDecimal.valueOf(grams)), Quantity.known(grams), How.WEIGHED);
  }

  private static Optional<Measured> spoons(Optional<Food> food, double exact) {
    Optional<Quantity> spoon =
        food.map(each -> each.resolve(Amount.parse("1 " + MeasureUnit.TEASPOON.symbol())).grams())
            .filter(grams -> grams.isKnown() && grams.low() > 0);
    if (spoon.isEmpty() || exact / spoon.get().low() > MOST_TEASPOONS) {
      return Optional.empty();
    }
    long eighths = Math.max(1, Math.round(exact / spoon.get().low() * EIGHTHS));
    Amount amount = spoons(eighths);
    return Optional.of(new Measured(amount, food.get().resolve(amount).grams(), How.SPOONS));
  }

  /** Tablespoons where they come out in halves, else teaspoons. */
  private static Amount spoons(long eighths) {
    long halves = TEASPOONS_OF_A_TABLESPOON * EIGHTHS / 2;
    return eighths % halves == 0 && eighths > halves
        ? Amount.parse(mixed(eighths / halves, 2) + " " + MeasureUnit.TABLESPOON.symbol())
        : Amount.parse(mixed(eighths, EIGHTHS) + " " + MeasureUnit.TEASPOON.symbol());
  }

  /** A number of parts as a mixed number: {@code 2 5/8}. */
  private static String mixed(long parts, int of) {
    long whole = parts / of;
    long rest = parts % of;
    long under = of;
    while (rest > 0 && rest % 2 == 0) {
      rest /= 2;
      under /= 2;
    }
    String fraction = rest == 0 ? "" : rest + "/" + under;
    return whole == 0 ? fraction : rest == 0 ? "" + whole : whole + " " + fraction;
  }

  private static Optional<Measured> counted(Optional<Food> food, Amount scaled) {
    BigDecimal whole = scaled.number().setScale(0, RoundingMode.HALF_UP).max(BigDecimal.ONE);
    Amount amount = Amount.parse(whole.toPlainString() + " " + scaled.measure());
    return food.map(each -> each.resolve(amount).grams())
        .filter(Quantity::isKnown)
        .map(grams -> new Measured(amount, grams, How.COUNTED));
  }
}
