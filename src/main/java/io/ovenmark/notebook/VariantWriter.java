package io.ovenmark.notebook;

import static java.util.Objects.requireNonNull;

import io.ovenmark.change.Choice;
import io.ovenmark.change.FormulaMerge;
import io.ovenmark.change.Merged;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.Difference;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.notebook.store.Write;
import io.ovenmark.notebook.store.WriteOutcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Branches variants of a formula for other goals, and carries the main line's later improvements
 * into them.
 */
public final class VariantWriter {
  /** Trailer that names the revision of the main line that was carried over. */
  public static final String CARRIES = "Carries";

  private final Notebook notebook;

  /**
   * Writes to a notebook.
   *
   * @param notebook the notebook, open
   */
  public VariantWriter(Notebook notebook) {
    this.notebook = notebook;
  }

  /**
   * Branches a variant.
   *
   * @param from the revision it starts from
   * @param name its name
   * @param goal slug of the goal it is for; empty to keep the formula's goal
   * @param note why, for the first revision that states the goal; may be blank without one
   * @param by who and when
   * @return the variant's newest revision
   * @throws Refusal when there is such a variant or no such goal
   */
  public Revision fork(Revision from, String name, Optional<String> goal, String note, By by) {
    String slug = from.address().formula();
    FormulaWriter.checked(name, () -> Address.checkVariant(name));
    String message =
        goal.isEmpty() && note.isBlank()
            ? "Begin the variant " + name
            : FormulaWriter.checkedNote(note);
    Address variant = Address.latest(slug, Optional.of(name));
    goal.ifPresent(this::requireGoal);
    boolean newest =
        notebook
            .newestIfAny(from.address())
            .filter(found -> found.commit().equals(from.commit()))
            .isPresent();
    CommitId at = newest ? notebook.head(from.address().branch()) : from.commit();
    Optional<Formula> towards =
        goal.isPresent() ? Optional.of(notebook.formula(from).withGoal(goal)) : Optional.empty();
    try {
      notebook.store().createBranch(variant.branch(), at, by.author(), by.time());
    } catch (StoreException e) {
      if (e.reason() == StoreException.Reason.NAME_TAKEN) {
        throw new Refusal(
            Refusal.Reason.EXISTS,
            variant.line(),
            "There is a variant \"" + name + "\" of " + slug + " already.",
            "Choose another name.");
      }
      throw e;
    }
    return begin(variant, from, at, towards, message, by);
  }

