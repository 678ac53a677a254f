package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeForm;
import io.ovenmark.bake.BakeFormReader;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import java.util.List;
import java.util.Optional;

/**
 * Records a bake that was typed into a form, and ends the draft that kept it. The same form sent
 * twice, as when the answer to the first was lost, is recorded once.
 */
public final class RecordTypedBake {
  private final Desk desk;

  /**
   * What was typed.
   *
   * @param address the revision that was baked
   * @param blob id of its content when the bake was begun; empty for whatever it is now
   * @param form the bake
   * @param draft the draft that kept it; empty for none
   */
  public record Request(
      Address address, Optional<String> blob, BakeForm form, Optional<DraftState> draft) {
    /** Checks that nothing is null. */
    public Request {
      requireNonNull(address, "address");
      requireNonNull(blob, "blob");
      requireNonNull(form, "form");
      requireNonNull(draft, "draft");
    }
  }

  /**
   * A draft as it was kept last.
   *
   * @param id its name
   * @param version its version
   */
  public record DraftState(String id, long version) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public RecordTypedBake(Desk desk) {
    this.desk = desk;
  }

  /**
   * Records it.
   *
   * @param request what was typed
   * @param by who commits it, and when
   * @return the bake
   * @throws Refusal when a field is not understood, the revision is another one by now, the draft
   *     was kept or ended elsewhere, or there is nothing to record; nothing is written then
   */
  public synchronized KitchenViews.BakeWritten call(Request request, By by) {
    BakeFormReader.Reading read =
        BakeFormReader.read(request.form(), Optional.empty(), WorkOutBake.clock(by));
    refuseFaults(read);
    Revision revision = desk.notebook().revision(request.address());
    if (request.blob().filter(blob -> !blob.equals(revision.blob().hex())).isPresent()) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          request.address().toString(),
          request.address() + " is not the formula that this bake was begun with.",
          "Choose the revision that was baked again.");
    }
    BakeDrafts drafts = new BakeDrafts(desk);
    Optional<Bake> recorded = recorded(read, revision);
    if (recorded.isPresent()) {
      request.draft().ifPresent(draft -> end(drafts, draft));
      BakeParts parts = new BakeParts(desk);
      return parts.written(recorded.get(), parts.lineOf(recorded.get()), List.of());
    }
    request.draft().ifPresent(draft -> drafts.require(draft.id(), draft.version()));
    KitchenViews.BakeWritten written =
        new RecordBake(desk)
            .call(
                new RecordBake.Request(
                    revision.address(),
                    read.time().orElse(by.time()),
                    read.baker(),
                    read.ambient(),
                    read.note(),
                    read.pieces(),
                    read.findings(),
                    List.of()),
                by);
    request.draft().ifPresent(draft -> end(drafts, draft));
    return written;
  }

  /** The very same bake, recorded before; only one whose time was stated can be told again. */
  private Optional<Bake> recorded(BakeFormReader.Reading read, Revision revision) {
    return desk.notebook().bakes(revision.address().formula()).stream()
        .filter(bake -> bake.blob().equals(revision.blob().hex()))
        .filter(bake -> Optional.of(bake.time()).equals(read.time()))
        .filter(bake -> bake.pieces().equals(read.pieces()))
        .filter(bake -> bake.findings().equals(read.findings()))
        .filter(bake -> bake.note().equals(read.note()))
        .filter(bake -> bake.baker().equals(read.baker()))
        .filter(bake -> bake.ambient().equals(read.ambient()))
        .reduce((first, last) -> last);
  }

  /** What was typed into it elsewhere in the last moment keeps a draft alive. */
  private static void end(BakeDrafts drafts, DraftState draft) {
    try {
      drafts.discard(draft.id(), draft.version());
    } catch (Refusal kept) {
      if (kept.reason() != Refusal.Reason.CONFLICT && kept.reason() != Refusal.Reason.NOT_FOUND) {
        throw kept;
      }
    }
  }

  /**
   * Refuses a form with fields that are not understood.
   *
   * @throws Refusal with the first of them
   */
  static void refuseFaults(BakeFormReader.Reading read) {
    if (!read.faults().isEmpty()) {
      BakeFormReader.Fault fault = read.faults().get(0);
      int more = read.faults().size() - 1;
      throw new Refusal(
          Refusal.Reason.INVALID,
          fault.field(),
          fault.sentence(),
          fault.remedy() + (more > 0 ? " " + more + " more to mend." : ""));
    }
  }
}
