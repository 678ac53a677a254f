package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Slug;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * SR28 = U.S. Department of Agriculture, Agricultural Research Service, USDA National Nutrient
 * Database for Standard Reference, Release 28 (2015).
 */
class BuiltInPantryTest {
  private static Food food(String slug) {
    return BuiltInPantry.find(slug).orElseThrow();
  }

  private static Quantity figure(String slug, Nutrient nutrient) {
    return food(slug).per100g().get(nutrient);
  }

  @Test
  void theTableHasAllFoodsOnceInAFixedOrder() {
    List<Food> all = BuiltInPantry.all();
    Set<String> slugs = new HashSet<>();
    Set<String> numbers = new HashSet<>();
    for (Food food : all) {
      assertThat(Slug.isSlug(food.slug())).isTrue();
      assertThat(slugs.add(food.slug())).as(food.slug()).isTrue();
      if (food.source().kind() == Source.Kind.SR28) {
        assertThat(food.source().id().orElseThrow()).matches("\\d{5}");
        assertThat(numbers.add(food.source().id().orElseThrow())).as(food.slug()).isTrue();
      }
      assertThat(BuiltInPantry.find(food.slug())).containsSame(food);
    }
    assertThat(numbers).hasSize(144);
    assertThat(all.get(0).slug()).isEqualTo("water");
    assertThat(BuiltInPantry.all()).isEqualTo(all);
    assertThat(BuiltInPantry.find("no-such-food")).isEmpty();
  }

  /** SR28, by NDB number; an empty cell is a figure that SR28 does not report. */
  @ParameterizedTest
  @CsvSource({
    "wheat-flour-whole,  20080, 340, 13.21,  2.5,  71.97, 10.7,  0.41, 10.74, 1.58, 0,  2",
    "oats-rolled,        08120, 379, 13.15,  6.52, 67.7,  10.1,  0.99, 10.84, 1.77, 0,  6",
    "egg-whole,          01123, 143, 12.56,  9.51,  0.72,  0,    0.37, 76.15, 1.06, 0,  142",
    "almonds,            12061, 579, 21.15, 49.93, 21.55, 12.5,  4.35,  4.41, 2.97, 0,  1",
    "flaxseed,           12220, 534, 18.29, 42.16, 28.88, 27.3,  1.55,  6.96, 3.72, 0,  30",
    "lupin-seeds,        16076, 371, 36.17,  9.74, 40.37, 18.9,      , 10.44, 3.28, 0,  15",
    "chia-seeds,         12006, 486, 16.54, 30.74, 42.12, 34.4,      ,  5.8,  4.8,   ,  16",
    "coconut-milk-canned,12118, 197,  2.02, 21.33,  2.81,     ,      , 72.88, 0.97,  ,  13",
    "sugar-granulated,   19335, 387,  0,     0,    99.98,  0,   99.8,   0.02, 0.01, 0,  1",
    "salt,               02047, 0,    0,     0,     0,     0,    0,     0.2, 99.8,  0,  38758",
    "vanilla-extract,    02050, 288,  0.06,  0.06, 12.65,  0,   12.65, 52.58, 0.26, 34.4, 9"
  })
  void figuresAreThoseOfSr28(
      String slug,
      String ndb,
      Double energy,
      Double protein,
      Double fat,
      Double carbohydrate,
      Double fibre,
      Double sugars,
      Double water,
      Double ash,
      Double alcohol,
      Double sodium) {
    assertThat(food(slug).source().kind()).isEqualTo(Source.Kind.SR28);
    assertThat(food(slug).source().id()).contains(ndb);
    check(slug, Nutrient.ENERGY, energy);
    check(slug, Nutrient.PROTEIN, protein);
    check(slug, Nutrient.FAT, fat);
    check(slug, Nutrient.CARBOHYDRATE, carbohydrate);
    check(slug, Nutrient.FIBRE, fibre);
    check(slug, Nutrient.SUGARS, sugars);
    check(slug, Nutrient.WATER, water);
    check(slug, Nutrient.ASH, ash);
    check(slug, Nutrient.ALCOHOL, alcohol);
    check(slug, Nutrient.SODIUM, sodium);
  }

  private static void check(String slug, Nutrient nutrient, Double published) {
    assertThat(figure(slug, nutrient))
        .as(slug + " " + nutrient.label())
        .isEqualTo(published == null ? Quantity.UNKNOWN : Quantity.known(published));
  }

  @Test
  void sr28FoodsHaveNoAddedPolyolsOrAllulose() {
    for (Food food : BuiltInPantry.all()) {
      if (food.source().kind() == Source.Kind.SR28) {
        assertThat(food.per100g().get(Nutrient.POLYOLS)).isEqualTo(Quantity.ZERO);
        assertThat(food.per100g().get(Nutrient.ALLULOSE)).isEqualTo(Quantity.ZERO);
        assertThat(food.source().note().orElseThrow()).contains("taken as 0");
      }
    }
  }

