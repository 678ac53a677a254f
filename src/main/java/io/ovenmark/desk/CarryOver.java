package io.ovenmark.desk;

import io.ovenmark.change.Choice;
import io.ovenmark.change.Conflict;
import io.ovenmark.change.FormulaMerge;
import io.ovenmark.change.Merged;
import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.CarryOutcome;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.VariantWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Carries the main line's later improvements into a variant, or shows what that would give.
 *
 * <pre>{@code
 * new CarryOver(desk).preview(Address.parse("seeded-lupin-bun/egg-free"), Choices.NONE);
 * }</pre>
 */
public final class CarryOver {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public CarryOver(Desk desk) {
    this.desk = desk;
  }

  /**
   * What carrying over would give; nothing is written.
   *
   * @param variant the variant
   * @param choices which side to take where both changed the same, {@code OURS} being the variant
   * @return {@code nothing}, {@code preview} or {@code conflict}
   * @throws Refusal when there is no such variant, or a choice has no place
   */
  public WriteViews.CarryWritten preview(Address variant, Choices choices) {
    Revision newest = newest(variant);
    Optional<Merged> merged = merged(variant, choices);
    if (merged.isEmpty()) {
      return answer("nothing", newest, List.of(), List.of(), List.of(), null);
    }
    if (merged.get() instanceof Merged.Conflicting open) {
      return conflict(newest, open);
    }
    Merged.Settled settled = (Merged.Settled) merged.get();
    CarryFigures figures = CarryFigures.of(desk, newest, settled.formula());
    List<String> notes = new ArrayList<>(settled.notes());
    notes.addAll(figures.cautions());
    return answer(
        "preview",
        newest,
        changes(newest, settled.formula()),
        List.of(),
        notes,
        figures.goal().orElse(null));
  }

  /**
   * Carries over.
   *
   * @param variant the variant
   * @param choices which side to take where both changed the same, {@code OURS} being the variant
   * @param note why, not blank
   * @param by who and when
   * @return {@code carried}, {@code nothing} or {@code conflict}
   * @throws Refusal when there is no such variant, or a choice has no place
   */
  public WriteViews.CarryWritten call(Address variant, Choices choices, String note, By by) {
    return call(variant, choices, Optional.empty(), note, by);
  }

  /**
   * Carries over, as decided by looking at a preview.
   *
   * @param variant the variant
   * @param choices which side to take where both changed the same, {@code OURS} being the variant
   * @param seen the two revisions of the preview; empty when that does not matter
   * @param note why, not blank
   * @param by who and when
   * @return {@code carried}, {@code nothing} or {@code conflict}
   * @throws Refusal when there is no such variant, a choice has no place, or there is a newer
   *     revision than one of those seen
   */
  public WriteViews.CarryWritten call(
      Address variant,
      Choices choices,
      Optional<VariantWriter.Seen> seen,
      String note,
      By by) {
    Notebook notebook = desk.notebook();
    Revision before = newest(variant);
    seen.ifPresent(both -> requireUnmoved(before, both));
    Optional<Merged> merged = new VariantWriter(notebook).preview(variant);
    if (merged.isEmpty() && !choices.isEmpty()) {
      among(choices, List.of());
    }
    Map<String, Choice> chosen =
        merged.isPresent() && merged.get() instanceof Merged.Conflicting open
            ? among(choices, open.conflicts())
            : Map.of();
    CarryOutcome outcome = new VariantWriter(notebook).carry(variant, chosen, seen, note, by);
    if (outcome instanceof CarryOutcome.NothingToCarry) {
      return answer("nothing", before, List.of(), List.of(), List.of(), null);
    }
    if (outcome instanceof CarryOutcome.Undecided undecided) {
      return conflict(before, undecided.merge());
    }
    return carried(before, (CarryOutcome.Carried) outcome);
  }

  private WriteViews.CarryWritten carried(Revision before, CarryOutcome.Carried carried) {
    Revision now = carried.revision();
    boolean same = now.blob().equals(before.blob());
    WriteParts.Changed changed =
        same
            ? new WriteParts.Changed(List.of(), null, List.of())
            : WriteParts.changed(desk, Optional.of(before), now);
    return new WriteViews.CarryWritten(
        "carried",
        WriteParts.revision(now),
        main(now),
        changed.changes(),
        List.of(),
        changed.remarks(),
        changed.comparison(),
        carried.keptAsInVariant(),
        desk.attempt(now.address(), now, List.of())
            .sheet()
            .flatMap(Desk.Sheet::goal)
            .map(check -> GoalViews.view(check, desk.units()))
            .orElse(null));
  }

  /** Before the choices are looked at, which may have no place in a merge of other revisions. */
  private void requireUnmoved(Revision variant, VariantWriter.Seen seen) {
    WriteParts.requireSeen(variant, Optional.of(seen.variant()));
    Address main = Address.latest(variant.address().formula(), Optional.empty());
    WriteParts.requireSeen(desk.notebook().newest(main), Optional.of(seen.main()));
  }

  private WriteViews.CarryWritten conflict(Revision newest, Merged.Conflicting open) {
    return answer(
        "conflict",
        newest,
        changes(newest, open.draft()),
        WriteParts.conflicts(open.conflicts()),
        open.notes(),
        null);
  }

  private Revision newest(Address variant) {
    if (variant.variant().isEmpty()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          variant.toString(),
          "Improvements are carried into a variant, and this is the main line.",
          "Name the variant, as in seeded-lupin-bun/egg-free.");
    }
    return desk.notebook().newest(variant);
  }

  private Optional<Merged> merged(Address variant, Choices choices) {
    Optional<Merged> merged = new VariantWriter(desk.notebook()).preview(variant);
    if (choices.isEmpty()) {
      return merged;
    }
    if (merged.isPresent() && merged.get() instanceof Merged.Conflicting open) {
      return Optional.of(FormulaMerge.resolve(open, among(choices, open.conflicts())));
    }
    among(choices, List.of());
    return merged;
  }

  private static Map<String, Choice> among(Choices choices, List<Conflict> conflicts) {
    try {
      return choices.among(conflicts);
    } catch (IllegalArgumentException e) {
      throw Refusal.of("choice", e);
    }
  }

  private WriteViews.CarryWritten answer(
      String outcome,
      Revision newest,
      List<Views.ChangeView> changes,
      List<WriteViews.ConflictView> conflicts,
      List<String> notes,
      Views.GoalView goal) {
    return new WriteViews.CarryWritten(
        outcome,
        WriteParts.revision(newest),
        main(newest),
        changes,
        conflicts,
        List.copyOf(notes),
        null,
        List.of(),
        goal);
  }

  private WriteViews.RevisionView main(Revision variant) {
    Address main = Address.latest(variant.address().formula(), Optional.empty());
    return WriteParts.revision(desk.notebook().newest(main));
  }

  private List<Views.ChangeView> changes(Revision before, Formula after) {
    Address main = Address.latest(before.address().formula(), Optional.empty());
    return WriteParts.changes(
        desk.units(),
        desk.notebook().formula(before),
        desk.notebook().at(before.commit()),
        after,
        desk.notebook().latest(main));
  }
}
