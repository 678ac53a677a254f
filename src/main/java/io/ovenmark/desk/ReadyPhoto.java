package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Photo;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.photo.NormalisedPhoto;
import io.ovenmark.photo.PhotoNormaliser;
import java.util.List;
import java.util.Optional;

/**
 * A picture as the notebook keeps it, ready to be added to a bake.
 *
 * @param picture the picture
 * @param caption what is said beside it; empty when not written
 * @param marks which piece is where, on the picture as it is seen
 */
public record ReadyPhoto(
    NormalisedPhoto picture, Optional<String> caption, List<Photo.Mark> marks) {
  /** Checks and copies. */
  public ReadyPhoto {
    requireNonNull(picture, "picture");
    requireNonNull(caption, "caption");
    marks = List.copyOf(marks);
  }

  /**
   * Makes a picture ready. It takes memory for the picture unfolded, some 200 MB at most.
   *
   * @param photo the picture as it came from the camera
   * @return the picture as the notebook keeps it
   * @throws Refusal when it cannot be used
   */
  public static ReadyPhoto of(NewPhoto photo) {
    try {
      return new ReadyPhoto(
          PhotoNormaliser.normalise(photo.bytes(), photo.fileName()),
          photo.caption(),
          photo.marks());
    } catch (IllegalArgumentException e) {
      throw Refusal.of("photo", e);
    }
  }
}
