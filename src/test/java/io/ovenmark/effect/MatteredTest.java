package io.ovenmark.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.measure.Temperature;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Bench;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Invented histories of the Saltmarsh bench. */
class MatteredTest {
  private static final Map<String, Food> FOODS =
      List.of(
              Bench.food("lupin-flour", FoodKind.DRY, 40, 10, 40, 30, 10, 300),
              Bench.food("psyllium-husk", FoodKind.DRY, 2, 1, 88, 80, 6, 190),
              Bench.food("pumpkin-seeds", FoodKind.DRY, 25, 45, 15, 6, 5, 560),
              Bench.food("water", FoodKind.LIQUID, 0, 0, 0, 0, 100, 0),
              Bench.food("egg-white", FoodKind.LIQUID, 11, 0, 1, 0, 87, 52))
          .stream()
          .collect(Collectors.toMap(Food::slug, food -> food));

  private final List<History.Baked> bakes = new ArrayList<>();
  private final Random random = new Random(9);

  /** A bun weighed in grams, with a method of two steps. */
  private static Formula bun(int lupin, int psyllium, int water, String second) {
    return Formula.named("Lupin bun")
        .withLines(
            List.of(
                line("lupin-flour", "lupin-flour", lupin),
                line("psyllium-husk", "psyllium-husk", psyllium),
                line("water", "water", water)))
        .withMethod(List.of("Mix the dry part.", second))
        .withBake(
            List.of(
                BakeSetting.named("bake")
                    .withTemperature(Optional.of(Temperature.parse("190 °C")))
                    .withMinutes(OptionalDouble.of(25))))
        .withYield(Yield.ofPieces(4));
  }

  private static Line line(String id, String food, int grams) {
    return Line.of(id, food, Amount.parse(grams + " g"));
  }

  private static Worksheet sheet(Formula formula) {
    return Worksheet.of(
        formula,
        slug -> Optional.ofNullable(FOODS.get(slug)),
        Policy.USUAL,
        BakedYield.UNMEASURED);
  }

