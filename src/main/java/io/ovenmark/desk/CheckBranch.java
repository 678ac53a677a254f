package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Inspection;
import io.ovenmark.notebook.NotebookFile;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.story.StoryPlan;
import io.ovenmark.tasting.Tasting;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Checks the files of one branch: each by itself, then what they say of each other. */
final class CheckBranch {
  private final Inspection inspection;
  private final Inspection.Head head;
  private final CheckLog log;
  private final CheckHistories histories;
  private final SortedMap<String, BlobId> files = new TreeMap<>();
  private final SortedMap<String, Formula> formulas = new TreeMap<>();
  private final SortedMap<String, Bake> bakes = new TreeMap<>();
  private final SortedMap<String, BlobId> photos = new TreeMap<>();
  private final SortedMap<String, Tasting> tastings = new TreeMap<>();
  private final SortedMap<String, StoryPlan> stories = new TreeMap<>();

  CheckBranch(
      Inspection inspection, Inspection.Head head, CheckHistories histories, CheckLog log) {
    this.inspection = inspection;
    this.head = head;
    this.histories = histories;
    this.log = log;
  }

  /** The files that this branch is read for. */
  Map<String, BlobId> files() {
    return files;
  }

  /** The readable bakes by path. */
  Map<String, Bake> bakes() {
    return bakes;
  }

  /** The pictures by path. */
  Map<String, BlobId> photos() {
    return photos;
  }

  /** The variant that the branch holds; empty for the main line. */
  Optional<Address> line() {
    return head.variant();
  }

  /** Lists the files; false when the branch itself cannot be read. */
  boolean list() {
    try {
      files.putAll(inspection.files(head.commit()));
    } catch (StoreException e) {
      log.wrong(
          "branch " + head.branch(),
          line(),
          e.getMessage(),
          "Fetch the missing objects from a clone or restore a backup.");
      return false;
    }
    head.variant()
        .ifPresent(
            variant ->
                files
                    .keySet()
                    .removeIf(
                        path -> !NotebookFile.isReadFromVariantOf(variant.formula(), path)));
    return true;
  }

  /** Reads one file. */
  void read(String path) {
    BlobId blob = files.get(path);
    try {
      NotebookFile file = NotebookFile.read(path, inspection.bytes(blob));
      if (file instanceof NotebookFile.FormulaFile found) {
        formulas.put(path, found.formula());
      } else if (file instanceof NotebookFile.BakeFile found) {
        bakes.put(path, found.bake());
      } else if (file instanceof NotebookFile.PhotoFile) {
        photos.put(path, blob);
      } else if (file instanceof NotebookFile.TastingFile found) {
        tastings.put(path, found.tasting());
      } else if (file instanceof NotebookFile.StoryFile found) {
        stories.put(path, found.plan());
      } else if (file instanceof NotebookFile.StrayFile) {
        log.wrong(path, line(), CheckDisk.STRAY, CheckDisk.STRAY_HINT);
      }
    } catch (UnreadableException e) {
      log.unreadable(e.problems(), line());
    } catch (StoreException e) {
      log.wrong(
          path, line(), e.getMessage(), "Fetch the object from a clone or restore a backup.");
    }
  }

  /**
   * Checks what the files say of each other.
   *
   * @param mainFiles paths of the main line, among which references must be found
   */
  void links(Set<String> mainFiles) {
    formulas.forEach((path, formula) -> formula(path, formula, mainFiles));
    bakes.forEach(this::bake);
    CheckTastings checked = new CheckTastings(histories, bakes, log);
    tastings.forEach(checked::check);
    CheckStories told = new CheckStories(histories, files.keySet(), log);
    stories.forEach(told::check);
    Set<String> mentioned = new HashSet<>();
    bakes.values().forEach(bake -> bake.photos().forEach(photo -> mentioned.add(photo.file())));
    boolean allBakesRead =
        files.keySet().stream()
            .filter(path -> path.startsWith("bakes/"))
            .allMatch(bakes::containsKey);
    for (String photo : photos.keySet()) {
      if (!mentioned.contains(photo) && allBakesRead) {
        log.notice(
            photo,
            line(),
            "No bake mentions this picture.",
            "Add it to a bake's \"photos\", or delete it.");
      }
    }
  }

