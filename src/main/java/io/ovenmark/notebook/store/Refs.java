package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.lib.AnyObjectId;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;

/**
 * Reads branches and tags and moves them by compare-and-swap.
 *
 * <p>A native clone has the variants of the notebook that it was cloned from only as {@code
 * refs/remotes/origin/variant/…}. Such a branch is read from there until the first write to it
 * makes a branch of its own, which begins where the fetched one stands.
 */
final class Refs {
  private static final String FETCHED = Constants.R_HEADS + "variant/";

  private final Repository repository;
  private final Duration patience;

  Refs(Repository repository, Duration patience) {
    this.repository = repository;
    this.patience = patience;
  }

  static String branchRef(String branch) {
    return check(Constants.R_HEADS, branch, "branch");
  }

  static String tagRef(String tag) {
    return check(Constants.R_TAGS, tag, "tag");
  }

  private static String check(String prefix, String name, String what) {
    if (!Repository.isValidRefName(prefix + name) || name.startsWith("-")) {
      throw new StoreException(
          Reason.BAD_NAME,
          name,
          "Git does not allow the " + what + " name \"" + name
              + "\": use letters, digits, hyphens and slashes.");
    }
    return prefix + name;
  }

  Optional<ObjectId> read(String ref) throws IOException {
    Ref found = repository.exactRef(ref);
    return found == null ? Optional.empty() : Optional.ofNullable(found.getObjectId());
  }

  Optional<CommitId> head(String ref) throws IOException {
    Optional<ObjectId> own = read(ref);
    return (own.isPresent() ? own : fetched(ref)).map(id -> new CommitId(id.name()));
  }

  /** Where a variant stands that was fetched and has no branch here yet. */
  private Optional<ObjectId> fetched(String ref) throws IOException {
    if (ref.startsWith(FETCHED)) {
      for (String place : remotes()) {
        Optional<ObjectId> there = read(place + ref.substring(Constants.R_HEADS.length()));
        if (there.isPresent()) {
          return there;
        }
      }
    }
    return Optional.empty();
  }

  /** Where the branches of others are, those of {@code origin} first. */
  private List<String> remotes() {
    return repository.getRemoteNames().stream()
        .sorted(
            Comparator.comparing((String name) -> !name.equals(Constants.DEFAULT_REMOTE_NAME))
                .thenComparing(Comparator.naturalOrder()))
        .map(name -> Constants.R_REMOTES + name + "/")
        .toList();
  }

  SortedMap<String, CommitId> branches(String prefix) throws IOException {
    SortedMap<String, CommitId> found = new TreeMap<>();
    List<String> places = new ArrayList<>(List.of(Constants.R_HEADS));
    if ((Constants.R_HEADS + prefix).startsWith(FETCHED)) {
      places.addAll(remotes());
    }
    for (String place : places) {
      for (Ref ref : repository.getRefDatabase().getRefsByPrefix(place + prefix)) {
        if (ref.getObjectId() != null) {
          String name = ref.getName().substring(place.length());
          found.putIfAbsent(name, new CommitId(ref.getObjectId().name()));
        }
      }
    }
    return found;
  }

  /** The full name of the branch that HEAD stands for, born or not. */
  Optional<String> checkedOut() throws IOException {
    Ref head = repository.exactRef(Constants.HEAD);
    if (head == null || !head.isSymbolic() || repository.isBare()) {
      return Optional.empty();
    }
    return Optional.of(head.getTarget().getName());
  }

  /** Refuses a new name that exists or is in the way of others. */
  void refuseTaken(String ref) throws IOException {
    Collection<String> others = repository.getRefDatabase().getConflictingNames(ref);
    if (repository.exactRef(ref) != null || !others.isEmpty()) {
      String taken = others.isEmpty() ? ref : others.iterator().next();
      throw new StoreException(
          Reason.NAME_TAKEN, ref, "The name " + taken + " exists already: choose another one.");
    }
  }

