package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Draft;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import java.util.Optional;

/**
 * Commits a draft as the next revision of its formula, or as revision 1 of a new one. What others
 * committed meanwhile is merged by meaning. The draft is thrown away only when the commit
 * succeeded; when the program ends between the two, the draft that is left says which revision it
 * became.
 *
 * <pre>{@code
 * new SaveDraft(desk)
 *     .call(new SaveDraft.Request(id, version, "Drier dough", Optional.empty(), Choices.NONE), by);
 * }</pre>
 */
public final class SaveDraft {
  private final Desk desk;
  private final KeepDrafts drafts;

  /**
   * What is to be saved.
   *
   * @param id the draft
   * @param version the version that was looked at
   * @param note why, not blank
   * @param shortName what a new formula shall be filed under; empty to take one from its name
   * @param choices which side to take where somebody else changed the same
   */
  public record Request(
      String id, long version, String note, Optional<String> shortName, Choices choices) {
    /** Checks that nothing is null. */
    public Request {
      requireNonNull(id, "id");
      requireNonNull(note, "note");
      requireNonNull(shortName, "shortName");
      requireNonNull(choices, "choices");
    }
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public SaveDraft(Desk desk) {
    this.desk = desk;
    drafts = new KeepDrafts(desk);
  }

  /**
   * Saves.
   *
   * @param request what
   * @param by who and when
   * @return committed, unchanged or a conflict with both sides; but for a commit the draft is still
   *     there
   * @throws Refusal when the draft is gone or was kept elsewhere meanwhile, cannot be read in full,
   *     was saved already, or cannot be committed
   */
  public WriteViews.RevisionWritten call(Request request, By by) {
    KeepDrafts.Found found = drafts.find(request.id());
    if (found.draft().version() != request.version()) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          request.id(),
          "This draft was changed elsewhere meanwhile, by " + found.draft().author() + ".",
          "Look at both, and take one.");
    }
    Formula formula = WorkOutDraft.complete(found.content().document());
    Optional<Revision> base = drafts.base(found.content());
    drafts
        .saved(found.content())
        .ifPresent(
            revision -> {
              throw new Refusal(
                  Refusal.Reason.EXISTS,
                  request.id(),
                  "This draft is saved already, as " + revision.address() + ".",
                  "Throw the draft away, or begin a new one from that revision.");
            });
    return base.isPresent()
        ? revise(request, found, base.get(), formula, by)
        : create(request, found, formula, by);
  }

  private WriteViews.RevisionWritten revise(
      Request request, KeepDrafts.Found found, Revision base, Formula formula, By by) {
    Address line = WriteParts.line(base.address());
    ReviseFormula.Proposal proposal =
        new ReviseFormula.Proposal(line, Optional.of(base), formula, Optional.empty());
    Draft marked = mark(found, line, request.note(), by);
    WriteViews.RevisionWritten written =
        new ReviseFormula(desk).call(proposal, request.note(), request.choices(), by);
    return finished(marked, written);
  }

  private WriteViews.RevisionWritten create(
      Request request, KeepDrafts.Found found, Formula formula, By by) {
    NewFormula verb = new NewFormula(desk);
    String shortName = request.shortName().orElseGet(() -> verb.shortName(formula));
    Address line;
    try {
      line = Address.latest(shortName, Optional.empty());
    } catch (IllegalArgumentException e) {
      throw Refusal.of("short_name", e);
    }
    Draft marked = mark(found, line, request.note(), by);
    return finished(marked, verb.call(formula, Optional.of(shortName), request.note(), by));
  }

  private Draft mark(KeepDrafts.Found found, Address line, String note, By by) {
    DraftContent.Saving saving =
        new DraftContent.Saving(
            line.line(), by.time().toEpochSecond(), note.strip().lines().findFirst().orElse(""));
    return drafts.save(found, found.content().with(saving), by);
  }

  private WriteViews.RevisionWritten finished(Draft marked, WriteViews.RevisionWritten written) {
    if (written.outcome().equals("committed")) {
      drafts.discard(marked.id(), marked.version());
    }
    return written;
  }
}
