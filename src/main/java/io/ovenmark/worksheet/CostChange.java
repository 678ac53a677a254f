package io.ovenmark.worksheet;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What two worksheets cost. The difference is known even where a price is missing, as long as there
 * is the same mass of every food without a price on both sides.
 *
 * @param perBatch for each currency of either side, in alphabetical order
 * @param perPiece the same for a piece
 * @param unpriced names of the foods of either side whose price is not known
 */
public record CostChange(
    List<MoneyChange> perBatch, List<MoneyChange> perPiece, List<String> unpriced) {
  /**
   * An amount of money before and after.
   *
   * @param currency three-letter code
   * @param from before, possibly a lower bound
   * @param to after, possibly a lower bound
   * @param delta the difference, of either sign; not known where a price is missing that matters
   */
  public record MoneyChange(String currency, Quantity from, Quantity to, Quantity delta) {
    /**
     * The difference in words.
     *
     * @return such as {@code −0.06 EUR}
     */
    public String difference() {
      return new Cost.Money(currency, delta).asDifference();
    }
  }

  /** Copies the lists. */
  public CostChange {
    perBatch = List.copyOf(perBatch);
    perPiece = List.copyOf(perPiece);
    unpriced = List.copyOf(unpriced);
  }

  /**
   * Compares what two worksheets cost.
   *
   * @param before the earlier
   * @param after the later
   * @return the change
   */
  public static CostChange between(Worksheet before, Worksheet after) {
    Cost from = Cost.of(before);
    Cost to = Cost.of(after);
    boolean same =
        isWeighed(before)
            && isWeighed(after)
            && unpricedGrams(before).equals(unpricedGrams(after));
    Set<String> unpriced = new LinkedHashSet<>(from.unpriced());
    unpriced.addAll(to.unpriced());
    return new CostChange(
        changes(from, from.perBatch(), to, to.perBatch(), same),
        changes(
            from,
            from.perPiece(),
            to,
            to.perPiece(),
            same && (unpriced.isEmpty() || before.pieces().equals(after.pieces()))),
        List.copyOf(unpriced));
  }

  /** Whether the mass is known of every line whose price is. */
  private static boolean isWeighed(Worksheet sheet) {
    return sheet.lines().stream()
        .allMatch(line -> line.food().flatMap(Food::price).isEmpty() || line.grams().isKnown());
  }

  private static Map<String, Quantity> unpricedGrams(Worksheet sheet) {
    Map<String, Quantity> grams = new HashMap<>();
    for (WorksheetLine line : sheet.lines()) {
      boolean counts =
          line.food().flatMap(Food::price).isEmpty() && !line.grams().equals(Quantity.ZERO);
      if (counts) {
        grams.merge(line.line().food(), line.grams(), Quantity::plus);
      }
    }
    return grams;
  }

  private static List<MoneyChange> changes(
      Cost from, List<Cost.Money> before, Cost to, List<Cost.Money> after, boolean same) {
    Set<String> currencies = new TreeSet<>();
    before.forEach(money -> currencies.add(money.currency()));
    after.forEach(money -> currencies.add(money.currency()));
    List<MoneyChange> changes = new ArrayList<>();
    for (String currency : currencies) {
      Quantity one = amount(from, before, currency);
      Quantity other = amount(to, after, currency);
      boolean known = same && (one.isKnown() && other.isKnown() || bothMissAPrice(from, to));
      changes.add(
          new MoneyChange(
              currency,
              one,
              other,
              known ? Quantity.known(other.low() - one.low()) : Quantity.ANYTHING));
    }
    return List.copyOf(changes);
  }

  private static boolean bothMissAPrice(Cost from, Cost to) {
    return !from.unpriced().isEmpty() && !to.unpriced().isEmpty();
  }

  private static Quantity amount(Cost cost, List<Cost.Money> sums, String currency) {
    Optional<Cost.Money> found =
        sums.stream().filter(money -> money.currency().equals(currency)).findFirst();
    Quantity none = cost.unpriced().isEmpty() ? Quantity.ZERO : Quantity.UNKNOWN;
    return found.map(Cost.Money::amount).orElse(none);
  }
}
