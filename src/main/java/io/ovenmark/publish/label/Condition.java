package io.ovenmark.publish.label;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import java.math.BigDecimal;

/**
 * A condition on an amount, with how the amount stands to it.
 *
 * @param verdict whether the amount meets it
 * @param because the amount in words, such as {@code 4.1 g fibre in 100 g}
 */
record Condition(Verdict verdict, String because) {
  /** An amount with what it is of, so that a verdict can name it. */
  record Measured(Quantity amount, String unit, String what) {
    Condition atMost(double limit) {
      return judged(
          meets(amount.high(), limit, true), meets(amount.low(), limit, true), limit, true);
    }

    Condition below(double limit) {
      return judged(
          meets(amount.high(), limit, false), meets(amount.low(), limit, false), limit, false);
    }

    Condition atLeast(double limit) {
      return judged(
          !meets(amount.low(), limit, false), !meets(amount.high(), limit, false), limit, false);
    }

    private Condition judged(boolean always, boolean ever, double limit, boolean included) {
      Verdict verdict =
          always ? Verdict.MEETS : ever ? Verdict.CANNOT_BE_TOLD : Verdict.MISSES;
      return new Condition(verdict, words(limit, included) + what);
    }

    private String words(double limit, boolean included) {
      if (amount.isUnknown()) {
        return "unknown ";
      }
      if (!amount.isKnown()) {
        return FigureText.of(amount, unit) + " ";
      }
      boolean met = meets(amount.low(), limit, included);
      return Exact.shown(amount.low(), shown -> meets(shown, limit, included) == met)
          + " " + unit + " ";
    }

    private static boolean meets(double bound, double limit, boolean included) {
      if (Double.isInfinite(bound)) {
        return bound < 0;
      }
      int order = Exact.of(bound).compareTo(BigDecimal.valueOf(limit));
      return included ? order <= 0 : order < 0;
    }
  }

  Condition and(Condition other) {
    return new Condition(verdict.and(other.verdict), because + "; " + other.because);
  }

  /** The same with an amount named once that two conditions judged. */
  Condition once() {
    String[] parts = because.split("; ");
    return parts.length == 2 && parts[0].equals(parts[1])
        ? new Condition(verdict, parts[0])
        : this;
  }

  Condition or(Condition other) {
    return new Condition(verdict.or(other.verdict), because + "; " + other.because);
  }
}
