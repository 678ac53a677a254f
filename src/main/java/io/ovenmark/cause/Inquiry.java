package io.ovenmark.cause;

import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;

/**
 * All that a line of history tells about one finding.
 *
 * <pre>{@code
 * Inquiry inquiry =
 *     Inquiry.of("gummy crumb", bakes, sheet, new PlanSize(2, 6), ShownUnits.AS_WRITTEN);
 * inquiry.suspects().get(0).cause().words();   // more liquid than flour and fibre can hold
 * inquiry.plans().get().plans().get(0).title();    // Dough or oven
 * }</pre>
 *
 * @param finding the word
 * @param history where it came and went
 * @param suspects the common causes against the formula's figures; none for merits and free words
 * @param plans plans of bakes for the newest turn; empty when it neither came nor went
 */
public record Inquiry(
    String finding, History history, List<Suspect> suspects, Optional<Plans> plans) {
  /** Copies the list. */
  public Inquiry {
    suspects = List.copyOf(suspects);
  }

  /**
   * Inquires into a finding. Takes time in proportion to the number of bakes.
   *
   * @param finding its word, of the vocabulary or free
   * @param bakes all bakes of the line of history, oldest first
   * @param sheet the state that is to be changed, worked out with the foods of today
   * @param size how much of each setting a plan bakes
   * @param units how sentences state masses and temperatures
   * @return what the history tells
   */
  public static Inquiry of(
      String finding, List<Baked> bakes, Worksheet sheet, PlanSize size, ShownUnits units) {
    History history = History.of(Baked.word(finding), bakes, units);
    return new Inquiry(
        history.finding(),
        history,
        Suspect.of(history, sheet),
        newest(history).map(turn -> Plans.of(turn, bakes, size, units)));
  }

  /**
   * The newest turn, for which the plans are.
   *
   * @return the turn; empty when the finding neither came nor went
   */
  public Optional<Turn> turn() {
    return newest(history);
  }

  private static Optional<Turn> newest(History history) {
    List<Turn> turns = history.turns();
    return turns.isEmpty() ? Optional.empty() : Optional.of(turns.get(turns.size() - 1));
  }
}
