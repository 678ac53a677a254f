package io.ovenmark.cause;

import static io.ovenmark.cause.Buns.baked;
import static io.ovenmark.cause.Buns.bun;
import static io.ovenmark.cause.Buns.formula;
import static io.ovenmark.cause.Buns.piece;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.measure.Amount;
import io.ovenmark.measure.ShownUnits;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlansTest {
  private static final String GUMMY = "gummy crumb";
  private static final PlanSize SIZE = new PlanSize(2, 6);
  private static final Baked BAD =
      baked(1, bun(230, "190 °C", 27), piece("a", "190 °C", 27, 95, GUMMY));
  private static final Baked GOOD =
      baked(2, bun(190, "205 °C", 21), piece("a", "205 °C", 21, 97, "even crumb"));

  private static Plans plans(PlanSize size, Baked... bakes) {
    return Inquiry.of(
            GUMMY,
            List.of(bakes),
            bakes[bakes.length - 1].side().sheet(),
            size,
            ShownUnits.AS_WRITTEN)
        .plans()
        .orElseThrow();
  }

  private static Plan first(Baked... bakes) {
    return plans(SIZE, bakes).plans().get(0);
  }

  @Test
  void doughAndOvenThatChangedTogetherAreToldApartByFourSettings() {
    Plan plan = first(BAD, GOOD);

    assertThat(plan.title()).isEqualTo("Dough or oven");
    assertThat(plan.factors()).extracting(Plan.Factor::name).containsExactly("dough", "oven");
    assertThat(plan.factors().get(0).from()).isEqualTo("230 g water");
    assertThat(plan.factors().get(1).to()).isEqualTo("205 °C, 21 min");
    assertThat(plan.settings())
        .extracting(each -> each.recipe().oven(ShownUnits.AS_WRITTEN))
        .containsExactly(
            "190 °C for 27 min", "190 °C for 27 min", "205 °C for 21 min", "205 °C for 21 min");
    assertThat(plan.settings())
        .extracting(each -> each.recipe().formula().line("water").orElseThrow().amount())
        .containsExactly(
            Amount.parse("230 g"), Amount.parse("190 g"), Amount.parse("230 g"),
            Amount.parse("190 g"));
  }

  @Test
  void theFirstAndTheLastSettingAreTheTwoBakesThemselves() {
    for (Plan plan : plans(SIZE, BAD, GOOD).plans()) {
      Plan.Setting before = plan.settings().get(0);
      Plan.Setting after = plan.settings().get(plan.settings().size() - 1);

      assertThat(before.recipe().formula().lines())
          .isEqualTo(BAD.side().sheet().formula().lines());
      assertThat(before.address()).contains("bun@1");
      assertThat(after.recipe().formula()).isEqualTo(GOOD.side().sheet().formula());
      assertThat(after.address()).contains("bun@2");
    }
  }

  @Test
  void whatWasBakedAlreadyCountsAndOnlyTheRestIsMissing() {
    Plan plan = first(BAD, GOOD);

    assertThat(plan.settings())
        .extracting(each -> each.soFar().pieces(), each -> each.soFar().with())
        .containsExactly(
            tuple(1, 1),
            tuple(0, 0),
            tuple(0, 0),
            tuple(1, 0));
    assertThat(plan.missing().settings()).isEqualTo(2);
    assertThat(plan.missing().pieces()).isEqualTo(4);
    assertThat(plan.missing().doughGrams().low())
        .isCloseTo(plan.all().doughGrams().low() / 2, within(1e-9));
  }

  @Test
  void onceAllSettingsWereBakedTheContrastsAreWorkedOut() {
    Baked both =
        baked(
            3,
            bun(190, "205 °C", 21),
            piece("a", "190 °C", 26, 95, "dry"),
            piece("b", "205 °C", 21, 97, "dry"));
    Baked wet =
        baked(4, bun(230, "190 °C", 27), piece("a", "206 °C", 22, 97, GUMMY));
    Plan plan = first(wet, BAD, GOOD, both);

    assertThat(plan.missing().settings()).isZero();
    assertThat(plan.contrasts()).extracting(Plan.Contrast::name)
        .containsExactly("dough", "oven", "dough × oven");
    assertThat(plan.contrasts().get(0).effect()).hasValue(-100);
    assertThat(plan.contrasts().get(1).effect()).hasValue(0);
    assertThat(plan.pairs())
        .contains("The dough alone, settings 1 and 2: found on 1 of 1 pieces, then on 0 of 1.");
  }

  @Test
  void aPieceBetweenTwoNearLevelsCountsForTheNearerOnly() {
    Plan plan =
        first(
            BAD,
            baked(
                2,
                bun(230, "194 °C", 29),
                piece("a", "194 °C", 29, 95, "even crumb"),
                piece("b", "194 °C", 29, 95, "even crumb")));

    assertThat(plan.settings())
        .extracting(each -> each.soFar().pieces())
        .containsExactly(1, 0, 0, 2);
  }

  @Test
  void everyContrastHoldsHalfOfTheSettingsAgainstTheOther() {
    for (Plan plan : plans(SIZE, BAD, GOOD).plans()) {
      for (Plan.Contrast contrast : plan.contrasts()) {
        List<Integer> all = new ArrayList<>(contrast.plus());
        all.addAll(contrast.minus());
        assertThat(contrast.plus()).hasSameSizeAs(contrast.minus());
        assertThat(all)
            .containsExactlyInAnyOrderElementsOf(
                plan.settings().stream().map(Plan.Setting::number).toList());
      }
    }
  }

  @Test
  void costIsTheSumOfDoughsTraysAndMinutes() {
    for (PlanSize size : List.of(SIZE, new PlanSize(1, 1), new PlanSize(3, 4))) {
      for (Plan plan : plans(size, BAD, GOOD).plans()) {
        int pieces = plan.settings().size() * size.pieces();
        assertThat(plan.all().pieces()).isEqualTo(pieces);
        assertThat(plan.doughs().stream().mapToInt(Plan.Dough::pieces).sum()).isEqualTo(pieces);
        assertThat(plan.loads().stream().mapToInt(load -> load.places().size()).sum())
            .isEqualTo(pieces);
        double dough = plan.doughs().stream().mapToDouble(each -> each.grams().low()).sum();
        assertThat(plan.all().doughGrams().low()).isCloseTo(dough, within(1e-9));
        for (Plan.Dough each : plan.doughs()) {
          double weighed = each.lines().stream().mapToDouble(l -> l.grams().low()).sum();
          assertThat(weighed).isCloseTo(each.grams().low(), within(1e-9));
        }
        for (Plan.Load load : plan.loads()) {
          assertThat(load.trays())
              .isEqualTo((load.places().size() + size.perTray() - 1) / size.perTray());
        }
      }
    }
  }

  @Test
  void settingsOfOneHeatShareATrayAndComeOutOneByOne() {
    Plan each = plans(SIZE, BAD, GOOD).plans().get(1);

    assertThat(each.title()).isEqualTo("Each change by itself");
    assertThat(each.settings()).hasSize(8);
    assertThat(each.loads()).hasSize(2);
    assertThat(each.loads().get(0).places())
        .extracting(place -> place.minutes().getAsDouble())
        .contains(21.0, 27.0);
    assertThat(each.loads().get(0).minutes().low()).isEqualTo(54);
    assertThat(each.remarks().get(0))
        .isEqualTo(
            "Settings 5 and 6, 190 °C for 21 min, get less heat than either bake had: measure the"
                + " core before anyone tastes.");
  }

  @Test
  void placesAreDrawnTheSameEachTime() {
    assertThat(first(BAD, GOOD).loads()).isEqualTo(first(BAD, GOOD).loads());
  }

  @Test
  void aSingleChangeIsBakedEitherWay() {
    Plan plan =
        first(
            BAD,
            baked(2, bun(190, "190 °C", 27), piece("a", "190 °C", 27, 96, "even crumb")));

    assertThat(plan.title()).isEqualTo("Is it the water?");
    assertThat(plan.settings()).hasSize(2);
    assertThat(plan.loads()).hasSize(1);
  }

  @Test
  void fourChangesAreBakedInHalfAndTheAliasesAreNamed() {
    Plan plan =
        plans(
                SIZE,
                BAD,
                baked(
                    2,
                    formula(
                        "205 °C",
                        21,
                        "lupin-flour 140 g",
                        "psyllium-husk 30 g",
                        "egg-whole 50 g",
                        "butter-unsalted 20 g",
                        "baking-powder 9 g",
                        "water 190 g"),
                    piece("a", "205 °C", 21, 97, "even crumb")))
            .plans()
            .get(1);

    assertThat(plan.design().isHalf()).isTrue();
    assertThat(plan.settings()).hasSize(8);
    assertThat(plan.contrasts().get(0).alias())
        .contains("water × oven temperature × oven time");
    assertThat(plan.contrasts()).filteredOn(each -> each.name().equals("lupin flour × water"))
        .extracting(each -> each.alias().orElseThrow())
        .containsExactly("oven temperature × oven time");
  }

  @Test
  void addedRemovedAndReplacedLinesAreSetBackInTheirPlaces() {
    Baked other =
        baked(
            2,
            formula(
                "190 °C",
                27,
                "lupin-flour 150 g",
                "psyllium-husk 30 g",
                "egg-white 50 g",
                "sesame-seeds 12 g",
                "baking-powder 9 g",
                "water 230 g"),
            piece("a", "190 °C", 27, 97, "even crumb"));
    for (Plan plan : plans(SIZE, BAD, other).plans()) {
      for (Plan.Setting setting : plan.settings()) {
        if (setting.levels().stream().noneMatch(high -> high)) {
          assertThat(setting.recipe().formula().lines())
              .containsExactlyInAnyOrderElementsOf(BAD.side().sheet().formula().lines());
        }
      }
      assertThat(plan.doughs().stream().flatMap(dough -> dough.address().stream()))
          .containsExactly("bun@1", "bun@2");
    }
  }

  @Test
  void moreThanFiveChangesAreBundledAndThatIsSaid() {
    Plans plans =
        plans(
            SIZE,
            BAD,
            baked(
                2,
                formula(
                    "205 °C",
                    21,
                    "lupin-flour 140 g",
                    "psyllium-husk 25 g",
                    "egg-whole 40 g",
                    "butter-unsalted 25 g",
                    "baking-powder 8 g",
                    "water 190 g"),
                piece("a", "205 °C", 21, 97, "even crumb")));

    assertThat(plans.plans()).extracting(Plan::title)
        .containsExactly("Dough or oven", "Changes in bundles");
    assertThat(plans.plans().get(0).factors().get(0).changes()).hasSize(6);
    assertThat(plans.plans().get(1).factors()).extracting(Plan.Factor::name)
        .containsExactly("liquids", "dry foods", "fats and other foods", "oven");
    assertThat(plans.remarks()).anyMatch(words -> words.startsWith("8 things changed"));
  }

  @Test
  void nothingThatCanBeSetNeedsNoPlan() {
    Plans plans =
        plans(
            SIZE,
            BAD,
            baked(2, bun(230, "190 °C", 27), piece("a", "190 °C", 27, 96, "even crumb")));

    assertThat(plans.plans()).isEmpty();
  }

  @Test
  void refusesASizeThatIsNone() {
    assertThatThrownBy(() -> new PlanSize(0, 6)).hasMessageContaining("from 1 to 24");
    assertThatThrownBy(() -> new PlanSize(2, 0)).hasMessageContaining("from 1 to 200");
  }
}
