package io.ovenmark.worksheet;

import static io.ovenmark.worksheet.Bench.formula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Price;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CostTest {
  private static final Yield SIX =
      new Yield(Optional.of(6), OptionalDouble.empty(), OptionalDouble.of(10));

  private final Bench bench = new Bench();

  private void price(String slug, String amount, String currency, double grams) {
    Food food = bench.find(slug).orElseThrow();
    bench.add(
        new Food(
            food.slug(), food.name(), food.kind(), food.source(), food.per100g(),
            food.household(), food.densityGramsPerMillilitre(), food.allergens(), food.polyol(),
            Optional.of(new Price(new BigDecimal(amount), currency, grams, Optional.empty())),
            food.extras()));
  }

  private Cost cost(String... lines) {
    return Cost.of(bench.sheet(formula(SIX, lines)));
  }

  /** By hand: 120 g of 5.10 EUR a kilogram and 45 g of 1.80 EUR for 500 g are 0.612 + 0.162. */
  @Test
  void gramsAreCountedByTheirShareOfAPackage() {
    price("lupin-flour", "5.10", "EUR", 1000);
    price("seeds", "1.80", "EUR", 500);
    price("water", "0", "EUR", 1000);

    Cost cost = cost("lupin-flour: 120 g", "seeds: 45 g", "water: 180 g");

    assertThat(cost.isComplete()).isTrue();
    assertThat(cost.unpriced()).isEmpty();
    assertThat(cost.perBatch()).hasSize(1);
    assertThat(cost.perBatch().get(0).amount().low()).isCloseTo(0.774, within(1e-12));
    assertThat(cost.perBatch().get(0).inWords()).isEqualTo("0.77 EUR");
    assertThat(cost.perPiece().get(0).amount().low()).isCloseTo(0.129, within(1e-12));
    assertThat(cost.perPiece().get(0).inWords()).isEqualTo("0.13 EUR");
  }

  @Test
  void aFoodWithoutAPriceIsNamedAndTheSumALowerBound() {
    price("lupin-flour", "5.10", "EUR", 1000);

    Cost cost = cost("lupin-flour: 120 g", "seeds: 45 g", "water: 180 g", "salt: 0 g");

    assertThat(cost.isComplete()).isFalse();
    assertThat(cost.unpriced()).containsExactly("seeds", "water");
    assertThat(cost.perBatch().get(0).amount()).isEqualTo(Quantity.atLeast(120 * 5.10 / 1000));
    assertThat(cost.perPiece().get(0).inWords()).isEqualTo("at least 0.10 EUR");
  }

  @Test
  void currenciesAreNotAdded() {
    price("lupin-flour", "5", "EUR", 1000);
    price("seeds", "4", "CHF", 1000);

    Cost cost = cost("lupin-flour: 100 g", "seeds: 50 g");

    assertThat(cost.perBatch())
        .extracting(Cost.Money::inWords)
        .containsExactly("0.20 CHF", "0.50 EUR");
  }

  @Test
  void withoutAnyPriceThereIsNoSum() {
    Cost cost = cost("lupin-flour: 100 g");

    assertThat(cost.perBatch()).isEmpty();
    assertThat(cost.perPiece()).isEmpty();
    assertThat(cost.isComplete()).isFalse();
    assertThat(cost.unpriced()).containsExactly("lupin flour");
  }

  @Test
  void anUnknownMassLeavesALowerBoundAndAnUnknownYieldNoPiece() {
    price("lupin-flour", "5", "EUR", 1000);
    price("seeds", "4", "EUR", 1000);

    Cost cost = cost("lupin-flour: 100 g", "seeds: 1 handful");
    assertThat(cost.isComplete()).isFalse();
    assertThat(cost.perBatch().get(0).amount()).isEqualTo(Quantity.atLeast(0.5));

    Cost undivided = Cost.of(bench.sheet("lupin-flour: 100 g"));
    assertThat(undivided.perBatch().get(0).amount()).isEqualTo(Quantity.known(0.5));
    assertThat(undivided.perPiece()).isEmpty();
  }

  @Test
  void handlingLossIsPaidFor() {
    price("lupin-flour", "6", "EUR", 1000);

    assertThat(cost("lupin-flour: 100 g").perPiece().get(0).amount().low())
        .isCloseTo(0.1, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "12.345, 12.35 EUR", "0.1, 0.10 EUR", "0.0456, 0.046 EUR", "0, 0.00 EUR", "1234.5, 1234.50 EUR"
  })
  void moneyHasTwoDecimalsAndSmallMoneyThree(double amount, String words) {
    assertThat(new Cost.Money("EUR", Quantity.known(amount)).inWords()).isEqualTo(words);
  }

  @Test
  void aLowerBoundIsRoundedDown() {
    assertThat(new Cost.Money("EUR", Quantity.atLeast(1.999)).inWords())
        .isEqualTo("at least 1.99 EUR");
    assertThat(new Cost.Money("EUR", Quantity.atLeast(0.0459)).inWords())
        .isEqualTo("at least 0.045 EUR");
  }

  @Test
  void aDifferenceIsKnownWhenWhatHasNoPriceStays() {
    price("lupin-flour", "5", "EUR", 1000);
    Worksheet before = bench.sheet(formula(SIX, "lupin-flour: 100 g", "seeds: 50 g"));
    Worksheet more = bench.sheet(formula(SIX, "lupin-flour: 88 g", "seeds: 50 g"));
    Worksheet other = bench.sheet(formula(SIX, "lupin-flour: 88 g", "seeds: 60 g"));

    CostChange known = CostChange.between(before, more);
    assertThat(known.perBatch().get(0).delta().low()).isCloseTo(-0.06, within(1e-12));
    assertThat(known.perBatch().get(0).difference()).isEqualTo("−0.060 EUR");
    assertThat(known.perPiece().get(0).delta().low()).isCloseTo(-0.01, within(1e-12));
    assertThat(known.unpriced()).containsExactly("seeds");
    assertThat(CostChange.between(before, other).perBatch().get(0).difference())
        .isEqualTo("unknown");
  }

  @Test
  void aPieceOfAnotherSizeHasNoKnownDifferenceWhereAPriceIsMissing() {
    price("lupin-flour", "5", "EUR", 1000);
    Worksheet six = bench.sheet(formula(SIX, "lupin-flour: 100 g", "seeds: 50 g"));
    Worksheet five =
        bench.sheet(formula(Yield.ofPieces(5), "lupin-flour: 100 g", "seeds: 50 g"));

    CostChange change = CostChange.between(six, five);
    assertThat(change.perBatch().get(0).difference()).isEqualTo("0.00 EUR");
    assertThat(change.perPiece().get(0).delta().isKnown()).isFalse();
  }

  @Test
  void aCurrencyOfOneSideOnlyIsNothingOnTheOtherWhenThatIsComplete() {
    price("lupin-flour", "5", "EUR", 1000);
    price("seeds", "4", "CHF", 1000);
    Worksheet flour = bench.sheet(formula(SIX, "lupin-flour: 100 g"));
    Worksheet seeds = bench.sheet(formula(SIX, "seeds: 100 g"));

    CostChange change = CostChange.between(flour, seeds);
    assertThat(change.perBatch())
        .extracting(CostChange.MoneyChange::difference)
        .containsExactly("+0.40 CHF", "−0.50 EUR");
  }
}
