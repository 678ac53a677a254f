package io.ovenmark.bake;

import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Reads a grid of oven settings, {@code 190,200 C x 14,16,18 min}: one piece for each temperature
 * with each time, in letters from a, all times of the first temperature first.
 */
public final class BakeGrid {
  private static final Pattern BETWEEN = Pattern.compile("\\s+[xX×*]\\s+|\\s*[×*]\\s*");
  private static final String EXAMPLE = "Write it as in: 190,200 C x 14,16,18 min";

  private BakeGrid() {}

  /**
   * Reads a grid.
   *
   * @param text temperatures, an x between spaces, times; the unit of a list may stand once, at its
   *     end
   * @return the pieces
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static List<Piece> read(String text) {
    String[] sides = BETWEEN.split(text.strip(), -1);
    if (sides.length != 2) {
      throw PieceWord.bad("The grid " + Quoting.quote(text) + " is not understood.", EXAMPLE);
    }
    List<String> temperatures = values(text, sides[0]);
    List<String> times = values(text, sides[1]);
    if ((long) temperatures.size() * times.size() > PieceText.MOST_PIECES) {
      throw PieceWord.bad(
          "The grid " + Quoting.quote(text) + " has more than " + PieceText.MOST_PIECES
              + " pieces.",
          "Record it as several bakes.");
    }
    List<String> pieces = new ArrayList<>();
    for (String temperature : temperatures) {
      for (String time : times) {
        pieces.add(
            "oven='" + Temperature.parse(temperature) + "' time=" + PieceMeasure.minutes(time)
                + "min");
      }
    }
    return PieceText.read(List.of(), pieces);
  }

  private static List<String> values(String text, String list) {
    String[] parts = list.strip().split("\\s*,\\s*", -1);
    String unit = parts[parts.length - 1].replaceFirst("^[-−]?[0-9.]*", "").strip();
    List<String> values = new ArrayList<>();
    for (String part : parts) {
      String value = (PieceMeasure.isNumber(part) ? part + unit : part).replaceAll("\\s", "");
      if (values.contains(value)) {
        throw PieceWord.bad(
            "\"" + value + "\" stands twice in the grid " + Quoting.quote(text) + ".",
            "Keep one of them.");
      }
      values.add(value);
    }
    return values;
  }
}
