package io.ovenmark.bake;

import io.ovenmark.measure.Quoting;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a mark on a picture, {@code a=0.3,0.4}: the piece, then its place from left and from above. */
public final class MarkText {
  private static final Pattern SHAPE =
      Pattern.compile("\\s*([a-z0-9]{1,12})\\s*=\\s*(\\d?(?:\\.\\d{1,9})?)\\s*,\\s*"
          + "(\\d?(?:\\.\\d{1,9})?)\\s*");

  private MarkText() {}

  /**
   * Reads a mark.
   *
   * @param text such as {@code a=0.3,0.4}
   * @param pieces the pieces that may be marked
   * @return the mark
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Photo.Mark read(String text, List<Piece> pieces) {
    Matcher matcher = SHAPE.matcher(text);
    if (!matcher.matches() || matcher.group(2).isEmpty() || matcher.group(3).isEmpty()) {
      throw PieceWord.bad(
          "The mark " + Quoting.quote(text) + " is not understood.",
          "Write the piece and its place from 0 to 1, from the left and from above: a=0.3,0.4");
    }
    String id = matcher.group(1);
    if (pieces.stream().noneMatch(piece -> piece.id().equals(id))) {
      List<String> ids = pieces.stream().map(Piece::id).toList();
      throw PieceWord.bad(
          "The bake has no piece \"" + id + "\" to be marked.",
          ids.isEmpty() ? "It has no pieces yet." : "It has " + String.join(", ", ids) + ".");
    }
    double x = Double.parseDouble(matcher.group(2));
    double y = Double.parseDouble(matcher.group(3));
    if (x > 1 || y > 1) {
      throw PieceWord.bad(
          "The mark " + Quoting.quote(text) + " lies outside the picture.",
          "Use numbers from 0 (left, upper edge) to 1 (right, lower edge).");
    }
    return new Photo.Mark(id, x, y);
  }
}
