package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.Companion.Standing;
import io.ovenmark.notebook.store.Companion.Way;
import io.ovenmark.notebook.store.Pending.NewRef;
import io.ovenmark.notebook.store.StoreException.Reason;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevWalk;

/**
 * The branches and tags that move together with a commit.
 *
 * @param made what is made
 * @param gone what is deleted, if it still leads there
 */
record Companions(List<NewRef> made, List<NewRef> gone) {
  /** How a branch or tag stands. */
  static Standing standing(Repository repository, Refs refs, Companion companion)
      throws IOException {
    Optional<ObjectId> seen = refs.read(companion.ref());
    if (companion.way() == Way.BRING_BACK) {
      return refs.read(companion.asideRef()).isEmpty()
          ? Standing.NOTHING
          : seen.isEmpty() ? Standing.READY : Standing.OTHER;
    }
    if (seen.isEmpty()) {
      return Standing.NOTHING;
    }
    try (RevWalk walk = new RevWalk(repository)) {
      ObjectId leads = walk.peel(walk.parseAny(seen.get()));
      return leads.name().equals(companion.commit().hex()) ? Standing.READY : Standing.OTHER;
    }
  }

  /**
   * What is to be done under the write lock; empty when one of them stands elsewhere by now.
   *
   * @throws StoreException {@code CHECKED_OUT} when a branch's files are on disk
   */
  static Optional<Companions> plan(
      Repository repository, Refs refs, List<Companion> companions) throws IOException {
    List<NewRef> made = new ArrayList<>();
    List<NewRef> gone = new ArrayList<>();
    for (Companion each : companions) {
      Standing standing = standing(repository, refs, each);
      if (standing == Standing.OTHER) {
        return Optional.empty();
      }
      if (standing == Standing.NOTHING) {
        continue;
      }
      boolean back = each.way() == Way.BRING_BACK;
      String from = back ? each.asideRef() : each.ref();
      String to = back ? each.ref() : each.asideRef();
      if (back) {
        refs.refuseTaken(to);
      } else {
        refuseShown(refs, each);
      }
      ObjectId target = refs.read(from).orElseThrow();
      made.add(new NewRef(to, target));
      gone.add(new NewRef(from, target));
    }
    return Optional.of(new Companions(List.copyOf(made), List.copyOf(gone)));
  }

  private static void refuseShown(Refs refs, Companion companion) throws IOException {
    if (refs.checkedOut().filter(companion.ref()::equals).isPresent()) {
      throw new StoreException(
          Reason.CHECKED_OUT,
          companion.name(),
          "The branch " + companion.name() + " is checked out: check out another one first.");
    }
    refs.refuseElsewhere(companion.ref());
  }

  /** Does it, as far as it is not done yet: first what is made, so that nothing is lost between. */
  static void follow(Refs refs, List<NewRef> made, List<NewRef> gone, PersonIdent who)
      throws IOException {
    for (NewRef each : made) {
      if (refs.read(each.ref()).isEmpty()) {
        refs.move(each.ref(), Optional.empty(), each.target(), who, "created");
      }
    }
    for (NewRef each : gone) {
      if (refs.read(each.ref()).filter(each.target()::equals).isPresent()) {
        refs.move(each.ref(), Optional.of(each.target()), ObjectId.zeroId(), who, "put aside");
      }
    }
  }
}
