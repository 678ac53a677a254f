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
    return sums + "; the price is not known of " + named(cost.unpriced());
  }

  /** What two states cost; nothing when no food has a price. */
  static void print(CostViews.CostDifference cost, Output out) {
    if (cost.perBatch().isEmpty()) {
      return;
    }
    out.heading("Cost");
    Table table = new Table("", ">○ before", ">● after", ">change").indent(2);
    cost.perBatch().forEach(each -> row("a batch", each, table));
    cost.perPiece().forEach(each -> row("a piece", each, table));
    out.table(table);
    if (!cost.unpriced().isEmpty()) {
      out.wrapped("  The price is not known of " + named(cost.unpriced()) + ".", "    ");
    }
  }

  private static void row(String what, CostViews.MoneyDifference money, Table table) {
    table.row(
        what,
        Figures.brief(money.fromText()),
        Figures.brief(money.toText()),
        money.deltaText());
  }

  private static String named(List<String> foods) {
    int named = Math.min(MOST_NAMED, foods.size());
    int more = foods.size() - named;
    return String.join("; ", foods.subList(0, named)) + (more > 0 ? " and " + more + " more" : "");
  }
}
