package io.ovenmark.compare;

import io.ovenmark.compare.Contribution.Cause;
import io.ovenmark.compare.Factor.Inverse;
import io.ovenmark.compare.Factor.Single;
import io.ovenmark.compare.Factor.Sum;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Compares every figure and splits its difference over its causes. Each figure is a product of sums
 * over lines, inverses of such sums, and single numbers ({@link Factor}), T being a macro of the
 * batch, B its mass, L and D its liquids and dry foods, N the pieces, k what is left after
 * handling, d the dough mass of a piece and s the share left after the oven:
 *
 * <pre>
 * batch             T                     100 g dough   100 · T · 1/B
 * piece             T · k · 1/N           100 g baked   100 · T · 1/B · 1/s
 * piece, d stated   T · d · 1/B           its water     100 + 100 · (T − B) · 1/B · 1/s
 * liquid ratio      L · 1/D               moisture      100 · T(water) · 1/B
 * dough a piece     B · k · 1/N, or d     baked a piece dough a piece · s
 * pieces            N, or B · k · 1/d
 * </pre>
 *
 * <p>The product is split by averaging over all orders in which its factors can change, the sums
 * and inverses then line by line, which is exact because they are linear in the lines ({@link
 * LineTerms}). When one side states pieces and the other the dough mass of a piece, the step from
 * the one number of pieces to the other is one cause.
 */
final class Attribution {
  private static final double ALL = 100;

  private final Worksheet from;
  private final Worksheet to;
  private final List<LineComparison> lines;
  private final CauseTexts causes;
  private final ShownUnits units;
  private final LineTerms mass;
  private final Map<Figure, LineTerms> macros = new EnumMap<>(Figure.class);
  private final boolean samePolicy;
  private final boolean sameLines;
  private final boolean sameYield;
  private final boolean sameShare;

  private Attribution(
      Worksheet from,
      Worksheet to,
      List<LineComparison> lines,
      Map<String, String> names,
      ShownUnits units) {
    this.from = from;
    this.to = to;
    this.lines = lines;
    this.causes = new CauseTexts(lines, names, units);
    this.units = units;
    this.mass = LineTerms.mass(lines);
    this.samePolicy = from.policy().equals(to.policy());
    this.sameLines = lines.stream().allMatch(Attribution::bringsTheSame);
    this.sameYield = from.formula().yield().equals(to.formula().yield());
    this.sameShare = from.bakedYield().share().equals(to.bakedYield().share());
  }

  /**
   * Compares all figures.
   *
   * @param from the earlier worksheet
   * @param to the later worksheet
   * @param lines their lines, paired
   * @param names names of lines in sentences
   * @param units how masses are shown in sentences
   * @return the macros for each basis, then the other figures, in fixed order
   */
  static List<FigureComparison> of(
      Worksheet from,
      Worksheet to,
      List<LineComparison> lines,
      Map<String, String> names,
      ShownUnits units) {
    Attribution attribution = new Attribution(from, to, lines, names, units);
    List<FigureComparison> all = new ArrayList<>();
    for (Basis basis : Basis.values()) {
      for (Figure figure : Figure.macros()) {
        all.add(attribution.compare(figure, Optional.of(basis)));
      }
    }
    for (Figure figure : Figure.values()) {
      if (!figure.isMacro()) {
        all.add(attribution.compare(figure, Optional.empty()));
      }
    }
    return List.copyOf(all);
  }

  private static boolean bringsTheSame(LineComparison line) {
    return line.before().isPresent()
        && line.after().isPresent()
        && line.delta().equals(Quantity.ZERO)
        && line.before().get().food().equals(line.after().get().food());
  }

  private FigureComparison compare(Figure figure, Optional<Basis> basis) {
    Quantity before = from.figure(figure, basis.orElse(Basis.PIECE));
    Quantity after = to.figure(figure, basis.orElse(Basis.PIECE));
    if (nothingEnters(figure, basis)) {
      return new FigureComparison(figure, basis, before, after, Quantity.ZERO, List.of());
    }
    if (!before.isKnown() || !after.isKnown()) {
      Quantity delta = after.minus(before);
      return new FigureComparison(figure, basis, before, after, delta, List.of());
    }
    Ledger ledger = new Ledger(causes, ruleText(figure));
    Quantity delta = Quantity.known(Ledger.difference(before.low(), after.low()));
    split(figure, basis, before.low(), after.low(), ledger);
    return new FigureComparison(
        figure, basis, before, after, delta, ledger.contributions(before.low(), after.low()));
  }

