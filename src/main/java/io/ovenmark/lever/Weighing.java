package io.ovenmark.lever;

import java.util.List;

/**
 * Brings masses to what a scale can show. Each line goes to the nearest reading; then, as long as
 * that brings the whole nearer to its conditions, one line at a time goes one reading up or down:
 * what is "at least" or "at most" counts before what is a value, which a reading can only come near
 * to.
 */
final class Weighing {
  /** A condition that is missed by less is kept. */
  private static final double KEPT = 1e-9;

  /** How much more a bound counts than a value. */
  private static final double BOUND = 1000;

  private static final int MOST_STEPS = 200;

  private final Dough dough;
  private final SingleChanges paths;
  private final List<Row> rows;
  private final double reading;

  Weighing(Dough dough, SingleChanges paths, List<Condition> conditions, double reading) {
    this.dough = dough;
    this.paths = paths;
    this.rows =
        conditions.stream()
            .filter(each -> each.kind() != Condition.Kind.DIVISION)
            .flatMap(each -> each.rows().stream())
            .toList();
    this.reading = reading;
  }

  /**
   * Masses that can be weighed.
   *
   * @param masses the exact masses
   * @return as many; those that have not moved stay
   */
  double[] of(double[] masses) {
    if (reading == 0) {
      return masses.clone();
    }
    double[] weighed = masses.clone();
    for (int i = 0; i < weighed.length; i++) {
      if (masses[i] != dough.grams(i)) {
        weighed[i] = Readings.nearest(masses[i], reading);
      }
    }
    double missed = missed(weighed);
    for (int step = 0; step < MOST_STEPS && missed > KEPT; step++) {
      double[] best = weighed;
      for (int i = 0; i < weighed.length; i++) {
        for (int way = -1; way <= 1; way += 2) {
          double next = Readings.nearest(weighed[i] + way * reading, reading);
          if (masses[i] != dough.grams(i) && next >= 0) {
            double[] tried = weighed.clone();
            tried[i] = next;
            double less = missed(tried);
            if (less < missed * (1 - KEPT)) {
              best = tried;
              missed = less;
            }
          }
        }
      }
      if (best == weighed) {
        break;
      }
      weighed = best;
    }
    return weighed;
  }

  private double missed(double[] masses) {
    double[] point = dough.start();
    for (int i = 0; i < masses.length; i++) {
      point[i] = dough.isMovable(i) ? masses[i] / dough.grams(i) : 0;
    }
    double[] divided = paths.divided(point);
    double sum = 0;
    for (Row row : rows) {
      double violation = row.violation(divided);
      if (violation > KEPT) {
        sum += row.low() == row.high() ? violation : BOUND * violation;
      }
    }
    return sum;
  }
}
