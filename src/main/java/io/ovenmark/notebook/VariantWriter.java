package io.ovenmark.notebook;

import io.ovenmark.change.Choice;
import io.ovenmark.change.FormulaMerge;
import io.ovenmark.change.Merged;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.notebook.store.Write;
import io.ovenmark.notebook.store.WriteOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeSet;

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
   * @param note why, for the first revision that states the goal
   * @param by who and when
   * @return the variant's newest revision
   * @throws Refusal when there is such a variant or no such goal
   */
  public Revision fork(Revision from, String name, Optional<String> goal, String note, By by) {
    String slug = from.address().formula();
    FormulaWriter.checked(name, () -> Address.checkVariant(name));
    Address variant = Address.latest(slug, Optional.of(name));
    goal.ifPresent(this::requireGoal);
    Revision newest = notebook.newest(from.address());
    CommitId at =
        newest.commit().equals(from.commit())
            ? notebook.head(from.address().branch())
            : from.commit();
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
    Formula formula = notebook.formula(from);
    if (goal.isEmpty() || formula.goal().equals(goal)) {
      return notebook.newest(variant);
    }
    return stateGoal(variant, formula.withGoal(goal), goal.get(), note, by);
  }

  private Revision stateGoal(Address variant, Formula formula, String goal, String note, By by) {
    CommitId head = notebook.head(variant.branch());
    Write write =
        Write.to(
                variant.branch(),
                Optional.of(head),
                by.author(),
                by.time(),
                FormulaWriter.checkedNote(note))
            .put(Layout.formula(variant.formula()), FormulaCodec.write(formula));
    if (notebook.at(head).goal(goal).isEmpty()) {
      BlobId blob = notebook.latest().blob(Layout.goal(goal)).orElseThrow();
      write = write.put(Layout.goal(goal), notebook.store().read(blob));
    }
    WriteOutcome outcome = notebook.store().write(write);
    if (outcome instanceof WriteOutcome.Moved) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          variant.line(),
          "The variant was made, but somebody wrote to it before its goal was noted.",
          "Set the goal with: ovenmark revise " + variant.line() + " --set goal=" + goal);
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
    GitStore store = notebook.store();
    String slug = variant.formula();
    while (true) {
      notebook.newest(variant);
      CommitId ours = notebook.head(variant.branch());
      CommitId theirs = notebook.head(Layout.MAIN);
      if (store.isAncestor(theirs, ours)) {
        return new CarryOutcome.NothingToCarry(notebook.newest(variant));
      }
      CommitId base = base(ours, theirs);
      Merged merged = merge(slug, base, ours, theirs);
      if (merged instanceof Merged.Conflicting conflicting) {
        merged = FormulaMerge.resolve(conflicting, choices);
      }
      if (merged instanceof Merged.Conflicting open) {
        return new CarryOutcome.Undecided(open);
      }
      Formula formula = ((Merged.Settled) merged).formula();
      Revision carried = notebook.newest(Address.latest(slug, Optional.empty()));
      Write write =
          Write.to(
                  variant.branch(),
                  Optional.of(ours),
                  by.author(),
                  by.time(),
                  FormulaWriter.checkedNote(note))
              .merging(theirs)
              .trailer(CARRIES, carried.address() + " " + carried.commit().hex());
      List<String> kept = new ArrayList<>();
      write = otherFiles(write, slug, base, ours, theirs, kept);
      write = write.put(Layout.formula(slug), FormulaCodec.write(formula));
      if (store.write(write) instanceof WriteOutcome.Written) {
        return new CarryOutcome.Carried(notebook.newest(variant), kept);
      }
    }
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
    GitStore store = notebook.store();
    SortedMap<String, BlobId> before = store.list(base, "");
    SortedMap<String, BlobId> variant = store.list(ours, "");
    SortedMap<String, BlobId> main = store.list(theirs, "");
    TreeSet<String> paths = new TreeSet<>(before.keySet());
    paths.addAll(main.keySet());
    paths.remove(Layout.formula(slug));
    Write result = write;
    for (String path : paths) {
      Optional<BlobId> old = Optional.ofNullable(before.get(path));
      Optional<BlobId> here = Optional.ofNullable(variant.get(path));
      Optional<BlobId> there = Optional.ofNullable(main.get(path));
      if (there.equals(old) || there.equals(here)) {
        continue;
      }
      if (!here.equals(old)) {
        kept.add(path);
      } else if (there.isPresent()) {
        result = result.put(path, store.read(there.get()));
      } else {
        result = result.delete(path);
      }
    }
    return result;
  }
}
