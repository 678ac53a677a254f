package io.ovenmark.desk;

/**
 * Shows one bake.
 *
 * <pre>{@code
 * Views.BakeView bake = new ShowBake(desk).call("seeded-lupin-bun", "2026-09-14-1");
 * }</pre>
 */
public final class ShowBake {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShowBake(Desk desk) {
    this.desk = desk;
  }

  /**
   * Shows it.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @return the bake with the addresses of all revisions that have the baked content
   * @throws io.ovenmark.notebook.Refusal when there is no such bake
   */
  public Views.BakeView call(String formula, String id) {
    BakeParts parts = new BakeParts(desk);
    return parts.view(parts.bake(formula, id));
  }

  /**
   * Shows the newest bake of a formula.
   *
   * @param formula slug of the formula
   * @return the bake
   * @throws io.ovenmark.notebook.Refusal when it has not been baked yet
   */
  public Views.BakeView newest(String formula) {
    BakeParts parts = new BakeParts(desk);
    return parts.view(parts.newest(formula));
  }
}
