package io.ovenmark.desk;

import io.ovenmark.bake.Piece;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.ShownUnits;
import java.util.ArrayList;
import java.util.List;

/** What a person should mind about the measures of a bake. */
final class BakeRemarks {
  /** Egg dishes: 160 °F, USDA Food Safety and Inspection Service. */
  private static final double SAFE_EGG_CELSIUS = 71;

  private BakeRemarks() {}

  /** The pieces that were taken out cooler than egg needs, with their core temperatures. */
  static List<String> below(List<Piece> pieces, ShownUnits units) {
    List<String> cool = new ArrayList<>();
    for (Piece piece : pieces) {
      piece
          .core()
          .filter(core -> core.celsius() < SAFE_EGG_CELSIUS)
          .ifPresent(core -> cool.add(piece.id() + " (" + units.heat(core) + ")"));
    }
    return cool;
  }

  /**
   * The remarks.
   *
   * @param egg whether the formula contains egg
   * @param units the units of the reader
   */
  static List<String> of(List<Piece> pieces, boolean egg, ShownUnits units) {
    List<String> remarks = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece.lossPercent().orElse(0) < 0) {
        remarks.add(
            "Piece " + piece.id() + " is noted as heavier baked than as dough, by "
                + FigureText.number(-piece.lossPercent().getAsDouble())
                + " %: check the two masses unless it was glazed or filled.");
      }
    }
    List<String> cool = below(pieces, units);
    if (!cool.isEmpty() && egg) {
      remarks.add(
          "Below 71 °C (160 °F) in the centre, though made with egg: " + String.join(", ", cool)
              + ". Do not serve it; follow local food codes.");
    }
    return remarks;
  }
}
