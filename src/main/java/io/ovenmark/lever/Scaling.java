package io.ovenmark.lever;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A formula scaled: every line times one factor, then brought to what can be measured.
 *
 * <pre>{@code
 * Scaling scaling =
 *     Scaling.of(sheet, ScaleQuestion.NOTHING.withPieces(10), ShownUnits.AS_WRITTEN);
 * scaling.lines().get(0).amount();   // 200 g
 * }</pre>
 *
 * <p>The dough that is needed is pieces times dough a piece; the batch is that divided by what
 * handling leaves of it. A number of pieces keeps the dough a piece, a dough a piece keeps the
 * number. From what is at hand the scarcest ingredient decides, and the pieces come out whole. What
 * a tin takes follows from a tin that a piece fills now, or from density and fill; it is never
 * guessed.
 *
 * @param before the formula that was scaled, worked out
 * @param factor by which every line is multiplied
 * @param pieces number of pieces; empty when the formula states none and nobody asked for one
 * @param exact the scaled formula, worked out
 * @param measured the same with amounts that can be measured
 * @param lines the lines in the formula's order
 * @param rounding what measuring moves: figures exactly and as measured
 * @param tin what a tin takes; empty without one
 * @param atHand what was said to be at hand
 * @param bakingLossPercent loss on baking that baked masses rest on; empty when it is not known
 * @param remarks what else a person should know
 */
