package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.change.FormulaDiff;
import io.ovenmark.change.FormulaMerge;
import io.ovenmark.change.Merged;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.ReviseOutcome;
import io.ovenmark.notebook.Revision;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Commits the next revision of a formula: from short edits, from a whole file, or from the file
 * that was edited by hand. A proposal is drawn up first, so that it can be looked at before it is
 * committed.
 *
 * <pre>{@code
 * ReviseFormula verb = new ReviseFormula(desk);
 * ReviseFormula.Proposal proposal =
 *     verb.edited(address, List.of(new ReviseFormula.Edit(ReviseFormula.Act.SET, "water=188 g")));
 * verb.call(proposal, "Drier dough", Choices.NONE, by);
 * }</pre>
 */
public final class ReviseFormula {
  private static final int LONGEST_NOTE = 72;

  private final Desk desk;

  /** What is done to a formula by one edit. */
  public enum Act {
    /** {@link FormulaEdit#set}. */
    SET,
    /** {@link FormulaEdit#add}. */
    ADD,
    /** {@link FormulaEdit#remove}. */
    REMOVE,
    /** {@link FormulaEdit#replace}. */
    REPLACE
  }

  /**
   * One edit.
   *
   * @param act what is done
   * @param text to what, as {@link FormulaEdit} reads it
   */
  public record Edit(Act act, String text) {
    /** Checks that nothing is null. */
    public Edit {
      requireNonNull(act, "act");
      requireNonNull(text, "text");
    }
  }

