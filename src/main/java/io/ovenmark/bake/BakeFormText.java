package io.ovenmark.bake;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Writes bakes into forms. {@link BakeFormReader} takes a text that is still as it was written here
 * for the value itself, so that showing a mass in ounces never changes the grams that are kept.
 */
public final class BakeFormText {
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private BakeFormText() {}

  /**
   * A bake as a form.
   *
   * @param bake the bake
   * @param units the units beside the fields
   * @return the form
   */
  public static BakeForm of(Bake bake, TypedUnits units) {
    return new BakeForm(
        units,
        time(bake.time()),
        bake.baker().orElse(""),
        bake.ambient().orElse(""),
        bake.note().orElse(""),
        bake.findings(),
        bake.pieces().stream().map(piece -> of(piece, units)).toList());
  }

  /**
   * A time as a form shows it.
   *
   * @param time the time
   * @return date and time of day, to the minute, as noted where it was
   */
  public static String time(OffsetDateTime time) {
    return MINUTE.format(time);
  }

  /**
   * A piece as a form.
   *
   * @param piece the piece
   * @param units the units beside the fields
   * @return the form
   */
  public static PieceForm of(Piece piece, TypedUnits units) {
    return new PieceForm(
        piece.id(),
        TypedMeasure.temperature(piece.temperature(), units),
        TypedMeasure.text(piece.minutes()),
        piece.rack().orElse(""),
        TypedMeasure.mass(piece.doughGrams(), units),
        TypedMeasure.mass(piece.bakedGrams(), units),
        TypedMeasure.text(piece.widthMillimetres()),
        TypedMeasure.text(piece.heightMillimetres()),
        TypedMeasure.temperature(piece.core(), units),
        CoreLog.text(piece.coreLog()),
        TypedMeasure.text(piece.crustShade()),
        piece.findings(),
        tasters(piece),
        piece.verdict().orElse(""),
        piece.note().orElse(""));
  }

  /** The first score of everything is the first taster's, and so on. */
  private static List<PieceForm.Taster> tasters(Piece piece) {
    int most = piece.liking().size();
    for (Piece.Attribute attribute : piece.attributes()) {
      most = Math.max(most, attribute.scores().size());
    }
    List<PieceForm.Taster> tasters = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      Map<String, String> attributes = new TreeMap<>();
      for (Piece.Attribute attribute : piece.attributes()) {
        if (i < attribute.scores().size()) {
          attributes.put(attribute.name(), text(attribute.scores().get(i)));
        }
      }
      String liking = i < piece.liking().size() ? text(piece.liking().get(i)) : "";
      tasters.add(new PieceForm.Taster(liking, attributes));
    }
    return tasters;
  }

  private static String text(double score) {
    return TypedMeasure.text(OptionalDouble.of(score));
  }
}