public record Scaling(
    Worksheet before,
    double factor,
    OptionalInt pieces,
    Worksheet exact,
    Worksheet measured,
    List<ScaledLine> lines,
    List<FigureMove> rounding,
    Optional<TinFill> tin,
    List<AtHand> atHand,
    OptionalDouble bakingLossPercent,
    List<String> remarks) {
  /** Copies the lists. */
  public Scaling {
    lines = List.copyOf(lines);
    rounding = List.copyOf(rounding);
    atHand = List.copyOf(atHand);
    remarks = List.copyOf(remarks);
  }

  /**
   * Scales.
   *
   * @param sheet a formula worked out
   * @param question to what
   * @param units how masses stand in sentences
   * @return the scaled formula
   * @throws IllegalArgumentException when something that is needed is not known, with a sentence
   *     and, after a line break, a remedy
   */
  public static Scaling of(Worksheet sheet, ScaleQuestion question, ShownUnits units) {
    return new Search(sheet, question, units).run();
  }

  /**
   * The scaled formula as it may be kept.
   *
   * @return the formula with amounts that can be measured
   */
  public Formula formula() {
    return measured.formula();
  }

  /** One question being answered. */
  private static final class Search {
    private static final double WHOLE = 1e-9;
    private static final double NOT_DIVIDED = 0;

    private final Worksheet sheet;
    private final ScaleQuestion question;
    private final ShownUnits units;
    private final Dough dough;
    private final List<String> remarks = new ArrayList<>();
    private final double keptBefore;
    private final double kept;
    private final OptionalDouble bakingLoss;
    private Optional<TinFill> tin = Optional.empty();

    Search(Worksheet sheet, ScaleQuestion question, ShownUnits units) {
      this.sheet = sheet;
      this.question = question;
      this.units = units;
      dough = new Dough(sheet);
      keptBefore = dough.keptShare();
      kept =
          question.handlingLossPercent().isPresent()
              ? 1 - question.handlingLossPercent().getAsDouble() / 100
              : keptBefore;
      Quantity share = sheet.bakedYield().share();
      OptionalDouble weighed =
          share.isKnown() ? OptionalDouble.of((1 - share.low()) * 100) : OptionalDouble.empty();
      bakingLoss =
          question.bakingLossPercent().isPresent() ? question.bakingLossPercent() : weighed;
    }

    Scaling run() {
      if (sheet.lines().isEmpty()) {
        throw refused("The formula has no lines yet.", "Add some first.");
      }
      OptionalDouble size = size();
      double sizeNow = size.isPresent() ? sizeNow() : NOT_DIVIDED;
      double sizeRatio = sizeNow == NOT_DIVIDED ? 1 : size.orElse(sizeNow) / sizeNow;
      double loss = keptBefore / kept;
      List<AtHand> hand = new ArrayList<>();
      double factor;
      OptionalInt pieces;
      if (question.have().isEmpty()) {
        double count = count(size.isPresent());
        double now = dough.pieces() == 0 ? 1 : dough.pieces();
        factor =
            dough.pieces() == 0 && size.isPresent()
                ? size.getAsDouble() * count / kept / batch()
                : count / now * sizeRatio * loss;
        pieces = OptionalInt.of((int) count);
      } else {
        double most = most(hand);
        OptionalDouble possible = possible(most, size, sizeRatio * loss);
        pieces =
            possible.isPresent()
                ? OptionalInt.of((int) Math.floor(possible.getAsDouble() + WHOLE))
                : OptionalInt.empty();
        factor =
            pieces.isPresent()
                ? most * Math.min(1, pieces.getAsInt() / possible.getAsDouble())
                : most;
      }
      return scaled(factor, pieces, used(hand, factor), size, sizeRatio);
    }

    /** The dough mass that a piece shall have; empty when it stays. */
    private OptionalDouble size() {
      if (question.bakedPerPieceGrams().isPresent()) {
        if (bakingLoss.isEmpty()) {
          throw refused(
              "The loss on baking is not known: no piece of this revision was weighed before and"
                  + " after the oven.",
              "Give the loss in percent, or ask for the dough a piece.");
        }
        return OptionalDouble.of(
            question.bakedPerPieceGrams().getAsDouble() / (1 - bakingLoss.getAsDouble() / 100));
      }
      if (question.tin().isPresent()) {
        double now = question.densityGramsPerMillilitre().isPresent() ? 0 : sizeNow();
        tin = Optional.of(TinFill.of(sheet.formula(), question, now, units, remarks));
        return OptionalDouble.of(tin.get().doughGrams());
      }
      return question.doughPerPieceGrams();
    }

    /** The dough mass that a piece has; {@link #NOT_DIVIDED} when there are no pieces. */
    private double sizeNow() {
      Quantity now = sheet.doughPerPieceGrams();
      if (dough.pieces() > 0 && !now.isKnown()) {
        throw refused(
            "The dough a piece is not known now, since the mass of "
                + String.join(", ", unweighed()) + " is not.",
            "Give that line in grams, or its food a household weight.");
      }
      return now.isKnown() ? now.low() : NOT_DIVIDED;
    }

    private List<String> unweighed() {
      List<String> names = new ArrayList<>();
      for (int i = 0; i < sheet.lines().size(); i++) {
        if (!sheet.lines().get(i).grams().isKnown()) {
          names.add(dough.name(i));
        }
      }
      return names;
    }

    private double batch() {
      if (!sheet.batchGrams().isKnown()) {
        throw refused(
            "The batch mass is not known, since the mass of " + String.join(", ", unweighed())
                + " is not.",
            "Give that line in grams, or its food a household weight.");
      }
      return sheet.batchGrams().low();
    }

    private double count(boolean sized) {
      if (question.pieces().isPresent()) {
        if (dough.pieces() == 0 && !sized) {
          throw refused(
              "The formula does not say how large a piece is.",
              "Give the dough a piece too, or state the yield of the formula.");
        }
        return question.pieces().getAsDouble();
      }
      boolean byDensity =
          question.tin().isPresent() && question.densityGramsPerMillilitre().isPresent();
      if (!sized && question.handlingLossPercent().isEmpty()) {
        throw refused(
            "Nothing was asked for.",
            "Give a number of pieces, a dough a piece, a tin or what is at hand.");
      }
      if (byDensity || dough.pieces() == 0) {
        return 1;
      }
      return Math.max(1, Math.rint(dough.pieces()));
    }

    /** The factor that the scarcest ingredient allows. */
    private double most(List<AtHand> hand) {
      double most = Double.POSITIVE_INFINITY;
      for (Map.Entry<String, Double> each : question.have().entrySet()) {
        List<WorksheetLine> lines = linesOf(each.getKey());
        Quantity needed = Quantity.ZERO;
        for (WorksheetLine line : lines) {
          needed = needed.plus(line.grams());
        }
        String name = dough.name(sheet.lines().indexOf(lines.get(0)));
        if (!needed.isKnown() || needed.low() == 0) {
          throw refused(
              needed.isKnown()
                  ? "The formula takes no " + name + ", so what is at hand of it decides nothing."
                  : "The mass of " + name + " in the formula is not known.",
              needed.isKnown()
                  ? "Name another ingredient."
                  : "Give that line in grams, or its food a household weight.");
        }
        most = Math.min(most, each.getValue() / needed.low());
        hand.add(new AtHand(name, each.getValue(), needed.low(), false));
      }
      return most;
    }

    private static List<AtHand> used(List<AtHand> hand, double factor) {
      double least =
          hand.stream().mapToDouble(each -> each.haveGrams() / each.usedGrams()).min().orElse(0);
      return hand.stream()
          .map(
              each ->
                  new AtHand(
                      each.food(),
                      each.haveGrams(),
                      each.usedGrams() * factor,
                      each.haveGrams() / each.usedGrams() == least))
          .toList();
    }

    /** The lines of a food that is named by a line or by itself. */
    private List<WorksheetLine> linesOf(String name) {
      String food = sheet.line(name).map(line -> line.line().food()).orElse(name);
      List<WorksheetLine> lines =
          sheet.lines().stream().filter(line -> line.line().food().equals(food)).toList();
      if (lines.isEmpty()) {
        throw refused(
            "The formula has no line or food \"" + name + "\".",
            "Its lines are "
                + String.join(
                    ", ", sheet.lines().stream().map(line -> line.line().id()).toList())
                + ".");
      }
      return lines;
    }

    /** How many pieces a factor allows, not whole yet; empty when nobody divides the batch. */
    private OptionalDouble possible(double most, OptionalDouble size, double relative) {
      OptionalDouble count = OptionalDouble.empty();
      if (dough.pieces() > 0) {
        count = OptionalDouble.of(most * dough.pieces() / relative);
      } else if (size.isPresent()) {
        count = OptionalDouble.of(most * batch() * kept / size.getAsDouble());
      }
      if (count.isPresent() && count.getAsDouble() < 1 - WHOLE) {
        throw refused(
            "What is at hand makes " + FigureText.number(count.getAsDouble())
                + " of a piece of that size.",
            "Give a smaller dough a piece, or more of the ingredient.");
      }
      return count;
    }

    private Scaling scaled(
        double factor,
        OptionalInt pieces,
        List<AtHand> hand,
        OptionalDouble size,
        double sizeRatio) {
      Yield yield = divided(pieces, size);
      List<Line> exactLines = new ArrayList<>();
      List<Line> measuredLines = new ArrayList<>();
      List<ScaledLine> lines = new ArrayList<>();
      for (int i = 0; i < sheet.lines().size(); i++) {
        WorksheetLine line = sheet.lines().get(i);
        Quantity exact = line.grams().times(factor);
        Measured measured =
            Measured.of(line.line(), line.food(), line.grams(), factor, question.reading());
        exactLines.add(
            line.line()
                .withAmount(
                    exact.isKnown()
                        ? Amount.grams(BigDecimal.valueOf(exact.low()))
                        : Measured.times(line.line().amount(), factor)));
        measuredLines.add(line.line().withAmount(measured.amount()));
        lines.add(
            new ScaledLine(
                dough.id(i),
                dough.name(i),
                line.line().amount(),
                line.grams(),
                exact,
                measured.amount(),
                measured.grams(),
                measured.how().key()));
      }
      Worksheet exact =
          dough.workOut(sheet.formula().withLines(exactLines).withYield(yield));
      Worksheet measured =
          dough.workOut(sheet.formula().withLines(measuredLines).withYield(yield));
      remarks.addAll(ScaleCautions.of(sheet, factor, sizeRatio));
      return new Scaling(
          sheet,
          factor,
          pieces,
          exact,
          measured,
          lines,
          FigureMove.between(exact, measured),
          tin,
          hand,
          bakingLoss,
          remarks);
    }

    /** The scaled formula states its pieces as whole numbers, or the size as the formula does. */
    private Yield divided(OptionalInt pieces, OptionalDouble size) {
      Yield before = sheet.formula().yield();
      OptionalDouble loss =
          question.handlingLossPercent().isPresent()
              ? question.handlingLossPercent()
              : before.handlingLossPercent();
      if (before.doughPerPieceGrams().isPresent()) {
        OptionalDouble next = size.isPresent() ? size : before.doughPerPieceGrams();
        return new Yield(Optional.empty(), next, loss);
      }
      return pieces.isPresent()
          ? new Yield(Optional.of(pieces.getAsInt()), OptionalDouble.empty(), loss)
          : new Yield(before.pieces(), before.doughPerPieceGrams(), loss);
    }

    private static IllegalArgumentException refused(String sentence, String remedy) {
      return new IllegalArgumentException(sentence + "\n" + remedy);
    }
  }
}
