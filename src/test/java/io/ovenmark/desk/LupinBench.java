package io.ovenmark.desk;

import static io.ovenmark.notebook.NotebookFixture.piece;

import io.ovenmark.bake.Piece;
import io.ovenmark.notebook.FormulaFixture;
import io.ovenmark.notebook.NotebookFixture;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.pantry.Price;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A small notebook for the tests of answers: a seeded lupin bun of three revisions with a variant,
 * two bakes and a published revision, and a crispbread. All figures of bakes are invented.
 */
final class LupinBench implements AutoCloseable {
  static final String BUN = "seeded-lupin-bun";

  private final NotebookFixture fixture;
  private final Desk desk;

  LupinBench(Path temporary) {
    fixture = new NotebookFixture(temporary);
    fixture.goal(
        "low-carb-bun",
        """
        {"name": "Low-carbohydrate bun",
         "limits": [
           {"figure": "net_carbohydrate_g", "per": "piece", "at_most": 4},
           {"figure": "protein_g", "per": "piece", "at_least": 8}],
         "without": {"allergens": ["gluten"], "foods": ["honey"]}}
        """);
    fixture.goal(
        "egg-free-bun",
        """
        {"name": "Egg-free bun", "note": "For guests with egg allergy.",
         "limits": [{"figure": "net_carbohydrate_g", "per": "piece", "at_most": 4}],
         "without": {"allergens": ["eggs"]}}
        """);
    fixture
        .formula(BUN)
        .line("lupin-flour", "120 g")
        .line("psyllium-husk", "20 g")
        .line("egg-whole", "2 large")
        .line("water", "180 g")
        .set("lupin-flour.flour=true", "psyllium-husk.flour=true", "goal=low-carb-bun")
        .set("yield.pieces=6", "bake.temperature=200C", "bake.minutes=25")
        .method("Mix the dry part.", "Stir in the wet part and rest 10 min.", "Bake.")
        .revise("Begin");
    fixture.formula(BUN).set("water=188 g").revise("Wetter\n\nThe first dough tore.");
    fixture.bake(
        bun().at(2),
        List.of(
            piece("a", 200, 25, 76, 66, 38, "dense"),
            piece("b", 200, 30, 76, 64, 39, "dark base", "good oven spring")),
        "tray.jpg");
    fixture
        .formula(BUN)
        .line("sesame-seeds", "30 g")
        .set("sesame-seeds.note=toasted", "egg-whole=3 large", "bake.temperature=205C")
        .method("Mix the dry part.", "Stir in the wet part and rest 15 min.", "Bake.")
        .revise("Seeds, one more egg, hotter");
    fixture.bake(bun().at(3), List.of(piece("a", 205, 25, 89, 77, 47, "good oven spring")));
    new RecordWriter(fixture.notebook())
        .publish(bun().at(3), "For the breakfast basket", fixture.by());
    bun().fork("egg-free", "egg-free-bun").set("egg-whole=0 g", "water=230 g").revise("No egg");
    fixture
        .formula("sesame-crispbread")
        .line("sesame-seeds", "150 g")
        .line("psyllium-husk", "1 tbsp")
        .line("honey", "2 tsp")
        .revise("Begin");
    desk = new Desk(fixture.open());
  }

  NotebookFixture fixture() {
    return fixture;
  }

  Desk desk() {
    return desk;
  }

  FormulaFixture bun() {
    return fixture.formula(BUN);
  }

  /** A price for a food of the main line's pantry. */
  void price(String slug, String amount, String currency, double grams) {
    Food before = fixture.notebook().latest().food(slug).orElseThrow();
    Food after =
        new Food(
            slug,
            before.name(),
            before.kind(),
            before.source(),
            before.per100g(),
            before.household(),
            before.densityGramsPerMillilitre(),
            before.allergens(),
            before.polyol(),
            Optional.of(new Price(new BigDecimal(amount), currency, grams, Optional.empty())),
            before.extras());
    new RecordWriter(fixture.notebook())
        .saveFood(after, Optional.of(before), "Price of " + slug, fixture.by());
  }

  /** A piece that is gummy. */
  static Piece gummy() {
    return piece("a", 190, 25, 90, 82, 30, "gummy crumb");
  }

  /** Another label of the bun's flour, on the main line. */
  void relabelFlour() {
    fixture.relabel("lupin-flour", Nutrient.FIBRE, 30);
  }

  @Override
  public void close() {
    fixture.close();
  }
}
