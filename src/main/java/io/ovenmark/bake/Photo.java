package io.ovenmark.bake;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A picture of a bake.
 *
 * @param file path in the notebook, {@code photos/<formula>/<name>.jpg}
 * @param caption what it shows, also its alternative text; empty when not written
 * @param taken when it was taken; empty when unknown
 * @param marks which piece is where
 * @param extras unknown fields
 */
public record Photo(
    String file,
    Optional<String> caption,
    Optional<OffsetDateTime> taken,
    List<Mark> marks,
    Extras extras) {

  /**
   * Says that a piece is at a place of the picture.
   *
   * @param piece the piece's id
   * @param x from 0 (left edge) to 1 (right edge)
   * @param y from 0 (upper edge) to 1 (lower edge)
   */
  public record Mark(String piece, double x, double y) {
    /** Checks the place. */
    public Mark {
      requireNonNull(piece, "piece");
      if (!(x >= 0 && x <= 1 && y >= 0 && y <= 1)) {
        throw new IllegalArgumentException("x and y must lie from 0 to 1");
      }
    }
  }

  /** Checks and copies. */
  public Photo {
    requireNonNull(caption, "caption");
    requireNonNull(taken, "taken");
    marks = List.copyOf(marks);
    requireNonNull(extras, "extras");
    if (!file.matches("photos/[a-z0-9-]+/[A-Za-z0-9._-]+") || file.contains("..")) {
      throw new IllegalArgumentException(
          "\"" + file + "\" is not the path of a photo.\n"
              + "Write photos/<formula>/<name>.jpg with plain letters, digits, dots and hyphens.");
    }
  }
}
