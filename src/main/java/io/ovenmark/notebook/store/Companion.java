package io.ovenmark.notebook.store;

import static java.util.Objects.requireNonNull;

import org.eclipse.jgit.lib.Constants;

/**
 * A branch or tag that is put aside together with a commit, or comes back with it. What is put
 * aside keeps its commits, under a name that neither people nor clones see.
 *
 * @param kind branch or tag
 * @param name its name without {@code refs/heads/} or {@code refs/tags/}
 * @param commit the commit that it leads to
 * @param way what becomes of it
 */
public record Companion(Kind kind, String name, CommitId commit, Way way) {
  private static final String ASIDE = "refs/ovenmark/aside/";

  /** What it is. */
  public enum Kind {
    /** A branch. */
    BRANCH(Constants.R_HEADS),
    /** A tag. */
    TAG(Constants.R_TAGS);

    private final String prefix;

    Kind(String prefix) {
      this.prefix = prefix;
    }
  }

  /** What becomes of it. */
  public enum Way {
    /** It is not seen any more. */
    PUT_ASIDE,
    /** It is there again. */
    BRING_BACK
  }

  /** How it stands now. */
  public enum Standing {
    /** It can go its way. */
    READY,
    /** There is nothing to put aside, or nothing was kept that could come back. */
    NOTHING,
    /** Something else stands there. */
    OTHER
  }

  /** Checks that nothing is null. */
  public Companion {
    requireNonNull(kind, "kind");
    requireNonNull(name, "name");
    requireNonNull(commit, "commit");
    requireNonNull(way, "way");
  }

  /** Its full name where people see it. */
  String ref() {
    return kind == Kind.BRANCH ? Refs.branchRef(name) : Refs.tagRef(name);
  }

  /** Its full name while it is put aside. */
  String asideRef() {
    return ASIDE + commit.hex() + "/" + kind.prefix.substring("refs/".length()) + name;
  }
}
