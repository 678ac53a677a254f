package io.ovenmark.desk;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.VariantWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Branches a variant of a formula for another goal.
 *
 * <pre>{@code
 * new ForkVariant(desk)
 *     .call(Address.parse("wheat-bun@2"), "egg-free", Optional.of("egg-free-bun"), "Why", by);
 * }</pre>
 */
public final class ForkVariant {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ForkVariant(Desk desk) {
    this.desk = desk;
  }

  /**
   * Branches it.
   *
   * @param from the revision it starts from
   * @param name its name
   * @param goal short name of the goal it is for; empty to keep the formula's
   * @param note why; used for the revision that states the goal, if there is one
   * @param by who and when
   * @return what was made
   * @throws Refusal when there is such a variant or no such goal
   */
  public WriteViews.VariantMade call(
      Address from, String name, Optional<String> goal, String note, By by) {
    return call(from, name, goal, note, Optional.empty(), by);
  }

  /**
   * Branches it from the revision that a person looked at.
   *
   * @param from the revision it starts from
   * @param name its name
   * @param goal short name of the goal it is for; empty to keep the formula's
   * @param note why; used for the revision that states the goal, if there is one
   * @param seen commit id of that revision as it was seen; empty when that does not matter
   * @param by who and when
   * @return what was made
   * @throws Refusal when there is such a variant or no such goal, or the address means another
   *     revision by now
   */
  public WriteViews.VariantMade call(
      Address from,
      String name,
      Optional<String> goal,
      String note,
      Optional<String> seen,
      By by) {
    Revision start = desk.notebook().revision(from);
    WriteParts.requireSeen(start, seen);
    Revision made = new VariantWriter(desk.notebook()).fork(start, name, goal, note, by);
    Views.GoalView standing =
        desk.attempt(made.address(), made, List.of())
            .sheet()
            .flatMap(Desk.Sheet::goal)
            .map(check -> GoalViews.view(check, desk.units()))
            .orElse(null);
    List<String> remarks = new ArrayList<>();
    if (made.commit().equals(start.commit())) {
      remarks.add(
          "The variant begins as " + start.address() + " is; its first own revision is the next.");
    }
    return new WriteViews.VariantMade(
        WriteParts.revision(made), WriteParts.revision(start), standing, List.copyOf(remarks));
  }
}