  private boolean nothingEnters(Figure figure, Optional<Basis> basis) {
    if (!sameLines || !samePolicy && figure.isMacro()) {
      return false;
    }
    boolean ofPiece =
        basis.filter(Basis.PIECE::equals).isPresent()
            || figure == Figure.PIECES
            || figure == Figure.DOUGH_PER_PIECE
            || figure == Figure.BAKED_PER_PIECE;
    boolean ofBaked =
        basis.filter(Basis.BAKED_100_G::equals).isPresent() || figure == Figure.BAKED_PER_PIECE;
    return (sameYield || !ofPiece) && (sameShare || !ofBaked);
  }

  private void split(
      Figure figure, Optional<Basis> basis, double before, double after, Ledger ledger) {
    switch (figure) {
      case LIQUID_RATIO -> {
        LineTerms liquid = LineTerms.kind(lines, FoodKind.LIQUID);
        LineTerms dry = LineTerms.kind(lines, FoodKind.DRY);
        product(1, List.of(new Sum(liquid), new Inverse(dry)), ledger);
      }
      case DOUGH_MOISTURE ->
          product(ALL, List.of(new Sum(macro(Figure.WATER)), new Inverse(mass)), ledger);
      case BATCH_MASS -> ledger.lines(mass, 1);
      case PIECES -> pieces(before, after, ledger);
      case DOUGH_PER_PIECE -> product(1, doughPerPiece(before, after), ledger);
      case BAKED_PER_PIECE -> {
        List<Factor> factors =
            new ArrayList<>(
                doughPerPiece(from.doughPerPieceGrams().low(), to.doughPerPieceGrams().low()));
        factors.add(share(false));
        product(1, factors, ledger);
      }
      default -> macro(figure, basis.orElseThrow(), before, after, ledger);
    }
  }

  private void macro(Figure figure, Basis basis, double before, double after, Ledger ledger) {
    LineTerms sum = macro(figure);
    switch (basis) {
      case BATCH -> ledger.lines(sum, 1);
      case PIECE -> {
        List<Factor> factors = new ArrayList<>(List.of(new Sum(sum)));
        factors.addAll(batchToPiece());
        product(1, factors, ledger);
      }
      case DOUGH_100_G -> product(ALL, List.of(new Sum(sum), new Inverse(mass)), ledger);
      case BAKED_100_G -> {
        if (figure == Figure.WATER) {
          waterOfBaked(sum.minus(mass), before, after, ledger);
        } else {
          product(ALL, List.of(new Sum(sum), new Inverse(mass), share(true)), ledger);
        }
      }
      default -> throw new IllegalStateException(basis.toString());
    }
  }

  /**
   * Below 0, where the worksheet cuts the figure off, the cutting is a cause of its own; it is the
   * only one where the cut figure is known though the water is not.
   */
  private void waterOfBaked(LineTerms others, double before, double after, Ledger ledger) {
    double rawBefore = ALL + ALL * others.from() / mass.from() * keptBefore();
    double rawAfter = ALL + ALL * others.to() / mass.to() * keptAfter();
    double cutOff = after - before;
    if (Double.isFinite(rawBefore) && Double.isFinite(rawAfter)) {
      product(ALL, List.of(new Sum(others), new Inverse(mass), share(true)), ledger);
      cutOff = (after > 0 ? 0 : -rawAfter) - (before > 0 ? 0 : -rawBefore);
    }
    ledger.single(Cause.CUT_OFF, "more was lost than the water it held", cutOff);
  }

  private void pieces(double before, double after, Ledger ledger) {
    if (bothState(false)) {
      Yield a = from.formula().yield();
      Yield b = to.formula().yield();
      Factor each =
          new Single(
              Cause.DOUGH_PER_PIECE,
              doughPerPieceText(),
              1 / a.doughPerPieceGrams().getAsDouble(),
              1 / b.doughPerPieceGrams().getAsDouble());
      product(1, List.of(new Sum(mass), kept(), each), ledger);
    } else {
      ledger.single(Cause.PIECES, piecesText(), after - before);
    }
  }

  private List<Factor> doughPerPiece(double before, double after) {
    if (bothState(false)) {
      return List.of(new Single(Cause.DOUGH_PER_PIECE, doughPerPieceText(), before, after));
    }
    return bothState(true)
        ? List.of(new Sum(mass), kept(), inversePieces())
        : List.of(new Single(Cause.PIECES, piecesText(), before, after));
  }

