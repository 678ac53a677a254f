package io.ovenmark.cause;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.cause.Evidence.Speech;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Temperature;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to do against a cause, with the formula's figures: back to where the figure was without the
 * finding when the history says so and it is not there already, else a first step.
 *
 * @param target the value that the gauge should come to; unknown when that cannot be said
 * @param back whether the target is the value of a bake without the finding, not a first step
 * @param wish the target as a wish for levers, such as {@code liquid ratio 0.86}; empty for what is
 *     no figure of a formula
 * @param formula the formula with a share of the batch or the oven changed; empty when levers do
 *     it, or nothing can be set
 */
public record Remedy(
    Quantity target, boolean back, Optional<String> wish, Optional<Formula> formula) {
  private static final Remedy NONE =
      new Remedy(Quantity.UNKNOWN, false, Optional.empty(), Optional.empty());
  private static final double HOTTEST = 280;

  static Remedy of(Cause cause, Reading now, List<Evidence> evidence, Worksheet sheet) {
    Gauge gauge = cause.gauge();
    boolean settable =
        gauge.sort() != Gauge.Sort.WORDS
            && gauge != Gauge.LOSS
            && gauge != Gauge.CRUST
            && gauge != Gauge.CORE;
    if (!settable || !now.number().isKnown() || now.number().low() == 0) {
      return NONE;
    }
    double from = now.number().low();
    Optional<Double> back = back(cause, from, evidence);
    double exact = back.orElseGet(() -> step(cause, from));
    double target = gauge.sort() == Gauge.Sort.OVEN ? Math.max(1, Math.round(exact)) : exact;
    Remedy none =
        new Remedy(Quantity.known(target), back.isPresent(), Optional.empty(), Optional.empty());
    return switch (gauge.sort()) {
      case FIGURE, PER_100_G -> none.wishing(wish(gauge, target));
      case SHARE -> none.making(share(gauge, target, sheet));
      default -> none.making(oven(gauge, target, sheet.formula()));
    };
  }

  /** The value of a bake without the finding that is better than the present one. */
  private static Optional<Double> back(Cause cause, double now, List<Evidence> evidence) {
    return evidence.stream()
        .filter(each -> each.speech() == Speech.FOR && each.without().number().isKnown())
        .map(each -> each.without().number().low())
        .filter(value -> value > 0)
        .filter(value -> cause.way().sign() * (now - value) > Evidence.SLACK * now)
        .findFirst();
  }

  private static double step(Cause cause, double now) {
    int away = -cause.way().sign();
    return cause.gauge() == Gauge.OVEN_TEMPERATURE
        ? now + away * cause.step()
        : now * (1 + away * cause.step() / 100);
  }

  private static String wish(Gauge gauge, double target) {
    String number = FigureText.number(target);
    String unit = gauge.unit().isEmpty() ? "" : " " + gauge.unit();
    String figure = gauge.figure().orElseThrow().label();
    return gauge.sort() == Gauge.Sort.PER_100_G
        ? figure + " per 100 g dough " + number + unit
        : figure + " " + number + unit;
  }

  private Remedy wishing(String text) {
    return new Remedy(target, back, Optional.of(text), formula);
  }

  private Remedy making(Optional<Formula> made) {
    return new Remedy(target, back, wish, made);
  }

  /** Every line of the share in one proportion, the rest as it is. */
  private static Optional<Formula> share(Gauge gauge, double percent, Worksheet sheet) {
    double part = 0;
    for (WorksheetLine line : sheet.lines()) {
      if (!line.grams().isKnown()) {
        return Optional.empty();
      }
      part += gauge.counts(line.line().food()) ? line.grams().low() : 0;
    }
    double rest = sheet.batchGrams().low() - part;
    if (percent >= 100 || rest <= 0) {
      return Optional.empty();
    }
    double factor = percent / (100 - percent) * rest / part;
    List<Line> lines = new ArrayList<>();
    for (WorksheetLine line : sheet.lines()) {
      lines.add(
          gauge.counts(line.line().food()) && line.grams().low() > 0
              ? line.line().withAmount(grams(line.grams().low() * factor))
              : line.line());
    }
    return Optional.of(Recipes.withLines(sheet.formula(), lines));
  }

  private static Amount grams(double grams) {
    return Amount.parse(FigureText.number(grams) + " g");
  }

  private static Optional<Formula> oven(Gauge gauge, double target, Formula formula) {
    if (formula.bake().isEmpty() || target > HOTTEST && gauge == Gauge.OVEN_TEMPERATURE) {
      return Optional.empty();
    }
    BakeSetting stage = formula.bake().get(0);
    BakeSetting next =
        gauge == Gauge.OVEN_TEMPERATURE
            ? stage.withTemperature(Optional.of(Temperature.celsius(target)))
            : stage.withMinutes(OptionalDouble.of(target));
    return Optional.of(Recipes.withFirstStage(formula, next));
  }

  /**
   * What the note of a draft with it says.
   *
   * @param cause the cause
   * @return such as {@code Against gummy crumb: less gelling fibre, with its share of the water}
   */
  public static String note(Cause cause) {
    FindingVocabulary finding = cause.finding();
    return "Against " + finding.word() + ": " + cause.against();
  }
}
