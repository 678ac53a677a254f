package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Photo;
import java.util.List;
import java.util.Optional;

/**
 * A picture that is to be added to a bake.
 *
 * @param bytes the file as it came from the camera; not copied
 * @param fileName what it is called, for messages only
 * @param caption what it shows; empty when not written
 * @param marks which piece is where, on the picture as it is seen
 */
public record NewPhoto(
    byte[] bytes, String fileName, Optional<String> caption, List<Photo.Mark> marks) {
  /** Checks and copies all but the bytes. */
  public NewPhoto {
    requireNonNull(bytes, "bytes");
    requireNonNull(fileName, "fileName");
    caption = caption.map(String::strip).filter(text -> !text.isEmpty());
    marks = List.copyOf(marks);
  }
}
