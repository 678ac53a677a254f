package io.ovenmark.cause;

import io.ovenmark.measure.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * How a gauge stood without a finding and with it, in one place of the history.
 *
 * @param place where
 * @param without the gauge without the finding
 * @param with the gauge with it
 * @param speech whether it speaks for the cause
 */
public record Evidence(Place place, Reading without, Reading with, Speech speech) {
  /** What moved by less than this share of what it was has not moved. */
  static final double SLACK = 0.01;

  /** Where two readings are compared. */
  public enum Place {
    /** From the last bake without the finding to the first with it. */
    CAME,
    /** From the last bake with the finding to the first without it. */
    WENT,
    /** Between pieces of one bake, of one dough. */
    WITHIN_A_BAKE
  }

  /** Whether it speaks for a cause. */
  public enum Speech {
    /** The figure moved as the cause needs. */
    FOR,
    /** It stayed, up to one percent. */
    STAYED,
    /** It moved the other way. */
    AGAINST,
    /** It is not known on one of the two sides. */
    UNKNOWN
  }

  static Evidence of(Cause cause, Place place, Reading without, Reading with) {
    return new Evidence(place, without, with, speech(cause, without, with));
  }

  private static Speech speech(Cause cause, Reading without, Reading with) {
    if (cause.gauge().isWords()) {
      Optional<String> before = without.words();
      if (before.isEmpty() || with.words().isEmpty()) {
        return Speech.UNKNOWN;
      }
      return before.equals(with.words()) ? Speech.STAYED : Speech.FOR;
    }
    Quantity delta = with.number().minus(without.number());
    boolean bounded = Double.isFinite(without.number().high());
    double slack = bounded ? SLACK * Math.abs(without.number().high()) : Double.NaN;
    if (delta.isKnown() && Math.abs(delta.low()) <= slack) {
      return Speech.STAYED;
    }
    if (delta.low() > 0 || delta.high() < 0) {
      boolean up = delta.low() > 0;
      return up == cause.way().sign() > 0 ? Speech.FOR : Speech.AGAINST;
    }
    return Speech.UNKNOWN;
  }

  /** Speeches that are the sum of several: any for without against, then against, then the rest. */
  static Speech sum(List<Evidence> all) {
    long agreeing = count(all, Speech.FOR);
    long opposed = count(all, Speech.AGAINST);
    if (agreeing > opposed) {
      return Speech.FOR;
    }
    if (opposed > agreeing) {
      return Speech.AGAINST;
    }
    return count(all, Speech.STAYED) + agreeing > 0 ? Speech.STAYED : Speech.UNKNOWN;
  }

  private static long count(List<Evidence> all, Speech speech) {
    return all.stream().filter(each -> each.speech() == speech).count();
  }
}
