package io.ovenmark.speed;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Temperature;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Formulas of 25 lines, small changes of them, and bakes: invented, the same each time. */
final class GeneratedFormulas {
  static final int LINES = 25;
  static final int FOODS = 60;
  static final List<String> GOALS = List.of("low-carb-bun", "egg-free-bun", "nut-free-muffin");
  private static final List<String> STEPS =
      List.of(
          "Whisk everything dry together.",
          "Whip the egg white to soft peaks; whisk the liquids, pour in, stir for one minute.",
          "Rest 15 min until the fibre has set.",
          "Divide and round with wet hands.",
          "Bake to a core of 94 °C or more and cool on a rack for an hour before cutting.");
  private static final List<String> FINDINGS =
      List.of("even crumb", "gummy crumb", "dense", "dry", "pale", "good oven spring");

  private final Random random;
  private final List<String> foods;

  GeneratedFormulas(Random random) {
    this.random = random;
    this.foods = foods().stream().map(Food::slug).toList();
  }

  /** The pantry: foods of the built-in table, spread over all kinds. */
  static List<Food> foods() {
    List<Food> all = BuiltInPantry.all();
    List<Food> chosen = new ArrayList<>();
    for (int i = 0; i < FOODS; i++) {
      chosen.add(all.get(i * all.size() / FOODS));
    }
    return chosen;
  }

  Formula begin(String name) {
    Formula formula =
        Formula.named(name)
            .withDescription(Optional.of("Generated to measure with."))
            .withGoal(Optional.of(GOALS.get(random.nextInt(GOALS.size()))))
            .withYield(
                new Yield(
                    Optional.of(6 + random.nextInt(12)),
                    OptionalDouble.empty(),
                    OptionalDouble.of(3)))
            .withMethod(STEPS)
            .withBake(
                List.of(
                    BakeSetting.named("bake")
                        .withTemperature(Optional.of(Temperature.parse("205 °C")))
                        .withMinutes(OptionalDouble.of(21))
                        .withRack(Optional.of("middle"))
                        .withVessel(Optional.of("black steel tray, baking paper"))));
    List<Line> lines = new ArrayList<>();
    int first = random.nextInt(foods.size());
    for (int i = 0; i < LINES; i++) {
      String food = foods.get((first + i * 7) % foods.size());
      Line line = Line.of(food, food, grams()).withFlour(i < 2);
      lines.add(i % 5 == 4 ? line.withNote(Optional.of("sifted")) : line);
    }
    return formula.withLines(lines);
  }

  private Amount grams() {
    return Amount.grams(BigDecimal.valueOf(5 + random.nextInt(180)));
  }

  /** What a person changes from one revision to the next: mostly an amount or two. */
  Formula change(Formula formula) {
    int kind = random.nextInt(20);
    if (kind < 2) {
      double celsius = 180 + 5 * random.nextInt(10);
      return formula.withBake(
          List.of(
              formula
                  .bake()
                  .get(0)
                  .withTemperature(Optional.of(Temperature.celsius(celsius)))
                  .withMinutes(OptionalDouble.of(16 + random.nextInt(14)))));
    }
    if (kind == 2) {
      List<String> method = new ArrayList<>(formula.method());
      method.set(2, "Rest " + (5 + random.nextInt(40)) + " min until the fibre has set.");
      return formula.withMethod(method);
    }
    List<Line> lines = new ArrayList<>(formula.lines());
    int at = random.nextInt(lines.size());
    if (kind == 3) {
      lines.set(at, lines.get(at).withFood(foods.get(random.nextInt(foods.size()))));
    } else {
      lines.set(at, lines.get(at).withAmount(grams()));
      if (kind > 12) {
        int other = random.nextInt(lines.size());
        lines.set(other, lines.get(other).withAmount(grams()));
      }
    }
    return formula.withLines(lines);
  }

  /** A tray of four pieces with photos, on which they are marked. */
  Bake bake(
      String slug,
      String id,
      int revision,
      String blob,
      OffsetDateTime time,
      List<String> files) {
    List<Piece> pieces = new ArrayList<>();
    for (String letter : List.of("a", "b", "c", "d")) {
      double dough = 90 + random.nextInt(8);
      pieces.add(
          new Piece(
              letter,
              Optional.of(Temperature.celsius(195 + 5.0 * random.nextInt(5))),
              OptionalDouble.of(18 + random.nextInt(8)),
              Optional.of("middle"),
              OptionalDouble.of(dough),
              OptionalDouble.of(dough - 8 - random.nextInt(5)),
              OptionalDouble.of(80 + random.nextInt(12)),
              OptionalDouble.of(34 + random.nextInt(14)),
              Optional.of(Temperature.celsius(94 + random.nextInt(5))),
              OptionalDouble.of(1 + random.nextInt(3)),
              List.of(FINDINGS.get(random.nextInt(FINDINGS.size()))),
              List.of(liking(), liking(), liking(), liking(), liking(), liking()),
              List.of(),
              Optional.empty(),
              Optional.empty(),
              Extras.NONE));
    }
    return new Bake(
        slug,
        id,
        slug + "@" + revision,
        blob,
        time,
        Optional.of("Ines"),
        Optional.of("20 °C"),
        Optional.empty(),
        pieces,
        List.of(),
        files.stream().map(GeneratedFormulas::photo).toList(),
        Extras.NONE);
  }

  private static Photo photo(String file) {
    return new Photo(
        file,
        Optional.of("The tray out of the oven"),
        Optional.empty(),
        List.of(new Photo.Mark("a", 0.25, 0.3), new Photo.Mark("b", 0.75, 0.3)),
        Extras.NONE);
  }

  private double liking() {
    return 4 + random.nextInt(6);
  }
}
