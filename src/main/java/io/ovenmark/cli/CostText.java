package io.ovenmark.cli;

import io.ovenmark.desk.CostViews;
import java.util.ArrayList;
import java.util.List;

/** Prints what a batch and a piece cost. */
final class CostText {
  private static final int MOST_NAMED = 6;

  private CostText() {}

  /** One paragraph; nothing when no food has a price. */
  static void print(CostViews.CostView cost, Output out) {
    if (!cost.perBatch().isEmpty()) {
      out.blank();
      out.wrapped("Cost: " + inWords(cost) + ".", "  ");
    }
  }

  static String inWords(CostViews.CostView cost) {
    List<String> parts = new ArrayList<>();
    for (CostViews.MoneyView money : cost.perBatch()) {
      parts.add(money.text() + " a batch");
    }
    for (CostViews.MoneyView money : cost.perPiece()) {
      parts.add(money.text() + " a piece");
    }
    String sums = String.join(", ", parts);
    if (cost.unpriced().isEmpty()) {
      return sums;
    }
    int named = Math.min(MOST_NAMED, cost.unpriced().size());
    int more = cost.unpriced().size() - named;
    return sums + "; the price is not known of "
        + String.join("; ", cost.unpriced().subList(0, named))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