  /** The variant's own first commit, unless it begins with nothing of its own. */
  private Revision begin(
      Address variant, Revision from, CommitId at, Optional<Formula> towards, String note, By by) {
    Contents contents = notebook.at(at);
    String path = Layout.formula(variant.formula());
    Write write =
        Write.to(variant.branch(), Optional.of(at), by.author(), by.time(), note)
            .keep(path, from.blob());
    if (!from.path().equals(path) && contents.blob(path).isEmpty()) {
      write = write.delete(from.path());
    }
    if (towards.isPresent() && !towards.get().equals(notebook.formula(from))) {
      write = write.put(path, FormulaCodec.write(towards.get()));
      write = Belongings.of(towards.get(), contents, List.of(notebook.latest())).with(write);
    }
    if (notebook.store().write(write) instanceof WriteOutcome.Moved) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          variant.line(),
          "The variant was made, but somebody wrote to it before its goal was noted.",
          "Set the goal with: ovenmark revise " + variant.line() + " --set goal=...");
    }
    return notebook.newest(variant);
  }

  private void requireGoal(String goal) {
    if (notebook.latest().goal(goal).isEmpty()) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          goal,
          "There is no goal \"" + goal + "\" in this notebook.",
          "Add it with: ovenmark goal add " + goal);
    }
  }

  /**
   * What carrying over would give, without writing anything.
   *
   * @param variant the variant
   * @return the merge by meaning; empty when there is nothing to carry over
   */
  public Optional<Merged> preview(Address variant) {
    GitStore store = notebook.store();
    CommitId ours = notebook.head(variant.branch());
    CommitId theirs = notebook.head(Layout.MAIN);
    return store.isAncestor(theirs, ours)
        ? Optional.empty()
        : Optional.of(merge(variant.formula(), base(ours, theirs), ours, theirs));
  }

  /**
   * The commit that a variant and the main line have in common: where it was branched, or what was
   * carried over last.
   *
   * @param variant the variant
   * @return what the notebook held there
   * @throws Refusal when there is none
   */
  public Contents common(Address variant) {
    return notebook.at(base(notebook.head(variant.branch()), notebook.head(Layout.MAIN)));
  }

  /**
   * What a writer looked at before deciding to carry over.
   *
   * @param variant commit id of the variant's newest revision
   * @param main commit id of the main line's
   */
  public record Seen(String variant, String main) {
    /** Checks that nothing is null. */
    public Seen {
      requireNonNull(variant, "variant");
      requireNonNull(main, "main");
    }
  }

  /**
   * Carries the main line's improvements since the fork, or since the last time, into a variant.
   *
   * @param variant the variant
   * @param choices for each disagreement its field and the side to take
   * @param note why, not blank
   * @param by who and when
   * @return carried, nothing to carry, or undecided with both sides
   */
  public CarryOutcome carry(
      Address variant, Map<String, Choice> choices, String note, By by) {
    return carry(variant, choices, Optional.empty(), note, by);
  }

  /**
   * The same for a writer who decided by looking at both newest revisions.
   *
   * @param variant the variant
   * @param choices for each disagreement its field and the side to take
   * @param seen both revisions; empty when that does not matter
   * @param note why, not blank
   * @param by who and when
   * @return carried, nothing to carry, or undecided with both sides
   * @throws Refusal when one of the two is not the newest any more
   */
  public CarryOutcome carry(
      Address variant, Map<String, Choice> choices, Optional<Seen> seen, String note, By by) {
    GitStore store = notebook.store();
    Address main = Address.latest(variant.formula(), Optional.empty());
    String message = FormulaWriter.checkedNote(note);
    while (true) {
      notebook.newest(variant);
      CommitId ours = notebook.head(variant.branch());
      CommitId theirs = notebook.head(Layout.MAIN);
      if (seen.isPresent()) {
        unmoved(notebook.newestAt(variant, ours), seen.get().variant());
        unmoved(notebook.newestAt(main, theirs), seen.get().main());
      }
      if (store.isAncestor(theirs, ours)) {
        return new CarryOutcome.NothingToCarry(notebook.newestAt(variant, ours));
      }
      CommitId base = base(ours, theirs);
      Merged merged = resolved(merge(variant.formula(), base, ours, theirs), choices);
      if (merged instanceof Merged.Conflicting open) {
        return new CarryOutcome.Undecided(open);
      }
      Revision carried = notebook.newestAt(main, theirs);
      Write write =
          Write.to(variant.branch(), Optional.of(ours), by.author(), by.time(), message)
              .merging(theirs)
              .trailer(CARRIES, carried.address() + " " + carried.commit().hex());
      List<String> kept = new ArrayList<>();
      write = otherFiles(write, variant.formula(), base, ours, theirs, kept);
      Formula formula = ((Merged.Settled) merged).formula();
      write = withFormula(write, variant.formula(), formula, ours, theirs);
      if (store.write(write) instanceof WriteOutcome.Written written) {
        return new CarryOutcome.Carried(notebook.newestAt(variant, written.commit()), kept);
      }
    }
  }

  private static void unmoved(Revision now, String seen) {
    if (!now.commit().hex().equals(seen)) {
      throw Moved.to(now);
    }
  }

  private static Merged resolved(Merged merged, Map<String, Choice> choices) {
    if (!(merged instanceof Merged.Conflicting conflicting)) {
      return merged;
    }
    try {
      return FormulaMerge.resolve(conflicting, choices);
    } catch (IllegalArgumentException e) {
      throw Refusal.of("choice", e);
    }
  }

  /** Takes the very bytes of a side that says the same, so that its bakes are found. */
  private Write withFormula(
      Write write, String slug, Formula formula, CommitId ours, CommitId theirs) {
    for (CommitId side : List.of(ours, theirs)) {
      Contents contents = notebook.at(side);
      byte[] said = FormulaCodec.write(contents.formula(slug).orElseThrow());
      if (Arrays.equals(said, FormulaCodec.write(formula))) {
        return write.keep(Layout.formula(slug), contents.formulaBlob(slug).orElseThrow());
      }
    }
    return write.put(Layout.formula(slug), FormulaCodec.write(formula));
  }

  private CommitId base(CommitId ours, CommitId theirs) {
    return notebook
        .store()
        .mergeBase(ours, theirs)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.CONFLICT,
                    "",
                    "The variant and the main line have no common history.",
                    "Copy the changes by hand."));
  }

  private Merged merge(String slug, CommitId base, CommitId ours, CommitId theirs) {
    return FormulaMerge.merge(formula(slug, base), formula(slug, ours), formula(slug, theirs));
  }

  private Formula formula(String slug, CommitId commit) {
    return notebook
        .at(commit)
        .formula(slug)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.CONFLICT,
                    slug,
                    "The formula is missing on one of the two lines.",
                    "Restore it there first."));
  }

  /** Takes over every other file of the main line that the variant has not changed itself. */
  private Write otherFiles(
      Write write, String slug, CommitId base, CommitId ours, CommitId theirs, List<String> kept) {
    SortedMap<String, Difference> variant =
        notebook.store().differences(Optional.of(base), ours);
    Write result = write;
    for (Map.Entry<String, Difference> main :
        notebook.store().differences(Optional.of(base), theirs).entrySet()) {
      String path = main.getKey();
      Optional<BlobId> there = main.getValue().to();
      Difference here = variant.get(path);
      if (path.equals(Layout.formula(slug)) || here != null && here.to().equals(there)) {
        continue;
      }
      if (here != null) {
        kept.add(path);
      } else if (there.isPresent()) {
        result = result.keep(path, there.get());
      } else {
        result = result.delete(path);
      }
    }
    return result;
  }
}
