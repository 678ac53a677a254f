package io.ovenmark.lever;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import java.util.List;
import java.util.Optional;

/**
 * What a tin takes of a dough.
 *
 * @param tin the tin
 * @param doughGrams dough for one tin
 * @param gramsPerMillilitre dough for a millilitre of the tin
 * @param because where that comes from, in words
 */
public record TinFill(Tin tin, double doughGrams, double gramsPerMillilitre, String because) {
  /** Common practice, no source; said whenever it is used. */
  private static final double USUAL_FILL_PERCENT = 60;

  /**
   * By the density of the dough where it is given, else by the tin that a piece fills now.
   *
   * @param formula the formula, whose vessel may be that tin
   * @param question what is asked, a tin among it
   * @param doughPerPiece what a piece weighs now; 0 when the formula has no pieces
   * @param units how masses stand in sentences
   * @param remarks where to say what was taken for granted
   * @throws IllegalArgumentException when nobody says how heavy the dough is
   */
  static TinFill of(
      Formula formula,
      ScaleQuestion question,
      double doughPerPiece,
      ShownUnits units,
      List<String> remarks) {
    Tin wanted = question.tin().orElseThrow();
    if (question.densityGramsPerMillilitre().isPresent()) {
      double density = question.densityGramsPerMillilitre().getAsDouble();
      double percent = question.fillPercent().orElse(USUAL_FILL_PERCENT);
      if (question.fillPercent().isEmpty()) {
        remarks.add(
            "The tin is filled to 60 % with dough, as is common practice (no source); a dough that"
                + " rises more or less wants another share.");
      }
      return of(
          wanted,
          density * percent / 100,
          FigureText.number(percent) + " % filled with dough of " + FigureText.number(density)
              + " g/ml");
    }
    Optional<Tin> now = question.fromTin().or(() -> ownTin(formula));
    if (now.isEmpty() || doughPerPiece == 0) {
      throw new IllegalArgumentException(
          "What this dough weighs in a tin is not known: neither the formula nor its bakes say how"
              + " heavy a millilitre of it is.\n"
              + (now.isEmpty()
                  ? "Give the tin that a piece fills now, or the density of the dough in g/ml."
                  : "State how many pieces the formula gives, or give the density of the dough."));
    }
    if (question.fillPercent().isPresent()) {
      remarks.add("The tin is filled as high as the present one; the share has no effect.");
    }
    return of(
        wanted,
        doughPerPiece / now.get().millilitres(),
        "filled as the " + now.get().inWords() + " is with "
            + units.mass(Quantity.known(doughPerPiece)) + " now");
  }

  private static TinFill of(Tin tin, double gramsPerMillilitre, String because) {
    return new TinFill(
        tin, gramsPerMillilitre * tin.millilitres(), gramsPerMillilitre, because);
  }

  private static Optional<Tin> ownTin(Formula formula) {
    return formula.bake().stream()
        .map(BakeSetting::vessel)
        .flatMap(Optional::stream)
        .flatMap(vessel -> Tin.in(vessel).stream())
        .findFirst();
  }
}
