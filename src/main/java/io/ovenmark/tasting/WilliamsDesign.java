package io.ovenmark.tasting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Orders of serving in which every sample stands equally often at every place, and follows every
 * other one equally often: a Latin square balanced for first-order carry-over. An even number of
 * samples needs one square, an odd number two. Construction: E. J. Williams, Experimental designs
 * balanced for the estimation of residual effects of treatments, Australian Journal of Scientific
 * Research A 2 (1949), 149–168.
 */
public final class WilliamsDesign {
  private WilliamsDesign() {}

  /**
   * The orders for a number of samples.
   *
   * @param samples 1 or more
   * @return one order for each row, with samples from 1: as many rows as samples when that is even
   *     (or 1), else twice as many
   * @throws IllegalArgumentException when there is no sample
   */
  public static List<List<Integer>> orders(int samples) {
    Faults.require(samples >= 1, "There is nothing to serve.", "Name at least one sample.");
    List<List<Integer>> rows = new ArrayList<>();
    for (int shift = 0; shift < samples; shift++) {
      rows.add(row(samples, shift));
    }
    if (samples > 1 && samples % 2 == 1) {
      for (int shift = 0; shift < samples; shift++) {
        List<Integer> mirrored = new ArrayList<>(row(samples, shift));
        Collections.reverse(mirrored);
        rows.add(List.copyOf(mirrored));
      }
    }
    return List.copyOf(rows);
  }

  /** 1, 2, n, 3, n−1, … with every sample moved on by the shift. */
  private static List<Integer> row(int samples, int shift) {
    List<Integer> row = new ArrayList<>();
    int low = 0;
    int high = samples;
    for (int place = 0; place < samples; place++) {
      int next = place % 2 == 1 || place == 0 ? low++ : --high;
      row.add((next + shift) % samples + 1);
    }
    return List.copyOf(row);
  }
}
