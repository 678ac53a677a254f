package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.measure.Quoting;
import io.ovenmark.notebook.KeptPhoto;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.photo.Thumbnail;
import io.ovenmark.story.StoryPlan;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which photo is published of some bakes, and how. */
final class PublishedPhotos {
  /** What is chosen when there shall be no photo. */
  static final String NONE = StoryPlan.NO_PHOTO;

  /** Wide enough for paper and for a video; small enough to be sent. */
  private static final int WIDTH = 1200;

  private PublishedPhotos() {}

  /**
   * The photo that somebody chose, else the first one of the bake that was liked best.
   *
   * @param wanted path of a photo or {@link #NONE}; empty when nothing was chosen
   * @param all the bakes among which is chosen
   * @param own the bakes that it is published of
   * @param where what a refusal names
   * @throws Refusal when no bake has the chosen photo
   */
  static Optional<Photo> choose(
      Optional<String> wanted, List<Bake> all, List<Bake> own, String where) {
    if (wanted.isEmpty()) {
      return own.stream()
          .filter(bake -> !bake.photos().isEmpty())
          .max(Comparator.comparingDouble(PublishedPhotos::liking).thenComparing(Bake::id))
          .map(bake -> bake.photos().get(0));
    }
    String file = wanted.get();
    if (file.equals(NONE)) {
      return Optional.empty();
    }
    return Optional.of(
        all.stream()
            .flatMap(bake -> bake.photos().stream())
            .filter(photo -> photo.file().equals(file))
            .findFirst()
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.Reason.NOT_FOUND,
                        where,
                        "No bake of this formula has the photo " + Quoting.quote(file) + ".",
                        "Name one as its bake does, or \"none\".")));
  }

  /** Mean of all tasters' liking; below every liking when nobody tasted. */
  private static double liking(Bake bake) {
    return bake.pieces().stream()
        .map(Piece::liking)
        .flatMap(List::stream)
        .mapToDouble(Double::doubleValue)
        .average()
        .orElse(0);
  }

  /**
   * A photo as the notebook keeps it.
   *
   * @throws Refusal when it is not there
   */
  static KeptPhoto kept(Notebook notebook, String formula, Photo photo) {
    return notebook
        .keptPhoto(formula, photo.file())
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.NOT_FOUND,
                    photo.file(),
                    "The photo is not in the notebook.",
                    "Choose another one, or \"none\"."));
  }

  /**
   * Its bytes, made smaller.
   *
   * @throws Refusal when it cannot be read
   */
  static byte[] smaller(Photo photo, KeptPhoto kept) {
    return Asked.read(photo.file(), () -> Thumbnail.of(kept.bytes(), WIDTH));
  }

  /** What it shows. */
  static String alternative(Photo photo) {
    return photo.alternative().or(photo::caption).orElse("Photo of the bake");
  }
}
