package io.ovenmark.compare;

import io.ovenmark.compare.Contribution.Cause;
import java.util.List;

/**
 * A factor of a product whose difference is to be split. Over all orders in which the factors can
 * go from their value before to their value after, the mean difference that factor j makes is
 *
 * <pre>
 * (b_j − a_j) · Σ over sets S of the other factors: |S|! (n − |S| − 1)! ÷ n! · Π_S b · Π_not S a
 * </pre>
 *
 * where a is before and b after. The parts add up to the difference of the products, and swapping
 * before and after turns their signs.
 */
sealed interface Factor {
  double before();

  double after();

  /** Hands the part that belongs to this factor, times the weight of the others, to its causes. */
  void spread(double weight, Ledger ledger);

  /**
   * Splits the difference of a product.
   *
   * @param constant a number that multiplies the product on both sides
   * @param factors at most some five, as all their sets are visited
   * @param ledger takes the parts
   */
  static void split(double constant, List<Factor> factors, Ledger ledger) {
    int n = factors.size();
    for (int j = 0; j < n; j++) {
      double weight = 0;
      for (int set = 0; set < 1 << n; set++) {
        if ((set >> j & 1) == 0) {
          double product = share(Integer.bitCount(set), n);
          for (int i = 0; i < n; i++) {
            if (i != j) {
              Factor other = factors.get(i);
              product *= (set >> i & 1) == 1 ? other.after() : other.before();
            }
          }
          weight += product;
        }
      }
      factors.get(j).spread(constant * weight, ledger);
    }
  }

  /** k! (n − k − 1)! ÷ n!, the share of the orders in which just k given factors went before. */
  private static double share(int k, int n) {
    double share = 1.0 / n;
    for (int i = 1; i <= k; i++) {
      share *= (double) i / (n - i);
    }
    return share;
  }

  /** A sum over lines. */
  record Sum(LineTerms terms) implements Factor {
    @Override
    public double before() {
      return terms.from();
    }

    @Override
    public double after() {
      return terms.to();
    }

    @Override
    public void spread(double weight, Ledger ledger) {
      ledger.lines(terms, weight);
    }
  }

  /**
   * One divided by a sum over lines: 1/b − 1/a = −(b − a) ÷ (a b), which is linear in the lines.
   */
  record Inverse(LineTerms terms) implements Factor {
    @Override
    public double before() {
      return 1 / terms.from();
    }

    @Override
    public double after() {
      return 1 / terms.to();
    }

    @Override
    public void spread(double weight, Ledger ledger) {
      ledger.lines(terms, -weight * before() * after());
    }
  }

  /** A number with a cause of its own. */
  record Single(Cause cause, String text, double before, double after) implements Factor {
    @Override
    public void spread(double weight, Ledger ledger) {
      ledger.single(cause, text, (after - before) * weight);
    }
  }
}
