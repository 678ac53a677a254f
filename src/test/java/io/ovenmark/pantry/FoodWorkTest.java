package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the foods of the built-in table do, by common practice; no source. */
class FoodWorkTest {
  private static Food food(String slug) {
    return BuiltInPantry.find(slug).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "egg-whole, EGG",
    "egg-white-dried, EGG PROTEIN",
    "wheat-flour-bread, GLUTEN",
    "vital-wheat-gluten, GLUTEN PROTEIN",
    "resistant-wheat-starch, FIBRE",
    "psyllium-husk, GUM",
    "xanthan-gum, GUM",
    "flaxseed, GEL_SEED",
    "golden-flaxseed-meal, GEL_SEED",
    "whey-protein-isolate-plain, PROTEIN",
    "cornstarch, STARCH",
    "sugar-granulated, SWEET BROWNING",
    "erythritol, SWEET",
    "honey, SWEET BROWNING",
    "butter-unsalted, SOLID_FAT",
    "oil-coconut, SOLID_FAT",
    "shortening, SOLID_FAT",
    "oil-olive, ''",
    "almond-butter, ''",
    "yeast-active-dry, LEAVENING",
    "baking-soda, LEAVENING",
    "vinegar-cider, ACID",
    "salt, SALT",
    "cinnamon, SEASONING",
    "cocoa-powder, SEASONING",
    "lupin-flour, ''",
    "rice-flour-white, ''",
    "sunflower-seeds, ''",
    "milk-skim, ''",
    "milk-dry-nonfat-instant, ''",
    "water, ''",
    "blueberries, ''"
  })
  void aFoodDoesWhatTheTradeUsesItFor(String slug, String works) {
    List<FoodWork> expected =
        works.isEmpty()
            ? List.of()
            : List.of(works.split(" ")).stream().map(FoodWork::valueOf).toList();

    assertThat(FoodWork.of(food(slug))).containsExactlyElementsOf(expected);
  }

  @Test
  void foodsOfOneKindStandInForEachOtherFirst() {
    assertThat(FoodWork.sameKind(food("lupin-flour"), food("wheat-flour-bread"))).isTrue();
    assertThat(FoodWork.sameKind(food("egg-whole"), food("egg-white"))).isTrue();
    assertThat(FoodWork.sameKind(food("butter-unsalted"), food("oil-olive"))).isTrue();
    assertThat(FoodWork.sameKind(food("lupin-flour"), food("salt"))).isFalse();
    assertThat(FoodWork.sameKind(food("lupin-flour"), food("sugar-granulated"))).isFalse();
    assertThat(FoodWork.sameKind(food("egg-whole"), food("water"))).isFalse();
    assertThat(FoodWork.sameKind(food("egg-white"), food("egg-white-dried"))).isFalse();
  }

  @Test
  void theKindIsTheSameInBothDirections() {
    for (Food one : BuiltInPantry.all()) {
      assertThat(FoodWork.sameKind(one, one)).isTrue();
      for (Food other : BuiltInPantry.all()) {
        assertThat(FoodWork.sameKind(one, other)).isEqualTo(FoodWork.sameKind(other, one));
      }
    }
  }

  @Test
  void tasteOrStrengthDecidesTheAmountOfAFew() {
    assertThat(List.of(FoodWork.values()).stream().filter(FoodWork::decidesAmount))
        .containsExactlyInAnyOrderElementsOf(
            Set.of(FoodWork.LEAVENING, FoodWork.ACID, FoodWork.SALT, FoodWork.SEASONING));
    for (FoodWork work : FoodWork.values()) {
      assertThat(work.label()).isNotBlank();
    }
  }
}
