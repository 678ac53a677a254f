package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.pantry.Allergen;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What the verbs about bakes have in common. */
final class BakeParts {
  private final Desk desk;
  private final Notebook notebook;

  BakeParts(Desk desk) {
    this.desk = desk;
    this.notebook = desk.notebook();
  }

  /** Pictures ready to be written, with the names they get. */
  record Pictures(List<Photo> photos, SortedMap<String, byte[]> bytes) {}

  Views.BakeView view(Bake bake) {
    return desk.views(List.of(bake)).get(0);
  }

  /** A bake by its name. */
  Bake bake(String formula, String id) {
    Asked.slug("formula", formula);
    List<Bake> bakes = notebook.bakes(formula);
    return bakes.stream()
        .filter(bake -> bake.id().equals(id))
        .findFirst()
        .orElseThrow(() -> noBake(formula, id, bakes));
  }

  /** The newest bake. */
  Bake newest(String formula) {
    Asked.slug("formula", formula);
    requireFormula(formula);
    List<Bake> bakes = notebook.bakes(formula);
    if (bakes.isEmpty()) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          "bakes of " + formula,
          formula + " has not been baked yet.",
          "Record a bake with: ovenmark bake add " + formula);
    }
    return bakes.get(bakes.size() - 1);
  }

  /** Refuses a name of which there is no formula and never was one. */
  void requireFormula(String formula) {
    if (!notebook.isKnown(formula)) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          formula,
          "There is no formula \"" + formula + "\" in this notebook.",
          "List what there is with: ovenmark list");
    }
  }

  private RuntimeException noBake(String formula, String id, List<Bake> bakes) {
    List<Problem> damaged =
        notebook.bakeProblems(formula).stream()
            .filter(problem -> problem.file().endsWith("/" + id + ".json"))
            .toList();
    if (!damaged.isEmpty()) {
      return new UnreadableException(damaged);
    }
    requireFormula(formula);
    List<String> ids = bakes.stream().map(Bake::id).toList();
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        "bake " + id,
        "There is no bake \"" + id + "\" of " + formula + ".",
        ids.isEmpty()
            ? "It has not been baked yet; record a bake with: ovenmark bake add " + formula
            : "Its bakes are " + String.join(", ", ids) + ".");
  }

  /** Gives normalised pictures the next free names of a bake. */
  Pictures named(
      String formula,
      String id,
      ZoneOffset zone,
      List<ReadyPhoto> photos) {
    List<Photo> named = new ArrayList<>();
    SortedMap<String, byte[]> bytes = new TreeMap<>();
    int number = 1;
    for (ReadyPhoto photo : photos) {
      String path = path(formula, id, number);
      while (notebook.keptPhoto(formula, path).isPresent()) {
        path = path(formula, id, ++number);
      }
      number++;
      named.add(
          new Photo(
              path, photo.caption(), photo.picture().takenAt(zone), photo.marks(), Extras.NONE));
      bytes.put(path, photo.picture().jpeg());
    }
    return new Pictures(named, bytes);
  }

  /** The next path of a picture that is not taken. */
  String freePhotoPath(String formula, String id) {
    int number = 1;
    while (notebook.keptPhoto(formula, path(formula, id, number)).isPresent()) {
      number++;
    }
    return path(formula, id, number);
  }

  private static String path(String formula, String id, int number) {
    return "photos/" + formula + "/" + id + "-" + number + ".jpg";
  }

  /** Refuses marks of pieces that the bake does not have. */
  static void requireMarkedPieces(Stream<Photo.Mark> marks, List<Piece> pieces) {
    Set<String> ids = new HashSet<>();
    pieces.forEach(piece -> ids.add(piece.id()));
    marks
        .map(Photo.Mark::piece)
        .filter(piece -> !ids.contains(piece))
        .findFirst()
        .ifPresent(
            piece -> {
              throw new Refusal(
                  Refusal.Reason.INVALID,
                  "mark",
                  "The bake has no piece \"" + piece + "\" to be marked.",
                  "Mark one of its pieces, or add that piece.");
            });
  }

  KitchenViews.BakeWritten written(Bake bake, Address line, List<String> photosAdded) {
    return new KitchenViews.BakeWritten(
        view(bake), line.line(), photosAdded, remarks(bake, line));
  }

  Address lineOf(Bake bake) {
    return new RecordWriter(notebook).lineOf(bake);
  }

  private List<String> remarks(Bake bake, Address line) {
    boolean cool = !BakeRemarks.below(bake.pieces(), desk.units()).isEmpty();
    return BakeRemarks.of(bake.pieces(), cool && containsEgg(bake, line), desk.units());
  }

  /**
   * A revision with the content that was baked: the one that the bake names, else another.
   *
   * @throws Refusal when there is none any more
   */
  Revision baked(Bake bake) {
    for (Address line : notebook.lines(bake.formula())) {
      if (notebook.newestIfAny(line).isPresent()) {
        Optional<Revision> found =
            notebook.revisions(line).stream()
                .filter(revision -> revision.blob().hex().equals(bake.blob()))
                .reduce((first, last) -> last);
        if (found.isPresent()) {
          return found.get();
        }
      }
    }
    throw new Refusal(
        Refusal.Reason.NOT_FOUND,
        bake.address(),
        "What was baked as " + bake.address() + " is on no line of history any more.",
        "Its measures can be changed all the same.");
  }

  private boolean containsEgg(Bake bake, Address line) {
    Optional<Revision> baked =
        notebook.revisions(line).stream()
            .filter(revision -> revision.blob().hex().equals(bake.blob()))
            .reduce((first, last) -> last);
    return baked
        .map(revision -> desk.sheet(revision, List.of()).worksheet())
        .filter(sheet -> sheet.allergens().contains(Allergen.EGGS))
        .isPresent();
  }
}
