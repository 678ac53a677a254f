package io.ovenmark.notebook.store;

import java.util.Objects;

/**
 * A refusal or a fault of the repository. The message is one sentence with its place and, where
 * there is one, the way out.
 */
public final class StoreException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Why something was refused or could not be done. */
  public enum Reason {
    /** The folder is not a Git repository. */
    NOT_A_REPOSITORY,
    /** The repository uses something that is not supported, SHA-256 ids for instance. */
    UNSUPPORTED_REPOSITORY,
    /** An object, the index or another file of the repository is damaged. */
    CORRUPT,
    /** A commit, a blob or a branch does not exist. */
    MISSING,
    /** A path leads outside the notebook or cannot be stored in it. */
    PATH_OUTSIDE,
    /** A path names a folder or a link where a file is meant, or the other way round. */
    NOT_A_FILE,
    /** A branch or tag name that Git does not allow. */
    BAD_NAME,
    /** A branch or tag of this name (or one that is in its way) exists already. */
    NAME_TAKEN,
    /** A message without a subject, or a trailer that cannot be written. */
    BAD_MESSAGE,
    /** An abbreviated commit id that fits several commits. */
    AMBIGUOUS,
    /** A bundle from somebody else that is damaged, incomplete, too large or none. */
    BAD_BUNDLE,
    /** Another program holds a lock file of the repository. */
    LOCKED,
    /** A merge, rebase, cherry-pick or revert of native Git is under way. */
    OPERATION_IN_PROGRESS,
    /** The branch is checked out, here or in another work tree, so it may not move by itself. */
    CHECKED_OUT,
    /** Git refused to move a branch or tag for another reason. */
    REFUSED,
    /** The disk failed: no permission, no space, a read-only folder. */
    DISK
  }

  private final Reason reason;
  private final String where;

  /**
   * Makes a refusal.
   *
   * @param reason why
   * @param where the path, name, id or lock file it is about, not null
   * @param message one sentence
   */
  public StoreException(Reason reason, String where, String message) {
    this(reason, where, message, null);
  }

  /**
   * Makes a refusal with its cause.
   *
   * @param reason why
   * @param where the path, name, id or lock file it is about, not null
   * @param message one sentence
   * @param cause what was caught, or null
   */
  public StoreException(Reason reason, String where, String message, Throwable cause) {
    super(message, cause);
    this.reason = Objects.requireNonNull(reason, "reason");
    this.where = Objects.requireNonNull(where, "where");
  }

  /** Why it was refused. */
  public Reason reason() {
    return reason;
  }

  /** The path, name, id or lock file it is about. */
  public String where() {
    return where;
  }
}
