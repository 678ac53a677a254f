package io.ovenmark.demo;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import java.util.List;

/**
 * A picture of a demo bake that is still to be drawn. It is drawn from the bake's own figures, so
 * it claims nothing that the bake does not say, and it says "drawn for the demo" of itself.
 *
 * @param file path in the notebook; a name that ends in {@code -side.jpg} shows cut pieces from the
 *     side, any other the tray from above
 * @param caption what it shows
 * @param shape what the pieces look like
 * @param pieces the pieces of the bake, in order
 */
public record DemoPicture(String file, String caption, PieceShape shape, List<Piece> pieces) {
  private static final String SIDE = "-side.jpg";

  /** Checks and copies. */
  public DemoPicture {
    requireNonNull(file, "file");
    requireNonNull(caption, "caption");
    requireNonNull(shape, "shape");
    pieces = List.copyOf(pieces);
  }

  /**
   * The picture that a bake's photo entry asks for.
   *
   * @param photo the entry
   * @param bake its bake
   * @param shape what the pieces look like
   * @return the picture
   */
  static DemoPicture of(Photo photo, Bake bake, PieceShape shape) {
    return new DemoPicture(photo.file(), photo.caption().orElse(""), shape, bake.pieces());
  }

  /**
   * Whether it shows cut pieces from the side rather than the tray from above.
   *
   * @return true from the side
   */
  public boolean fromTheSide() {
    return file.endsWith(SIDE);
  }

  /**
   * Which piece is where; needs no drawing.
   *
   * @return a mark in the middle of each piece
   */
  public List<Photo.Mark> marks() {
    return fromTheSide() ? layout().marksAside() : layout().marksAbove();
  }

  /**
   * Draws the picture. The same picture gives the same bytes on the same Java runtime with the same
   * fonts; where the runtime has no usable fonts it is drawn without words.
   *
   * @return a JPEG file of 1600 × 1200 pixels
   */
  public byte[] draw() {
    PictureSheet sheet = new PictureSheet();
    if (fromTheSide()) {
      CutPicture.draw(sheet, layout(), pieces, shape, file.hashCode());
    } else {
      TrayPicture.draw(sheet, layout(), pieces, shape, file.hashCode());
    }
    sheet.caption(caption);
    return sheet.jpeg();
  }

  private PictureLayout layout() {
    return fromTheSide()
        ? PictureLayout.side(pieces, shape)
        : PictureLayout.above(pieces, shape);
  }
}