  /** Refuses a new branch of the name of one that was fetched. */
  void refuseFetched(String ref) throws IOException {
    if (fetched(ref).isPresent()) {
      throw new StoreException(
          Reason.NAME_TAKEN,
          ref,
          "The name " + ref + " was fetched from another notebook: choose another one.");
    }
  }

  /**
   * Moves a branch or tag if it still is where the caller saw it.
   *
   * @param expected what it is now; empty if it does not exist
   * @param target what it is to be, all zeros to delete it
   * @return false if it is somewhere else
   */
  boolean move(
      String ref, Optional<ObjectId> expected, AnyObjectId target, PersonIdent who, String why)
      throws IOException {
    Patience waiting = new Patience(patience);
    while (true) {
      RefUpdate update = repository.updateRef(ref);
      update.setExpectedOldObjectId(expected.orElse(ObjectId.zeroId()));
      update.setForceUpdate(true);
      update.setRefLogIdent(who);
      update.setRefLogMessage(why, false);
      RefUpdate.Result result;
      if (ObjectId.zeroId().equals(target)) {
        result = update.delete();
      } else {
        update.setNewObjectId(target);
        result = update.update();
      }
      switch (result) {
        case NEW:
        case FORCED:
        case FAST_FORWARD:
        case NO_CHANGE:
          return true;
        case LOCK_FAILURE:
          if (!read(ref).equals(expected)) {
            return false;
          }
          if (!waiting.waits()) {
            throw locked(ref);
          }
          break;
        case NOT_ATTEMPTED:
        case REJECTED:
        case REJECTED_CURRENT_BRANCH:
        case IO_FAILURE:
        case RENAMED:
        case REJECTED_MISSING_OBJECT:
        case REJECTED_OTHER_REASON:
        default:
          throw new StoreException(
              Reason.REFUSED, ref, "Git refused to move " + ref + " (" + result + ").");
      }
    }
  }

  /** Refuses to move a branch that another work tree of the same repository shows. */
  void refuseElsewhere(String ref) throws IOException {
    Path mine = repository.getDirectory().toPath().toRealPath();
    Path common = repository.getCommonDirectory().toPath().toRealPath();
    if (!mine.equals(common) && !repository.getConfig().getBoolean("core", "bare", false)) {
      refuseIfHead(common, common.getParent(), ref);
    }
    Path others = common.resolve("worktrees");
    if (!Files.isDirectory(others)) {
      return;
    }
    try (DirectoryStream<Path> folders = Files.newDirectoryStream(others)) {
      for (Path other : folders) {
        Path pointer = other.resolve("gitdir");
        if (!other.toRealPath().equals(mine) && Files.isRegularFile(pointer)) {
          Path tree = other.resolve(Files.readString(pointer).strip()).getParent();
          if (tree != null && Files.isDirectory(tree)) {
            refuseIfHead(other, tree, ref);
          }
        }
      }
    }
  }

  private static void refuseIfHead(Path gitDirectory, Path tree, String ref) throws IOException {
    Path head = gitDirectory.resolve(Constants.HEAD);
    if (Files.isRegularFile(head) && Files.readString(head).strip().equals("ref: " + ref)) {
      throw new StoreException(
          Reason.CHECKED_OUT,
          tree.toString(),
          "The branch " + ref + " is checked out in " + tree + ": work on it there.");
    }
  }

  /** The lock file that stands for a branch or tag. */
  Path lockFile(String ref) {
    return repository.getCommonDirectory().toPath().resolve(ref + ".lock");
  }

  private StoreException locked(String ref) {
    Path packed = repository.getCommonDirectory().toPath().resolve("packed-refs.lock");
    Path lock = !Files.exists(lockFile(ref)) && Files.exists(packed) ? packed : lockFile(ref);
    return new StoreException(
        Reason.LOCKED,
        lock.toString(),
        "Git is at work on this notebook and holds " + lock
            + ": wait for it, or delete that file if no Git is running.");
  }
}
