package io.ovenmark.notebook.store;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** How a {@link Write} ended. */
public sealed interface WriteOutcome {

  /**
   * The commit is the new head of its branch.
   *
   * @param commit the new commit
   * @param leftAsEditedByHand files that are in the commit but were left alone on disk (or in
   *     Git's staging area), because somebody had edited them there
   */
  record Written(CommitId commit, List<String> leftAsEditedByHand) implements WriteOutcome {

    /** Copies the list. */
    public Written {
      Objects.requireNonNull(commit, "commit");
      leftAsEditedByHand = List.copyOf(leftAsEditedByHand);
    }
  }

  /**
   * Nothing was written, because the branch has another head than the write expected.
   *
   * @param actualHead the head it has, empty if the branch does not exist
   */
  record Moved(Optional<CommitId> actualHead) implements WriteOutcome {}

  /** Nothing was written, because the commit would have the files of its only parent. */
  record Unchanged() implements WriteOutcome {}
}
