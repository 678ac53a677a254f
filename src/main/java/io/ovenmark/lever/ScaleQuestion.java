package io.ovenmark.lever;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * To what a formula is scaled. What is not given stays as the formula states it.
 *
 * @param pieces number of pieces, or of tins
 * @param doughPerPieceGrams dough mass of a piece
 * @param bakedPerPieceGrams baked mass of a piece; needs a loss on baking
 * @param tin the tin that each piece shall fill
 * @param fromTin the tin that a piece of the formula fills now
 * @param densityGramsPerMillilitre density of the dough
 * @param fillPercent how much of the tin the dough fills
 * @param have grams at hand by id of a line or short name of a food
 * @param handlingLossPercent share of the batch that stays in the bowl and on hands
 * @param bakingLossPercent share of the dough that leaves in the oven
 * @param reading what the scale can show in grams, 0 for exact masses
 */
public record ScaleQuestion(
    OptionalDouble pieces,
    OptionalDouble doughPerPieceGrams,
    OptionalDouble bakedPerPieceGrams,
    Optional<Tin> tin,
    Optional<Tin> fromTin,
    OptionalDouble densityGramsPerMillilitre,
    OptionalDouble fillPercent,
    Map<String, Double> have,
    OptionalDouble handlingLossPercent,
    OptionalDouble bakingLossPercent,
    double reading) {
  /** Nothing asked; weighed to 0.1 g. */
  public static final ScaleQuestion NOTHING =
      new ScaleQuestion(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Map.of(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Readings.FINE);

  /** Copies the map and checks what contradicts itself. */
  public ScaleQuestion {
    have = Collections.unmodifiableMap(new LinkedHashMap<>(have));
    int sizes =
        (doughPerPieceGrams.isPresent() ? 1 : 0)
            + (bakedPerPieceGrams.isPresent() ? 1 : 0)
            + (tin.isPresent() ? 1 : 0);
    if (sizes > 1) {
      throw refused(
          "The size of a piece is given twice.",
          "Give the dough a piece, the baked mass a piece or a tin.");
    }
    if (pieces.isPresent() && !have.isEmpty()) {
      throw refused(
          "Both the number of pieces and what is at hand are given.",
          "Give one; the other follows.");
    }
    check("The number of pieces", pieces, 1, 100_000);
    if (pieces.isPresent() && pieces.getAsDouble() != Math.rint(pieces.getAsDouble())) {
      throw refused("The number of pieces is not whole.", "Use a whole number.");
    }
    check("The dough a piece", doughPerPieceGrams, 0.01, 1_000_000);
    check("The baked mass a piece", bakedPerPieceGrams, 0.01, 1_000_000);
    check("The density of the dough", densityGramsPerMillilitre, 0.05, 2);
    check("The share of the tin that is filled", fillPercent, 1, 100);
    check("The loss on handling", handlingLossPercent, 0, 90);
    check("The loss on baking", bakingLossPercent, 0, 90);
    have.forEach(
        (what, grams) -> check("What is at hand of " + what, OptionalDouble.of(grams), 0.01, 1e6));
  }

  private static void check(String what, OptionalDouble value, double least, double most) {
    if (value.isPresent() && !(value.getAsDouble() >= least && value.getAsDouble() <= most)) {
      throw refused(
          what + " is not possible.",
          "Use a number from " + Double.toString(least).replaceAll("\\.0$", "") + " to "
              + (long) most + ".");
    }
  }

  private static IllegalArgumentException refused(String sentence, String remedy) {
    return new IllegalArgumentException(sentence + "\n" + remedy);
  }

  /**
   * The same for a number of pieces.
   *
   * @param count the number
   * @return a new question
   */
  public ScaleQuestion withPieces(double count) {
    return new ScaleQuestion(
        OptionalDouble.of(count), doughPerPieceGrams, bakedPerPieceGrams, tin, fromTin,
        densityGramsPerMillilitre, fillPercent, have, handlingLossPercent, bakingLossPercent,
        reading);
  }

  /**
   * The same for a dough mass of a piece.
   *
   * @param grams the mass
   * @return a new question
   */
  public ScaleQuestion withDoughPerPiece(double grams) {
    return new ScaleQuestion(
        pieces, OptionalDouble.of(grams), bakedPerPieceGrams, tin, fromTin,
        densityGramsPerMillilitre, fillPercent, have, handlingLossPercent, bakingLossPercent,
        reading);
  }

  /**
   * The same for what is at hand.
   *
   * @param grams grams by id of a line or short name of a food
   * @return a new question
   */
  public ScaleQuestion withHave(Map<String, Double> grams) {
    return new ScaleQuestion(
        pieces, doughPerPieceGrams, bakedPerPieceGrams, tin, fromTin, densityGramsPerMillilitre,
        fillPercent, grams, handlingLossPercent, bakingLossPercent, reading);
  }

  /**
   * The same for another scale.
   *
   * @param grams what it can show, 0 for exact
   * @return a new question
   */
  public ScaleQuestion withReading(double grams) {
    return new ScaleQuestion(
        pieces, doughPerPieceGrams, bakedPerPieceGrams, tin, fromTin, densityGramsPerMillilitre,
        fillPercent, have, handlingLossPercent, bakingLossPercent, grams);
  }

  /**
   * The same for a baked mass of a piece.
   *
   * @param grams the mass
   * @param lossPercent loss on baking; empty for the one that was weighed
   * @return a new question
   */
  public ScaleQuestion withBakedPerPiece(double grams, OptionalDouble lossPercent) {
    return new ScaleQuestion(
        pieces, doughPerPieceGrams, OptionalDouble.of(grams), tin, fromTin,
        densityGramsPerMillilitre, fillPercent, have, handlingLossPercent, lossPercent, reading);
  }

  /**
   * The same for another loss on handling.
   *
   * @param percent the loss
   * @return a new question
   */
  public ScaleQuestion withHandlingLoss(double percent) {
    return new ScaleQuestion(
        pieces, doughPerPieceGrams, bakedPerPieceGrams, tin, fromTin, densityGramsPerMillilitre,
        fillPercent, have, OptionalDouble.of(percent), bakingLossPercent, reading);
  }

  /**
   * The same for a tin.
   *
   * @param next the tin to fill
   * @param now the tin that a piece fills now; empty when nobody says
   * @param density density of the dough; empty for unknown
   * @param fill percent of the tin that the dough fills; empty for not said
   * @return a new question
   */
  public ScaleQuestion withTin(
      Tin next, Optional<Tin> now, OptionalDouble density, OptionalDouble fill) {
    return new ScaleQuestion(
        pieces, doughPerPieceGrams, bakedPerPieceGrams, Optional.of(next), now, density, fill,
        have, handlingLossPercent, bakingLossPercent, reading);
  }
}
