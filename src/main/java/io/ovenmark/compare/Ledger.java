package io.ovenmark.compare;

import io.ovenmark.compare.Contribution.Cause;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Collects the parts of one figure's difference by cause. */
final class Ledger {
  /** Parts smaller than this share of the figure are what binary fractions leave behind. */
  static final double NOISE = 1e-12;

  private final CauseTexts causes;
  private final String ruleText;
  private final double[] amount;
  private final double[] food;
  private double rule;
  private final Map<Cause, String> texts = new EnumMap<>(Cause.class);
  private final Map<Cause, Double> singles = new EnumMap<>(Cause.class);

  Ledger(CauseTexts causes, String ruleText) {
    this.causes = causes;
    this.ruleText = ruleText;
    this.amount = new double[causes.lines()];
    this.food = new double[causes.lines()];
  }

  void lines(LineTerms terms, double weight) {
    for (int i = 0; i < amount.length; i++) {
      amount[i] += weight * terms.amount()[i];
      food[i] += weight * terms.food()[i];
      rule += weight * terms.rule()[i];
    }
  }

  void single(Cause cause, String text, double delta) {
    texts.put(cause, text);
    singles.merge(cause, delta, Double::sum);
  }

  /** The parts, made to add up to the difference of two exactly known figures. */
  List<Contribution> contributions(double from, double to) {
    double scale = Math.max(Math.abs(from), Math.abs(to));
    for (int i = 0; i < amount.length; i++) {
      scale = Math.max(scale, Math.max(Math.abs(amount[i]), Math.abs(food[i])));
    }
    double least = scale * NOISE;
    List<Contribution> parts = new ArrayList<>();
    for (int i = 0; i < amount.length; i++) {
      if (Math.abs(amount[i]) > least) {
        parts.add(causes.amount(i, amount[i]));
      }
      if (Math.abs(food[i]) > least) {
        parts.add(causes.food(i, food[i]));
      }
    }
    if (Math.abs(rule) > least) {
      single(Cause.RULE, ruleText, rule);
    }
    singles.forEach(
        (cause, delta) -> {
          if (Math.abs(delta) > least) {
            parts.add(new Contribution(cause, texts.get(cause), Optional.empty(), delta));
          }
        });
    balance(parts, difference(from, to));
    return parts;
  }

  /** After less before; 0 when they differ only by what binary fractions leave behind. */
  static double difference(double from, double to) {
    double delta = to - from;
    return Math.abs(delta) <= NOISE * Math.max(Math.abs(from), Math.abs(to)) ? 0 : delta;
  }

  /** Adds what rounding left over to the largest part. */
  private static void balance(List<Contribution> parts, double delta) {
    if (parts.isEmpty()) {
      return;
    }
    int largest = 0;
    for (int i = 1; i < parts.size(); i++) {
      if (Math.abs(parts.get(i).delta()) > Math.abs(parts.get(largest).delta())) {
        largest = i;
      }
    }
    double sum = parts.stream().mapToDouble(Contribution::delta).sum();
    Contribution old = parts.get(largest);
    double balanced = old.delta() + (delta - sum);
    parts.set(largest, new Contribution(old.cause(), old.text(), old.line(), balanced));
    parts.removeIf(part -> part.delta() == 0);
  }
}
