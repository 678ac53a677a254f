package io.ovenmark.worksheet;

/**
 * How figures are worked out where the trade has more than one way.
 *
 * @param energy the rule for energy
 * @param netCarbohydrate what net carbohydrate subtracts
 */
public record Policy(EnergyRule energy, NetCarbohydrate netCarbohydrate) {
  /** The foods' own energy; all fibre, polyols and allulose subtracted. */
  public static final Policy USUAL = new Policy(EnergyRule.FOODS, NetCarbohydrate.ALL);
}
