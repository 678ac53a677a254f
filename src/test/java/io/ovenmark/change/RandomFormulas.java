package io.ovenmark.change;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Temperature;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Formulas at random, always the same ones for a seed: {@link #formula} makes one, {@link #edited}
 * makes a descendant that shares most of it. Texts include other scripts, markup, line breaks and
 * an unpaired surrogate; ids come from a small stock, so that two descendants collide often.
 */
public final class RandomFormulas {
  private static final List<String> FOODS =
      List.of("water", "lupin-flour", "egg", "salt", "sesame", "butter", "psyllium-husk", "yeast");
  private static final List<String> AMOUNTS =
      List.of(
          "180 g", "202 g", "1 kg", "1000 g", "1/3 kg", "½ tsp", "0.5 tsp", "2 tbsp", "3 large",
          "0 g", "16 oz", "1 lb", "250 ml");
  private static final List<String> TEXTS =
      List.of(
          "Mix the dry parts.",
          "Mix the dry parts well, then rest.",
          "Άφησε τη ζύμη 20 λεπτά",
          "<script>alert(1)</script>",
          "two\nlines\n",
          "👩‍🍳 fold 3 times",
          "lone \uD83D half",
          "\"quoted\" & more",
          "middle",
          " ");
  private static final List<String> HEATS =
      List.of("205 °C", "401 °F", "190 °C", "400 °F", "-5 °C");
  private static final List<String> VALUES =
      List.of("1", "\"x\"", "null", "{\"a\": [1, 2]}", "true");
  private static final List<String> NAMES = List.of("proof", "x.y", "Ö", "amounts");
  private static final List<String> SLUGS = List.of("low-carb", "egg-free", "wheat-bun");

  private final Random random;

  /**
   * A source of formulas.
   *
   * @param seed decides all that follows
   */
  public RandomFormulas(long seed) {
    this.random = new Random(seed);
  }

  /**
   * Makes a formula.
   *
   * @return any formula, from empty to some ten lines
   */
  public Formula formula() {
    return edited(Formula.named("Seeded lupin bun"), random.nextInt(40));
  }

  /**
   * Changes a formula at some places.
   *
   * @param formula where to begin
   * @param edits how many changes, some of which may undo each other
   * @return the descendant
   */
  public Formula edited(Formula formula, int edits) {
    Formula result = formula;
    for (int i = 0; i < edits; i++) {
      result = edited(result);
    }
    return result;
  }

  private Formula edited(Formula f) {
    return switch (random.nextInt(15)) {
      case 0 -> f.withName(any(List.of("Bun", "Ψωμί", "<b>Bun</b>", "Seeded lupin bun")));
      case 1 -> f.withDescription(maybe(TEXTS));
      case 2 -> f.withGoal(maybe(SLUGS));
      case 3 -> f.withReference(maybe(SLUGS));
      case 4, 5, 6 -> f.withLines(lines(f.lines()));
      case 7, 8 -> f.withMethod(steps(f.method()));
      case 9, 10 -> f.withBake(stages(f.bake()));
      case 11 -> f.withYield(yields(f.yield()));
      case 12 -> f.withExtras(extras(f.extras()));
      case 13 -> f.withStorage(maybe(TEXTS));
      default -> f.withLines(changedLine(f.lines()));
    };
  }

  private List<Line> lines(List<Line> lines) {
    List<Line> result = new ArrayList<>(lines);
    int what = random.nextInt(6);
    if (what < 4) {
      String id = any(FOODS);
      if (lines.stream().noneMatch(line -> line.id().equals(id))) {
        result.add(random.nextInt(lines.size() + 1), line(id));
      }
    } else if (what == 4 && !lines.isEmpty()) {
      result.remove(random.nextInt(lines.size()));
    } else if (!lines.isEmpty()) {
      move(result);
    }
    return result;
  }

  private <T> void move(List<T> items) {
    T item = items.remove(random.nextInt(items.size()));
    items.add(random.nextInt(items.size() + 1), item);
  }

  private Line line(String id) {
    return new Line(
        id,
        random.nextInt(5) == 0 ? any(FOODS) : id,
        Amount.parse(any(AMOUNTS)),
        random.nextInt(3) == 0,
        maybe(TEXTS),
        random.nextInt(4) == 0 ? extras(Extras.NONE) : Extras.NONE);
  }

  private List<Line> changedLine(List<Line> lines) {
    if (lines.isEmpty()) {
      return lines;
    }
    List<Line> result = new ArrayList<>(lines);
    int index = random.nextInt(lines.size());
    Line line = lines.get(index);
    result.set(
        index,
        switch (random.nextInt(6)) {
          case 0 -> line.withFood(any(FOODS));
          case 1 -> line.withFlour(!line.flour());
          case 2 -> line.withNote(maybe(TEXTS));
          case 3 -> line.withExtras(extras(line.extras()));
          default -> line.withAmount(Amount.parse(any(AMOUNTS)));
        });
    return result;
  }

  private List<String> steps(List<String> steps) {
    List<String> result = new ArrayList<>(steps);
    int what = random.nextInt(6);
    if (what < 3 || steps.isEmpty()) {
      result.add(random.nextInt(steps.size() + 1), any(TEXTS));
    } else if (what == 3) {
      result.set(random.nextInt(steps.size()), any(TEXTS));
    } else if (what == 4) {
      result.remove(random.nextInt(steps.size()));
    } else {
      Collections.swap(result, 0, random.nextInt(steps.size()));
    }
    return result;
  }

  private List<BakeSetting> stages(List<BakeSetting> stages) {
    List<BakeSetting> result = new ArrayList<>(stages);
    int what = random.nextInt(8);
    if (what < 3 || stages.isEmpty()) {
      String id = any(List.of("bake", "bake-2", "finish", "rest"));
      if (stages.stream().noneMatch(stage -> stage.id().equals(id))) {
        result.add(random.nextInt(stages.size() + 1), changed(BakeSetting.named(id)));
      }
    } else if (what == 3) {
      result.remove(random.nextInt(stages.size()));
    } else if (what == 4) {
      move(result);
    } else {
      int index = random.nextInt(stages.size());
      result.set(index, changed(stages.get(index)));
    }
    return result;
  }

  private BakeSetting changed(BakeSetting stage) {
    return switch (random.nextInt(7)) {
      case 0 -> stage.withMinutes(number(List.of(18.0, 21.5, 0.1)));
      case 1 -> stage.withRack(maybe(TEXTS));
      case 2 -> stage.withSteam(maybe(TEXTS));
      case 3 -> stage.withVessel(maybe(TEXTS));
      case 4 -> stage.withNote(maybe(TEXTS));
      case 5 -> stage.withExtras(extras(stage.extras()));
      default -> stage.withTemperature(maybe(HEATS).map(Temperature::parse));
    };
  }

  private Yield yields(Yield yield) {
    OptionalDouble none = OptionalDouble.empty();
    return switch (random.nextInt(4)) {
      case 0 ->
          new Yield(Optional.of(1 + random.nextInt(4)), none, yield.handlingLossPercent());
      case 1 ->
          new Yield(Optional.empty(), number(List.of(85.0, 90.5)), yield.handlingLossPercent());
      case 2 ->
          new Yield(yield.pieces(), yield.doughPerPieceGrams(), number(List.of(0.0, 2.5, 3.0)));
      default -> new Yield(Optional.empty(), none, yield.handlingLossPercent());
    };
  }

  private Extras extras(Extras extras) {
    String name = any(NAMES);
    return extras.with(
        name, random.nextInt(4) == 0 ? Extras.NONE : extra(name, any(VALUES)));
  }

  /**
   * One unknown field.
   *
   * @param name its name
   * @param json its JSON text
   * @return the field alone
   */
  public static Extras extra(String name, String json) {
    String object = "{\"" + name + "\": " + json + "}";
    return Fields.of("test", object.getBytes(StandardCharsets.UTF_8)).extras();
  }

  private OptionalDouble number(List<Double> stock) {
    return random.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(any(stock));
  }

  private Optional<String> maybe(List<String> stock) {
    return random.nextInt(4) == 0 ? Optional.empty() : Optional.of(any(stock));
  }

  private <T> T any(List<T> stock) {
    return stock.get(random.nextInt(stock.size()));
  }
}
