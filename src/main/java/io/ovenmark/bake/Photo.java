package io.ovenmark.bake;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.Range;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A picture of a bake.
 *
 * @param file path in the notebook, {@code photos/<formula>/<name>.jpg}
 * @param caption what is said beside it; empty when not written
 * @param alternative what it shows, for whoever does not see it; empty when not written, then the
 *     caption stands in
 * @param taken when it was taken; empty when unknown
 * @param marks which piece is where
 * @param extras unknown fields
 */
public record Photo(
    String file,
    Optional<String> caption,
    Optional<String> alternative,
    Optional<OffsetDateTime> taken,
    List<Mark> marks,
    Extras extras) {

  /**
   * Says that a piece is at a place of the picture.
   *
   * @param piece the piece's id
   * @param x from 0 (left edge) to 1 (right edge)
   * @param y from 0 (upper edge) to 1 (lower edge)
   * @param extras unknown fields
   */
  public record Mark(String piece, double x, double y, Extras extras) {
    /** Where on the picture, from edge to edge. */
    static final Range PLACE = new Range(0, 1);

    /** Checks the place. */
    public Mark {
      Piece.checkedId(piece);
      PLACE.check("The place x", x);
      PLACE.check("The place y", y);
      requireNonNull(extras, "extras");
    }

    /**
     * A mark without unknown fields.
     *
     * @param piece the piece's id
     * @param x from 0 to 1
     * @param y from 0 to 1
     */
    public Mark(String piece, double x, double y) {
      this(piece, x, y, Extras.NONE);
    }
  }

  private static final Pattern FILE =
      Pattern.compile("photos/[a-z0-9-]+/[A-Za-z0-9_-][A-Za-z0-9._-]*");
  private static final int LONGEST_PATH = 200;

  /** Checks and copies. */
  public Photo {
    requireNonNull(caption, "caption");
    requireNonNull(alternative, "alternative");
    taken.ifPresent(Moment::check);
    marks = List.copyOf(marks);
    requireNonNull(extras, "extras");
    checkedFile(file);
  }

  /**
   * A picture without an alternative text.
   *
   * @param file path in the notebook
   * @param caption what is said beside it; empty when not written
   * @param taken when it was taken; empty when unknown
   * @param marks which piece is where
   * @param extras unknown fields
   */
  public Photo(
      String file,
      Optional<String> caption,
      Optional<OffsetDateTime> taken,
      List<Mark> marks,
      Extras extras) {
    this(file, caption, Optional.empty(), taken, marks, extras);
  }

  /**
   * The same picture with other words.
   *
   * @param nextCaption what is said beside it
   * @param nextAlternative what it shows, for whoever does not see it
   * @return a new photo
   */
  public Photo withWords(Optional<String> nextCaption, Optional<String> nextAlternative) {
    return new Photo(file, nextCaption, nextAlternative, taken, marks, extras);
  }

  /**
   * The same picture with other marks.
   *
   * @param next which piece is where
   * @return a new photo
   */
  public Photo withMarks(List<Mark> next) {
    return new Photo(file, caption, alternative, taken, next, extras);
  }

  /**
   * Checks a path.
   *
   * @param file the path
   * @return the same path
   * @throws IllegalArgumentException with a sentence and a remedy when it is not the path of a
   *     photo
   */
  static String checkedFile(String file) {
    if (file.length() > LONGEST_PATH || !FILE.matcher(file).matches() || file.contains("..")) {
      throw new IllegalArgumentException(
          Quoting.quote(file)
              + " is not the path of a photo.\n"
              + "Write photos/<formula>/<name>.jpg with plain letters, digits, dots and hyphens.");
    }
    return file;
  }
}
