package io.ovenmark.desk;

import io.ovenmark.compare.Comparison;
import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.util.Optional;

/**
 * Sets a formula beside the conventional one that it was rebuilt from, line by line and piece by
 * piece.
 *
 * <pre>{@code
 * RebuildViews.RebuildSheet sheet =
 *     new BesideReference(desk).call(Address.parse("seeded-lupin-bun"), Optional.empty());
 * }</pre>
 */
public final class BesideReference {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public BesideReference(Desk desk) {
    this.desk = desk;
  }

  /**
   * Sets them side by side.
   *
   * @param address the rebuild
   * @param reference the conventional formula; empty for the newest revision of the one that the
   *     rebuild names
   * @return both sides
   * @throws Refusal when there is no such state, or no reference
   */
  public RebuildViews.RebuildSheet call(Address address, Optional<Address> reference) {
    Address conventional = reference.orElseGet(() -> named(address));
    Comparison comparison = new CompareRevisions(desk).compare(conventional, address);
    return new RebuildSheetMaker(desk, comparison).sheet();
  }

  private Address named(Address address) {
    Formula formula =
        address.point().kind() == Address.Point.Kind.EDITED
            ? ShowFormula.read(desk, address).formula()
            : desk.notebook().formula(desk.notebook().revision(address));
    String slug =
        formula
            .reference()
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.Reason.INVALID,
                        address.toString(),
                        formula.name() + " names no conventional formula that it was rebuilt from.",
                        "State its reference, or name the formula to set beside it."));
    return desk.address(slug);
  }
}
