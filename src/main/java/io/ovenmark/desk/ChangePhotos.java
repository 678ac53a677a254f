package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.KeptPhoto;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.CommitId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Changes what is said of a bake's photo, takes a photo away, and brings one back.
 *
 * <pre>{@code
 * PhotoState seen = PhotoState.of(photo);
 * PhotoState wanted = new PhotoState(seen.caption(), seen.alternative(),
 *     List.of(new Photo.Mark("a", 0.25, 0.5)));
 * new ChangePhotos(desk).change("seeded-lupin-bun", "2026-09-14-1", photo.file(), seen, seen,
 *     wanted, by);
 * }</pre>
 */
public final class ChangePhotos {
  private final Desk desk;
  private final BakeParts parts;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ChangePhotos(Desk desk) {
    this.desk = desk;
    this.parts = new BakeParts(desk);
  }

  /**
   * Finds a photo of a bake.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param which its path, or its place among the photos of the bake, 1 for the first
   * @return the photo
   * @throws Refusal when there is no such bake or photo
   */
  public Photo find(String formula, String id, String which) {
    List<Photo> photos = parts.bake(formula, id).photos();
    return IntStream.range(0, photos.size())
        .filter(i -> which.equals(photos.get(i).file()) || which.equals("" + (i + 1)))
        .mapToObj(photos::get)
        .findFirst()
        .orElseThrow(
            () ->
                noPhoto(
                    which,
                    photos.isEmpty()
                        ? "It has none yet; add one with: ovenmark photo add"
                        : "It has "
                            + photos.stream().map(Photo::file).collect(Collectors.joining(", "))
                            + "."));
  }

  /**
   * Changes words and marks. What somebody else changed meanwhile is merged in where the two do not
   * touch; where they do, nothing is committed and the answer names both sides. To insist, the
   * change is repeated with what was seen there.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param file path of the photo
   * @param base what the change is based on
   * @param seen what somebody else made of it meanwhile and which is decided upon; the base when
   *     nothing of that kind is known
   * @param wanted what it shall be
   * @param by who commits it, and when
   * @return the photo as it is now
   * @throws Refusal when there is no such photo, a mark is of a piece that the bake does not have,
   *     or a text is too long
   */
  public PhotoViews.PhotoChanged change(
      String formula,
      String id,
      String file,
      PhotoState base,
      PhotoState seen,
      PhotoState wanted,
      By by) {
    wanted.requireUsable();
    while (true) {
      Bake before = parts.bake(formula, id);
      Photo now = photo(before, file);
      requirePieces(wanted, base, before);
      PhotoState.Merged merged = wanted.onto(base, seen, now);
      boolean others = !PhotoState.of(now).equals(base) && !PhotoState.of(now).equals(wanted);
      if (!merged.conflicts().isEmpty()) {
        return new PhotoViews.PhotoChanged(
            "conflict", parts.view(before), BakeViews.photo(now), false, merged.conflicts());
      }
      if (merged.photo().equals(now)) {
        return changed("unchanged", before, now, others);
      }
      List<Photo> photos = new ArrayList<>(before.photos());
      photos.set(photos.indexOf(now), merged.photo());
      Bake after = before.withPhotos(photos);
      String what = merged.photo().marks().equals(now.marks()) ? "Words" : "Marks";
      try {
        new RecordWriter(desk.notebook())
            .changeBake(
                parts.lineOf(before),
                before,
                after,
                Map.of(),
                what + " on a photo of the bake " + id,
                by);
        return changed("committed", after, merged.photo(), others);
      } catch (Refusal refusal) {
        requireOvertaken(refusal);
      }
    }
  }

  /**
   * Takes a photo away; its file is deleted when no other bake shows it.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param file path of the photo
   * @param base what the wish is based on
   * @param by who commits it, and when
   * @return the bake without it, and the commit that brings it back
   * @throws Refusal when there is no such photo, or somebody changed its words or marks meanwhile
   */
  public PhotoViews.PhotoRemoved remove(
      String formula, String id, String file, PhotoState base, By by) {
    while (true) {
      Bake before = parts.bake(formula, id);
      Photo now = photo(before, file);
      if (!PhotoState.of(now).equals(base)) {
        throw new Refusal(
            Refusal.Reason.CONFLICT,
            file,
            "Somebody changed the photo's words or marks meanwhile.",
            "Look at them, then take it away if you still want to.");
      }
      List<Photo> photos = new ArrayList<>(before.photos());
      photos.remove(now);
      Bake after = before.withPhotos(photos);
      boolean shown =
          desk.notebook().bakes(formula).stream()
              .filter(bake -> !bake.id().equals(id))
              .anyMatch(bake -> has(bake, file));
      try {
        CommitId commit =
            new RecordWriter(desk.notebook())
                .removePhotos(
                    parts.lineOf(before),
                    before,
                    after,
                    shown ? Set.of() : Set.of(file),
                    "Remove a photo of the bake " + id,
                    by);
        return new PhotoViews.PhotoRemoved(
            parts.view(after), BakeViews.photo(now), commit.hex());
      } catch (Refusal refusal) {
        requireOvertaken(refusal);
      }
    }
  }