  private List<Factor> batchToPiece() {
    if (bothState(false)) {
      double before = from.formula().yield().doughPerPieceGrams().getAsDouble();
      double after = to.formula().yield().doughPerPieceGrams().getAsDouble();
      return List.of(
          new Single(Cause.DOUGH_PER_PIECE, doughPerPieceText(), before, after), new Inverse(mass));
    }
    return List.of(kept(), inversePieces());
  }

  private Factor kept() {
    double before = from.formula().yield().handlingLossPercent().orElse(0);
    double after = to.formula().yield().handlingLossPercent().orElse(0);
    String text =
        "handling loss " + FigureText.change(Quantity.known(before), Quantity.known(after), "%");
    return new Single(Cause.HANDLING_LOSS, text, 1 - before / ALL, 1 - after / ALL);
  }

  private Factor inversePieces() {
    return new Single(
        Cause.PIECES, piecesText(), inversePieces(from, mass.from()), inversePieces(to, mass.to()));
  }

  private Factor share(boolean inverse) {
    double before = from.bakedYield().share().low();
    double after = to.bakedYield().share().low();
    String text =
        "loss in the oven "
            + FigureText.change(
                Quantity.known(ALL * (1 - before)), Quantity.known(ALL * (1 - after)), "%");
    return inverse
        ? new Single(Cause.BAKING_LOSS, text, keptBefore(), keptAfter())
        : new Single(Cause.BAKING_LOSS, text, before, after);
  }

  private double keptBefore() {
    return 1 / from.bakedYield().share().low();
  }

  private double keptAfter() {
    return 1 / to.bakedYield().share().low();
  }

  private static double inversePieces(Worksheet sheet, double batch) {
    Yield yield = sheet.formula().yield();
    if (yield.pieces().isPresent()) {
      return 1.0 / yield.pieces().get();
    }
    double kept = 1 - yield.handlingLossPercent().orElse(0) / ALL;
    return yield.doughPerPieceGrams().orElse(Double.NaN) / (batch * kept);
  }

  /** Splits a product. A divisor that is unknown on one side divides nothing there: no part. */
  private static void product(double constant, List<Factor> factors, Ledger ledger) {
    List<Factor> usable = new ArrayList<>();
    for (Factor factor : factors) {
      boolean before = Double.isFinite(factor.before());
      boolean after = Double.isFinite(factor.after());
      double known = before ? factor.before() : factor.after();
      if (before && after) {
        usable.add(factor);
      } else if (before || after) {
        usable.add(new Single(Cause.PIECES, "", known, known));
      }
    }
    Factor.split(constant, usable, ledger);
  }

  private boolean bothState(boolean pieces) {
    Yield a = from.formula().yield();
    Yield b = to.formula().yield();
    return pieces
        ? a.pieces().isPresent() && b.pieces().isPresent()
        : a.doughPerPieceGrams().isPresent() && b.doughPerPieceGrams().isPresent();
  }

  private String piecesText() {
    return bothState(true)
        ? "pieces " + FigureText.change(from.pieces(), to.pieces(), "")
        : stated(from) + FigureText.ARROW + stated(to);
  }

  private String stated(Worksheet sheet) {
    Yield yield = sheet.formula().yield();
    if (yield.doughPerPieceGrams().isPresent()) {
      return units.mass(Quantity.of(yield.doughPerPieceGrams())) + " dough a piece";
    }
    String pieces = yield.pieces().equals(Optional.of(1)) ? " piece" : " pieces";
    return FigureText.of(sheet.pieces()) + pieces;
  }

  private String doughPerPieceText() {
    return "dough a piece "
        + units.massChange(from.doughPerPieceGrams(), to.doughPerPieceGrams());
  }

  private LineTerms macro(Figure figure) {
    return macros.computeIfAbsent(
        figure, each -> LineTerms.macro(lines, each, from.policy(), to.policy()));
  }

  private String ruleText(Figure figure) {
    Policy after = to.policy();
    return figure == Figure.ENERGY
        ? "energy by " + rule(after.energy()) + " instead of " + rule(from.policy().energy())
        : "net carbohydrate as " + after.netCarbohydrate().inWords();
  }

  static String rule(EnergyRule rule) {
    return rule == EnergyRule.FOODS ? "the foods' own figures" : rule.key();
  }
}
