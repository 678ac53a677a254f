package io.ovenmark.publish.label;

import io.ovenmark.measure.Quantity;
import java.math.BigDecimal;

/**
 * Daily Values of the United States for adults and children of four years or more. Source: 21 CFR
 * 101.9(c)(8)(iv) and (c)(9), rule of 2016; read in a reprint. For protein it is 50 g too, but its
 * percentage needs the quality of the protein, which no food of a pantry states.
 */
public enum DailyValue {
  /** Total fat. */
  FAT(78, false),
  /** Saturated fat. */
  SATURATED_FAT(20, false),
  /** Cholesterol. */
  CHOLESTEROL(300, false),
  /** Total carbohydrate. */
  CARBOHYDRATE(275, false),
  /** Sodium. */
  SODIUM(2300, false),
  /** Dietary fibre. */
  FIBRE(28, false),
  /** Added sugars. */
  ADDED_SUGARS(50, false),
  /** Protein. */
  PROTEIN(50, false),
  /** Vitamin D. */
  VITAMIN_D(20, true),
  /** Calcium. */
  CALCIUM(1300, true),
  /** Iron. */
  IRON(18, true),
  /** Potassium. */
  POTASSIUM(4700, true);

  /** Where the values come from. */
  public static final Source SOURCE = Source.secondHand("21 CFR 101.9(c)(8)(iv) and (c)(9)");

  /** The rule for rounding percentages, in words. */
  public static final String RULE =
      "% Daily Value from the unrounded amount, to the nearest 1 %; of vitamins and minerals to the"
          + " nearest 2 % up to 10 %, 5 % up to 50 %, 10 % above (21 CFR 101.9(d)(7)(ii) and"
          + " (c)(8)(iii), from memory)";

  private final double amount;
  private final boolean vitaminOrMineral;

  DailyValue(double amount, boolean vitaminOrMineral) {
    this.amount = amount;
    this.vitaminOrMineral = vitaminOrMineral;
  }

  /**
   * The value.
   *
   * @return in the unit in which the nutrient is declared
   */
  public double amount() {
    return amount;
  }

  /**
   * What share an amount is.
   *
   * @param quantity the amount, possibly known in part
   * @return percent, unrounded
   */
  public Quantity percent(Quantity quantity) {
    return quantity.times(100).dividedBy(amount);
  }

  /**
   * Rounds a share.
   *
   * @param percent the unrounded share, not negative
   * @return what a label would state, in percent
   */
  public BigDecimal rounded(double percent) {
    BigDecimal exact = Exact.of(percent);
    String step = "1";
    if (vitaminOrMineral) {
      step = Exact.atMost(exact, "10") ? "2" : Exact.atMost(exact, "50") ? "5" : "10";
    }
    return Exact.nearest(exact, step);
  }
}
