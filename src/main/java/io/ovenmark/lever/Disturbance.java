package io.ovenmark.lever;

import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How much a change disturbs the rest: the sum of the relative changes, without sign, of the
 * figures that were not asked for, each with a weight, and of the lines that move. Weight 2 for
 * what decides how a dough handles (liquid ratio, dough moisture), 1 for the batch, the dough a
 * piece and the macros that goals are about (energy, protein, fat, fibre, net carbohydrate, sodium,
 * of a piece). A line counts with the share by which it changes, so that a binder times ten ranks
 * behind a little less water. A figure that is not exactly known counts with its lower bound; one
 * that was 0 counts as 1 when it is no longer. The weights are our own: common practice, no source.
 */
final class Disturbance {
  private static final Map<Figure, Double> WEIGHTS = new LinkedHashMap<>();

  static {
    WEIGHTS.put(Figure.LIQUID_RATIO, 2.0);
    WEIGHTS.put(Figure.DOUGH_MOISTURE, 2.0);
    WEIGHTS.put(Figure.BATCH_MASS, 1.0);
    WEIGHTS.put(Figure.DOUGH_PER_PIECE, 1.0);
    WEIGHTS.put(Figure.ENERGY, 1.0);
    WEIGHTS.put(Figure.PROTEIN, 1.0);
    WEIGHTS.put(Figure.FAT, 1.0);
    WEIGHTS.put(Figure.FIBRE, 1.0);
    WEIGHTS.put(Figure.NET_CARBOHYDRATE, 1.0);
    WEIGHTS.put(Figure.SODIUM, 1.0);
  }

  private Disturbance() {}

  static double of(
      Worksheet before, Worksheet after, List<Wish> wishes, List<LineMove> lines) {
    Basis basis = before.pieces().isUnknown() ? Basis.DOUGH_100_G : Basis.PIECE;
    double sum = 0;
    for (Map.Entry<Figure, Double> each : WEIGHTS.entrySet()) {
      Figure figure = each.getKey();
      if (wishes.stream().noneMatch(wish -> wish.figure() == figure)) {
        double share = share(before.figure(figure, basis), after.figure(figure, basis));
        sum += each.getValue() * share;
      }
    }
    for (LineMove line : lines) {
      sum += Math.abs(line.percent().orElse(0)) / 100;
    }
    return sum;
  }

  private static double share(Quantity from, Quantity to) {
    double before = from.low();
    double after = to.low();
    if (!Double.isFinite(before) || !Double.isFinite(after) || before == after) {
      return 0;
    }
    return before <= 0 ? 1 : Math.abs(after / before - 1);
  }
}
