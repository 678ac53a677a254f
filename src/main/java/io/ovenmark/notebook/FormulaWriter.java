package io.ovenmark.notebook;

import io.ovenmark.change.FormulaMerge;
import io.ovenmark.change.Merged;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.HandEdit;
import io.ovenmark.notebook.store.Write;
import io.ovenmark.notebook.store.WriteOutcome;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Commits formulas: new ones, revisions, restored ones. Every write says which revision it was
 * based on; when that moved meanwhile, the two are merged by meaning or refused with both sides.
 *
 * <pre>{@code
 * ReviseOutcome outcome = new FormulaWriter(notebook).revise(base, edited, "Drier dough", by);
 * }</pre>
 */
public final class FormulaWriter {
  /** Trailer that names the revision whose content was taken back. */
  public static final String RESTORES = "Restores";

  private final Notebook notebook;

  /**
   * Writes to a notebook.
   *
   * @param notebook the notebook, open
   */
  public FormulaWriter(Notebook notebook) {
    this.notebook = notebook;
  }

  /**
   * Adds a formula to the main line.
   *
   * @param slug its short name
   * @param formula the formula
   * @param note why, not blank
   * @param by who and when
   * @return its first revision
   * @throws Refusal when there is one of that name, or a food is unknown
   */
  public ReviseOutcome.Saved create(String slug, Formula formula, String note, By by) {
    checked(slug, () -> Slug.check(slug));
    return create(slug, Content.of(formula), note, by);
  }

  private ReviseOutcome.Saved create(String slug, Content content, String note, By by) {
    Address line = Address.latest(slug, Optional.empty());
    String message = checkedNote(note);
    while (true) {
      CommitId head = notebook.head(Layout.MAIN);
      Contents contents = notebook.at(head);
      if (contents.formulaBlob(slug).isPresent()) {
        throw new Refusal(
            Refusal.Reason.EXISTS,
            slug,
            "There is a formula \"" + slug + "\" already.",
            "Choose another short name, or revise that one.");
      }
      Belongings belongings = Belongings.of(content.formula(), contents, List.of());
      Write write =
          Write.to(Layout.MAIN, Optional.of(head), by.author(), by.time(), message)
              .put(Layout.formula(slug), content.bytes());
      WriteOutcome outcome = notebook.store().write(belongings.with(write));
      if (outcome instanceof WriteOutcome.Written written) {
        return saved(line, written, false, belongings.slugs());
      }
    }
  }

  /**
   * Commits an edited formula as the next revision of its line of history.
   *
   * @param base the revision that was edited
   * @param edited what became of it
   * @param note why, not blank
   * @param by who and when
   * @return saved, the same as the latest, or diverged with both sides
   * @throws Refusal when a food is unknown or the note is blank
   */
  public ReviseOutcome revise(Revision base, Formula edited, String note, By by) {
    Edited content = new Edited(Content.of(edited), places(base), Map.of());
    return write(base, content, false, note, by);
  }

  /**
   * Takes the content of an earlier revision back as the newest one, to the byte, so that the bakes
   * of that revision are found again.
   *
   * @param earlier the revision whose content is wanted
   * @param line the line of history that receives it
   * @param note why, not blank
   * @param by who and when
   * @return saved, or the same as the latest
   */
  public ReviseOutcome restore(Revision earlier, Address line, String note, By by) {
    return write(notebook.newest(line), restored(earlier), false, note, by);
  }

  /**
   * The same for a writer who decided by looking at the newest revision: when that moved, nothing
   * is merged and nothing written.
   *
   * @param earlier the revision whose content is wanted
   * @param newest the newest revision of the line of history that receives it, as the writer saw it
   * @param note why, not blank
   * @param by who and when
   * @return saved, or the same as the latest
   * @throws Refusal when there is a newer revision
   */
  public ReviseOutcome restoreInto(Revision earlier, Revision newest, String note, By by) {
    return write(newest, restored(earlier), true, note, by);
  }

  private Edited restored(Revision earlier) {
    String names = earlier.address() + " " + earlier.commit().hex();
    byte[] bytes = notebook.store().read(earlier.blob());
    Content content = new Content(notebook.formula(earlier), bytes, true);
    return new Edited(content, places(earlier), Map.of(RESTORES, names));
  }

  /** Where foods and goals are looked for that a branch lacks. */
  private List<Contents> places(Revision revision) {
    return List.of(notebook.latest(), notebook.at(revision.commit()));
  }

