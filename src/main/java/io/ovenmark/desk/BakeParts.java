package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.FigureText;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.photo.NormalisedPhoto;
import io.ovenmark.photo.PhotoNormaliser;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** What the verbs about bakes have in common. */
final class BakeParts {
  /** Egg dishes: 160 °F, USDA Food Safety and Inspection Service. */
  private static final double SAFE_EGG_CELSIUS = 71;

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

  /**
   * Normalises pictures.
   *
   * @param zone of cameras that note none
   */
  static List<NormalisedPhoto> normalised(List<NewPhoto> photos) {
    List<NormalisedPhoto> pictures = new ArrayList<>();
    for (NewPhoto photo : photos) {
      try {
        pictures.add(PhotoNormaliser.normalise(photo.bytes(), photo.fileName()));
      } catch (IllegalArgumentException e) {
        throw Refusal.of("photo", e);
      }
    }
    return pictures;
  }

  /** Gives normalised pictures the next free names of a bake. */
  Pictures named(
      String formula,
      String id,
      ZoneOffset zone,
      List<NewPhoto> photos,
      List<NormalisedPhoto> pictures) {
    List<Photo> named = new ArrayList<>();
    SortedMap<String, byte[]> bytes = new TreeMap<>();
    int number = 1;
    for (int i = 0; i < photos.size(); i++) {
      String path = path(formula, id, number);
      while (notebook.photo(formula, path).isPresent()) {
        path = path(formula, id, ++number);
      }
      number++;
      NewPhoto photo = photos.get(i);
      named.add(
          new Photo(
              path, photo.caption(), pictures.get(i).takenAt(zone), photo.marks(), Extras.NONE));
      bytes.put(path, pictures.get(i).jpeg());
    }
    return new Pictures(named, bytes);
  }

  private static String path(String formula, String id, int number) {
    return "photos/" + formula + "/" + id + "-" + number + ".jpg";
  }

  /** Refuses marks of pieces that the bake does not have. */
  static void requireMarkedPieces(List<NewPhoto> photos, List<Piece> pieces) {
    Set<String> ids = new HashSet<>();
    pieces.forEach(piece -> ids.add(piece.id()));
    for (NewPhoto photo : photos) {
      for (Photo.Mark mark : photo.marks()) {
        if (!ids.contains(mark.piece())) {
          throw new Refusal(
              Refusal.Reason.INVALID,
              "mark",
              "The bake has no piece \"" + mark.piece() + "\" to be marked.",
              "Mark one of its pieces, or add that piece.");
        }
      }
    }
  }

  KitchenViews.BakeWritten written(Bake bake, Address line, List<String> photosAdded) {
    return new KitchenViews.BakeWritten(
        view(bake), line.line(), photosAdded, remarks(bake, line));
  }

  Address lineOf(Bake bake) {
    return new RecordWriter(notebook).lineOf(bake);
  }

  private List<String> remarks(Bake bake, Address line) {
    List<String> remarks = new ArrayList<>();
    List<String> cool = new ArrayList<>();
    for (Piece piece : bake.pieces()) {
      piece
          .core()
          .filter(core -> core.celsius() < SAFE_EGG_CELSIUS)
          .ifPresent(core -> cool.add(piece.id() + " (" + desk.units().heat(core) + ")"));
      if (piece.lossPercent().orElse(0) < 0) {
        remarks.add(
            "Piece " + piece.id() + " is noted as heavier baked than as dough, by "
                + FigureText.number(-piece.lossPercent().getAsDouble())
                + " %: check the two masses unless it was glazed or filled.");
      }
    }
    if (!cool.isEmpty() && containsEgg(bake, line)) {
      remarks.add(
          "Below 71 °C (160 °F) in the centre, though made with egg: " + String.join(", ", cool)
              + ". Do not serve it; follow local food codes.");
    }
    return remarks;
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
