package io.ovenmark.notebook.index;

import io.ovenmark.notebook.store.CommitId;
import java.util.List;
import java.util.Optional;

/**
 * The histories of the files below {@code formulas/}.
 *
 * <p>The line of a branch is its last commit, that one's first parent, and so on. A commit of the
 * line counts for a file if the file's content differs from the first parent's, so a merge counts
 * as one step. The history of a path is found from the newest commit backwards: the commits that
 * changed, added or deleted the file of that path, and from a commit that renamed another file to
 * it on, those of the other path. A rename is a file deleted and a file added by one commit whose
 * contents are equal or alike to 60 of 100 by JGit's similarity index. After a deletion, a file
 * added again at the same path continues the numbering.
 *
 * <p>A variant's branch contains the commits up to its fork, so its numbering continues by itself.
 * A branch that does not exist has an empty history everywhere. Every method throws {@link
 * io.ovenmark.notebook.store.StoreException} if the repository is damaged.
 */
public interface History {
  /** The folder whose files have histories. */
  String FOLDER = "formulas";

  /** The history of a path along a branch, oldest first; empty if it never existed there. */
  List<Entry> formula(String branch, String path);

  /** The history of a path up to a commit, along that commit's line, oldest first. */
  List<Entry> formulaAt(CommitId commit, String path);

  /** The newest step of a path along a commit's line, also a deletion. */
  Optional<Entry> latestAt(CommitId commit, String path);

  /** The step with a number, empty if there is none. */
  Optional<Entry> at(String branch, String path, int number);

  /** The newest step of a path along a branch, also a deletion. */
  Optional<Entry> latest(String branch, String path);

  /**
   * The newest steps of all files along a branch, newest first, those of one commit by path. The
   * deletion that is half of a rename is left out.
   *
   * @param limit how many at most
   */
  List<Entry> newestFirst(String branch, int limit);

  /** The newest commit of a branch's line that is also on the line of {@code main}. */
  Optional<CommitId> fork(String branch);
}