  /**
   * Commits a formula's file as it was edited by hand, to the byte, on the line of history that is
   * on disk; a file without revisions becomes a new formula.
   *
   * @param slug the formula's short name
   * @param note why, not blank
   * @param by who and when
   * @return saved or diverged with both sides
   * @throws Refusal when the file is not edited, is gone, or belongs to no line of the formula
   * @throws io.ovenmark.json.UnreadableException when the file is damaged
   */
  public ReviseOutcome commitEdited(String slug, String note, By by) {
    String path = Layout.formula(slug);
    HandEdit edit = notebook.handEdit(slug).orElse(null);
    if (edit == null) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          path,
          "The file " + path + " is the same as its newest revision.",
          "Edit it first.");
    }
    if (edit.onDisk().isEmpty()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          path,
          "The file " + path + " was deleted or cannot be read.",
          "Bring it back with: git checkout -- " + path);
    }
    byte[] bytes = edit.onDisk().get();
    Content content = new Content(FormulaCodec.read(path, bytes), bytes, true);
    Address line = notebook.lineOnDisk(slug).orElseThrow(() -> elsewhere(slug));
    if (edit.committed().isPresent()) {
      Revision base = edited(line, edit.committed().get());
      return write(base, new Edited(content, places(base), Map.of()), false, note, by);
    }
    if (line.variant().isPresent()) {
      throw elsewhere(slug);
    }
    return create(slug, content, note, by);
  }

  /** The revision that a file had been when it was edited. */
  private Revision edited(Address line, BlobId committed) {
    Revision newest = notebook.newest(line);
    if (newest.blob().equals(committed)) {
      return newest;
    }
    return notebook.revisions(line).stream()
        .filter(revision -> revision.blob().equals(committed))
        .reduce((first, second) -> second)
        .orElse(newest);
  }

  /**
   * A formula and the bytes that say it.
   *
   * @param exact whether it has to be these bytes, as a person wrote or weighed them
   */
  private record Content(Formula formula, byte[] bytes, boolean exact) {
    static Content of(Formula formula) {
      return new Content(formula, FormulaCodec.write(formula), false);
    }
  }

  /**
   * What is to be committed.
   *
   * @param content the formula
   * @param places where foods and goals are looked for that the branch lacks
   * @param trailers what the commit says for programs
   */
  private record Edited(Content content, List<Contents> places, Map<String, String> trailers) {}

  private ReviseOutcome write(Revision base, Edited edited, boolean alone, String note, By by) {
    Address line = Address.latest(base.address().formula(), base.address().variant());
    String path = Layout.formula(line.formula());
    String message = checkedNote(note);
    while (true) {
      CommitId head = notebook.head(line.branch());
      Contents contents = notebook.at(head);
      BlobId current =
          contents.formulaBlob(line.formula()).orElseThrow(() -> deleted(line.formula()));
      Content next = edited.content();
      boolean moved = !current.equals(base.blob());
      if (moved && alone) {
        throw Moved.to(notebook.newestAt(line, head));
      }
      if (moved) {
        Formula theirs = contents.formula(line.formula()).orElseThrow();
        Merged merged = FormulaMerge.merge(notebook.formula(base), next.formula(), theirs);
        if (merged instanceof Merged.Conflicting conflicting) {
          return new ReviseOutcome.Diverged(notebook.newestAt(line, head), conflicting);
        }
        Formula settled = ((Merged.Settled) merged).formula();
        next = Content.of(settled);
      }
      if (saysTheSame(next, current)) {
        return new ReviseOutcome.SameAsLatest(notebook.newestAt(line, head));
      }
      Belongings belongings = Belongings.of(next.formula(), contents, edited.places());
      Write write =
          Write.to(line.branch(), Optional.of(head), by.author(), by.time(), message)
              .put(path, next.bytes());
      for (Map.Entry<String, String> trailer : edited.trailers().entrySet()) {
        write = write.trailer(trailer.getKey(), trailer.getValue());
      }
      WriteOutcome outcome = notebook.store().write(belongings.with(write));
      if (outcome instanceof WriteOutcome.Written written) {
        return saved(line, written, moved, belongings.slugs());
      }
    }
  }

  /**
   * Whether a revision has a content already, or one that says the same in other words, as files
   * committed by hand may.
   */
  private boolean saysTheSame(Content next, BlobId current) {
    if (next.exact() || notebook.blobOf(next.bytes()).equals(current)) {
      return notebook.blobOf(next.bytes()).equals(current);
    }
    try {
      Formula known = FormulaCodec.read("", notebook.store().read(current));
      return Arrays.equals(next.bytes(), FormulaCodec.write(known));
    } catch (UnreadableException damaged) {
      return false;
    }
  }

  private ReviseOutcome.Saved saved(
      Address line, WriteOutcome.Written written, boolean merged, List<String> foods) {
    Revision revision = notebook.newestAt(line, written.commit());
    return new ReviseOutcome.Saved(revision, merged, foods, written.leftAsEditedByHand());
  }

  static String checkedNote(String note) {
    if (note.isBlank()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "note",
          "A revision needs a note.",
          "Say in a line what and why.");
    }
    return note.strip();
  }

  static void checked(String where, Runnable check) {
    try {
      check.run();
    } catch (IllegalArgumentException e) {
      throw Refusal.of(where, e);
    }
  }

  private static Refusal deleted(String slug) {
    return new Refusal(
        Refusal.Reason.CONFLICT,
        slug,
        "The formula \"" + slug + "\" was deleted meanwhile.",
        "Save what you have as a new formula.");
  }

  private static Refusal elsewhere(String slug) {
    return new Refusal(
        Refusal.Reason.INVALID,
        slug,
        "The files on disk are not those of " + slug + " or of one of its variants.",
        "Check its branch out first, for instance with: git checkout main");
  }
}
