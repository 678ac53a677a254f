package io.ovenmark.desk;

import java.util.List;

/**
 * A question about levers as it is typed or sent. Every part but the wishes may be null or empty.
 *
 * @param want wishes such as {@code liquid ratio 0.80}; {@code goal} for the limits of the
 *     formula's goal
 * @param keep ids of lines that must stay
 * @param atLeast least amounts such as {@code water=170 g}
 * @param atMost greatest amounts such as {@code water=180 g}
 * @param within how far lines may change, such as {@code water=10 %}, or {@code 20 %} for all lines
 * @param batch {@code free} or {@code fixed}; null for free
 * @param pieces {@code fixed} or {@code free}; null for what the formula states
 * @param readable what the scale can show, such as {@code 1 g} or {@code exact}; null for 0.1 g
 */
public record LeverOrder(
    List<String> want,
    List<String> keep,
    List<String> atLeast,
    List<String> atMost,
    List<String> within,
    String batch,
    String pieces,
    String readable) {
  /** Copies the lists; what is null becomes empty. */
  public LeverOrder {
    want = copy(want);
    keep = copy(keep);
    atLeast = copy(atLeast);
    atMost = copy(atMost);
    within = copy(within);
  }

  /**
   * A question without conditions.
   *
   * @param want the wishes
   * @return the question
   */
  public static LeverOrder of(String... want) {
    return new LeverOrder(List.of(want), null, null, null, null, null, null, null);
  }

  private static List<String> copy(List<String> list) {
    return list == null ? List.of() : List.copyOf(list);
  }
}
