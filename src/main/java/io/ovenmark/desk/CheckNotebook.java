package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Inspection;
import io.ovenmark.notebook.index.IndexCheck;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.Damage;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.photo.PhotoFault;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Checks a whole notebook: every file of every branch and of the disk, what the files say of each
 * other, the pictures, every Git object, and the history index. Nothing is changed.
 *
 * <pre>{@code
 * KitchenViews.CheckView view = new CheckNotebook(desk).call(CheckNotebook.Progress.NONE);
 * }</pre>
 */
public final class CheckNotebook {
  private final Desk desk;

  /** Is told how far the check has come. */
  @FunctionalInterface
  public interface Progress {
    /** Listens to nothing. */
    Progress NONE = (what, done, total) -> {};

    /**
     * Something was checked.
     *
     * @param what which sort of thing, such as {@code files}
     * @param done how many so far
     * @param total how many in all; 0 when not known
     */
    void checked(String what, long done, long total);
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public CheckNotebook(Desk desk) {
    this.desk = desk;
  }

  /**
   * Checks it.
   *
   * @param progress who is told how far it is
   * @return what was found
   */
  public KitchenViews.CheckView call(Progress progress) {
    Inspection inspection = new Inspection(desk.notebook());
    CheckLog log = new CheckLog();
    CheckHistories histories = new CheckHistories(desk);
    List<CheckBranch> branches = new ArrayList<>();
    for (Inspection.Head head : inspection.heads()) {
      CheckBranch branch = new CheckBranch(inspection, head, histories, log);
      if (branch.list()) {
        branches.add(branch);
      }
    }
    int files = readFiles(branches, progress);
    Optional<Set<String>> mainFiles =
        branches.stream()
            .filter(branch -> branch.line().isEmpty())
            .map(branch -> branch.files().keySet())
            .findFirst();
    branches.forEach(branch -> branch.links(mainFiles.orElse(branch.files().keySet())));
    sameNames(branches, log);
    int photos = photos(inspection, branches, log, progress);
    new CheckDisk(inspection, log).run();
    oddBranches(inspection, log);
    long objects = objects(inspection, log, progress);
    index(inspection, log, progress);
    return log.view(files, photos, objects);
  }

  private static int readFiles(List<CheckBranch> branches, Progress progress) {
    int total = branches.stream().mapToInt(branch -> branch.files().size()).sum();
    int done = 0;
    for (CheckBranch branch : branches) {
      for (String path : branch.files().keySet()) {
        branch.read(path);
        progress.checked("files", ++done, total);
      }
    }
    return total;
  }

  /** Two lines of history may not have different bakes of one name: one would hide the other. */
  private static void sameNames(List<CheckBranch> branches, CheckLog log) {
    Map<String, Bake> first = new HashMap<>();
    for (CheckBranch branch : branches) {
      branch
          .bakes()
          .forEach(
              (path, bake) -> {
                Bake other = first.putIfAbsent(path, bake);
                boolean same =
                    other == null
                        || other.time().isEqual(bake.time()) && other.blob().equals(bake.blob());
                if (!same) {
                  log.wrong(
                      path,
                      branch.line(),
                      "Another bake has this name on another line of history, which hides this one.",
                      "Give the file on the variant's branch the next free number of its day.");
                }
              });
    }
  }

  private static int photos(
      Inspection inspection, List<CheckBranch> branches, CheckLog log, Progress progress) {
    Map<String, Set<BlobId>> seen = new HashMap<>();
    int total = branches.stream().mapToInt(branch -> branch.photos().size()).sum();
    int done = 0;
    int decoded = 0;
    for (CheckBranch branch : branches) {
      for (Map.Entry<String, BlobId> photo : branch.photos().entrySet()) {
        if (seen.computeIfAbsent(photo.getKey(), p -> new HashSet<>()).add(photo.getValue())) {
          byte[] bytes = inspection.bytes(photo.getValue());
          PhotoFault.of(bytes).forEach(fault -> photo(photo.getKey(), branch.line(), fault, log));
          decoded++;
        }
        progress.checked("photos", ++done, total);
      }
    }
    return decoded;
  }

  private static void photo(
      String path, Optional<Address> line, PhotoFault fault, CheckLog log) {
    switch (fault) {
      case NOT_JPEG ->
          log.wrong(
              path,
              line,
              "The file is no JPEG picture.",
              "Take it out and add the picture with: ovenmark photo add");
      case DAMAGED ->
          log.wrong(
              path,
              line,
              "The picture is damaged or cut off.",
              "Restore it, or add it again with: ovenmark photo add");
      case LOCATION ->
          log.wrong(
              path,
              line,
              "The picture says where it was taken, and would tell everybody it is shared with.",
              "Take it out and add it with: ovenmark photo add, which removes the place. It stays"
                  + " in the notebook's history.");
    }
  }

  private static void oddBranches(Inspection inspection, CheckLog log) {
    for (String branch : inspection.oddBranches()) {
      log.notice(
          "branch " + branch,
          Optional.empty(),
          "The branch is named like a variant's, but names no formula and variant.",
          "Rename it to variant/<formula>/<name> with: git branch -m");
    }
  }

  private static long objects(Inspection inspection, CheckLog log, Progress progress) {
    AtomicLong read = new AtomicLong();
    try {
      List<Damage> damages =
          inspection.damages(
              done -> {
                read.set(done);
                progress.checked("Git objects", done, 0);
              });
      for (Damage damage : damages) {
        log.wrong(
            "object " + damage.object(),
            Optional.empty(),
            damage.message(),
            "Fetch it from a clone or restore a backup; git fsck says what it belongs to.");
      }
    } catch (StoreException e) {
      log.wrong(
          e.where(), Optional.empty(), e.getMessage(), "Restore a backup or clone it again.");
    }
    return read.get();
  }

  private static void index(Inspection inspection, CheckLog log, Progress progress) {
    try {
      List<IndexCheck.Difference> differences =
          inspection.indexDifferences(
              (done, total) -> progress.checked("commits", done, total));
      for (IndexCheck.Difference difference : differences) {
        log.wrong(
            difference.path() + " on branch " + difference.branch(),
            Optional.empty(),
            "The history index tells this history otherwise than the commits do.",
            "Delete the file .git/ovenmark/history: it is made anew.");
      }
    } catch (StoreException e) {
      log.wrong(
          e.where(), Optional.empty(), e.getMessage(), "Restore a backup or clone it again.");
    }
  }
}
