package io.ovenmark.speed;

import io.ovenmark.window.Axis;
import io.ovenmark.window.BakeWindow;
import io.ovenmark.window.BakedPiece;
import io.ovenmark.window.WindowLimit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;

/**
 * The window of 200 pieces, beside the same chances for one of its limits by averaging over every
 * posterior value on a grid of coefficients, which needs no formula.
 */
final class WindowRun {
  private static final int PIECES = 200;
  private static final int WARM = 25;
  private static final int MEASURED = 30;
  private static final int GRID = 41;

  private WindowRun() {}

  static long measure(SpeedTable table) throws Exception {
    List<BakedPiece> pieces = pieces();
    List<WindowLimit> limits =
        Stream.of("core at least 93 °C", "crust 1.5 to 2.6", "no gummy crumb", "not dry")
            .map(WindowLimit::read)
            .toList();
    long[] sink = new long[1];
    for (int i = 0; i < WARM; i++) {
      sink[0] += window(pieces, limits).next().size();
    }
    Sample ours = new Sample();
    Sample grid = new Sample();
    for (int i = 0; i < MEASURED; i++) {
      ours.time(() -> sink[0] += window(pieces, limits).next().size());
      if (i % 10 == 0) {
        grid.time(() -> sink[0] += Math.round(100 * averaged(pieces, "gummy crumb")));
      }
    }
    table.compared(
        "window: 200 pieces, four limits, with what to bake next, warm",
        ours,
        "one finding by averaging over a grid of coefficients",
        grid,
        0.5);
    table.alone("the same, at most 200 ms", ours, "under 200 ms");
    return sink[0];
  }

  private static BakeWindow window(List<BakedPiece> pieces, List<WindowLimit> limits) {
    return BakeWindow.of(pieces, limits, Axis.MINUTES, Optional.empty(), false);
  }

  private static List<BakedPiece> pieces() {
    Random random = new Random(17);
    List<BakedPiece> pieces = new ArrayList<>();
    for (int i = 0; i < PIECES; i++) {
      double oven = 180 + 5 * random.nextInt(9);
      double minutes = 14 + random.nextInt(18);
      double done = Math.log(minutes / 21) / Math.log(1.2) + (oven - 200) / 10;
      double core = Math.min(99, 95 + 2.5 * done + random.nextGaussian());
      double crust = Math.max(0, Math.min(4, 2 + 0.6 * done + 0.2 * random.nextGaussian()));
      List<String> findings = new ArrayList<>(List.of("even crumb"));
      if (done + 0.7 * random.nextGaussian() < -1) {
        findings.add("gummy crumb");
      }
      if (done + 0.7 * random.nextGaussian() > 1.2) {
        findings.add("dry");
      }
      pieces.add(
          new BakedPiece(
              "2026-01-01-1", "p" + i, "bun@1", OptionalDouble.of(oven), OptionalDouble.of(minutes),
              OptionalDouble.of(core), OptionalDouble.of(crust), OptionalDouble.empty(), findings,
              true, OptionalDouble.empty()));
    }
    return pieces;
  }

  /** The mean chance of a finding over 49 × 49 places, by brute force over three coefficients. */
  private static double averaged(List<BakedPiece> pieces, String word) {
    double[][] rows = new double[PIECES][];
    boolean[] seen = new boolean[PIECES];
    for (int i = 0; i < PIECES; i++) {
      BakedPiece piece = pieces.get(i);
      rows[i] = row(piece.ovenCelsius().getAsDouble(), piece.minutes().getAsDouble());
      seen[i] = piece.findings().contains(word);
    }
    double[][] chances = new double[49][49];
    double all = 0;
    double highest = Double.NEGATIVE_INFINITY;
    for (int pass = 0; pass < 2; pass++) {
      for (int a = 0; a < GRID; a++) {
        for (int b = 0; b < GRID; b++) {
          for (int c = 0; c < GRID; c++) {
            double[] at = {at(a, 2.5), at(b, 1.5), at(c, 1.5)};
            double height = height(rows, seen, at);
            if (pass == 0) {
              highest = Math.max(highest, height);
            } else if (height > highest - 12) {
              double weight = Math.exp(height - highest);
              all += weight;
              add(chances, at, weight);
            }
          }
        }
      }
    }
    double sum = 0;
    for (double[] line : chances) {
      for (double chance : line) {
        sum += chance / all;
      }
    }
    return sum / (49 * 49);
  }

  private static double at(int step, double deviation) {
    return (step - GRID / 2) * deviation * 8 / GRID;
  }

  private static double[] row(double oven, double minutes) {
    return new double[] {1, Math.log(minutes / 22) / Math.log(1.2), (oven - 200) / 10};
  }

  private static double height(double[][] rows, boolean[] seen, double[] at) {
    double sum = -at[0] * at[0] / 12.5 - (at[1] * at[1] + at[2] * at[2]) / 4.5;
    for (int i = 0; i < rows.length; i++) {
      double odds = at[0] + at[1] * rows[i][1] + at[2] * rows[i][2];
      sum -= Math.log1p(Math.exp(seen[i] ? -odds : odds));
    }
    return sum;
  }

  private static void add(double[][] chances, double[] at, double weight) {
    for (int r = 0; r < chances.length; r++) {
      for (int c = 0; c < chances[r].length; c++) {
        double[] row = row(170 + r, 12 + 0.5 * c);
        double odds = at[0] + at[1] * row[1] + at[2] * row[2];
        chances[r][c] += weight / (1 + Math.exp(-odds));
      }
    }
  }
}
