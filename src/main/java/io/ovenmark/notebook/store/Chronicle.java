package io.ovenmark.notebook.store;

import static java.util.Objects.requireNonNull;

import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntFunction;

/**
 * Commits to be made, one after the other, with the branches and annotated tags that lead to them:
 * a history told anew in another repository, or on top of what is there.
 *
 * @param steps the commits; each names only earlier ones
 * @param branches for each branch the step that it ends at, or {@link #BASE}
 * @param labels the tags
 */
public record Chronicle(
    List<Step> steps, SortedMap<String, Integer> branches, List<Label> labels) {
  /** Stands for the commit that the chronicle is put on, or for nothing before the first. */
  public static final int BASE = -1;

  /** Copies and checks that no step names a later one. */
  public Chronicle {
    steps = List.copyOf(steps);
    branches = Collections.unmodifiableSortedMap(new TreeMap<>(branches));
    labels = List.copyOf(labels);
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      int at = i;
      if (step.parent() >= at || step.merged().stream().anyMatch(each -> each >= at)) {
        throw new IllegalArgumentException("Step " + i + " follows a later one");
      }
    }
    int size = steps.size();
    if (branches.values().stream().anyMatch(end -> end >= size)
        || labels.stream().anyMatch(label -> label.step() >= size)) {
      throw new IllegalArgumentException("A branch or tag leads to no step");
    }
  }

  /**
   * One commit.
   *
   * @param parent the step before it, or {@link #BASE}
   * @param merged further parents
   * @param changes for each path that is not as at the parent its content, empty when it is gone
   * @param author who, as author and committer
   * @param time when
   * @param message what it says, with its trailers
   */
  public record Step(
      int parent,
      List<Integer> merged,
      SortedMap<String, Optional<BlobId>> changes,
      Author author,
      OffsetDateTime time,
      Message message) {
    /** Copies the collections. */
    public Step {
      merged = List.copyOf(merged);
      changes = Collections.unmodifiableSortedMap(new TreeMap<>(changes));
      requireNonNull(author, "author");
      requireNonNull(time, "time");
      requireNonNull(message, "message");
    }
  }

  /** What a commit says; it may name earlier ones, whose ids are known when it is made. */
  @FunctionalInterface
  public interface Message {
    /**
     * Writes it.
     *
     * @param ids for each earlier step its commit
     * @return the whole message
     */
    String text(IntFunction<CommitId> ids);
  }

  /**
   * An annotated tag.
   *
   * @param name without {@code refs/tags/}
   * @param step the commit that it names
   * @param message what it says
   * @param author who
   * @param time when
   */
  public record Label(
      String name, int step, String message, Author author, OffsetDateTime time) {}
}
