package io.ovenmark.lever;

import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns a question about a dough into conditions on its unknowns. */
final class Conditions {
  /** No line grows beyond so many times what it is. */
  static final double MOST_TIMES = 20;

  private final Dough dough;
  private final Question question;
  private final Optional<Division> division;
  private final ShownUnits units;

  Conditions(
      Dough dough, Question question, Optional<Division> division, ShownUnits units) {
    this.dough = dough;
    this.question = question;
    this.division = division;
    this.units = units;
  }

  /** All conditions: nature and sense first, wishes last. */
  List<Condition> all() {
    List<Condition> all = new ArrayList<>();
    all.add(nature());
    all.add(notTooMuch());
    all.add(notTooLittle());
    division.ifPresent(
        found ->
            all.add(
                new Condition(Condition.Kind.DIVISION, found.words(), List.of(found.row()))));
    if (question.batchFixed()) {
      all.add(batch());
    }
    for (LineLimit limit : question.limits()) {
      limit(limit, all);
    }
    for (String line : question.keep()) {
      all.add(keep(line));
    }
    for (Wish wish : question.wishes()) {
      if (division.flatMap(Division::wish).filter(wish::equals).isEmpty()) {
        all.add(wish(wish));
      }
    }
    return List.copyOf(all);
  }

