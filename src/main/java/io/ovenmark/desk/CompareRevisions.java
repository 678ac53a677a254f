package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.compare.Comparison;
import io.ovenmark.compare.Side;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Compares any two states: revisions, variants, two formulas, or the file edited by hand.
 *
 * <pre>{@code
 * new CompareRevisions(desk)
 *     .call(Address.parse("seeded-lupin-bun@5"), Address.parse("seeded-lupin-bun@7"));
 * }</pre>
 */
public final class CompareRevisions {
  private final Desk desk;

  /** One side before it is compared, with what the answer says about it. */
  private record Place(Side side, ComparisonViews.SideView view) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public CompareRevisions(Desk desk) {
    this.desk = desk;
  }

  /**
   * Compares.
   *
   * @param from the earlier side
   * @param to the later side
   * @return the comparison as programs see it
   * @throws io.ovenmark.notebook.Refusal when there is no such state
   * @throws io.ovenmark.json.UnreadableException when a file is damaged
   */
  public ComparisonViews.ComparisonView call(Address from, Address to) {
    Place before = place(from);
    Place after = place(to);
    Map<String, List<String>> addresses = new HashMap<>();
    for (Place place : List.of(before, after)) {
      if (!place.side().bakes().isEmpty()) {
        addresses.putAll(desk.revisionsByContent(place.view().formula()));
      }
    }
    return ComparisonViewMaker.of(
        Comparison.between(before.side(), after.side(), desk.units()),
        before.view(),
        after.view(),
        addresses);
  }

  /**
   * Compares, for printing.
   *
   * @param from the earlier side
   * @param to the later side
   * @return the comparison itself
   */
  public Comparison compare(Address from, Address to) {
    return Comparison.between(place(from).side(), place(to).side(), desk.units());
  }

  /**
   * What two states cost, for printing.
   *
   * @param from the earlier side
   * @param to the later side
   * @return what a batch and a piece cost
   */
  public CostViews.CostDifference cost(Address from, Address to) {
    return CostViews.between(place(from).side().sheet(), place(to).side().sheet());
  }

  /**
   * The state before another on its line of history.
   *
   * @param address a state
   * @return the revision before it; for the file edited by hand its newest revision
   * @throws io.ovenmark.notebook.Refusal when it is the first
   */
  public Address before(Address address) {
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      return ShowFormula.lineOnDisk(desk, address);
    }
    Revision revision = desk.notebook().revision(address);
    return desk.notebook()
        .before(revision)
        .map(Revision::address)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.NOT_FOUND,
                    revision.address().toString(),
                    revision.address() + " is the first revision: there is none before it.",
                    "Name the two revisions to compare."));
  }

  private Place place(Address address) {
    List<Bake> all = desk.notebook().bakes(address.formula());
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      return edited(address, all);
    }
    Revision revision = desk.notebook().revision(address);
    Desk.Sheet sheet = desk.sheet(address, revision, all);
    String shown =
        (desk.restsOnOtherFoods(address, revision) ? address : revision.address()).toString();
    Side side =
        new Side(
            shown,
            Optional.of(revision.time()),
            Optional.of(revision.note()),
            sheet.worksheet(),
            sheet.goal(),
            Desk.bakesOf(revision.blob().hex(), all));
    return new Place(
        side,
        new ComparisonViews.SideView(
            shown,
            revision.address().formula(),
            revision.address().variant().orElse(null),
            revision.number(),
            revision.commit().hex(),
            Json.time(revision.time()),
            revision.author().name(),
            revision.note(),
            sheet.worksheet().formula().name()));
  }

  private Place edited(Address address, List<Bake> all) {
    ShowFormula.Edited edited = ShowFormula.read(desk, address);
    List<Bake> bakes = Desk.bakesOf(edited.blob(), all);
    Desk.Sheet sheet = desk.draft(edited.formula(), edited.line(), bakes);
    String shown =
        new Address(address.formula(), edited.line().variant(), Address.Point.EDITED).toString();
    Side side =
        new Side(
            shown, Optional.empty(), Optional.empty(), sheet.worksheet(), sheet.goal(), bakes);
    return new Place(
        side,
        new ComparisonViews.SideView(
            shown,
            address.formula(),
            edited.line().variant().orElse(null),
            desk.notebook().nextNumber(edited.line()),
            null,
            null,
            null,
            null,
            edited.formula().name()));
  }
}
