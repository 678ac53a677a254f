package io.ovenmark.cause;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.cause.Evidence.Place;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A cause held against the formula's own figures.
 *
 * @param cause the cause
 * @param now what its gauge shows for the state that was asked about; of the
 *     oven what is prescribed, else what the newest judged bake had
 * @param evidence how the gauge moved, where the history can tell: came, went, within a bake
 * @param standing what that says in sum
 * @param remedy what to do against it, with figures
 */
public record Suspect(
    Cause cause, Reading now, List<Evidence> evidence, Standing standing, Remedy remedy) {

  /** What the history says of a cause, the most telling first. */
  public enum Standing {
    /** The figure moved as the cause needs. */
    LIKELY,
    /** There is nothing to compare, or the figure is not known. */
    OPEN,
    /** The figure stayed. */
    UNMOVED,
    /** The figure moved the other way. */
    UNLIKELY,
    /** There is none of it in the formula. */
    ABSENT
  }

  /** Copies the list. */
  public Suspect {
    evidence = List.copyOf(evidence);
  }

  /**
   * The causes of a finding, those first whose figure moved as they need, then the more common.
   *
   * @param history what became of the finding
   * @param sheet the state that was asked about, worked out with the foods of today
   * @return the suspects; none for a merit and for free words
   */
  public static List<Suspect> of(History history, Worksheet sheet) {
    List<Cause> causes =
        FindingVocabulary.of(history.finding()).map(CauseTable::of).orElse(List.of());
    List<Suspect> suspects = new ArrayList<>();
    causes.forEach(cause -> suspects.add(of(cause, history, sheet)));
    suspects.sort(
        Comparator.<Suspect, Standing>comparing(suspect -> suspect.standing())
            .thenComparingInt(suspect -> suspect.cause().rank()));
    return List.copyOf(suspects);
  }

  private static Suspect of(Cause cause, History history, Worksheet sheet) {
    Gauge gauge = cause.gauge();
    List<Evidence> evidence = new ArrayList<>();
    history.last(true).ifPresent(turn -> evidence.add(turn(cause, Place.CAME, turn)));
    history.last(false).ifPresent(turn -> evidence.add(turn(cause, Place.WENT, turn)));
    List<Baked> divided = history.divided();
    if (gauge.isOfPieces() && !divided.isEmpty()) {
      Baked bake = divided.get(divided.size() - 1);
      Worksheet baked = bake.side().sheet();
      evidence.add(
          Evidence.of(
              cause,
              Place.WITHIN_A_BAKE,
              Reading.of(gauge, baked, bake.without(history.finding())),
              Reading.of(gauge, baked, bake.with(history.finding()))));
    }
    Reading now = now(gauge, history, sheet);
    boolean gone = history.standing() == History.Standing.GONE;
    Remedy remedy = Remedy.of(cause, now, gone ? List.of() : evidence, sheet);
    return new Suspect(cause, now, evidence, standing(cause, now, evidence), remedy);
  }

  /** What is prescribed; for what is only measured, the newest judged bake. */
  private static Reading now(Gauge gauge, History history, Worksheet sheet) {
    Reading prescribed = Reading.of(gauge, sheet, List.of());
    boolean known = prescribed.number().isKnown() || prescribed.words().isPresent();
    List<Baked> bakes = history.bakes();
    return known || bakes.isEmpty() || !gauge.isOfPieces()
        ? prescribed
        : Reading.of(gauge, sheet, bakes.get(bakes.size() - 1).bake().pieces());
  }

  private static Evidence turn(Cause cause, Place place, Turn turn) {
    return Evidence.of(
        cause,
        place,
        Reading.of(cause.gauge(), turn.without().side().sheet(), turn.piecesWithout()),
        Reading.of(cause.gauge(), turn.with().side().sheet(), turn.piecesWith()));
  }

  private static Standing standing(Cause cause, Reading now, List<Evidence> evidence) {
    boolean never =
        evidence.stream().allMatch(each -> isNone(each.with()) && isNone(each.without()));
    if (cause.way() == Way.HIGHER && isNone(now) && never) {
      return Standing.ABSENT;
    }
    return switch (Evidence.sum(evidence)) {
      case FOR -> Standing.LIKELY;
      case AGAINST -> Standing.UNLIKELY;
      case STAYED -> Standing.UNMOVED;
      case UNKNOWN -> Standing.OPEN;
    };
  }

  private static boolean isNone(Reading reading) {
    return reading.number().equals(Quantity.ZERO);
  }

  /**
   * The evidence of a place.
   *
   * @param place where
   * @return the evidence; empty when the history has none there
   */
  public Optional<Evidence> at(Place place) {
    return evidence.stream().filter(each -> each.place() == place).findFirst();
  }
}
