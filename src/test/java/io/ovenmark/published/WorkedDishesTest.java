package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The sum over ingredients, and the loss on baking, against dishes whose composition is published.
 * Source: dishes.csv, which names it for each dish. Every component reports every figure that is
 * compared, so each figure must come out as a known number and is compared as such.
 */
class WorkedDishesTest {

  static List<PublishedData.Dish> dishes() {
    return PublishedData.dishes();
  }

  @ParameterizedTest
  @MethodSource("dishes")
  void compositionAgreesWithWhatIsPublished(PublishedData.Dish dish) {
    Yield yield = dish.pieces().map(Yield::ofPieces).orElse(Yield.UNSTATED);
    Formula formula = PublishedData.formula(yield, dish.lines());
    BakedYield baked =
        dish.share().isPresent()
            ? PublishedData.share(dish.share().getAsDouble())
            : BakedYield.UNMEASURED;

    Worksheet sheet = PublishedData.sheet(formula, baked);

    assertThat(dish.published()).hasSizeGreaterThan(4);
    SoftAssertions.assertSoftly(
        softly -> {
          for (PublishedData.Published published : dish.published()) {
            Quantity value = sheet.figure(published.figure(), dish.basis());
            softly.assertThat(value.isKnown()).as(published.figure().key()).isTrue();
            softly
                .assertThat(value.low())
                .as(published.figure().key())
                .isCloseTo(published.value(), within(published.tolerance()));
          }
        });
  }

  @Test
  void allDishesOfTheFileAreRead() {
    assertThat(dishes()).hasSize(9);
  }
}
