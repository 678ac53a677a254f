package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;

/**
 * Lists the bakes of a formula, of the main line and all variants.
 *
 * <pre>{@code
 * KitchenViews.BakeList bakes = new ListBakes(desk).call("seeded-lupin-bun");
 * }</pre>
 */
public final class ListBakes {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ListBakes(Desk desk) {
    this.desk = desk;
  }

  /**
   * Lists them.
   *
   * @param formula slug of the formula
   * @return the bakes, oldest first, and what is wrong with those that cannot be read
   * @throws io.ovenmark.notebook.Refusal when there is no such formula
   */
  public KitchenViews.BakeList call(String formula) {
    Asked.slug("formula", formula);
    new BakeParts(desk).requireFormula(formula);
    return new KitchenViews.BakeList(
        formula,
        name(formula),
        desk.views(desk.notebook().bakes(formula)),
        Refusals.views(desk.notebook().bakeProblems(formula)));
  }

  private String name(String formula) {
    try {
      return desk.notebook().latest().formula(formula).map(Formula::name).orElse(formula);
    } catch (UnreadableException damaged) {
      return formula;
    }
  }
}
