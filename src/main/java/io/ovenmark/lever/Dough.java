package io.ovenmark.lever;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A worksheet as unknowns: for each line how many times its present mass, then how many times the
 * present number of pieces. All figures are quotients of sums over them. Lines of 0 g and lines
 * whose mass is not known do not move.
 */
final class Dough {
  /** A line this near to what it was has not moved. */
  static final double UNMOVED = 1e-10;

  private static final double HUNDRED = 100;

  private final Worksheet sheet;
  private final double[] grams;
  private final double keptShare;
  private final double pieces;
  private final List<String> names;
  private final Map<String, Food> foods = new HashMap<>();

  Dough(Worksheet sheet) {
    this.sheet = sheet;
    grams = new double[sheet.lines().size()];
    for (int i = 0; i < grams.length; i++) {
      WorksheetLine line = sheet.lines().get(i);
      grams[i] = line.grams().isKnown() ? line.grams().low() : 0;
      line.food().ifPresent(food -> foods.put(food.slug(), food));
    }
    keptShare = 1 - sheet.formula().yield().handlingLossPercent().orElse(0) / HUNDRED;
    pieces = sheet.pieces().isKnown() && sheet.pieces().low() > 0 ? sheet.pieces().low() : 0;
    names = LineNames.of(sheet);
  }

  Worksheet sheet() {
    return sheet;
  }

  /** How many lines; the unknown of the pieces comes after theirs. */
  int lines() {
    return grams.length;
  }

  int unknowns() {
    return grams.length + 1;
  }

  String name(int line) {
    return names.get(line);
  }

  String id(int line) {
    return sheet.lines().get(line).line().id();
  }

  /** The place of a line; −1 when there is none of that id. */
  int indexOf(String id) {
    for (int i = 0; i < grams.length; i++) {
      if (id(i).equals(id)) {
        return i;
      }
    }
    return -1;
  }

  double grams(int line) {
    return grams[line];
  }

  /** Whether a line has a mass that can become more or less. */
  boolean isMovable(int line) {
    return grams[line] > 0;
  }

  /** The number of pieces, 0 when it is not known. */
  double pieces() {
    return pieces;
  }

  /** What is left of a batch after handling. */
  double keptShare() {
    return keptShare;
  }

  /** Everything as it is. */
  double[] start() {
    double[] start = new double[unknowns()];
    Arrays.fill(start, 1);
    for (int i = 0; i < grams.length; i++) {
      start[i] = isMovable(i) ? 1 : 0;
    }
    return start;
  }

  /** The mass of the batch as a sum over the unknowns. */
  double[] batch() {
    double[] sum = new double[unknowns()];
    System.arraycopy(grams, 0, sum, 0, grams.length);
    return sum;
  }

  /** The mass of the lines of a kind as a sum over the unknowns. */
  double[] ofKind(FoodKind kind) {
    double[] sum = new double[unknowns()];
    for (int i = 0; i < grams.length; i++) {
      Optional<Food> food = sheet.lines().get(i).food();
      sum[i] = food.isPresent() && food.get().kind() == kind ? grams[i] : 0;
    }
    return sum;
  }

  private double[] count() {
    double[] sum = new double[unknowns()];
    sum[grams.length] = pieces;
    return sum;
  }

  private static double[] times(double[] sum, double factor) {
    double[] product = sum.clone();
    for (int i = 0; i < product.length; i++) {
      product[i] *= factor;
    }
    return product;
  }

  /**
   * A figure.
   *
   * @param upper whether what is unknown counts as the most that it may be, or as the least
   */
  Fraction figure(Figure figure, Basis basis, boolean upper) {
    double[] none = new double[unknowns()];
    double baked = sheet.bakedYield().share().low();
    return switch (figure) {
      case LIQUID_RATIO -> new Fraction(ofKind(FoodKind.LIQUID), ofKind(FoodKind.DRY), 0);
      case DOUGH_MOISTURE -> new Fraction(times(water(upper), HUNDRED), batch(), 0);
      case BATCH_MASS -> new Fraction(batch(), none, 1);
      case PIECES -> new Fraction(count(), none, 1);
      case DOUGH_PER_PIECE -> new Fraction(times(batch(), keptShare), count(), 0);
      case BAKED_PER_PIECE -> new Fraction(times(batch(), keptShare * baked), count(), 0);
      default ->
          switch (basis) {
            case BATCH -> new Fraction(macro(figure, upper), none, 1);
            case PIECE -> new Fraction(times(macro(figure, upper), keptShare), count(), 0);
            case DOUGH_100_G -> new Fraction(times(macro(figure, upper), HUNDRED), batch(), 0);
            case BAKED_100_G ->
                new Fraction(baked100g(figure, upper, baked), times(batch(), baked), 0);
          };
    };
  }

