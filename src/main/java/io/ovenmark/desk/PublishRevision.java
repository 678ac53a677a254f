package io.ovenmark.desk;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.notebook.store.TagFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Marks a revision as published. What its goal or its figures leave open is said, not refused: the
 * person decides.
 *
 * <pre>{@code
 * new PublishRevision(desk).call(Address.parse("seeded-lupin-bun@13"), "The winter bun", by);
 * }</pre>
 */
public final class PublishRevision {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public PublishRevision(Desk desk) {
    this.desk = desk;
  }

  /**
   * How a revision stands before it is published.
   *
   * @param address the revision
   * @return its goal and what else a person should know
   * @throws Refusal when there is no such revision, or it is a file edited by hand
   */
  public WriteViews.Published preview(Address address) {
    return view(revision(address), Optional.empty());
  }

  /**
   * Publishes.
   *
   * @param address the revision
   * @param note what is published, and where; not blank
   * @param by who and when
   * @return what was marked
   * @throws Refusal when there is no such revision, it is a file edited by hand, or it is published
   *     already
   */
  public WriteViews.Published call(Address address, String note, By by) {
    return call(address, note, Optional.empty(), by);
  }

  /**
   * Publishes the revision that a person looked at.
   *
   * @param address the revision
   * @param note what is published, and where; not blank
   * @param seen commit id of the revision as it was seen; empty when that does not matter
   * @param by who and when
   * @return what was marked
   * @throws Refusal when there is no such revision, the address means another one by now, it is a
   *     file edited by hand, or it is published already
   */
  public WriteViews.Published call(Address address, String note, Optional<String> seen, By by) {
    Revision revision = revision(address);
    WriteParts.requireSeen(revision, seen);
    return view(revision, Optional.of(tag(revision, note, by)));
  }

  private Revision revision(Address address) {
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          address.toString(),
          "A file that was edited by hand is not a revision yet.",
          "Commit it first with: ovenmark revise " + address.line());
    }
    return desk.notebook().revision(address);
  }

  private WriteViews.Published view(Revision revision, Optional<TagFacts> tag) {
    Desk.Sheet sheet =
        desk.sheet(revision, desk.notebook().bakes(revision.address().formula()));
    Views.GoalView goal =
        sheet.goal().map(check -> GoalViews.view(check, desk.units())).orElse(null);
    List<String> remarks = new ArrayList<>();
    if (goal != null && !Boolean.TRUE.equals(goal.met())) {
      remarks.add(
          goal.met() == null
              ? "Whether it meets its goal is not known."
              : "It does not meet its goal.");
    }
    if (!sheet.worksheet().unknowns().isEmpty()) {
      remarks.add("Some of its figures are not fully known; they say so where they are shown.");
    }
    if (!sheet.worksheet().allergensUnknownIn().isEmpty()) {
      remarks.add(
          "Allergens are unknown in "
              + String.join(", ", sheet.worksheet().allergensUnknownIn())
              + ": read the packages before it is served.");
    }
    remarks.addAll(UnweighedFoods.remarks(desk, sheet.worksheet()));
    return new WriteViews.Published(
        WriteParts.revision(revision),
        tag.map(TagFacts::name).orElse(null),
        tag.map(TagFacts::message).orElse(null),
        goal,
        List.copyOf(remarks),
        Cautions.of(sheet.worksheet()));
  }

  private TagFacts tag(Revision revision, String note, By by) {
    try {
      return new RecordWriter(desk.notebook()).publish(revision, note, by);
    } catch (StoreException e) {
      if (e.reason() != StoreException.Reason.NAME_TAKEN) {
        throw e;
      }
      throw new Refusal(
          Refusal.Reason.EXISTS,
          revision.address().toString(),
          revision.address() + " is published already.",
          "A later revision can be published beside it.");
    }
  }
}
