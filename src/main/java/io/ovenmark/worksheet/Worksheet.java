package io.ovenmark.worksheet;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.pantry.Resolved;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A formula worked out with its foods.
 *
 * <pre>{@code
 * Worksheet sheet = Worksheet.of(formula, pantry::get, Policy.USUAL, BakedYield.UNMEASURED);
 * Quantity net = sheet.figure(Figure.NET_CARBOHYDRATE, Basis.PIECE);
 * }</pre>
 *
 * <p>Sums over ingredients and the loss on baking follow Greenfield and Southgate, <i>Food
 * composition data</i>, 2nd ed., FAO 2003, "Calculation of the composition of dishes prepared from
 * recipes": nutrients of the raw ingredients are summed and the mass lost in the oven is water.
 * Retention factors for vitamins are not applied; no vitamin is shown. Liquid ratio and baker's
 * percentage are common practice of the baking trade, no single source.
 *
 * <p>Where a mass is unknown, what is stated for 100 g or for a piece of stated dough mass is
 * bounded by the extreme compositions that the unknown mass allows, and a batch figure is a lower
 * bound. A measured loss that is more than all the water of the dough leaves no water; nothing else
 * is taken away. A line of 0 g still counts for allergens: it names a food that is at hand.
 *
 * @param formula what was worked out
 * @param policy how
 * @param lines the lines in the formula's order
 * @param batchGrams sum of all lines
 * @param doughGrams batch mass less the loss on handling
 * @param pieces number of pieces, whole when stated, else dough mass divided by the mass of a piece
 * @param doughPerPieceGrams dough mass of a piece
 * @param bakedPerPieceGrams mass of a piece after the oven; unknown until weighed
 * @param bakedYield what that rests on
 * @param liquidRatio mass of liquid-kind lines divided by mass of dry-kind lines; unknown without a
 *     dry line
 * @param doughMoisturePercent water in all lines in percent of the batch mass, at most 100
 * @param macros the macros for each basis
 * @param unknowns what could not be known, in line order
 * @param allergens the allergens that the foods contain
 * @param allergensUnknownIn names of the foods whose allergens are unknown
 */