  /** Per 100 g baked: only water is lost in the oven. */
  private double[] baked100g(Figure figure, boolean upper, double baked) {
    double[] sum = times(macro(figure, upper), HUNDRED);
    if (figure == Figure.WATER) {
      for (int i = 0; i < grams.length; i++) {
        sum[i] -= HUNDRED * (1 - baked) * grams[i];
      }
    }
    return sum;
  }

  private double[] macro(Figure figure, boolean upper) {
    double[] sum = new double[unknowns()];
    for (int i = 0; i < grams.length; i++) {
      Quantity part = sheet.lines().get(i).macros().get(figure);
      sum[i] = grams[i] == 0 ? 0 : upper ? part.high() : part.low();
    }
    return sum;
  }

  /** Water, of which no food holds more than its own mass. */
  private double[] water(boolean upper) {
    double[] sum = macro(Figure.WATER, upper);
    for (int i = 0; i < grams.length; i++) {
      sum[i] = Math.min(sum[i], grams[i]);
    }
    return sum;
  }

  /** Names of the foods of which a figure is not exactly known. */
  List<String> notKnown(Figure figure) {
    Figure needed = figure == Figure.DOUGH_MOISTURE ? Figure.WATER : figure;
    Set<String> found = new LinkedHashSet<>();
    for (int i = 0; i < grams.length; i++) {
      WorksheetLine line = sheet.lines().get(i);
      boolean open =
          switch (figure) {
            case LIQUID_RATIO -> line.food().isEmpty();
            case BATCH_MASS, PIECES, DOUGH_PER_PIECE, BAKED_PER_PIECE -> false;
            default -> !line.macros().get(needed).isKnown();
          };
      if (grams[i] > 0 && open) {
        found.add(name(i));
      }
    }
    return List.copyOf(found);
  }

  /** Names of the lines on whose unknown mass a figure depends. */
  List<String> notWeighed(Figure figure) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < grams.length; i++) {
      WorksheetLine line = sheet.lines().get(i);
      boolean counts =
          figure != Figure.LIQUID_RATIO
              || line.food()
                  .map(food -> food.kind() == FoodKind.LIQUID || food.kind() == FoodKind.DRY)
                  .orElse(true);
      if (!line.grams().isKnown() && counts) {
        found.add(name(i));
      }
    }
    return found;
  }

  /** The masses of the lines at a point; a line that has not moved weighs to the digit the same. */
  double[] masses(double[] point) {
    double[] masses = new double[grams.length];
    for (int i = 0; i < grams.length; i++) {
      masses[i] =
          Math.abs(point[i] - 1) <= UNMOVED ? grams[i] : Math.max(0, grams[i] * point[i]);
    }
    return masses;
  }

  /**
   * The formula with other masses.
   *
   * @param masses grams of each line; a line whose mass stays keeps what was entered
   * @param yield how the batch is divided
   */
  Formula formula(double[] masses, Yield yield) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < grams.length; i++) {
      Line line = sheet.lines().get(i).line();
      lines.add(
          masses[i] == grams[i]
              ? line
              : line.withAmount(Amount.grams(BigDecimal.valueOf(masses[i]))));
    }
    return sheet.formula().withLines(lines).withYield(yield);
  }

  /** Works a formula of the same foods out, by the same rules and the same loss on baking. */
  Worksheet workOut(Formula formula) {
    return Worksheet.of(
        formula,
        slug -> Optional.ofNullable(foods.get(slug)),
        sheet.policy(),
        sheet.bakedYield());
  }
}
