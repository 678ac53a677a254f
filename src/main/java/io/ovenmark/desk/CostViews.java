package io.ovenmark.desk;

import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Cost;
import io.ovenmark.worksheet.CostChange;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;

/** The records of answers about cost; see {@link Views} for the manner of all of them. */
public final class CostViews {
  private CostViews() {}

  /**
   * What a batch and a piece cost. Currencies are never added.
   *
   * @param perBatch for each currency; empty when no food has a price
   * @param perPiece for each currency; empty likewise, and when the number of pieces is unknown
   * @param unpriced names of the foods whose price is not known
   * @param complete whether the sums are exact
   */
  public record CostView(
      List<MoneyView> perBatch,
      List<MoneyView> perPiece,
      List<String> unpriced,
      boolean complete) {}

  /**
   * An amount of money.
   *
   * @param currency three-letter code
   * @param amount how much, or null when only a lower bound is known
   * @param atLeast the lower bound
   * @param text in words
   */
  public record MoneyView(String currency, Double amount, double atLeast, String text) {}

  /**
   * What two states cost.
   *
   * @param perBatch for each currency of either side
   * @param perPiece the same for a piece
   * @param unpriced names of the foods of either side whose price is not known
   */
  public record CostDifference(
      List<MoneyDifference> perBatch, List<MoneyDifference> perPiece, List<String> unpriced) {}

  /**
   * An amount of money before and now.
   *
   * @param currency three-letter code
   * @param from before, or null when only a lower bound is known
   * @param to now, or null likewise
   * @param delta the difference, or null when it is not known; known even between lower bounds when
   *     what has no price is the same on both sides
   * @param fromText before in words
   * @param toText now in words
   * @param deltaText the difference in words, with its sign
   */
  public record MoneyDifference(
      String currency,
      Double from,
      Double to,
      Double delta,
      String fromText,
      String toText,
      String deltaText) {}

  static CostView of(Worksheet sheet) {
    Cost cost = Cost.of(sheet);
    return new CostView(
        cost.perBatch().stream().map(CostViews::money).toList(),
        cost.perPiece().stream().map(CostViews::money).toList(),
        cost.unpriced(),
        cost.isComplete());
  }

  private static MoneyView money(Cost.Money money) {
    return new MoneyView(
        money.currency(),
        FigureSet.number(money.amount()),
        money.amount().low(),
        money.inWords());
  }

  static CostDifference between(Worksheet from, Worksheet to) {
    CostChange change = CostChange.between(from, to);
    return new CostDifference(
        change.perBatch().stream().map(CostViews::difference).toList(),
        change.perPiece().stream().map(CostViews::difference).toList(),
        change.unpriced());
  }

  private static MoneyDifference difference(CostChange.MoneyChange change) {
    return new MoneyDifference(
        change.currency(),
        FigureSet.number(change.from()),
        FigureSet.number(change.to()),
        FigureSet.number(change.delta()),
        text(change.currency(), change.from()),
        text(change.currency(), change.to()),
        change.difference());
  }

  private static String text(String currency, Quantity amount) {
    return amount.isUnknown() ? "unknown" : new Cost.Money(currency, amount).inWords();
  }
}
