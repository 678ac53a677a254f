package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Refusal;
import java.util.List;
import java.util.Map;

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
   * @return the bakes, oldest first
   * @throws Refusal when there is no such formula
   */
  public KitchenViews.BakeList call(String formula) {
    Asked.slug("formula", formula);
    List<Bake> bakes = desk.notebook().bakes(formula);
    Map<String, List<String>> addresses = new BakeParts(desk).addresses(formula);
    if (bakes.isEmpty() && addresses.isEmpty()) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          formula,
          "There is no formula \"" + formula + "\" in this notebook.",
          "List what there is with: ovenmark list");
    }
    return new KitchenViews.BakeList(
        formula,
        name(formula),
        bakes.stream()
            .map(bake -> BakeViews.view(bake, addresses.getOrDefault(bake.blob(), List.of())))
            .toList());
  }

  private String name(String formula) {
    try {
      return desk.notebook().latest().formula(formula).map(Formula::name).orElse(formula);
    } catch (UnreadableException damaged) {
      return formula;
    }
  }
}