public record Worksheet(
    Formula formula,
    Policy policy,
    List<WorksheetLine> lines,
    Quantity batchGrams,
    Quantity doughGrams,
    Quantity pieces,
    Quantity doughPerPieceGrams,
    Quantity bakedPerPieceGrams,
    BakedYield bakedYield,
    Quantity liquidRatio,
    Quantity doughMoisturePercent,
    Map<Basis, Macros> macros,
    List<Unknown> unknowns,
    Set<Allergen> allergens,
    List<String> allergensUnknownIn) {

  /** Copies the collections. */
  public Worksheet {
    lines = List.copyOf(lines);
    macros = Collections.unmodifiableMap(new EnumMap<>(macros));
    unknowns = List.copyOf(unknowns);
    Set<Allergen> ordered = EnumSet.noneOf(Allergen.class);
    ordered.addAll(allergens);
    allergens = Collections.unmodifiableSet(ordered);
    allergensUnknownIn = List.copyOf(allergensUnknownIn);
  }

  /**
   * Works a formula out.
   *
   * @param formula the formula
   * @param foods finds a food by its slug
   * @param policy how to work out what has more than one way
   * @param bakedYield what the oven left of the dough, as weighed
   * @return the worksheet
   */
  public static Worksheet of(
      Formula formula,
      Function<String, Optional<Food>> foods,
      Policy policy,
      BakedYield bakedYield) {
    List<WorksheetLine> resolved = new ArrayList<>(formula.lines().size());
    Mixture mixture = new Mixture();
    Macros total = Macros.NONE;
    for (Line line : formula.lines()) {
      Optional<Food> food = foods.apply(line.food());
      Resolved mass = mass(line, food);
      Macros per100g = food.isPresent() ? per100g(food.get(), policy) : Macros.UNKNOWN;
      Macros macros = per100g.times(mass.grams().dividedBy(100));
      resolved.add(
          new WorksheetLine(line, food, mass, Quantity.UNKNOWN, Quantity.UNKNOWN, macros));
      mixture.add(per100g, mass.grams());
      total = total.plus(macros);
    }
    Quantity batch = sum(resolved, line -> true);
    Quantity flour = sum(resolved, line -> line.line().flour());
    List<WorksheetLine> lines = new ArrayList<>(resolved.size());
    Set<Allergen> allergens = EnumSet.noneOf(Allergen.class);
    List<String> allergensUnknownIn = new ArrayList<>();
    for (WorksheetLine line : resolved) {
      lines.add(withShares(line, batch, flour));
      Optional<Set<Allergen>> known = line.food().flatMap(Food::allergens);
      known.ifPresent(allergens::addAll);
      if (known.isEmpty() && !allergensUnknownIn.contains(line.name())) {
        allergensUnknownIn.add(line.name());
      }
    }

    double kept = kept(formula);
    OptionalDouble stated = formula.yield().doughPerPieceGrams();
    Quantity dough = batch.times(kept);
    Quantity pieces = pieces(formula, dough);
    Quantity perPiece = stated.isPresent() ? Quantity.of(stated) : dough.dividedBy(pieces);
    Macros per100gDough = mixture.per100g();

    Map<Basis, Macros> macros = new EnumMap<>(Basis.class);
    macros.put(Basis.BATCH, total);
    macros.put(
        Basis.PIECE,
        stated.isPresent()
            ? per100gDough.times(Quantity.known(stated.getAsDouble() / 100))
            : total.times(Quantity.known(kept)).dividedBy(pieces));
    macros.put(Basis.DOUGH_100_G, per100gDough);
    macros.put(Basis.BAKED_100_G, baked(per100gDough, bakedYield.share()));

    return new Worksheet(
        formula,
        policy,
        lines,
        batch,
        dough,
        pieces,
        perPiece,
        perPiece.times(bakedYield.share()),
        bakedYield,
        liquidRatio(lines),
        mixture.moisturePercent(),
        macros,
        unknowns(lines, policy),
        allergens,
        allergensUnknownIn);
  }

  /**
   * The same worksheet after another loss in the oven.
   *
   * @param yield what the oven left of the dough
   * @return a worksheet that differs in what is stated of baked mass only
   */
  public Worksheet with(BakedYield yield) {
    Map<Basis, Macros> next = new EnumMap<>(macros);
    next.put(Basis.BAKED_100_G, baked(macros.get(Basis.DOUGH_100_G), yield.share()));
    return new Worksheet(
        formula,
        policy,
        lines,
        batchGrams,
        doughGrams,
        pieces,
        doughPerPieceGrams,
        doughPerPieceGrams.times(yield.share()),
        yield,
        liquidRatio,
        doughMoisturePercent,
        next,
        unknowns,
        allergens,
        allergensUnknownIn);
  }

  /**
   * The composition of one piece that was weighed itself.
   *
   * @param dough its mass as dough, in grams; unknown makes everything unknown
   * @param baked its mass after the oven, in grams; unknown leaves its water between none and all
   *     that was in the dough
   * @return its macros
   */
  public Macros weighedPiece(Quantity dough, Quantity baked) {
    Macros piece = macros.get(Basis.DOUGH_100_G).times(dough.dividedBy(100));
    Quantity water = piece.get(Figure.WATER);
    Quantity left =
        baked.isKnown()
            ? water.minus(dough.minus(baked)).notNegative()
            : Quantity.between(0, water.high());
    return piece.with(Figure.WATER, left);
  }

  /**
   * A figure.
   *
   * @param figure which
   * @param basis for what; without meaning for figures that are not macros
   * @return the quantity, possibly unknown
   */
  public Quantity figure(Figure figure, Basis basis) {
    return switch (figure) {
      case LIQUID_RATIO -> liquidRatio;
      case DOUGH_MOISTURE -> doughMoisturePercent;
      case BATCH_MASS -> batchGrams;
      case PIECES -> pieces;
      case DOUGH_PER_PIECE -> doughPerPieceGrams;
      case BAKED_PER_PIECE -> bakedPerPieceGrams;
      default -> macros.get(basis).get(figure);
    };
  }

  /**
   * A figure that the worksheet does not keep, worked out in the same way as the macros are.
   *
   * <pre>{@code
   * sheet.sum(food -> food.per100g().get(Nutrient.CALCIUM)).get(Basis.PIECE)
   * }</pre>
   *
   * @param per100g what 100 g of a food hold of it, possibly unknown
   * @return the figure for each basis
   */
  public Map<Basis, Quantity> sum(Function<Food, Quantity> per100g) {
    Quantity total = Quantity.ZERO;
    for (WorksheetLine line : lines) {
      Quantity part = line.food().map(per100g).orElse(Quantity.UNKNOWN);
      total = total.plus(part.times(line.grams().dividedBy(100)));
    }
    Quantity dough = Mixture.per100g(lines, per100g);
    OptionalDouble stated = formula.yield().doughPerPieceGrams();
    Map<Basis, Quantity> sums = new EnumMap<>(Basis.class);
    sums.put(Basis.BATCH, total);
    sums.put(
        Basis.PIECE,
        stated.isPresent()
            ? dough.times(Quantity.known(stated.getAsDouble() / 100))
            : total.times(kept(formula)).dividedBy(pieces));
    sums.put(Basis.DOUGH_100_G, dough);
    sums.put(Basis.BAKED_100_G, dough.dividedBy(bakedYield.share()));
    return sums;
  }

  private static double kept(Formula formula) {
    return 1 - formula.yield().handlingLossPercent().orElse(0) / 100;
  }

  /**
   * Finds a line.
   *
   * @param id the line's id
   * @return the line, empty when there is none
   */
  public Optional<WorksheetLine> line(String id) {
    return lines.stream().filter(line -> line.line().id().equals(id)).findFirst();
  }

  private static Resolved mass(Line line, Optional<Food> food) {
    if (!line.amount().isRead()) {
      return Resolved.unread(line.amount());
    }
    if (line.amount().number().signum() == 0) {
      return new Resolved(Quantity.ZERO, false, "0 of any measure weighs nothing");
    }
    return food.isPresent() ? food.get().resolve(line.amount()) : ofUnknownFood(line);
  }

  private static Resolved ofUnknownFood(Line line) {
    return line.amount()
        .grams()
        .map(grams -> new Resolved(Quantity.known(grams.doubleValue()), false, "weighed"))
        .orElse(
            new Resolved(
                Quantity.UNKNOWN, true, "the pantry has no food \"" + line.food() + "\""));
  }

  private static Macros per100g(Food food, Policy policy) {
    return Macros.of(
        figure ->
            switch (figure) {
              case ENERGY -> policy.energy().energyPer100g(food);
              case NET_CARBOHYDRATE -> policy.netCarbohydrate().per100g(food.per100g());
              default -> food.per100g().get(figure.nutrient().orElseThrow());
            });
  }

  private static WorksheetLine withShares(WorksheetLine line, Quantity batch, Quantity flour) {
    Quantity percent = line.grams().times(100);
    return new WorksheetLine(
        line.line(),
        line.food(),
        line.resolved(),
        percent.dividedBy(batch),
        percent.dividedBy(flour),
        line.macros());
  }

  private static Quantity sum(List<WorksheetLine> lines, Predicate<WorksheetLine> which) {
    Quantity sum = Quantity.ZERO;
    for (WorksheetLine line : lines) {
      if (which.test(line)) {
        sum = sum.plus(line.grams());
      }
    }
    return sum;
  }

  private static Quantity liquidRatio(List<WorksheetLine> lines) {
    // a food that the pantry does not have may be of any kind: it widens both sides
    Quantity ofUnknownKind =
        Quantity.between(0, sum(lines, line -> line.food().isEmpty()).high());
    Quantity liquid = sum(lines, line -> isKind(line, FoodKind.LIQUID)).plus(ofUnknownKind);
    Quantity dry = sum(lines, line -> isKind(line, FoodKind.DRY)).plus(ofUnknownKind);
    return liquid.dividedBy(dry);
  }

  private static boolean isKind(WorksheetLine line, FoodKind kind) {
    return line.food().isPresent() && line.food().get().kind() == kind;
  }

  private static Quantity pieces(Formula formula, Quantity dough) {
    if (formula.yield().pieces().isPresent()) {
      return Quantity.known(formula.yield().pieces().get());
    }
    return formula.yield().doughPerPieceGrams().isPresent()
        ? dough.dividedBy(formula.yield().doughPerPieceGrams().getAsDouble())
        : Quantity.UNKNOWN;
  }

  private static Macros baked(Macros per100gDough, Quantity share) {
    Quantity lostWater = Quantity.known(100).minus(share.times(100));
    Macros grown = per100gDough.dividedBy(share);
    Quantity water =
        per100gDough.get(Figure.WATER).minus(lostWater).notNegative().dividedBy(share);
    return grown.with(Figure.WATER, water);
  }

  private static List<Unknown> unknowns(List<WorksheetLine> lines, Policy policy) {
    List<Unknown> unknowns = new ArrayList<>();
    for (WorksheetLine line : lines) {
      String id = line.line().id();
      if (line.food().isEmpty()) {
        unknowns.add(
            new Unknown(id, "food", "the pantry has no food \"" + line.line().food() + "\""));
      } else if (!line.resolved().isResolved()) {
        unknowns.add(new Unknown(id, "mass", line.resolved().how()));
      } else if (!line.grams().equals(Quantity.ZERO)) {
        for (Figure figure : Figure.macros()) {
          boolean missing = !line.macros().get(figure).isKnown();
          if (missing && figure != Figure.NET_CARBOHYDRATE) {
            unknowns.add(new Unknown(id, figure.key(), why(line, figure, policy)));
          }
        }
      }
    }
    return unknowns;
  }

  private static String why(WorksheetLine line, Figure figure, Policy policy) {
    if (figure == Figure.ENERGY && policy.energy() != EnergyRule.FOODS) {
      return line.name() + " lacks a figure that the " + policy.energy().key() + " need";
    }
    String label = figure.nutrient().map(Nutrient::label).orElse(figure.label());
    return "the " + label + " of " + line.name() + " is not stated";
  }
}
