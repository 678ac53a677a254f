package io.ovenmark.worksheet;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Price;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What the ingredients of a batch and of a piece cost by the prices of their foods. Different
 * currencies are never added. A food without a price makes every sum a lower bound; one that costs
 * nothing, such as tap water, is given the price 0. Packages are counted by the gram, and what is
 * lost on handling has been paid for: a piece costs the batch divided by the pieces.
 *
 * @param perBatch for each currency in alphabetical order; empty when no food has a price
 * @param perPiece the same for a piece; empty likewise, and when nobody knows the number of pieces
 * @param unpriced names of the foods whose price is not known, in line order
 */
public record Cost(List<Money> perBatch, List<Money> perPiece, List<String> unpriced) {
  /**
   * An amount of money.
   *
   * @param currency three-letter code
   * @param amount how much, possibly a lower bound
   */
  public record Money(String currency, Quantity amount) {
    private static final double SMALL = 0.1;

    /** Checks that nothing is null. */
    public Money {
      requireNonNull(currency, "currency");
      requireNonNull(amount, "amount");
    }

    /**
     * The amount in words.
     *
     * @return such as {@code 2.31 EUR} or {@code at least 0.045 EUR}; a lower bound is rounded down
     */
    public String inWords() {
      return amount.isKnown()
          ? digits(amount.low(), RoundingMode.HALF_UP) + " " + currency
          : "at least " + digits(amount.low(), RoundingMode.FLOOR) + " " + currency;
    }

    /**
     * A difference in words.
     *
     * @return such as {@code +0.04 EUR} or {@code −0.012 EUR}; {@code unknown} when it is not known
     */
    public String asDifference() {
      if (!amount.isKnown()) {
        return "unknown";
      }
      String digits = digits(Math.abs(amount.low()), RoundingMode.HALF_UP);
      boolean nothing = new BigDecimal(digits).signum() == 0;
      String sign = nothing ? "" : amount.low() < 0 ? FigureText.MINUS : "+";
      return sign + digits + " " + currency;
    }

    private static String digits(double value, RoundingMode mode) {
      BigDecimal exact = BigDecimal.valueOf(value);
      boolean small = value > 0 && value < SMALL;
      return exact.setScale(small ? 3 : 2, mode).toPlainString();
    }
  }

  /** Copies the lists. */
  public Cost {
    perBatch = List.copyOf(perBatch);
    perPiece = List.copyOf(perPiece);
    unpriced = List.copyOf(unpriced);
  }

  /**
   * Prices a worksheet.
   *
   * @param sheet the worksheet
   * @return the cost
   */
  public static Cost of(Worksheet sheet) {
    Map<String, Quantity> sums = new TreeMap<>();
    Set<String> unpriced = new LinkedHashSet<>();
    for (WorksheetLine line : sheet.lines()) {
      Optional<Price> price = line.food().flatMap(Food::price);
      if (price.isPresent()) {
        double perGram = price.get().amount().doubleValue() / price.get().grams();
        sums.merge(price.get().currency(), line.grams().times(perGram), Quantity::plus);
      } else if (!line.grams().equals(Quantity.ZERO)) {
        unpriced.add(line.name());
      }
    }
    List<Money> perBatch = new ArrayList<>();
    List<Money> perPiece = new ArrayList<>();
    sums.forEach(
        (currency, sum) -> {
          Quantity batch = unpriced.isEmpty() ? sum : sum.plus(Quantity.UNKNOWN);
          perBatch.add(new Money(currency, batch));
          if (!sheet.pieces().isUnknown()) {
            perPiece.add(new Money(currency, batch.dividedBy(sheet.pieces())));
          }
        });
    return new Cost(perBatch, perPiece, List.copyOf(unpriced));
  }

  /**
   * Whether the cost is known to the last food.
   *
   * @return true when every food has a price and every mass is known
   */
  public boolean isComplete() {
    return unpriced.isEmpty() && perBatch.stream().allMatch(money -> money.amount().isKnown());
  }
}