  /**
   * Energy by the specific Atwater factors for protein, fat and carbohydrate that SR28 lists for
   * the food (file FOOD_DES, after USDA Agriculture Handbook 74).
   */
  @ParameterizedTest
  @CsvSource({
    "wheat-flour-all-purpose, 4.05, 8.37, 4.12",
    "wheat-flour-whole,       3.59, 8.37, 3.78",
    "egg-whole,               4.36, 9.02, 3.68",
    "almonds,                 3.47, 8.37, 4.07",
    "flaxseed,                3.47, 8.37, 4.07",
    "sugar-granulated,        0,    0,    3.87",
    "oil-canola,              0,    8.84, 0",
    "oats-rolled,             3.46, 8.37, 4.12",
    "butter-salted,           4.27, 8.79, 3.87"
  })
  void energyFollowsFromTheSpecificFactors(
      String slug, double protein, double fat, double carbohydrate) {
    double energy =
        figure(slug, Nutrient.PROTEIN).low() * protein
            + figure(slug, Nutrient.FAT).low() * fat
            + figure(slug, Nutrient.CARBOHYDRATE).low() * carbohydrate;
    assertThat(energy).isCloseTo(figure(slug, Nutrient.ENERGY).low(), within(1.0));
  }

  /**
   * SR28 works out carbohydrate as what is left of 100 g. The exceptions are SR28's own: acetic
   * acid of vinegar and the carbon dioxide of baking soda are in none of the columns; carbohydrate
   * of soy protein isolate would be negative; the rest was not worked out by difference.
   */
  @Test
  void theProximatesOfSr28FoodsAddUpToOneHundredGrams() {
    Map<String, Double> exceptions =
        Map.of(
            "soy-protein-isolate", 100.27,
            "oil-coconut", 99.12,
            "baking-soda", 37.1,
            "yeast-compressed", 99.2,
            "vinegar-cider", 94.91,
            "vinegar-distilled", 94.84,
            "black-pepper", 94.55);
    int checked = 0;
    for (Food food : BuiltInPantry.all()) {
      Nutrients n = food.per100g();
      Quantity sum =
          n.get(Nutrient.WATER)
              .plus(n.get(Nutrient.PROTEIN))
              .plus(n.get(Nutrient.FAT))
              .plus(n.get(Nutrient.CARBOHYDRATE))
              .plus(n.get(Nutrient.ASH))
              .plus(n.get(Nutrient.ALCOHOL));
      if (food.source().kind() == Source.Kind.SR28 && sum.isKnown()) {
        double expected = exceptions.getOrDefault(food.slug(), 100.0);
        assertThat(sum.low()).as(food.slug()).isCloseTo(expected, within(0.1));
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(120);
  }

  @Test
  void noFoodHoldsMoreThanItsMassOrAPartGreaterThanItsWhole() {
    for (Food food : BuiltInPantry.all()) {
      Nutrients n = food.per100g();
      double macros =
          n.get(Nutrient.PROTEIN).low()
              + n.get(Nutrient.FAT).low()
              + n.get(Nutrient.CARBOHYDRATE).low();
      assertThat(macros).as(food.slug()).isLessThanOrEqualTo(100.1);
      part(food, Nutrient.SATURATED_FAT, Nutrient.FAT);
      part(food, Nutrient.FIBRE, Nutrient.CARBOHYDRATE);
      part(food, Nutrient.SOLUBLE_FIBRE, Nutrient.FIBRE);
      part(food, Nutrient.POLYOLS, Nutrient.CARBOHYDRATE);
      part(food, Nutrient.ALLULOSE, Nutrient.CARBOHYDRATE);
    }
  }

  private static void part(Food food, Nutrient part, Nutrient whole) {
    assertThat(food.per100g().get(part).low())
        .as(food.slug() + " " + part.label())
        .isLessThanOrEqualTo(food.per100g().get(whole).high() + 0.05);
  }

  /** SR28, file WEIGHT; a weight of several is divided, "0.333 cup" being a third. */
  @ParameterizedTest
  @CsvSource({
    "egg-whole, large, 50",
    "egg-whole, jumbo, 63",
    "almonds, 'cup, ground', 95",
    "hemp-seed-hulled, tbsp, 10",
    "peanut-butter, tbsp, 16",
    "oats-rolled, cup, 81",
    "potato-boiled, cup, 156",
    "raisins, raisin, 0.52",
    "sugar-brown, 'cup, packed', 220",
    "butter-unsalted, stick, 113",
    "milk-whole, fl oz, 30.5"
  })
  void householdWeightsAreThoseOfSr28(String slug, String measure, double grams) {
    assertThat(food(slug).household()).contains(new HouseholdMeasure(measure, grams));
  }

  @Test
  void massesAreNotHouseholdMeasures() {
    for (Food food : BuiltInPantry.all()) {
      for (HouseholdMeasure measure : food.household()) {
        assertThat(measure.measure()).as(food.slug()).doesNotMatch("(oz|lb|g|kg)\\b.*");
      }
    }
  }

  @Test
  void specialitiesSayThatTheirFiguresAreTypicalAndWhatIsUnknown() {
    for (String slug : List.of("psyllium-husk", "erythritol", "xanthan-gum", "oat-fibre")) {
      assertThat(food(slug).source().kind()).isEqualTo(Source.Kind.TYPICAL);
      assertThat(food(slug).source().note().orElseThrow())
          .contains("from memory")
          .contains("replace them");
    }
    assertThat(figure("psyllium-husk", Nutrient.ENERGY)).isEqualTo(Quantity.UNKNOWN);
    assertThat(food("erythritol").polyol()).contains("erythritol");
    assertThat(food("xylitol").polyol()).contains("xylitol");
    assertThat(figure("allulose", Nutrient.ALLULOSE)).isEqualTo(Quantity.known(100));
    assertThat(figure("allulose", Nutrient.SUGARS)).isEqualTo(Quantity.ZERO);
  }

  /** USDA FoodData Central, Foundation Foods, FDC ids 2515382 and (from memory) 2261420. */
  @Test
  void coconutAndAlmondFlourAreThoseOfFoodDataCentral() {
    assertThat(food("coconut-flour").source().id()).contains("2515382");
    assertThat(figure("coconut-flour", Nutrient.FIBRE)).isEqualTo(Quantity.known(34.2));
    assertThat(figure("coconut-flour", Nutrient.ENERGY)).isEqualTo(Quantity.UNKNOWN);
    assertThat(food("almond-flour").source().id()).contains("2261420");
    assertThat(figure("almond-flour", Nutrient.PROTEIN)).isEqualTo(Quantity.known(26.2));
    assertThat(food("almond-flour").source().note().orElseThrow()).contains("from memory");
  }

  @Test
  void allergensAreKnownNoneOrUnknownAndTheseDiffer() {
    assertThat(food("tahini").allergens()).contains(Set.of(Allergen.SESAME));
    assertThat(food("resistant-wheat-starch").allergens()).contains(Set.of(Allergen.WHEAT));
    assertThat(food("lupin-flour").allergens()).contains(Set.of(Allergen.LUPIN));
    assertThat(food("water").allergens()).contains(Set.of());
    assertThat(food("chocolate-dark-70").allergens()).isEmpty();
    assertThat(food("margarine-stick").allergens()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "eggs, egg-whole",
    "EGG WHITES, egg-white",
    "APF, wheat-flour-all-purpose",
    "almond meal, almonds-blanched",
    "almond-flour, almond-flour",
    "psylium, psyllium-husk",
    "rapeseed oil, oil-canola",
    "sugar, sugar-granulated",
    "icing sugar, sugar-powdered",
    "soya milk, soy-milk-unsweetened",
    "greek yoghurt nonfat, yogurt-greek-nonfat",
    "courgettes, zucchini",
    "linseed, flaxseed",
    "egg white powder, egg-white-dried",
    "butter unsalted, butter-unsalted",
    "corn starch, cornstarch",
    "tahini paste, tahini",
    "flour coconut, coconut-flour",
    "water, water"
  })
  void theSearchFindsWhatPeopleCallIt(String words, String best) {
    assertThat(BuiltInPantry.search(words)).extracting(Food::slug).startsWith(best);
  }

  @Test
  void theSearchGivesSeveralAndNothing() {
    assertThat(BuiltInPantry.search("egg"))
        .extracting(Food::slug)
        .containsExactly("egg-whole", "egg-white", "egg-yolk", "egg-white-dried");
    assertThat(BuiltInPantry.search("zzz")).isEmpty();
    assertThat(BuiltInPantry.search(" - ")).isEmpty();
    assertThat(BuiltInPantry.search("λούπινο")).isEmpty();
  }

  @Test
  void aFoodsOtherNamesAreTold() {
    assertThat(BuiltInPantry.otherNames("almond-flour"))
        .containsExactly("almond meal", "ground almonds");
    assertThat(BuiltInPantry.otherNames("water")).isEmpty();
    assertThat(BuiltInPantry.otherNames("no-such-food")).isEmpty();
  }
}
