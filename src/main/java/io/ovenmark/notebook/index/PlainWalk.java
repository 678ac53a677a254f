package io.ovenmark.notebook.index;

import io.ovenmark.notebook.store.CommitFacts;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.EmptyTreeIterator;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.AndTreeFilter;
import org.eclipse.jgit.treewalk.filter.PathFilter;
import org.eclipse.jgit.treewalk.filter.TreeFilter;

/**
 * Histories read from the commits themselves, every time anew: slow and simple. It says what is
 * right; {@link IndexedHistory} must say the same.
 */
public final class PlainWalk implements History {
  private final GitStore store;

  /** One commit of a line with what it changed. */
  private record Step(CommitId commit, List<Change> changes) {}

  /** Walks over the commits of a store, which stays the caller's to close. */
  public PlainWalk(GitStore store) {
    this.store = store;
  }

  @Override
  public List<Entry> formula(String branch, String path) {
    return store.head(branch).map(head -> formulaAt(head, path)).orElse(List.of());
  }

  @Override
  public List<Entry> formulaAt(CommitId commit, String path) {
    return follow(line(commit), path);
  }

  @Override
  public Optional<Entry> at(String branch, String path, int number) {
    return formula(branch, path).stream().filter(entry -> entry.number() == number).findFirst();
  }

  @Override
  public Optional<Entry> latest(String branch, String path) {
    return newest(formula(branch, path));
  }

  @Override
  public Optional<Entry> latestAt(CommitId commit, String path) {
    return newest(formulaAt(commit, path));
  }

  private static Optional<Entry> newest(List<Entry> entries) {
    return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
  }

  @Override
  public List<Entry> newestFirst(String branch, int limit) {
    List<Entry> newest = new ArrayList<>();
    List<Step> line = store.head(branch).map(this::line).orElse(List.of());
    for (int i = 0; i < line.size() && newest.size() < limit; i++) {
      List<Step> upToHere = line.subList(i, line.size());
      List<Change> changes = line.get(i).changes();
      for (Change change : changes) {
        boolean renamedAway =
            changes.stream()
                .anyMatch(other -> other.renamedFrom().equals(Optional.of(change.path())));
        if (!renamedAway && newest.size() < limit) {
          List<Entry> history = follow(upToHere, change.path());
          newest.add(history.get(history.size() - 1));
        }
      }
    }
    return List.copyOf(newest);
  }

  @Override
  public Optional<CommitId> fork(String branch) {
    Set<CommitId> main = new HashSet<>();
    store.head(GitStore.MAIN).ifPresent(head -> line(head).forEach(s -> main.add(s.commit())));
    return store.head(branch).stream()
        .flatMap(head -> line(head).stream())
        .map(Step::commit)
        .filter(main::contains)
        .findFirst();
  }

  /** Picks the steps of a path from a line that is given newest first. */
  private List<Entry> follow(List<Step> line, String path) {
    List<Step> steps = new ArrayList<>();
    List<Change> changes = new ArrayList<>();
    String wanted = path;
    for (Step step : line) {
      for (Change change : step.changes()) {
        if (change.path().equals(wanted)) {
          steps.add(step);
          changes.add(change);
          wanted = change.renamedFrom().orElse(wanted);
          break;
        }
      }
    }
    List<Entry> entries = new ArrayList<>();
    for (int i = steps.size() - 1; i >= 0; i--) {
      CommitFacts facts = store.facts(steps.get(i).commit());
      Change change = changes.get(i);
      int number = steps.size() - i;
      entries.add(Entry.of(number, facts, change.path(), change.blob(), change.renamedFrom()));
    }
    return List.copyOf(entries);
  }

  /** The line of a commit, newest first. */
  private List<Step> line(CommitId tip) {
    List<Step> line = new ArrayList<>();
    try (RevWalk walk = new RevWalk(store.jgit())) {
      RevCommit commit = walk.parseCommit(ObjectId.fromString(tip.hex()));
      while (commit != null) {
        RevCommit parent =
            commit.getParentCount() == 0 ? null : walk.parseCommit(commit.getParent(0));
        line.add(new Step(new CommitId(commit.name()), changes(walk, parent, commit)));
        commit = parent;
      }
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
      throw Scan.fault(tip, e);
    }
    return line;
  }

  private List<Change> changes(RevWalk walk, RevCommit parent, RevCommit commit)
      throws IOException {
    try (TreeWalk trees = new TreeWalk(walk.getObjectReader())) {
      if (parent == null) {
        trees.addTree(new EmptyTreeIterator());
      } else {
        trees.addTree(parent.getTree());
      }
      trees.addTree(commit.getTree());
      trees.setRecursive(true);
      trees.setFilter(AndTreeFilter.create(PathFilter.create(FOLDER), TreeFilter.ANY_DIFF));
      return Renames.changes(store.jgit(), trees);
    }
  }
}
