package io.ovenmark.desk;

import java.util.List;

/**
 * A question about a bake window as it is typed or sent. Every part may be null or empty.
 *
 * @param pieces which pieces: {@code revision}, {@code dough} (all revisions with the same dough)
 *     or {@code all} of the line of history; null for this revision when its pieces make a map, else
 *     the same dough
 * @param limits limits such as {@code core at least 71 °C}; none for those that the pieces propose
 * @param along {@code minutes} or {@code dose}; null for minutes
 * @param oven what the map shows and the oven can be set to, such as {@code 180 to 220 °C}
 * @param time likewise in minutes, such as {@code 14 to 30 min}
 * @param reference reference temperature of the thermal dose, such as {@code 100 °C}
 * @param z the rise of temperature that makes its rate tenfold, in °C, such as {@code 33}
 */
public record WindowOrder(
    String pieces,
    List<String> limits,
    String along,
    String oven,
    String time,
    String reference,
    String z) {
  /** What is proposed for all parts. */
  public static final WindowOrder USUAL =
      new WindowOrder(null, null, null, null, null, null, null);

  /** Copies; what is null becomes empty. */
  public WindowOrder {
    limits =
        limits == null
            ? List.of()
            : limits.stream().map(String::strip).filter(each -> !each.isEmpty()).toList();
  }

  /**
   * A question about some pieces.
   *
   * @param pieces {@code revision}, {@code dough} or {@code all}
   * @param limits the limits; none for those that are proposed
   * @return the question
   */
  public static WindowOrder of(String pieces, String... limits) {
    return new WindowOrder(pieces, List.of(limits), null, null, null, null, null);
  }
}
