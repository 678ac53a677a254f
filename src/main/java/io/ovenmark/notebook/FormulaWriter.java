package io.ovenmark.notebook;

import io.ovenmark.change.FormulaMerge;
import io.ovenmark.change.Merged;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.index.Entry;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.Write;
import io.ovenmark.notebook.store.WriteOutcome;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodCodec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Commits formulas: new ones, revisions, restored ones. Every write says which revision it was based
 * on; when that moved meanwhile, the two are merged by meaning or refused with both sides.
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
    Address line = Address.latest(slug, Optional.empty());
    byte[] bytes = FormulaCodec.write(formula);
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
      Write write =
          Write.to(Layout.MAIN, Optional.of(head), by.author(), by.time(), checkedNote(note))
              .put(Layout.formula(slug), bytes);
      List<String> foods = missingFoods(contents, formula);
      WriteOutcome outcome = notebook.store().write(withFoods(write, foods));
      if (outcome instanceof WriteOutcome.Written written) {
        return saved(line, written, false, foods);
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
    return write(base, edited, note, by, Map.of());
  }

  /**
   * Takes the content of an earlier revision back as the newest one.
   *
   * @param earlier the revision whose content is wanted
   * @param line the line of history that receives it
   * @param note why, not blank
   * @param by who and when
   * @return saved, or the same as the latest
   */
  public ReviseOutcome restore(Revision earlier, Address line, String note, By by) {
    Revision newest = notebook.newest(line);
    String names = earlier.address() + " " + earlier.commit().hex();
    return write(newest, notebook.formula(earlier), note, by, Map.of(RESTORES, names));
  }

  private ReviseOutcome write(
      Revision base, Formula edited, String note, By by, Map<String, String> trailers) {
    Address line = Address.latest(base.address().formula(), base.address().variant());
    String path = Layout.formula(line.formula());
    String message = checkedNote(note);
    while (true) {
      CommitId head = notebook.head(line.branch());
      Contents contents = notebook.at(head);
      BlobId current =
          contents.formulaBlob(line.formula()).orElseThrow(() -> deleted(line.formula()));
      Formula next = edited;
      boolean moved = !current.equals(base.blob());
      if (moved) {
        Formula theirs = contents.formula(line.formula()).orElseThrow();
        Merged merged = FormulaMerge.merge(notebook.formula(base), edited, theirs);
        if (merged instanceof Merged.Conflicting conflicting) {
          return new ReviseOutcome.Diverged(notebook.newest(line), conflicting);
        }
        next = ((Merged.Settled) merged).formula();
      }
      byte[] bytes = FormulaCodec.write(next);
      if (Arrays.equals(bytes, notebook.store().read(current))) {
        return new ReviseOutcome.SameAsLatest(notebook.newest(line));
      }
      List<String> foods = missingFoods(contents, next);
      Write write =
          Write.to(line.branch(), Optional.of(head), by.author(), by.time(), message)
              .put(path, bytes);
      for (Map.Entry<String, String> trailer : trailers.entrySet()) {
        write = write.trailer(trailer.getKey(), trailer.getValue());
      }
      WriteOutcome outcome = notebook.store().write(withFoods(write, foods));
      if (outcome instanceof WriteOutcome.Written written) {
        return saved(line, written, moved, foods);
      }
    }
  }

  private ReviseOutcome.Saved saved(
      Address line, WriteOutcome.Written written, boolean merged, List<String> foods) {
    List<Entry> entries =
        notebook.history().formulaAt(written.commit(), Layout.formula(line.formula()));
    Revision revision = notebook.revision(line, entries.get(entries.size() - 1));
    return new ReviseOutcome.Saved(revision, merged, foods, written.leftAsEditedByHand());
  }

  /** The foods that the pantry lacks; all of them are in the built-in table. */
  static List<String> missingFoods(Contents contents, Formula formula) {
    Set<String> missing = new LinkedHashSet<>();
    List<String> unknown = new ArrayList<>();
    for (Line line : formula.lines()) {
      if (contents.blob(Layout.food(line.food())).isEmpty()) {
        if (BuiltInPantry.find(line.food()).isEmpty()) {
          unknown.add(line.food());
        }
        missing.add(line.food());
      }
    }
    if (!unknown.isEmpty()) {
      throw unknownFood(unknown.get(0));
    }
    return List.copyOf(missing);
  }

  static Write withFoods(Write write, List<String> foods) {
    Write result = write;
    for (String slug : foods) {
      Food food = BuiltInPantry.find(slug).orElseThrow();
      result = result.put(Layout.food(slug), FoodCodec.write(food));
    }
    return result;
  }

  static Refusal unknownFood(String slug) {
    List<String> near =
        BuiltInPantry.search(slug.replace('-', ' ')).stream().limit(3).map(Food::slug).toList();
    String hint = "Add it with: ovenmark pantry add " + slug;
    return new Refusal(
        Refusal.Reason.INVALID,
        slug,
        "The pantry has no food \"" + slug + "\".",
        near.isEmpty() ? hint : "Perhaps you mean " + String.join(" or ", near) + ". " + hint);
  }

  static String checkedNote(String note) {
    if (note.isBlank()) {
      throw new Refusal(
          Refusal.Reason.INVALID, "note", "A revision needs a note.", "Say in a line what and why.");
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
}
