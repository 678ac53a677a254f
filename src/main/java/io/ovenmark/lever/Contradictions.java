package io.ovenmark.lever;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Finds why conditions cannot be kept together. The conditions that contradict each other are found
 * by the deletion filter: one after the other is left out and stays out as long as the rest is
 * impossible without it; what remains is irreducible (Chinneck and Dravnieks, <i>Locating minimal
 * infeasible constraint sets in linear programs</i>, ORSA Journal on Computing 3, 1991, from
 * memory). It is done in several orders and the smallest set is taken. The nearest value of a wish
 * is the extreme of a quotient of sums, made linear by the transformation of Charnes and Cooper
 * (<i>Programming with linear fractional functionals</i>, Naval Research Logistics Quarterly 9,
 * 1962, from memory).
 */
final class Contradictions {
  private final Dough dough;
  private final List<Condition> conditions;
  private final List<Condition> wishes;

  Contradictions(Dough dough, List<Condition> conditions) {
    this.dough = dough;
    this.conditions = conditions;
    wishes =
        conditions.stream().filter(each -> each.kind() == Condition.Kind.WISH).toList();
  }

  /** A smallest set of conditions that cannot be kept together. */
  List<Condition> because() {
    List<Condition> forwards = irreducible(conditions);
    List<Condition> turned = new ArrayList<>(conditions);
    Collections.reverse(turned);
    List<Condition> backwards = irreducible(turned);
    List<Condition> least = backwards.size() < forwards.size() ? backwards : forwards;
    return conditions.stream().filter(least::contains).toList();
  }

  /** Leaves out, from the first on, whatever the contradiction does not need. */
  private List<Condition> irreducible(List<Condition> order) {
    List<Condition> left = new ArrayList<>(order);
    for (Condition each : order) {
      List<Condition> fewer = new ArrayList<>(left);
      fewer.remove(each);
      if (!isPossible(fewer)) {
        left = fewer;
      }
    }
    return left;
  }

  boolean isPossible(List<Condition> some) {
    return new Programme(dough.unknowns(), rows(some)).isPossible();
  }

  private static List<Row> rows(List<Condition> some) {
    return some.stream().flatMap(each -> each.rows().stream()).toList();
  }

  /**
   * How near one can come to a wish.
   *
   * @param wish the wish
   * @param own its condition; empty when the division grants it
   */
  Contradiction.Nearest nearest(Wish wish, Optional<Condition> own) {
    List<Condition> without = new ArrayList<>(conditions);
    own.ifPresent(without::remove);
    List<Condition> alone = new ArrayList<>(conditions);
    alone.removeAll(wishes);
    OptionalDouble together = nearest(wish, without);
    return new Contradiction.Nearest(
        wish,
        without.size() == alone.size() ? together : nearest(wish, alone),
        together);
  }

  private OptionalDouble nearest(Wish wish, List<Condition> some) {
    List<Row> rows = rows(some);
    Fraction lower = dough.figure(wish.figure(), wish.basis(), false);
    Fraction upper = dough.figure(wish.figure(), wish.basis(), true);
    if (Double.isFinite(wish.most())) {
      OptionalDouble least = extreme(upper, rows, 1);
      if (least.isEmpty() || least.getAsDouble() > wish.most()) {
        return least;
      }
    }
    if (Double.isFinite(wish.least())) {
      OptionalDouble most = extreme(lower, rows, -1);
      if (most.isEmpty() || most.getAsDouble() < wish.least()) {
        return most;
      }
    }
    return OptionalDouble.of(Double.isFinite(wish.least()) ? wish.least() : wish.most());
  }

  /** The least (sign 1) or greatest (sign −1) value of a quotient. */
  private OptionalDouble extreme(Fraction figure, List<Row> rows, double sign) {
    int unknowns = dough.unknowns();
    List<Row> homogeneous = new ArrayList<>();
    for (Row row : rows) {
      if (Double.isFinite(row.low())) {
        homogeneous.add(
            new Row(with(row.coefficients(), -row.low()), 0, Double.POSITIVE_INFINITY));
      }
      if (Double.isFinite(row.high())) {
        homogeneous.add(
            new Row(with(row.coefficients(), -row.high()), Double.NEGATIVE_INFINITY, 0));
      }
    }
    homogeneous.add(Row.bounds(unknowns + 1, unknowns, 0, Double.POSITIVE_INFINITY));
    Row divisor = new Row(with(figure.bottom(), figure.constant()), 1, 1);
    double scale = divisor.scale();
    homogeneous.add(new Row(divisor.coefficients(), scale, scale));
    double[] weights = with(figure.top(), 0);
    for (int i = 0; i < weights.length; i++) {
      weights[i] *= sign / scale;
    }
    return new Programme(unknowns + 1, homogeneous)
        .least(weights)
        .map(point -> OptionalDouble.of(sign * new Row(weights, 0, 0).at(point)))
        .orElse(OptionalDouble.empty());
  }

  private static double[] with(double[] coefficients, double last) {
    double[] more = new double[coefficients.length + 1];
    System.arraycopy(coefficients, 0, more, 0, coefficients.length);
    more[coefficients.length] = last;
    return more;
  }
}
