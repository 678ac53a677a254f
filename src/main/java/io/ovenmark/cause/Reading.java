package io.ovenmark.cause;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Piece;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Temperature;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What a gauge shows for a formula and some pieces of it.
 *
 * @param number the figure; unknown for words and for what was not measured
 * @param words the text of a gauge of words; empty for numbers and when nothing is noted
 */
public record Reading(Quantity number, Optional<String> words) {
  /** Checks that nothing is null. */
  public Reading {
    requireNonNull(number, "number");
    requireNonNull(words, "words");
  }

  /**
   * Reads a gauge. Oven temperature, time and rack are those of the pieces, their mean where they
   * differ; where no piece notes them, those that the formula prescribes. Core, loss and crust are
   * measured or unknown.
   *
   * @param gauge which
   * @param sheet the formula worked out
   * @param pieces the pieces that count; may be none
   * @return what it shows
   */
  public static Reading of(Gauge gauge, Worksheet sheet, List<Piece> pieces) {
    return switch (gauge.sort()) {
      case FIGURE -> number(sheet.figure(gauge.figure().orElseThrow(), Basis.PIECE));
      case PER_100_G -> number(sheet.figure(gauge.figure().orElseThrow(), Basis.DOUGH_100_G));
      case SHARE -> number(share(gauge, sheet));
      case OVEN -> number(oven(gauge, sheet, pieces));
      case WORDS -> new Reading(Quantity.UNKNOWN, words(gauge, sheet, pieces));
    };
  }

  private static Reading number(Quantity number) {
    return new Reading(number, Optional.empty());
  }

  private static Quantity share(Gauge gauge, Worksheet sheet) {
    Quantity sum = Quantity.ZERO;
    for (WorksheetLine line : sheet.lines()) {
      if (gauge.counts(line.line().food())) {
        sum = sum.plus(line.grams());
      }
    }
    return sum.equals(Quantity.ZERO)
        ? Quantity.ZERO
        : sum.times(100).dividedBy(sheet.batchGrams()).noMoreThan(Quantity.known(100));
  }

  private static Quantity oven(Gauge gauge, Worksheet sheet, List<Piece> pieces) {
    Optional<BakeSetting> stage = sheet.formula().bake().stream().findFirst();
    return switch (gauge) {
      case OVEN_TEMPERATURE ->
          mean(
              pieces,
              piece -> celsius(piece.temperature()),
              stage.flatMap(BakeSetting::temperature).map(Temperature::celsius));
      case OVEN_TIME ->
          mean(
              pieces,
              Piece::minutes,
              stage
                  .map(BakeSetting::minutes)
                  .filter(OptionalDouble::isPresent)
                  .map(OptionalDouble::getAsDouble));
      case CORE -> mean(pieces, piece -> celsius(piece.core()), Optional.empty());
      case LOSS -> mean(pieces, Piece::lossPercent, Optional.empty());
      case CRUST -> mean(pieces, Piece::crustShade, Optional.empty());
      default -> throw new IllegalArgumentException("no gauge of the oven: " + gauge);
    };
  }

  private static OptionalDouble celsius(Optional<Temperature> temperature) {
    return temperature.isPresent()
        ? OptionalDouble.of(temperature.get().celsius())
        : OptionalDouble.empty();
  }

  private static Quantity mean(
      List<Piece> pieces, Function<Piece, OptionalDouble> of, Optional<Double> otherwise) {
    OptionalDouble mean =
        pieces.stream().map(of).flatMapToDouble(OptionalDouble::stream).average();
    return Quantity.of(
        mean.isPresent()
            ? mean
            : otherwise.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
  }

  private static Optional<String> words(Gauge gauge, Worksheet sheet, List<Piece> pieces) {
    Optional<BakeSetting> stage = sheet.formula().bake().stream().findFirst();
    if (gauge == Gauge.VESSEL) {
      return stage.flatMap(BakeSetting::vessel);
    }
    if (gauge == Gauge.STEAM) {
      return stage.flatMap(BakeSetting::steam);
    }
    TreeSet<String> racks = new TreeSet<>();
    pieces.forEach(piece -> piece.rack().ifPresent(racks::add));
    return racks.isEmpty()
        ? stage.flatMap(BakeSetting::rack)
        : Optional.of(String.join(" and ", racks));
  }
}
