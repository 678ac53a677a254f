package io.ovenmark.worksheet;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.pantry.Nutrients;

/**
 * What is taken from carbohydrate by difference to give net carbohydrate. The figure has no legal
 * definition: common practice, no source. People who dose medicine by it should settle the policy
 * with whoever treats them.
 *
 * @param fibre share of the fibre that is subtracted, from 0 to 1
 * @param polyols share of the polyols that is subtracted, from 0 to 1
 * @param allulose share of the allulose that is subtracted, from 0 to 1
 */
public record NetCarbohydrate(double fibre, double polyols, double allulose) {
  /** Everything is subtracted. */
  public static final NetCarbohydrate ALL = new NetCarbohydrate(1, 1, 1);

  /** Checks the shares. */
  public NetCarbohydrate {
    if (!(fibre >= 0 && fibre <= 1 && polyols >= 0 && polyols <= 1)
        || !(allulose >= 0 && allulose <= 1)) {
      throw new IllegalArgumentException(
          "A share that net carbohydrate subtracts lies outside 0 to 1.\n"
              + "Use 1 to subtract all, 0 to subtract nothing.");
    }
  }

  /**
   * Net carbohydrate of 100 g of a food. A subtrahend that is unknown makes it "at most", since
   * none can be more than the carbohydrate it is part of.
   *
   * @param n the food's composition
   * @return grams, possibly bounded
   */
  public Quantity per100g(Nutrients n) {
    Quantity carbohydrate = n.get(Nutrient.CARBOHYDRATE);
    return carbohydrate
        .minus(n.get(Nutrient.FIBRE).noMoreThan(carbohydrate).times(fibre))
        .minus(n.get(Nutrient.POLYOLS).noMoreThan(carbohydrate).times(polyols))
        .minus(n.get(Nutrient.ALLULOSE).noMoreThan(carbohydrate).times(allulose))
        .notNegative();
  }

  /**
   * The policy in words.
   *
   * @return such as {@code carbohydrate − fibre − polyols − allulose}
   */
  public String inWords() {
    StringBuilder out = new StringBuilder("carbohydrate");
    append(out, fibre, "fibre");
    append(out, polyols, "polyols");
    append(out, allulose, "allulose");
    return out.toString();
  }

  private static void append(StringBuilder out, double share, String what) {
    if (share > 0) {
      String percent = share == 1 ? "" : Math.round(share * 100) + " % of ";
      out.append(" − ").append(percent).append(what);
    }
  }
}