  private void formula(String path, Formula formula, Set<String> mainFiles) {
    int number = 0;
    for (Line each : formula.lines()) {
      String food = each.food();
      if (!files.containsKey("pantry/" + food + ".json")) {
        log.wrong(
            path + ", field lines[" + number + "].food",
            line(),
            "The pantry has no food \"" + food + "\", which the line \"" + each.id() + "\" is of.",
            BuiltInPantry.find(food).isPresent()
                ? "Take it from the built-in table with: ovenmark pantry add " + food
                : "Add it with: ovenmark pantry add " + food + ", or name another food.");
      }
      number++;
    }
    formula
        .goal()
        .filter(goal -> !files.containsKey("goals/" + goal + ".json"))
        .ifPresent(
            goal ->
                log.wrong(
                    path + ", field goal",
                    line(),
                    "There is no goal \"" + goal + "\".",
                    "Add it with: ovenmark goal add " + goal + ", or name another goal."));
    formula
        .reference()
        .filter(reference -> !mainFiles.contains("formulas/" + reference + ".json"))
        .ifPresent(
            reference ->
                log.notice(
                    path + ", field reference",
                    line(),
                    "The formula that it was rebuilt from, \""
                        + reference
                        + "\", is not in this notebook.",
                    "Leave it, name a formula of the notebook, or take the field out."));
  }

  private void bake(String path, Bake bake) {
    content(path, bake);
    Set<String> pieces = new HashSet<>();
    bake.pieces().stream().map(Piece::id).forEach(pieces::add);
    int number = 0;
    for (Photo photo : bake.photos()) {
      String field = path + ", field photos[" + number + "]";
      if (!photo.file().startsWith("photos/" + bake.formula() + "/")) {
        log.wrong(
            field,
            line(),
            "The picture " + photo.file() + " lies in another formula's folder.",
            "Move it to photos/" + bake.formula() + "/.");
      } else if (!files.containsKey(photo.file())) {
        log.wrong(
            field,
            line(),
            "The picture " + photo.file() + " is not there.",
            "Restore the file, or take the entry out of \"photos\".");
      }
      for (Photo.Mark mark : photo.marks()) {
        if (!pieces.contains(mark.piece())) {
          log.wrong(
              field,
              line(),
              "A mark names the piece \"" + mark.piece() + "\", which the bake does not have.",
              pieces.isEmpty()
                  ? "Take the mark out, or add the piece."
                  : "Name one of its pieces, or take the mark out.");
        }
      }
      number++;
    }
  }

  private void content(String path, Bake bake) {
    Optional<Map<String, List<String>>> history = histories.of(bake.formula());
    if (history.isEmpty()) {
      return;
    }
    List<String> addresses = history.get().getOrDefault(bake.blob(), List.of());
    if (addresses.isEmpty()) {
      log.wrong(
          path + ", field blob",
          line(),
          history.get().isEmpty()
              ? "The bake is of the formula \"" + bake.formula() + "\", which the notebook lacks."
              : "The bake is of a content that no revision of " + bake.formula() + " has.",
          "Find the revision that was baked (ovenmark timeline " + bake.formula()
              + ") and write its blob id (ovenmark show, --json).");
      return;
    }
    if (!addresses.contains(bake.address())) {
      log.notice(
          path + ", field address",
          line(),
          "The bake says it is of " + bake.address() + ", but its content is that of "
              + String.join(", ", addresses) + ".",
          "The content counts; correct the address if you know it to be a slip.");
    }
  }
}
