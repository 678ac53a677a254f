package io.ovenmark.desk;

import static io.ovenmark.notebook.NotebookFixture.piece;
import static io.ovenmark.notebook.Refusals.refuses;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.NotebookFixture;
import io.ovenmark.notebook.Refusal.Reason;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShowMatteredTest {
  private static final Address BUN = Address.parse("lupin-bun");

  @TempDir Path temporary;
  private Desk desk;

  /** Six waters, two pieces each: wetter is flatter; a variant without egg is baked once. */
  @BeforeEach
  void setUpABench() {
    NotebookFixture fixture = new NotebookFixture(temporary);
    fixture
        .formula("lupin-bun")
        .line("lupin-flour", "100 g")
        .line("egg-whole", "1 large")
        .line("water", "80 g")
        .set("yield.dough_per_piece_g=60", "bake.temperature=190C", "bake.minutes=25")
        .method("Mix.", "Bake.")
        .revise("Begin");
    int number = 1;
    for (int water : new int[] {90, 80, 100, 90, 110}) {
      bake(fixture, number, water);
      fixture.formula("lupin-bun").set("water=" + water + " g").revise("Water " + water);
      number++;
    }
    fixture.bake(
        fixture.formula("lupin-bun").at(number),
        List.of(piece("a", 190, 25, 60, 51, 33.2, "gummy crumb")));
    fixture.goal(
        "egg-free-bun",
        """
        {"name": "Egg-free bun", "without": {"allergens": ["eggs"]}}
        """);
    fixture.formula("lupin-bun").fork("egg-free", "egg-free-bun").set("egg-whole=0 g")
        .revise("No egg");
    fixture.bake(
        fixture.variant("lupin-bun", "egg-free").newest(),
        List.of(piece("a", 190, 25, 60, 51, 30)));
    desk = new Desk(fixture.open());
  }

  private static void bake(NotebookFixture fixture, int number, int next) {
    double[] heights = {45.3, 41.2, 45.1, 36.8, 41};
    double height = heights[number - 1];
    fixture.bake(
        fixture.formula("lupin-bun").at(number),
        List.of(
            piece("a", 190, 25, 60, 52, height),
            piece("b", 190, 29, 60, 50, height + 0.4, next > 95 ? "dry" : "even crumb")));
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private MatteredViews.MatteredSheet sheet(Address address, boolean variants, String outcome) {
    return new ShowMattered(desk).call(address, variants, Optional.ofNullable(outcome));
  }

  private static MatteredViews.EffectView water(MatteredViews.MatteredSheet sheet) {
    return sheet.outcomes().get(0).effects().stream()
        .filter(effect -> effect.kind().equals("liquid_ratio"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void wetterDoughWentWithFlatterPiecesAndEachStepLeadsToItsComparison() {
    MatteredViews.MatteredSheet sheet = sheet(BUN, false, null);
    assertThat(sheet.bakes()).isEqualTo(6);
    assertThat(sheet.pieces()).isEqualTo(11);
    assertThat(sheet.unread()).isZero();
    assertThat(sheet.variants()).containsExactly("egg-free");
    assertThat(sheet.summary()).startsWith("Something stands out for height");
    MatteredViews.EffectView water = water(sheet);
    assertThat(water.standing()).isEqualTo("clear");
    assertThat(water.together().value()).isBetween(-2.6, -1.6);
    assertThat(water.sentence())
        .startsWith("Wetter dough went with flatter pieces: about 2 mm less for each 0.05")
        .endsWith("; changed five times, each time alone.");
    assertThat(water.steps().get(0))
        .isEqualTo(
            new MatteredViews.StepView(
                "lupin-bun@5",
                "lupin-bun@6",
                water.steps().get(0).fromBake(),
                water.steps().get(0).toBake(),
                false,
                true));
  }

  @Test
  void variantsAreCountedOnWishAndAVariantHasItsOwnLine() {
    assertThat(sheet(BUN, true, null).bakes()).isEqualTo(7);
    MatteredViews.MatteredSheet variant =
        sheet(Address.parse("lupin-bun/egg-free"), false, "height");
    assertThat(variant.variant()).isEqualTo("egg-free");
    assertThat(variant.bakes()).isEqualTo(7);
    assertThat(variant.outcomes()).hasSize(1);
    assertThat(variant.outcomes().get(0).effects())
        .extracting(MatteredViews.EffectView::label)
        .anyMatch(label -> label.toLowerCase(Locale.ROOT).contains("egg"));
  }

  @Test
  void aRevisionStandsForItsWholeLine() {
    assertThat(Json.readable(sheet(BUN.at(2), false, null)))
        .isEqualTo(Json.readable(sheet(BUN, false, null)));
  }

  @Test
  void oneOutcomeIsAskedForByItsNameOrKey() {
    assertThat(sheet(BUN, false, "height_mm").outcomes())
        .isEqualTo(sheet(BUN, false, "height").outcomes())
        .hasSize(1);
    assertThat(refuses(Reason.INVALID, () -> sheet(BUN, false, "colour")))
        .hasMessageContaining("There is no outcome \"colour\" in these bakes.");
    refuses(Reason.NOT_FOUND, () -> sheet(Address.parse("no-bun"), false, null));
  }

  @Test
  void sentencesAreInTheReadersUnits() {
    MatteredViews.OutcomeView loss =
        new ShowMattered(desk.shownIn(ShownUnits.of(Optional.of("oz"), Optional.of("F"))))
            .call(BUN, true, Optional.of("loss on baking"))
            .outcomes()
            .get(0);
    assertThat(loss.effects())
        .filteredOn(effect -> effect.kind().equals("line"))
        .isNotEmpty()
        .allSatisfy(effect -> assertThat(effect.per()).endsWith(" oz"));
  }
}
