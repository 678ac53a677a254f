package io.ovenmark.desk;

import java.util.List;

/**
 * What is chosen for a label, as it is typed or sent. Every part may be null or empty.
 *
 * @param loss an allowance for the loss on baking, such as {@code 12 %}; empty for what was weighed
 * @param energy the rule for energy: {@code foods}, {@code US factors} or {@code EU factors}; empty
 *     for each region's own
 * @param reference the reference amount of United States claims: a name such as {@code bread}, or a
 *     mass such as {@code 50 g}
 * @param regions {@code us}, {@code eu}; empty for both
 */
public record LabelChoices(String loss, String energy, String reference, List<String> regions) {
  /** Nothing chosen: both regions. */
  public static final LabelChoices USUAL = new LabelChoices(null, null, null, null);

  /** Copies the list; null becomes empty. */
  public LabelChoices {
    regions = regions == null ? List.of() : List.copyOf(regions);
  }
}