  private Condition nature() {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < dough.lines(); i++) {
      double most = dough.isMovable(i) ? Double.POSITIVE_INFINITY : 0;
      rows.add(Row.bounds(dough.unknowns(), i, 0, most));
    }
    rows.add(Row.bounds(dough.unknowns(), dough.lines(), 0, Double.POSITIVE_INFINITY));
    return new Condition(Condition.Kind.NATURE, "no line can weigh less than 0 g", rows);
  }

  private Condition notTooMuch() {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < dough.lines(); i++) {
      if (dough.isMovable(i)) {
        rows.add(
            Row.bounds(dough.unknowns(), i, Double.NEGATIVE_INFINITY, MOST_TIMES));
      }
    }
    return new Condition(
        Condition.Kind.SENSE, "no line becomes more than 20 times what it is", rows);
  }

  /** An empty bowl would keep every ratio. */
  private Condition notTooLittle() {
    List<Row> rows = new ArrayList<>();
    for (double[] sum : List.of(dough.batch(), dough.ofKind(FoodKind.DRY))) {
      double now = 0;
      for (int i = 0; i < dough.lines(); i++) {
        now += sum[i];
      }
      if (now > 0) {
        rows.add(new Row(sum, now / MOST_TIMES, Double.POSITIVE_INFINITY));
      }
    }
    return new Condition(
        Condition.Kind.SENSE,
        "a twentieth of the batch and of its dry part stays at least",
        rows);
  }

  private Condition batch() {
    double[] sum = dough.batch();
    double now = new Row(sum, 0, 0).at(dough.start());
    return new Condition(
        Condition.Kind.BATCH,
        "batch mass stays at " + units.mass(Quantity.known(now)),
        List.of(new Row(sum, now, now)));
  }

  private void limit(LineLimit limit, List<Condition> all) {
    int line = dough.indexOf(limit.line());
    double now = dough.grams(line);
    if (now == 0) {
      return;
    }
    if (limit.atLeastGrams() > 0) {
      LineLimit least = LineLimit.atLeast(limit.line(), limit.atLeastGrams());
      all.add(bounded(line, least.inWords(dough.name(line), units), limit.atLeastGrams() / now,
          Double.POSITIVE_INFINITY));
    }
    if (limit.atMostGrams() < Double.POSITIVE_INFINITY) {
      LineLimit most = LineLimit.atMost(limit.line(), limit.atMostGrams());
      all.add(bounded(line, most.inWords(dough.name(line), units), Double.NEGATIVE_INFINITY,
          limit.atMostGrams() / now));
    }
  }

  private Condition bounded(int line, String words, double low, double high) {
    return new Condition(
        Condition.Kind.LIMIT, words, List.of(Row.bounds(dough.unknowns(), line, low, high)));
  }

  private Condition keep(String id) {
    int line = dough.indexOf(id);
    double now = dough.isMovable(line) ? 1 : 0;
    return new Condition(
        Condition.Kind.KEEP,
        dough.name(line) + " stays at " + units.mass(Quantity.known(dough.grams(line))),
        List.of(Row.bounds(dough.unknowns(), line, now, now)));
  }

  private Condition wish(Wish wish) {
    Fraction lower = dough.figure(wish.figure(), wish.basis(), false);
    List<Row> rows = new ArrayList<>();
    if (wish.isValue()) {
      rows.add(lower.equal(wish.least()));
    } else {
      if (Double.isFinite(wish.least())) {
        rows.add(lower.atLeast(wish.least()));
      }
      if (Double.isFinite(wish.most())) {
        rows.add(dough.figure(wish.figure(), wish.basis(), true).atMost(wish.most()));
      }
    }
    return new Condition(Condition.Kind.WISH, wish.inWords(units), rows);
  }

  /**
   * Refuses what cannot be answered, and says what can be answered only as a bound.
   *
   * @return remarks
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  List<String> check() {
    if (dough.lines() == 0) {
      throw refused("The formula has no lines yet.", "Add some first.");
    }
    for (String line : question.keep()) {
      requireLine(line);
    }
    question.limits().forEach(limit -> requireLine(limit.line()));
    List<String> remarks = new ArrayList<>();
    question.wishes().forEach(wish -> check(wish, remarks));
    for (LineLimit limit : question.limits()) {
      int line = dough.indexOf(limit.line());
      if (dough.grams(line) == 0) {
        remarks.add(
            "There is no " + dough.name(line)
                + " in the dough that could move: its limit has no effect.");
      }
    }
    return remarks;
  }

  private void requireLine(String line) {
    if (dough.indexOf(line) < 0) {
      List<String> ids = new ArrayList<>();
      for (int i = 0; i < dough.lines(); i++) {
        ids.add(dough.id(i));
      }
      throw refused(
          "There is no line \"" + line + "\" in this formula.",
          "Its lines are " + String.join(", ", ids) + ".");
    }
  }

  private void check(Wish wish, List<String> remarks) {
    Figure figure = wish.figure();
    String label = figure.label();
    boolean byPiece =
        figure.isMacro()
            ? wish.basis() == Basis.PIECE
            : figure == Figure.PIECES || label.endsWith(" a piece");
    if (byPiece && division.isEmpty()) {
      throw refused(
          "The formula does not say into how many pieces it is divided.",
          "State it first, as in yield.pieces=6 or yield.dough_per_piece_g=95.");
    }
    boolean baked =
        figure == Figure.BAKED_PER_PIECE
            || figure.isMacro() && wish.basis() == Basis.BAKED_100_G;
    if (baked && !dough.sheet().bakedYield().share().isKnown()) {
      throw refused(
          "No piece of this revision was weighed before and after the oven, so its loss on baking"
              + " is not known.",
          "Ask for the figure of the dough, or record a bake with both masses.");
    }
    if (baked) {
      remarks.add(
          "Baked figures rest on the loss of the pieces weighed so far; another dough loses"
              + " another share.");
    }
    List<String> masses = dough.notWeighed(figure);
    if (!masses.isEmpty()) {
      throw refused(
          "The mass of " + String.join(", ", masses) + " is not known, so nobody can say what moves"
              + " the " + label + ".",
          "Give that line in grams, or its food a household weight.");
    }
    if (figure == Figure.LIQUID_RATIO && isNothing(dough.ofKind(FoodKind.DRY))) {
      throw refused(
          "No line of the formula counts as dry, so it has no liquid ratio.",
          "Ask for the dough moisture instead.");
    }
    unknown(wish, remarks);
  }

  private static boolean isNothing(double[] sum) {
    for (double part : sum) {
      if (part > 0) {
        return false;
      }
    }
    return true;
  }

  private void unknown(Wish wish, List<String> remarks) {
    List<String> foods = dough.notKnown(wish.figure());
    if (foods.isEmpty()) {
      return;
    }
    String what = wish.figure() == Figure.DOUGH_MOISTURE ? "water" : wish.figure().label();
    String unknown = "For " + String.join(", ", foods) + " the figure for " + what + " is unknown";
    if (wish.figure() == Figure.LIQUID_RATIO) {
      throw refused(
          "The pantry has no food for " + String.join(", ", foods)
              + ", which may be liquid or dry.",
          "Add the food to the pantry.");
    }
    boolean bounded = true;
    for (double part : dough.figure(wish.figure(), wish.basis(), true).top()) {
      bounded &= Double.isFinite(part);
    }
    boolean needsUpper = Double.isFinite(wish.most());
    if (wish.isValue() || needsUpper && !bounded) {
      throw refused(
          unknown + (wish.isValue() ? ", so this cannot be brought to one value."
              : ", so nobody can say that this stays below."),
          bounded
              ? "Ask for at most or at least, or state the figure of those foods."
              : "Ask for at least, or state the figure of those foods.");
    }
    remarks.add(
        unknown
            + "; answers hold whatever it is.");
  }

  private static IllegalArgumentException refused(String sentence, String remedy) {
    return new IllegalArgumentException(sentence + "\n" + remedy);
  }
}