  private static Piece piece(String id, Integer celsius, Double height, String... findings) {
    return new Piece(
        id,
        Optional.ofNullable(celsius).map(heat -> Temperature.parse(heat + " °C")),
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        height == null ? OptionalDouble.empty() : OptionalDouble.of(height),
        Optional.empty(),
        OptionalDouble.empty(),
        List.of(findings),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  private void bake(Formula formula, Piece... pieces) {
    int number = bakes.size() + 1;
    Bake bake =
        new Bake(
            "lupin-bun",
            "2026-03-01-" + number,
            "lupin-bun@" + number,
            "0".repeat(40),
            OffsetDateTime.parse("2026-03-01T08:00:00+01:00").plusDays(number),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(pieces),
            List.of(),
            List.of(),
            Extras.NONE);
    bakes.add(new History.Baked(bake, "lupin-bun@" + number, sheet(formula), ""));
  }

  private Mattered mattered() {
    return Mattered.of(new History(bakes));
  }

  private static OutcomeEffects of(Mattered mattered, String outcome) {
    return mattered.outcomes().stream()
        .filter(each -> each.outcome().key().equals(outcome))
        .findFirst()
        .orElseThrow();
  }

  private static Effect effect(OutcomeEffects outcome, String key) {
    return outcome.effects().stream()
        .filter(each -> each.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private OutcomeEffects heights() {
    return of(mattered(), "height_mm");
  }

  private double chance() {
    return 0.4 * random.nextGaussian();
  }

  /** 100 g dry: 10 g of water are 0.1 of liquid ratio, here 4 mm of height less. */
  private void wetAndDry() {
    for (int water : new int[] {80, 90, 80, 100, 90, 110, 100}) {
      double height = 45 - 0.4 * (water - 80);
      bake(
          bun(90, 10, water, "Knead."),
          piece("a", null, height + chance()),
          piece("b", null, height + chance()));
    }
  }

  @Test
  void waterAloneIsTheLiquidRatioWithItsSizeItsIntervalAndItsSteps() {
    wetAndDry();
    Effect effect = effect(heights(), "liquid_ratio");
    assertThat(effect.perAmount()).isEqualTo(0.05);
    assertThat(effect.together().value()).isCloseTo(-2, within(0.15));
    assertThat(effect.together().low()).isLessThan(-2);
    assertThat(effect.together().high()).isBetween(-2.0, -1.5);
    assertThat(effect.standing()).isEqualTo(Effect.Standing.CLEAR);
    assertThat(effect.steps()).hasSize(6);
    assertThat(effect.alone()).isEqualTo(6);
    assertThat(effect.steps().get(0))
        .isEqualTo(
            new Effect.Step("lupin-bun@1", "lupin-bun@2", "2026-03-01-1", "2026-03-01-2", true));
    assertThat(new EffectSentences(ShownUnits.AS_WRITTEN).sentence(heights().outcome(), effect))
        .matches(
            "Wetter dough, always together with dough a piece and dough moisture, went with flatter"
                + " pieces: about [12](\\.\\d)? mm less for each 0\\.05 of liquid ratio, between"
                + " 1\\.\\d and 2\\.\\d; changed six times, each time alone\\.");
  }

  @Test
  void aChangeThatNeverHappenedHasNoEffect() {
    wetAndDry();
    assertThat(heights().effects()).extracting(Effect::key).containsExactly("liquid_ratio");
    assertThat(of(mattered(), "liking").effects()).isEmpty();
  }

  @Test
  void changesThatAlwaysCameTogetherAreOneGroup() {
    boolean rested = false;
    for (int psyllium : new int[] {10, 16, 16, 10, 16, 10}) {
      rested = psyllium == 16;
      bake(
          bun(90, psyllium, 100, rested ? "Rest 20 min, then knead." : "Knead."),
          piece("a", rested ? 200 : 190, (rested ? 44 : 38) + chance()));
    }
    OutcomeEffects heights = heights();
    assertThat(heights.effects()).hasSize(1);
    Effect effect = heights.effects().get(0);
    assertThat(effect.key()).isEqualTo("liquid_ratio");
    assertThat(effect.with())
        .contains("less psyllium husk", "less oven temperature", "the step “Knead.”");
    assertThat(effect.alone()).isEqualTo(effect.steps().size()).isEqualTo(4);
  }

  @Test
  void ofTwoChangesInOneStepNeitherWasAlone() {
    bake(bun(90, 10, 80, "Knead."), piece("a", 190, 45.0));
    bake(bun(90, 16, 90, "Knead."), piece("a", 190, 43.0));
    bake(bun(90, 16, 100, "Knead."), piece("a", 190, 40.0));
    bake(bun(90, 10, 100, "Knead."), piece("a", 200, 39.0));
    bake(bun(90, 10, 100, "Knead."), piece("a", 190, 38.0), piece("b", 200, 40.0));
    OutcomeEffects heights = heights();
    Effect psyllium = effect(heights, "line.psyllium-husk");
    assertThat(psyllium.steps()).hasSize(2);
    assertThat(psyllium.alone()).isZero();
    assertThat(psyllium.companions().get(0))
        .isEqualTo(new Effect.Companion("liquid ratio", 2));
    Effect heat = effect(heights, "oven_temperature");
    assertThat(heat.steps()).filteredOn(Effect.Step::alone).last().matches(Effect.Step::oneTray);
    assertThat(effect(heights, "liquid_ratio").steps())
        .filteredOn(Effect.Step::alone)
        .extracting(Effect.Step::toAddress)
        .containsExactly("lupin-bun@3");
  }

  @Test
  void theOvenIsTakenFromThePiecesAndElseFromTheFormula() {
    for (int i = 0; i < 5; i++) {
      bake(
          bun(90, 10, 90, "Knead."),
          piece("a", null, 40 + chance()),
          piece("b", 210, 46 + chance()));
    }
    Effect heat = effect(heights(), "oven_temperature");
    assertThat(heat.least()).isEqualTo(190);
    assertThat(heat.most()).isEqualTo(210);
    assertThat(heat.together().value()).isCloseTo(3, within(0.3));
    assertThat(heat.steps()).allMatch(Effect.Step::oneTray).hasSize(5);
  }

  @Test
  void aDoubledBatchIsNoChangeOfItsLines() {
    for (int i = 1; i <= 5; i++) {
      int times = i % 2 + 1;
      Formula bun = bun(90 * times, 10 * times, (80 + i) * times, "Knead.");
      bake(bun.withYield(Yield.ofPieces(4 * times)), piece("a", null, 40 + chance()));
    }
    assertThat(heights().effects()).extracting(Effect::key).doesNotContain("line.lupin-flour");
  }

  @Test
  void unknownOutcomesAreLeftOutAndCounted() {
    wetAndDry();
    double before = heights().effects().get(0).together().value();
    bake(bun(90, 10, 140, "Knead."), piece("a", null, null), piece("b", null, null));
    OutcomeEffects heights = heights();
    assertThat(heights.unknown()).isEqualTo(2);
    assertThat(heights.pieces()).isEqualTo(14);
    assertThat(heights.bakes()).isEqualTo(7);
    assertThat(heights.effects().get(0).together().value()).isEqualTo(before);
  }

  @Test
  void withTooFewBakesItIsSaidWhatIsMissing() {
    assertThat(mattered().outcomes()).hasSize(7).allMatch(each -> each.missing().isPresent());
    bake(bun(90, 10, 80, "Knead."), piece("a", null, 40.0), piece("b", null, null));
    bake(bun(90, 10, 90, "Knead."), piece("a", null, 38.0));
    assertThat(heights().missing())
        .contains(
            "Known of 2 bakes only; at least 4 are needed. Note the height of 2 more bakes.");
    assertThat(of(mattered(), "liking").missing())
        .contains("Not known of any piece. Note the liking of each.");
    assertThat(new EffectSentences(ShownUnits.AS_WRITTEN).summary(mattered()))
        .isEqualTo(
            "Too little is known to tell what mattered: there are two bakes, and at least four are"
                + " needed.");
  }

  @Test
  void whatIsTheSameEverywhereTellsNothing() {
    for (int water = 80; water < 130; water += 10) {
      bake(bun(90, 10, water, "Knead."), piece("a", null, 40.0));
    }
    assertThat(heights().missing()).hasValueSatisfying(
        missing -> assertThat(missing).startsWith("The same on every piece"));
  }

  @Test
  void findingsAreCountedInPiecesOfAHundredAndAPieceNobodyLookedAtIsUnknown() {
    for (int water : new int[] {80, 110, 80, 110, 80, 110, 80, 110}) {
      String found = water == 110 ? "gummy crumb" : "even crumb";
      bake(
          bun(90, 10, water, "Knead."),
          piece("a", null, null, found),
          piece("b", null, null, found),
          piece("c", null, null));
    }
    OutcomeEffects gummy = of(mattered(), "finding.gummy crumb");
    assertThat(gummy.pieces()).isEqualTo(16);
    assertThat(gummy.unknown()).isEqualTo(8);
    assertThat(gummy.mean()).isEqualTo(50);
    Effect effect = gummy.effects().get(0);
    assertThat(effect.together().value() * 6).isCloseTo(100, within(12.0));
    assertThat(new EffectSentences(ShownUnits.AS_WRITTEN).sentence(gummy.outcome(), effect))
        .contains("“gummy crumb” more often: about", "more of 100 pieces for each 0.05");
  }

  @Test
  void addingAConstantToTheOutcomeMovesNoEffect() {
    wetAndDry();
    Effect.Size before = heights().effects().get(0).together();
    List<History.Baked> higher =
        bakes.stream()
            .map(
                baked -> {
                  Piece[] pieces =
                      baked.bake().pieces().stream()
                          .map(
                              each ->
                                  piece(
                                      each.id(),
                                      null,
                                      each.heightMillimetres().getAsDouble() + 100))
                          .toArray(Piece[]::new);
                  return new History.Baked(
                      baked.bake().withPieces(Arrays.asList(pieces)),
                      baked.address(),
                      baked.sheet(),
                      baked.line());
                })
            .toList();
    Effect.Size after =
        of(Mattered.of(new History(higher)), "height_mm").effects().get(0).together();
    assertThat(after.value()).isCloseTo(before.value(), within(1e-9));
    assertThat(after.low()).isCloseTo(before.low(), within(1e-9));
  }

  /** Effects do not depend on the order of the bakes; what was changed alone does. */
  @Test
  void effectsDoNotDependOnTheOrderOfTheBakes() {
    wetAndDry();
    List<History.Baked> backwards = new ArrayList<>(bakes);
    Collections.reverse(backwards);
    Effect.Size one = heights().effects().get(0).together();
    Effect.Size other =
        of(Mattered.of(new History(backwards)), "height_mm").effects().get(0).together();
    assertThat(other.value()).isCloseTo(one.value(), within(1e-9));
    assertThat(other.low()).isCloseTo(one.low(), within(1e-9));
    assertThat(other.high()).isCloseTo(one.high(), within(1e-9));
  }

  @Test
  void anotherFoodInALineIsAChangeOfItsOwn() {
    for (int i = 0; i < 6; i++) {
      Formula bun = bun(90, 10, 80 + 5 * (i / 2), "Knead.");
      List<Line> lines = new ArrayList<>(bun.lines());
      lines.add(line("seeds", i % 2 == 0 ? "psyllium-husk" : "pumpkin-seeds", 20));
      bake(bun.withLines(lines), piece("a", null, 40 + 3 * (i % 2) + chance()));
    }
    Effect effect =
        heights().effects().stream()
            .filter(each -> each.kind().equals("food") || each.with().stream()
                .anyMatch(label -> label.contains("in place of")))
            .findFirst()
            .orElseThrow();
    assertThat(EffectSentences.change(effect)).containsIgnoringCase("in place of");
  }

  @Test
  void aLineOfUnknownMassIsLeftOutAndCounted() {
    for (int i = 0; i < 5; i++) {
      Formula bun = bun(90, 10, 80 + 5 * i, "Knead.");
      List<Line> lines = new ArrayList<>(bun.lines());
      lines.add(Line.of("pumpkin-seeds", "pumpkin-seeds", Amount.parse(i + 1 + " tbsp")));
      bake(bun.withLines(lines), piece("a", null, 40.0 - i));
    }
    OutcomeEffects heights = heights();
    assertThat(heights.effects()).extracting(Effect::key).doesNotContain("line.pumpkin-seeds");
    assertThat(Quantity.UNKNOWN)
        .isEqualTo(bakes.get(0).sheet().line("pumpkin-seeds").orElseThrow().grams());
    assertThat(heights.effects()).isNotEmpty();
  }

  @Test
  void theReadersUnitsStandInSentences() {
    for (int i = 0; i < 6; i++) {
      bake(
          bun(90, 10, 90, "Knead."),
          piece("a", 190, 40 + chance()),
          piece("b", 210, 46 + chance()));
    }
    Effect heat = effect(heights(), "oven_temperature");
    EffectSentences american =
        new EffectSentences(ShownUnits.of(Optional.of("oz"), Optional.of("F")));
    assertThat(american.per(heat)).isEqualTo("18 °F");
    assertThat(american.tried(heat)).isEqualTo("374 °F to 410 °F");
  }
}