  /**
   * Brings a photo back that was taken away, with the words and marks that it had.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param file path that the photo had
   * @param commit a commit that still has it
   * @param by who commits it, and when
   * @return the photo; it has another path when that is taken by now
   * @throws Refusal when the commit has no such photo
   */
  public PhotoViews.PhotoChanged bringBack(
      String formula, String id, String file, String commit, By by) {
    Notebook notebook = desk.notebook();
    CommitId at = notebook.commit(Address.parse(formula + "@" + commit));
    Bake then =
        notebook.bake(at, formula, id).orElseThrow(() -> noPhoto(file, "That commit has none."));
    Photo lost = photo(then, file);
    KeptPhoto picture =
        notebook
            .keptPhoto(at, file)
            .orElseThrow(() -> noPhoto(file, "That commit has none."));
    while (true) {
      Bake before = parts.bake(formula, id);
      boolean kept = notebook.keptPhoto(formula, file).map(KeptPhoto::id).equals(
          Optional.of(picture.id()));
      if (has(before, file) && kept) {
        return changed("unchanged", before, photo(before, file), false);
      }
      boolean free = kept || notebook.keptPhoto(formula, file).isEmpty();
      Photo again = free ? lost : renamed(lost, parts.freePhotoPath(formula, id));
      List<Photo> photos = new ArrayList<>(before.photos());
      photos.add(Math.min(then.photos().indexOf(lost), photos.size()), again);
      Bake after = before.withPhotos(photos);
      Map<String, byte[]> pictures = kept ? Map.of() : Map.of(again.file(), picture.bytes());
      try {
        new RecordWriter(notebook)
            .changeBake(
                parts.lineOf(before),
                before,
                after,
                pictures,
                "Bring a photo of the bake " + id + " back",
                by);
        return changed("committed", after, again, false);
      } catch (Refusal refusal) {
        requireOvertaken(refusal);
      }
    }
  }

  private static Photo renamed(Photo photo, String file) {
    return new Photo(
        file, photo.caption(), photo.alternative(), photo.taken(), photo.marks(), photo.extras());
  }

  private PhotoViews.PhotoChanged changed(
      String outcome, Bake bake, Photo photo, boolean merged) {
    return new PhotoViews.PhotoChanged(
        outcome, parts.view(bake), BakeViews.photo(photo), merged, List.of());
  }

  private static boolean has(Bake bake, String file) {
    return bake.photos().stream().anyMatch(photo -> photo.file().equals(file));
  }

  private static Photo photo(Bake bake, String file) {
    return bake.photos().stream()
        .filter(photo -> photo.file().equals(file))
        .findFirst()
        .orElseThrow(
            () ->
                noPhoto(
                    file,
                    "It may have been taken away meanwhile; load the page again to see what there"
                        + " is."));
  }

  private static Refusal noPhoto(String file, String hint) {
    return new Refusal(
        Refusal.Reason.NOT_FOUND, file, "The bake has no such photo.", hint);
  }

  private static void requirePieces(PhotoState wanted, PhotoState base, Bake bake) {
    Set<String> known = bake.pieces().stream().map(Piece::id).collect(Collectors.toSet());
    base.marks().forEach(mark -> known.add(mark.piece()));
    for (Photo.Mark mark : wanted.marks()) {
      if (!known.contains(mark.piece())) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            "marks",
            "The bake has no piece \"" + mark.piece() + "\" to be marked.",
            "Mark one of its pieces, or add that piece.");
      }
    }
  }

  /** Goes on when somebody else wrote to the bake meanwhile. */
  private static void requireOvertaken(Refusal refusal) {
    if (refusal.reason() != Refusal.Reason.EXISTS
        && refusal.reason() != Refusal.Reason.CONFLICT) {
      throw refusal;
    }
  }
}
