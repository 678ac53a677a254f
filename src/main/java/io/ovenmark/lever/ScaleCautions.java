package io.ovenmark.lever;

import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What does not scale with the mass: common practice of the trade, no source. */
final class ScaleCautions {
  /** Changes within this share are the same size. */
  private static final double SAME_SIZE = 0.1;

  /** A batch is another batch from this factor on. */
  private static final double ANOTHER_BATCH = 2;

  private static final List<String> LEAVENING =
      List.of("yeast", "baking-powder", "baking-soda", "bicarbonate", "hartshorn", "sourdough");

  private ScaleCautions() {}

  static List<String> of(Worksheet sheet, double factor, double sizeRatio) {
    List<String> cautions = new ArrayList<>();
    boolean otherSize = Math.abs(sizeRatio - 1) > SAME_SIZE;
    if (otherSize) {
      cautions.add(
          "Oven time and temperature do not scale with the mass: a "
              + (sizeRatio > 1 ? "larger" : "smaller")
              + " piece is done by its core, not by the old clock (common practice, no source).");
    }
    if (otherSize || factor >= ANOTHER_BATCH || factor <= 1 / ANOTHER_BATCH) {
      Stream<String> names =
          sheet.lines().stream()
              .filter(line -> LEAVENING.stream().anyMatch(line.line().food()::contains))
              .map(line -> line.name())
              .distinct();
      String leavening = String.join(", ", names.toList());
      cautions.add(
          "Leavening" + (leavening.isEmpty() ? "" : " (" + leavening + ")")
              + ", salt and spices are scaled like the rest here; another size often wants another"
              + " share of them. Bake one piece first (common practice, no source).");
    }
    return cautions;
  }
}