  /**
   * What is to be committed.
   *
   * @param line the line of history that receives it
   * @param base the revision that was edited; empty for a formula that has none yet
   * @param edited what became of it
   * @param disk the file on disk that it was read from; empty when it comes from elsewhere
   */
  public record Proposal(
      Address line, Optional<Revision> base, Formula edited, Optional<HandEditedFile> disk) {
    /** Checks that nothing is null. */
    public Proposal {
      requireNonNull(line, "line");
      requireNonNull(base, "base");
      requireNonNull(edited, "edited");
      requireNonNull(disk, "disk");
    }
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ReviseFormula(Desk desk) {
    this.desk = desk;
  }

  /**
   * Edits a revision.
   *
   * @param base the revision to edit; the newest when it names none
   * @param edits what to do, in this order
   * @return what would be committed
   * @throws Refusal when an edit cannot be done
   */
  public Proposal edited(Address base, List<Edit> edits) {
    Revision revision = desk.notebook().revision(base);
    Formula formula = apply(desk.notebook().formula(revision), edits);
    return new Proposal(
        WriteParts.line(revision.address()), Optional.of(revision), formula, Optional.empty());
  }

  /**
   * Applies edits to a formula.
   *
   * @param formula the formula
   * @param edits what to do, in this order
   * @return the edited formula
   * @throws Refusal when an edit cannot be done
   */
  public static Formula apply(Formula formula, List<Edit> edits) {
    FormulaEdit state = new FormulaEdit(formula);
    for (Edit edit : edits) {
      try {
        state =
            switch (edit.act()) {
              case SET -> state.set(edit.text());
              case ADD -> state.add(edit.text());
              case REMOVE -> state.remove(edit.text());
              case REPLACE -> state.replace(edit.text());
            };
      } catch (IllegalArgumentException e) {
        throw Refusal.of(edit.text(), e);
      }
    }
    return state.formula();
  }

  /**
   * Takes a whole file in the place of a revision.
   *
   * @param base the revision that was edited; the newest when it names none
   * @param name the file's name, for messages
   * @param utf8 its bytes
   * @return what would be committed
   * @throws io.ovenmark.json.UnreadableException with everything that is wrong in it
   */
  public Proposal file(Address base, String name, byte[] utf8) {
    Revision revision = desk.notebook().revision(base);
    Formula formula = FormulaCodec.read(name, utf8);
    return new Proposal(
        WriteParts.line(revision.address()), Optional.of(revision), formula, Optional.empty());
  }

  /**
   * Takes the file that was edited by hand. It counts as an edit of the revision named; when none
   * is named, of the newest, or of the newest that was there when the file was last written, so
   * that a revision which came in between is merged and not overwritten.
   *
   * @param base a line of history, or the revision that was edited
   * @return what would be committed
   * @throws Refusal when the file says the same as the newest revision, or belongs to another line
   * @throws io.ovenmark.json.UnreadableException with everything that is wrong in it
   */
  public Proposal onDisk(Address base) {
    Notebook notebook = desk.notebook();
    Optional<HandEditedFile> found = HandEditedFile.of(notebook, base.formula());
    if (found.isEmpty()) {
      notebook.newest(base);
      throw new Refusal(
          Refusal.Reason.INVALID,
          "formulas/" + base.formula() + ".json",
          "The file on disk says what the newest revision says: there is nothing to commit.",
          "Edit the file, name another with --file, or change a field with --set.");
    }
    HandEditedFile file = found.get();
    Address line = lineOnDisk(base);
    Formula formula = FormulaCodec.read(file.path(), file.bytes());
    if (!notebook.latest(line).formulas().contains(base.formula())) {
      return new Proposal(line, Optional.empty(), formula, found);
    }
    boolean named = base.point().kind() != Address.Point.Kind.LATEST;
    Revision revision = named ? notebook.revision(base) : file.base(notebook, formula, notebook.revisions(line));
    return new Proposal(line, Optional.of(revision), formula, found);
  }

  private Address lineOnDisk(Address asked) {
    Optional<Address> line = desk.notebook().lineOnDisk(asked.formula());
    if (line.isEmpty() || !line.get().variant().equals(asked.variant())) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          asked.line(),
          "The files on disk belong to "
              + line.map(Address::line).orElse("another branch")
              + ", not to "
              + asked.line()
              + ".",
          "Change fields with --set, or name a file with --file.");
    }
    return line.get();
  }

  /**
   * A note that says what changes, for whoever does not want to say why.
   *
   * @param proposal what is to be committed
   * @return one line; empty when nothing changes
   */
  public String noteFromChanges(Proposal proposal) {
    return noteFrom(changes(proposal));
  }

  /** A note that says what changes; empty when nothing does. */
  static String noteFrom(List<Views.ChangeView> changes) {
    StringBuilder note = new StringBuilder();
    int told = 0;
    for (Views.ChangeView change : changes) {
      String sentence = change.sentence().replaceAll("\\.$", "");
      if (told > 0 && note.length() + sentence.length() > LONGEST_NOTE) {
        break;
      }
      note.append(told == 0 ? "" : "; ").append(sentence);
      told++;
    }
    int more = changes.size() - told;
    if (more > 0) {
      note.append(more == 1 ? "; 1 more change" : "; " + more + " more changes");
    }
    return note.toString();
  }

  /**
   * What a proposal changes against the revision that was edited.
   *
   * @param proposal what is to be committed
   * @return the changes in words; empty for a formula without revision
   */
  public List<Views.ChangeView> changes(Proposal proposal) {
    if (proposal.base().isEmpty()) {
      return List.of();
    }
    Revision base = proposal.base().get();
    return WriteParts.changes(
        desk.units(),
        desk.notebook().formula(base),
        desk.notebook().at(base.commit()),
        proposal.edited(),
        desk.notebook().latest(proposal.line()));
  }

  /**
   * Commits a proposal.
   *
   * @param proposal what to commit
   * @param note why, not blank
   * @param choices which side to take where somebody else changed the same
   * @param by who and when
   * @return committed, unchanged, or a conflict with both sides
   * @throws Refusal when a food is unknown, the note is blank or a choice has no place
   */
  public WriteViews.RevisionWritten call(Proposal proposal, String note, Choices choices, By by) {
    boolean sameGoal =
        proposal.base().isPresent()
            && desk.notebook()
                .formula(proposal.base().get())
                .goal()
                .equals(proposal.edited().goal());
    if (!sameGoal) {
      WriteParts.requireGoal(
          proposal.edited(),
          desk.notebook().latest(),
          desk.notebook().latest(proposal.line()));
    }
    FormulaWriter writer = new FormulaWriter(desk.notebook());
    if (proposal.base().isEmpty()) {
      return saved(proposal, writer.create(proposal.line().formula(), proposal.edited(), note, by));
    }
    Revision base = proposal.base().get();
    boolean weighed = proposal.disk().isPresent() && isWeighed(proposal) && isNewest(base);
    ReviseOutcome outcome =
        weighed
            ? writer.commitEdited(proposal.line().formula(), note, by)
            : writer.revise(base, proposal.edited(), note, by);
    while (outcome instanceof ReviseOutcome.Diverged diverged) {
      Merged merged = chosen(diverged.merge(), choices);
      if (merged instanceof Merged.Conflicting open) {
        return conflict(base, diverged.latest(), open);
      }
      Formula settled = ((Merged.Settled) merged).formula();
      outcome = writer.revise(diverged.latest(), settled, note, by);
    }
    if (outcome instanceof ReviseOutcome.SameAsLatest same) {
      return unsaved("unchanged", base, same.latest(), List.of(), unchanged(proposal, same));
    }
    return saved(proposal, (ReviseOutcome.Saved) outcome);
  }

  /** What to know about a file on disk of which nothing had to be committed. */
  private List<String> unchanged(Proposal proposal, ReviseOutcome.SameAsLatest same) {
    if (proposal.disk().isEmpty()) {
      return List.of();
    }
    HandEditedFile file = proposal.disk().get();
    Revision latest = same.latest();
    if (!FormulaDiff.between(desk.notebook().formula(latest), proposal.edited()).isEmpty()) {
      return List.of(
          file.path()
              + " only lacks what came in since it was edited. To commit it as it stands, name "
              + latest.address()
              + " as the revision that was edited.");
    }
    return file.settle(desk.notebook(), latest)
        ? List.of(file.path() + " is written in the notebook's own form again.")
        : List.of();
  }

  /** Whether a bake was made from the very file on disk, so that it must be kept to the byte. */
  private boolean isWeighed(Proposal proposal) {
    String blob = desk.notebook().blobOf(proposal.disk().orElseThrow().bytes()).hex();
    return !Desk.bakesOf(blob, desk.notebook().bakes(proposal.line().formula())).isEmpty();
  }

  private boolean isNewest(Revision base) {
    return desk.notebook().newest(base.address()).blob().equals(base.blob());
  }

  private static Merged chosen(Merged.Conflicting open, Choices choices) {
    if (choices.isEmpty()) {
      return open;
    }
    try {
      return FormulaMerge.resolve(open, choices.among(open.conflicts()));
    } catch (IllegalArgumentException e) {
      throw Refusal.of("choice", e);
    }
  }

  private WriteViews.RevisionWritten saved(Proposal proposal, ReviseOutcome.Saved saved) {
    Revision revision = saved.revision();
    List<String> left = new ArrayList<>(saved.leftAsEditedByHand());
    proposal
        .disk()
        .filter(file -> file.settle(desk.notebook(), revision))
        .ifPresent(file -> left.remove(file.path()));
    List<WriteViews.RevisionView> between =
        proposal.base().stream()
            .flatMap(
                base ->
                    desk.notebook().revisions(proposal.line()).stream()
                        .filter(each -> each.number() > base.number())
                        .filter(each -> each.number() < revision.number()))
            .map(WriteParts::revision)
            .toList();
    WriteParts.Changed changed = WriteParts.changed(desk, revision);
    return new WriteViews.RevisionWritten(
        "committed",
        WriteParts.revision(revision),
        proposal.base().map(WriteParts::revision).orElse(null),
        changed.changes(),
        changed.comparison(),
        between,
        List.of(),
        saved.foodsAdded(),
        List.copyOf(left),
        changed.remarks());
  }

  private static WriteViews.RevisionWritten conflict(
      Revision base, Revision latest, Merged.Conflicting open) {
    return unsaved("conflict", base, latest, WriteParts.conflicts(open.conflicts()), open.notes());
  }

  static WriteViews.RevisionWritten unsaved(
      String outcome,
      Revision base,
      Revision latest,
      List<WriteViews.ConflictView> conflicts,
      List<String> remarks) {
    return new WriteViews.RevisionWritten(
        outcome,
        WriteParts.revision(latest),
        WriteParts.revision(base),
        List.of(),
        null,
        List.of(),
        conflicts,
        List.of(),
        List.of(),
        List.copyOf(remarks));
  }
}
