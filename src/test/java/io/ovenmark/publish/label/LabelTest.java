package io.ovenmark.publish.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodEdit;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Bench;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.NetCarbohydrate;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LabelTest {
  private final Bench bench = new Bench();

  private Worksheet bun(BakedYield baked) {
    return bench.sheet(
        Bench.formula(Yield.ofPieces(2), "lupin-flour: 100 g", "egg: 50 g", "water: 50 g"),
        Policy.USUAL,
        baked);
  }

  private static LabelRow row(Label label, Region region, String key) {
    return label.rows(region).stream()
        .filter(row -> row.line().key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static Verdict verdict(Label label, Region region, String name) {
    return claim(label, region, name).verdict();
  }

  private static Claim claim(Label label, Region region, String name) {
    return label.claims(region).stream()
        .filter(claim -> claim.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Every figure that the worksheet keeps itself is the same here, for every basis. */
  @ParameterizedTest
  @CsvSource({
    "FAT, FAT", "SATURATED_FAT, SATURATED_FAT", "PROTEIN, PROTEIN", "FIBRE, FIBRE",
    "SODIUM, SODIUM", "SUGARS, SUGARS", "POLYOLS, POLYOLS", "TOTAL_CARBOHYDRATE, CARBOHYDRATE",
    "ENERGY_KCAL, ENERGY"
  })
  void sumsAreThoseOfTheWorksheet(Component component, Figure figure) {
    bench.forget("seeds", Nutrient.FIBRE).forget("egg", Nutrient.SODIUM);
    for (String amount : List.of("30 g", "1 cup")) {
      for (Yield yield : List.of(Yield.ofPieces(3), Yield.UNSTATED)) {
        Worksheet sheet =
            bench.sheet(
                Bench.formula(yield, "lupin-flour: 100 g", "egg: 2 large", "seeds: " + amount),
                Policy.USUAL,
                new BakedYield(Quantity.known(0.9), 1));
        for (Basis basis : Basis.values()) {
          Quantity own = sheet.macros().get(basis).get(figure);
          Quantity sum = sheet.sum(food -> component.per100g(food, EnergyRule.FOODS)).get(basis);
          assertThat(sum.low()).isCloseTo(own.low(), within(1e-9));
          assertThat(sum.isKnown()).isEqualTo(own.isKnown());
          if (Double.isFinite(own.high())) {
            assertThat(sum.high()).isCloseTo(own.high(), within(1e-9));
          } else {
            assertThat(sum.high()).isInfinite();
          }
        }
      }
    }
  }

  @Test
  void aMeasuredLossIsUsedAndAnEnteredOneGoesBeforeIt() {
    Worksheet sheet = bun(new BakedYield(Quantity.known(0.8), 3));
    Label measured = Label.of(sheet, LabelTerms.USUAL);
    Label entered = Label.of(sheet, LabelTerms.USUAL.withLoss(50));

    assertThat(measured.loss().kind()).isEqualTo(Loss.Kind.MEASURED);
    assertThat(measured.loss().percent().low()).isCloseTo(20, within(1e-9));
    assertThat(measured.loss().pieces()).isEqualTo(3);
    assertThat(entered.loss().kind()).isEqualTo(Loss.Kind.ENTERED);
    assertThat(entered.loss().measuredPercent().getAsDouble()).isCloseTo(20, within(1e-9));
    // 46 g protein in 200 g dough: 23 in 100 g, 28.75 of 80 g left, 46 of 50 g left
    assertThat(row(measured, Region.EUROPEAN_UNION, "protein_g").amounts().get(Basis.BAKED_100_G))
        .extracting(Quantity::low)
        .isEqualTo(28.75);
    assertThat(row(entered, Region.EUROPEAN_UNION, "protein_g").amounts().get(Basis.BAKED_100_G))
        .extracting(Quantity::low)
        .isEqualTo(46.0);
  }

  @Test
  void anUnknownLossLiesBetweenNoneAndAllTheWaterAndIsNotDeclared() {
    Label label = Label.of(bun(BakedYield.UNMEASURED), LabelTerms.USUAL);
    LabelRow protein = row(label, Region.EUROPEAN_UNION, "protein_g");

    // water: 10 + 38 + 50 of 200 g
    assertThat(label.loss().kind()).isEqualTo(Loss.Kind.UNKNOWN);
    assertThat(label.loss().percent().low()).isZero();
    assertThat(label.loss().percent().high()).isCloseTo(49, within(1e-9));
    assertThat(protein.amounts().get(Basis.BAKED_100_G).low()).isCloseTo(23, within(1e-9));
    assertThat(protein.amounts().get(Basis.BAKED_100_G).high())
        .isCloseTo(23 / 0.51, within(1e-9));
    assertThat(protein.declared(Basis.BAKED_100_G)).isEmpty();
    assertThat(protein.declared(Basis.PIECE).orElseThrow().text()).isEqualTo("23 g");
    assertThat(protein.declared(Basis.DOUGH_100_G).orElseThrow().text()).isEqualTo("23 g");
  }

  @Test
  void aPieceHoldsTheSameAsDoughAndAsBaked() {
    for (double loss : new double[] {0, 12.5, 40}) {
      Label label = Label.of(bun(BakedYield.UNMEASURED), LabelTerms.USUAL.withLoss(loss));
      for (Region region : Region.values()) {
        for (LabelRow row : label.rows(region)) {
          Quantity fromBaked =
              row.amounts()
                  .get(Basis.BAKED_100_G)
                  .times(label.sheet().bakedPerPieceGrams().low() / 100);
          assertThat(fromBaked.low())
              .isCloseTo(row.amounts().get(Basis.PIECE).low(), within(1e-9));
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Region.class)
  void aBoundIsNeverDeclaredAndNamesTheFoodsThatAreSilent(Region region) {
    bench.forget("egg", Nutrient.FIBRE);
    Label label = Label.of(bun(BakedYield.UNMEASURED), LabelTerms.USUAL);
    LabelRow fibre = row(label, region, "fibre_g");

    assertThat(fibre.amounts().get(Basis.PIECE)).isEqualTo(Quantity.atLeast(15));
    assertThat(fibre.declared(Basis.PIECE)).isEmpty();
    assertThat(fibre.missing()).containsExactly("fibre is not known of egg");
    for (LabelRow row : label.rows(region)) {
      for (Basis basis : Label.BASES) {
        assertThat(row.declared(basis).isPresent())
            .isEqualTo(row.amounts().get(basis).isKnown());
      }
    }
  }

  @Test
  void aMassThatIsUnknownAndAFoodThatIsMissingAreNamed() {
    Label label =
        Label.of(bench.sheet("lupin-flour: 100 g", "egg: 1 cup", "moon: 3 g"), LabelTerms.USUAL);

    assertThat(row(label, Region.UNITED_STATES, "fat_g").missing())
        .containsExactly("the mass of egg is not known", "the pantry has no moon");
  }

  @Test
  void alluloseIsCarbohydrateInBothAndSugarInTheUnionOnly() {
    bench.add(sweet("allulose", Nutrient.ALLULOSE, null));
    Label label = Label.of(bench.sheet("allulose: 10 g", "water: 90 g"), LabelTerms.USUAL);

    assertThat(dough(label, Region.UNITED_STATES, "carbohydrate_g")).isEqualTo(10);
    assertThat(dough(label, Region.UNITED_STATES, "sugars_g")).isZero();
    assertThat(dough(label, Region.EUROPEAN_UNION, "carbohydrate_g")).isEqualTo(10);
    assertThat(dough(label, Region.EUROPEAN_UNION, "sugars_g")).isEqualTo(10);
    assertThat(dough(by(label, EnergyRule.US_FACTORS), Region.UNITED_STATES, "calories"))
        .isCloseTo(4, within(1e-9));
    assertThat(dough(label, Region.EUROPEAN_UNION, "energy_kcal")).isCloseTo(40, within(1e-9));
    assertThat(row(label, Region.UNITED_STATES, "sugars_g").note().orElseThrow())
        .contains("Allulose is left out");
    assertThat(row(label, Region.EUROPEAN_UNION, "sugars_g").note().orElseThrow())
        .contains("every monosaccharide");
  }

  @ParameterizedTest
  @CsvSource({"erythritol, 0, 0, 0", "maltitol, 21, 24, 100", "xylitol, 24, 24, 100"})
  void polyolsHaveTheirOwnEnergyAndALineOfTheirOwn(String kind, double us, double eu, double kj) {
    bench.add(sweet("sweetener", Nutrient.POLYOLS, kind));
    Label label =
        by(
            Label.of(bench.sheet("sweetener: 10 g", "water: 90 g"), LabelTerms.USUAL),
            EnergyRule.US_FACTORS);
    Label union =
        Label.of(bench.sheet("sweetener: 10 g", "water: 90 g"), LabelTerms.USUAL);

    assertThat(dough(label, Region.UNITED_STATES, "calories")).isCloseTo(us, within(1e-9));
    assertThat(dough(union, Region.EUROPEAN_UNION, "energy_kcal")).isCloseTo(eu, within(1e-9));
    assertThat(dough(union, Region.EUROPEAN_UNION, "energy_kj")).isCloseTo(kj, within(1e-9));
    assertThat(dough(union, Region.EUROPEAN_UNION, "polyols_g")).isEqualTo(10);
    assertThat(dough(label, Region.UNITED_STATES, "polyols_g")).isEqualTo(10);
    assertThat(Label.of(bun(BakedYield.UNMEASURED), LabelTerms.USUAL).rows(Region.UNITED_STATES))
        .noneMatch(row -> row.line().key().equals("polyols_g"));
  }

  @Test
  void energyGoesByTheChosenRuleWhichIsNamed() {
    Worksheet sheet =
        bench.sheet(
            Bench.formula(Yield.ofPieces(1), "lupin-flour: 100 g"),
            new Policy(EnergyRule.EU_FACTORS, NetCarbohydrate.ALL),
            BakedYield.UNMEASURED);
    Label label = Label.of(sheet, LabelTerms.USUAL);

    assertThat(label.energy(Region.UNITED_STATES)).isEqualTo(EnergyRule.US_FACTORS);
    assertThat(label.energy(Region.EUROPEAN_UNION)).isEqualTo(EnergyRule.EU_FACTORS);
    assertThat(label.energyInWords(Region.EUROPEAN_UNION)).contains("Annex XIV");
    Label foods = by(label, EnergyRule.FOODS);
    assertThat(dough(foods, Region.EUROPEAN_UNION, "energy_kcal")).isEqualTo(300);
    assertThat(dough(foods, Region.EUROPEAN_UNION, "energy_kj"))
        .isCloseTo(300 * 4.184, within(1e-9));
    assertThat(foods.energyInWords(Region.EUROPEAN_UNION)).contains("Article 31(1)");
    assertThat(by(label, EnergyRule.EU_FACTORS).energyInWords(Region.UNITED_STATES))
        .contains("does not name these factors");
  }

  @Test
  void transFatAndAddedSugarsAreBoundedByWhatTheyArePartOf() {
    bench.forget("oil", Nutrient.TRANS_FAT).forget("oil", Nutrient.ADDED_SUGARS);
    Label label = Label.of(bench.sheet("water: 90 g", "oil: 10 g"), LabelTerms.USUAL);

    assertThat(label.amounts(Component.TRANS_FAT, Region.UNITED_STATES).get(Basis.DOUGH_100_G))
        .isEqualTo(Quantity.atMost(10));
    assertThat(row(label, Region.UNITED_STATES, "added_sugars_g").declared(Basis.DOUGH_100_G))
        .hasValueSatisfying(zero -> assertThat(zero.text()).isEqualTo("0 g"));
    assertThat(row(label, Region.UNITED_STATES, "trans_fat_g").missing())
        .containsExactly("trans fat is not known of oil");
  }

  @Test
  void transFatAddedSugarsAndVitaminDCountAsTheFoodsStateThem() {
    Food oil = bench.find("oil").orElseThrow();
    oil = Bench.with(oil, Nutrient.TRANS_FAT, Quantity.known(2));
    oil = Bench.with(oil, Nutrient.SUGARS, Quantity.known(8));
    oil = Bench.with(oil, Nutrient.ADDED_SUGARS, Quantity.known(6));
    bench.add(Bench.with(oil, Nutrient.VITAMIN_D, Quantity.known(7.5)));
    Label label = Label.of(bench.sheet("water: 80 g", "oil: 20 g"), LabelTerms.USUAL);

    assertThat(dough(label, Region.UNITED_STATES, "trans_fat_g")).isCloseTo(0.4, within(1e-9));
    assertThat(dough(label, Region.UNITED_STATES, "added_sugars_g")).isCloseTo(1.2, within(1e-9));
    assertThat(dough(label, Region.UNITED_STATES, "vitamin_d_ug")).isCloseTo(1.5, within(1e-9));
    assertThat(row(label, Region.UNITED_STATES, "trans_fat_g").declared(Basis.DOUGH_100_G))
        .hasValueSatisfying(figure -> assertThat(figure.text()).isEqualTo("0 g"));
    assertThat(row(label, Region.UNITED_STATES, "added_sugars_g").declared(Basis.DOUGH_100_G))
        .hasValueSatisfying(figure -> assertThat(figure.text()).isEqualTo("1 g"));
    assertThat(row(label, Region.UNITED_STATES, "vitamin_d_ug").declared(Basis.DOUGH_100_G))
        .hasValueSatisfying(figure -> assertThat(figure.text()).isEqualTo("1.5 µg"));
  }

  /** 21 CFR 101.62(c)(1) and (2), from memory and second hand; the Union's Annex. */
  @Test
  void claimsOfSaturatedFatRestOnTransFatWhereTheLawSaysSo() {
    LabelTerms terms = LabelTerms.USUAL.withLoss(0).withReference(ReferenceAmount.read("50 g"));
    bench.add(Bench.food("dough", FoodKind.DRY, 10, 10, 10, 7, 50, 400));
    Map<Double, Verdict> free = Map.of(0.9, Verdict.MEETS, 1.0, Verdict.MISSES);
    free.forEach(
        (trans, expected) -> {
          Food dough = bench.find("dough").orElseThrow();
          bench.add(Bench.with(dough, Nutrient.TRANS_FAT, Quantity.known(trans)));
          Label label =
              Label.of(
                  bench.sheet(Bench.formula(Yield.ofPieces(2), "dough: 100 g")), terms);
          assertThat(verdict(label, Region.UNITED_STATES, "Saturated fat free"))
              .isEqualTo(expected);
          assertThat(verdict(label, Region.UNITED_STATES, "Low saturated fat"))
              .isEqualTo(Verdict.MEETS);
          assertThat(verdict(label, Region.EUROPEAN_UNION, "Low saturated fat"))
              .isEqualTo(Verdict.MEETS);
          assertThat(verdict(label, Region.EUROPEAN_UNION, "Saturated-fat-free"))
              .isEqualTo(Verdict.MISSES);
        });
    bench.forget("dough", Nutrient.TRANS_FAT);
    Label open = Label.of(bench.sheet(Bench.formula(Yield.ofPieces(2), "dough: 100 g")), terms);
    assertThat(verdict(open, Region.UNITED_STATES, "Saturated fat free"))
        .isEqualTo(Verdict.CANNOT_BE_TOLD);
    assertThat(verdict(open, Region.EUROPEAN_UNION, "Low saturated fat"))
        .isEqualTo(Verdict.CANNOT_BE_TOLD);
  }

  @Test
  void namesFromRightToLeftDoNotTurnTheirNeighboursAround() {
    String arabic = "طحينة السمسم";
    Food dough = Bench.food("dough", FoodKind.DRY, 10, 10, 10, 7, 50, 400);
    bench.add(
        FoodEdit.of(Bench.with(dough, Nutrient.IRON, Quantity.UNKNOWN), "name", arabic));
    bench.forget("oil", Nutrient.IRON);
    Label label = Label.of(bench.sheet("dough: 50 g", "oil: 50 g"), LabelTerms.USUAL);

    assertThat(row(label, Region.UNITED_STATES, "iron_mg").missing())
        .containsExactly("iron is not known of \u2068" + arabic + "\u2069; oil");
  }

  @Test
  void noFatMeansNoTransFatAndNoSugarsMeanNoneAdded() {
    bench.add(Bench.food("powder", FoodKind.DRY, 10, 0, 80, 5, 5, 360));
    bench
        .forget("powder", Nutrient.SATURATED_FAT)
        .forget("powder", Nutrient.TRANS_FAT)
        .forget("powder", Nutrient.ADDED_SUGARS)
        .forget("powder", Nutrient.VITAMIN_D);
    Label label = Label.of(bench.sheet("powder: 100 g"), LabelTerms.USUAL);

    for (Component none : List.of(Component.TRANS_FAT, Component.ADDED_SUGARS)) {
      assertThat(label.amounts(none, Region.UNITED_STATES).get(Basis.DOUGH_100_G))
          .isEqualTo(Quantity.ZERO);
    }
    assertThat(label.amounts(Component.VITAMIN_D, Region.UNITED_STATES).get(Basis.DOUGH_100_G))
        .isEqualTo(Quantity.UNKNOWN);
  }

  @Test
  void allergensAreThoseOfTheRegionWithTheirFoods() {
    bench.add(Bench.withoutAllergenList(Bench.food("mix", FoodKind.DRY, 0, 0, 0, 0, 0, 0)));
    bench.add(Bench.food("oats", FoodKind.DRY, 0, 0, 0, 0, 0, 0, Allergen.OATS));
    bench.add(Bench.food("almonds", FoodKind.DRY, 0, 0, 0, 0, 0, 0, Allergen.TREE_NUTS));
    Label label =
        Label.of(
            bench.sheet("lupin-flour: 9 g", "egg: 9 g", "mix: 1 g", "oats: 1 g", "almonds: 0 g"),
            LabelTerms.USUAL);
    AllergenStatement states = label.allergens(Region.UNITED_STATES);
    AllergenStatement union = label.allergens(Region.EUROPEAN_UNION);

    assertThat(states.contained())
        .extracting(AllergenStatement.Contained::name)
        .containsExactly("eggs", "tree nuts");
    assertThat(union.contained())
        .extracting(AllergenStatement.Contained::name)
        .containsExactly("cereals containing gluten: oats", "eggs", "nuts", "lupin");
    assertThat(union.contained().get(3).foods()).containsExactly("lupin flour");
    assertThat(states.unknownIn()).containsExactly("mix");
    assertThat(states.notes()).anyMatch(note -> note.contains("but in it: oats, lupin"));
    assertThat(union.notes()).anyMatch(note -> note.startsWith("Name the kind of each nut"));
  }

  @ParameterizedTest
  @CsvSource({
    // by 100 g, or by 100 kcal
    "2.9, 400, would miss, would miss",
    "3, 400, would meet, would miss",
    "5.9, 400, would meet, would miss",
    "6, 400, would meet, would meet",
    "2.9, 150, would meet, would miss",
    "2.9, 96, would meet, would meet",
  })
  void fibreOfTheUnion(double fibre, double energy, String source, String high) {
    bench.add(Bench.food("husk", FoodKind.DRY, 50, 0, fibre, fibre, 0, energy));
    Label label =
        Label.of(
            bench.sheet("husk: 100 g"),
            LabelTerms.USUAL.withLoss(0).withEnergy(EnergyRule.FOODS));

    assertThat(verdict(label, Region.EUROPEAN_UNION, "Source of fibre").words())
        .isEqualTo(source);
    assertThat(verdict(label, Region.EUROPEAN_UNION, "High fibre").words()).isEqualTo(high);
  }

  @ParameterizedTest
  @CsvSource({
    // 400 kcal, of which protein gives 4 a gram
    "11.9, would miss, would miss",
    "12, would meet, would miss",
    "19.9, would meet, would miss",
    "20, would meet, would meet",
  })
  void proteinOfTheUnionIsAShareOfTheEnergy(double protein, String source, String high) {
    bench.add(Bench.food("powder", FoodKind.DRY, protein, 0, 0, 0, 0, 400));
    Label label =
        Label.of(bench.sheet("powder: 100 g"), LabelTerms.USUAL.withEnergy(EnergyRule.FOODS));

    assertThat(verdict(label, Region.EUROPEAN_UNION, "Source of protein").words())
        .isEqualTo(source);
    assertThat(verdict(label, Region.EUROPEAN_UNION, "High protein").words()).isEqualTo(high);
  }

  @ParameterizedTest
  @CsvSource({
    "3, 0.3, would meet, would miss",
    "3.1, 0.3, would miss, would miss",
    "0.5, 0.3, would meet, would meet",
  })
  void fatOfTheUnion(double fat, double other, String low, String free) {
    bench.add(Bench.food("dough", FoodKind.DRY, 10, fat, other, 0, 50, 100));
    Label label = Label.of(bench.sheet("dough: 100 g"), LabelTerms.USUAL.withLoss(0));

    assertThat(verdict(label, Region.EUROPEAN_UNION, "Low fat").words()).isEqualTo(low);
    assertThat(verdict(label, Region.EUROPEAN_UNION, "Fat-free").words()).isEqualTo(free);
  }

  @ParameterizedTest
  @CsvSource({
    "11.47, 11 g, 11.47 g",
    "11.5, 12 g, 11.5 g",
    "4.7499, 4.5 g, 4.7499 g",
    "0.4996, 0 g, 0.4996 g",
    "12.34, 12 g, 12.3 g",
  })
  void theUnroundedAmountShowsHowItIsRounded(double fat, String declared, String shown) {
    bench.add(Bench.food("dough", FoodKind.DRY, 10, fat, 10, 7, 50, 100));
    LabelRow row =
        row(Label.of(bench.sheet("dough: 100 g"), LabelTerms.USUAL), Region.UNITED_STATES, "fat_g");

    assertThat(row.declared(Basis.DOUGH_100_G).orElseThrow().text()).isEqualTo(declared);
    assertThat(row.unrounded(Basis.DOUGH_100_G)).isEqualTo(shown);
  }

  @Test
  void aClaimThatIsMissedByLittleShowsByHowMuch() {
    bench.add(Bench.food("dough", FoodKind.DRY, 10, 3.0004, 10, 7, 50, 100));
    Label label = Label.of(bench.sheet("dough: 100 g"), LabelTerms.USUAL.withLoss(0));

    assertThat(verdict(label, Region.EUROPEAN_UNION, "Low fat")).isEqualTo(Verdict.MISSES);
    assertThat(claim(label, Region.EUROPEAN_UNION, "Low fat").because())
        .isEqualTo("3.0004 g fat in 100 g");
  }

  @Test
  void aClaimIsSettledByBoundsWhereTheySuffice() {
    // 3.1 g fat in 100 g dough: no loss makes it less
    bench.add(Bench.food("dough", FoodKind.DRY, 10, 3.1, 10, 7, 50, 100));
    bench.forget("dough", Nutrient.TRANS_FAT);
    Label label = Label.of(bench.sheet("dough: 100 g"), LabelTerms.USUAL);

    assertThat(verdict(label, Region.EUROPEAN_UNION, "Low fat")).isEqualTo(Verdict.MISSES);
    assertThat(verdict(label, Region.EUROPEAN_UNION, "High fibre")).isEqualTo(Verdict.MEETS);
    assertThat(verdict(label, Region.EUROPEAN_UNION, "Saturated-fat-free"))
        .isEqualTo(Verdict.CANNOT_BE_TOLD);
    bench.add(Bench.food("dough", FoodKind.DRY, 10, 2.5, 10, 7, 50, 100));
    Label leaner = Label.of(bench.sheet("dough: 100 g"), LabelTerms.USUAL);
    assertThat(verdict(leaner, Region.EUROPEAN_UNION, "Low fat"))
        .isEqualTo(Verdict.CANNOT_BE_TOLD);
    assertThat(verdict(Label.of(bench.sheet("dough: 100 g"), LabelTerms.USUAL.withLoss(10)),
            Region.EUROPEAN_UNION, "Low fat"))
        .isEqualTo(Verdict.MEETS);
  }

  @Test
  void withoutAReferenceAmountOnlyWhatAServingMissesIsTold() {
    Label label = Label.of(bun(new BakedYield(Quantity.known(0.9), 1)), LabelTerms.USUAL);

    assertThat(verdict(label, Region.UNITED_STATES, "Fat free")).isEqualTo(Verdict.MISSES);
    assertThat(verdict(label, Region.UNITED_STATES, "Low fat")).isEqualTo(Verdict.CANNOT_BE_TOLD);
    assertThat(claim(label, Region.UNITED_STATES, "Low fat").because())
        .isEqualTo("unknown fat in the reference amount");
  }

  @ParameterizedTest
  @CsvSource({
    // sodium of 100 g baked, reference amount, low, very low, free
    "280, 50 g, would meet, would miss, would miss",
    "282, 50 g, would miss, would miss, would miss",
    "70, 50 g, would meet, would meet, would miss",
    // 30 g is small: 50 g count
    "281, 30 g, would miss, would miss, would miss",
    "280, 30 g, would meet, would miss, would miss",
    "9, 50 g, would meet, would meet, would meet",
    "10, 50 g, would meet, would meet, would miss",
  })
  void sodiumOfTheUnitedStates(
      double sodium, String reference, String low, String veryLow, String free) {
    bench.add(
        Bench.with(
            Bench.food("dough", FoodKind.DRY, 10, 3, 10, 7, 50, 100), Nutrient.SODIUM,
            Quantity.known(sodium)));
    Label label =
        Label.of(
            bench.sheet(
                Bench.formula(Yield.ofPieces(2), "dough: 100 g"),
                Policy.USUAL,
                BakedYield.UNMEASURED),
            LabelTerms.USUAL.withLoss(0).withReference(ReferenceAmount.read(reference)));

    assertThat(verdict(label, Region.UNITED_STATES, "Low sodium").words()).isEqualTo(low);
    assertThat(verdict(label, Region.UNITED_STATES, "Very low sodium").words())
        .isEqualTo(veryLow);
    assertThat(verdict(label, Region.UNITED_STATES, "Sodium free").words()).isEqualTo(free);
  }

  @ParameterizedTest
  @CsvSource({
    // fibre of 100 g; 50 g are judged by 28 g a day
    "5.5, would miss, would miss",
    "5.6, would meet, would miss",
    "11.1, would meet, would miss",
    "11.2, would miss, would meet",
  })
  void fibreOfTheUnitedStatesIsAShareOfTheDailyValue(double fibre, String good, String high) {
    bench.add(Bench.food("dough", FoodKind.DRY, 10, 3, 20, fibre, 50, 100));
    Label label =
        Label.of(
            bench.sheet("dough: 100 g"),
            LabelTerms.USUAL.withLoss(0).withReference(ReferenceAmount.read("bread")));

    assertThat(verdict(label, Region.UNITED_STATES, "Good source of fiber").words())
        .isEqualTo(good);
    assertThat(verdict(label, Region.UNITED_STATES, "High in fiber").words()).isEqualTo(high);
  }

  /** Quality can only take from protein: enough of it never settles the claim. */
  @Test
  void proteinOfTheUnitedStatesIsNeverSettledUpwards() {
    bench.add(Bench.food("dough", FoodKind.DRY, 40, 3, 20, 7, 20, 300));
    LabelTerms terms = LabelTerms.USUAL.withLoss(0).withReference(ReferenceAmount.read("bread"));
    Label rich = Label.of(bench.sheet("dough: 100 g"), terms);
    Label poor = Label.of(bench.sheet("dough: 10 g", "water: 90 g"), terms);

    assertThat(verdict(rich, Region.UNITED_STATES, "High in protein"))
        .isEqualTo(Verdict.CANNOT_BE_TOLD);
    assertThat(verdict(poor, Region.UNITED_STATES, "High in protein")).isEqualTo(Verdict.MISSES);
    assertThat(row(rich, Region.UNITED_STATES, "protein_g").dailyPercent(Basis.PIECE)).isEmpty();
  }

  /** 21 CFR 101.13(h), from memory: 13 g fat, 4 g saturated fat, 480 mg sodium. */
  @ParameterizedTest
  @CsvSource({"26, 960, here nothing", "26.1, 960, here fat", "26, 961, here sodium"})
  void whatHasToBeToldBesideAClaimIsNamed(double fat, double sodium, String told) {
    bench.add(
        Bench.with(
            Bench.food("dough", FoodKind.DRY, 10, fat, 10, 7, 40, 300), Nutrient.SODIUM,
            Quantity.known(sodium)));
    Worksheet sheet = bench.sheet(Bench.formula(Yield.ofPieces(2), "dough: 100 g"));
    LabelTerms terms = LabelTerms.USUAL.withLoss(0).withReference(ReferenceAmount.read("bread"));

    assertThat(Label.of(sheet, terms).notes(Region.UNITED_STATES).get(2))
        .endsWith(told + ".");
    assertThat(Label.of(sheet, LabelTerms.USUAL).notes(Region.UNITED_STATES).get(2))
        .contains("cannot be told of");
  }

  @ParameterizedTest
  @EnumSource(Region.class)
  void everyClaimHasItsConditionAndSourceAndLowCarbohydrateHasNone(Region region) {
    Label label = Label.of(bun(BakedYield.UNMEASURED), LabelTerms.USUAL);

    assertThat(label.claims(region)).hasSizeGreaterThan(15);
    for (Claim claim : label.claims(region)) {
      assertThat(claim.condition()).isNotBlank();
      assertThat(claim.because()).isNotBlank();
      assertThat(claim.source().law()).containsAnyOf("21 CFR 101.", "1924/2006");
    }
    assertThat(Label.unjudged(region).get(0).name()).startsWith("Low carbohydrate");
    assertThat(Label.unjudged(region).get(0).why()).startsWith("No legal definition");
  }

  @Test
  void aLossOutsideItsRangeIsRefused() {
    assertThatThrownBy(() -> LabelTerms.USUAL.withLoss(100))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("below 100 %");
  }

  @ParameterizedTest
  @CsvSource({"buns", "50 ml", "0 g", "2000 g", "''"})
  void whatIsNoReferenceAmountIsRefused(String text) {
    assertThatThrownBy(() -> ReferenceAmount.read(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("eference amount");
  }

  private static double dough(Label label, Region region, String key) {
    return row(label, region, key).amounts().get(Basis.DOUGH_100_G).value().orElseThrow();
  }

  private static Label by(Label label, EnergyRule rule) {
    return Label.of(label.sheet(), label.terms().withEnergy(rule));
  }

  private static Food sweet(String slug, Nutrient nutrient, String polyol) {
    Food food =
        Bench.with(
            Bench.food(slug, FoodKind.DRY, 0, 0, 100, 0, 0, 0), nutrient, Quantity.known(100));
    return polyol == null ? food : Bench.withPolyol(food, polyol);
  }
}
