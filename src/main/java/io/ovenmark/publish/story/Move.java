package io.ovenmark.publish.story;

import java.util.Map;

/**
 * A figure that moved from one step to the next; known on both sides.
 *
 * @param key the figure's key, such as {@code best_height_mm}
 * @param label its name, such as {@code best height}
 * @param unit its unit; empty for a ratio or a score
 * @param from before
 * @param to after
 * @param fromText before in words, with the unit
 * @param toText after in words, with the unit
 * @param difference the difference in words, with sign and unit
 * @param turned whether a limit of the goal was newly met or newly broken by it
 */
public record Move(
    String key,
    String label,
    String unit,
    double from,
    double to,
    String fromText,
    String toText,
    String difference,
    boolean turned) {
  /**
   * The least difference of a figure that somebody notices at the bench; common practice, no
   * source.
   */
  private static final Map<String, Double> NOTABLE =
      Map.of(
          "mean_liking", 0.5,
          "best_height_mm", 2.0,
          "mean_width_mm", 3.0,
          "mean_loss_percent", 1.0,
          "mean_spread_factor", 0.1,
          "lowest_core_c", 2.0,
          "mean_crust_shade", 0.5,
          "liquid_ratio", 0.05,
          "dough_moisture_percent", 1.0);

  /** Of any other figure this share of what it was before; common practice, no source. */
  private static final double NOTABLE_SHARE = 0.05;

  /** A limit that was newly met or broken is told before any other difference. */
  private static final double TURNED = 1000;

  /**
   * How telling it is.
   *
   * @return the difference in units of what is noticed at the bench, so 1 or more when it would be
   *     noticed; far more when a limit turned
   */
  public double strength() {
    double notable = NOTABLE.getOrDefault(key, NOTABLE_SHARE * Math.abs(from));
    double difference = Math.abs(to - from);
    double told = difference == 0 ? 0 : difference / Math.max(notable, 1e-9);
    return turned ? TURNED + Math.min(told, TURNED) : Math.min(told, TURNED);
  }

  /**
   * In one line.
   *
   * @return such as {@code best height 38 mm → 46 mm (+8 mm)}
   */
  public String inOneLine() {
    return label + " " + fromText + " → " + toText + " (" + difference + ")";
  }
}
