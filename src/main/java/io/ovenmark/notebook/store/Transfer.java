package io.ovenmark.notebook.store;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongConsumer;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevTag;
import org.eclipse.jgit.revwalk.RevWalk;

/**
 * What is needed of a repository to tell a part of its history elsewhere, and to tell one from
 * elsewhere in it.
 */
public final class Transfer {
  private final GitStore store;

  /**
   * Works on a repository.
   *
   * @param store the repository, open
   */
  public Transfer(GitStore store) {
    this.store = store;
  }

  /**
   * The line of a commit: itself, its first parent, and so on.
   *
   * @param tip the newest commit
   * @param known where to stop; those are left out
   * @return oldest first
   */
  public List<CommitFacts> line(CommitId tip, Set<CommitId> known) {
    return Faults.guard(
        tip.hex(),
        () -> {
          List<CommitFacts> line = new ArrayList<>();
          try (RevWalk walk = new RevWalk(store.jgit())) {
            RevCommit commit = walk.parseCommit(StoredObjects.jgit(tip));
            while (commit != null && !known.contains(new CommitId(commit.name()))) {
              line.add(StoredObjects.facts(commit));
              commit =
                  commit.getParentCount() == 0 ? null : walk.parseCommit(commit.getParent(0));
            }
          }
          Collections.reverse(line);
          return line;
        });
  }

  /**
   * Who made an annotated tag.
   *
   * @param tag its name without {@code refs/tags/}
   * @return empty when it is not annotated or names nobody
   */
  public Optional<Author> tagger(String tag) {
    return Faults.guard(tag, () -> findTagger(tag));
  }

  private Optional<Author> findTagger(String tag) throws IOException {
    Ref ref = store.jgit().exactRef(Constants.R_TAGS + tag);
    if (ref == null) {
      return Optional.empty();
    }
    try (RevWalk walk = new RevWalk(store.jgit())) {
      if (walk.parseAny(ref.getObjectId()) instanceof RevTag annotated) {
        PersonIdent who = annotated.getTaggerIdent();
        return Optional.ofNullable(who)
            .map(each -> new Author(each.getName(), each.getEmailAddress()));
      }
    }
    return Optional.empty();
  }

  /**
   * How a branch or tag stands that is to go with a commit.
   *
   * @param companion the branch or tag, and its way
   * @return whether it can go that way
   */
  public Companion.Standing standing(Companion companion) {
    return Faults.guard(companion.name(), () -> store.standing(companion));
  }

  /**
   * Puts a history on top of a branch, if it still has the head that the caller saw, together with
   * the other branches and the tags of that history, which must be new.
   *
   * @param chronicle the history
   * @param branch the branch of it that is here already
   * @param seen that branch's head as the caller saw it
   * @param contents where contents are read that are not here yet
   * @param author who takes it in
   * @param time when
   * @param progress told how many steps are done
   * @return written, or moved meanwhile
   * @throws StoreException {@code NAME_TAKEN} when a branch or tag is there already
   */
  public WriteOutcome takeIn(
      Chronicle chronicle,
      String branch,
      CommitId seen,
      Function<BlobId, byte[]> contents,
      Author author,
      OffsetDateTime time,
      LongConsumer progress) {
    return Faults.guard(
        branch,
        () -> store.intake().run(chronicle, branch, seen, contents, author, time, progress));
  }
}
