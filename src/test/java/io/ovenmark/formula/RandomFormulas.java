package io.ovenmark.formula;

import io.ovenmark.json.Extras;
import io.ovenmark.json.JsonValue;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Temperature;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;

/** Formulas of every shape, repeatable by their seed. */
public final class RandomFormulas {
  private static final String[] AMOUNTS = {
    "150 g",
    "0 g",
    "1e3 g",
    "½ tsp",
    "1 1/2 cups",
    "1½ cups",
    "3 large",
    ".5 kg",
    "2 T",
    "1 can (400 ml)",
    "12 oz",
    "1/3 cup",
    "1000000 ml",
    "7 φέτες",
    "1 slice<b>"
  };
  private static final String[] TEMPERATURES = {
    "205 °C", "401F", "-18 °C", "162.8 °C", "600 °C", "375 deg F", "0 C"
  };
  private static final String[] TEXTS = {
    "",
    "plain",
    "Ψωμί λούπινου",
    "<script>alert(1)</script>",
    "two\nlines\r\n\ttab",
    "\"quoted\\\"",
    "🍞",
    "\u0000\u001f\u007f",
    "null",
    "e\u0301",
    "\u2028"
  };

  private final Random random;

  public RandomFormulas(long seed) {
    random = new Random(seed);
  }

  public Formula next() {
    List<Line> lines = new ArrayList<>();
    Formula ids = Formula.named("ids");
    for (int i = random.nextInt(6); i > 0; i--) {
      String food = random.nextInt(3) == 0 ? "water" : slug();
      Line line =
          new Line(
              ids.freeLineId(food),
              food,
              Amount.parse(one(AMOUNTS)),
              random.nextBoolean(),
              text(),
              extras());
      lines.add(line);
      ids = ids.withLines(lines);
    }
    List<BakeSetting> bake = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      bake.add(
          new BakeSetting(
              "stage-" + i,
              maybe(() -> Temperature.parse(one(TEMPERATURES))),
              number(0, 2880),
              text(),
              text(),
              text(),
              text(),
              extras()));
    }
    List<String> method = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      method.add(one(TEXTS));
    }
    return new Formula(
        "n" + one(TEXTS),
        text(),
        maybe(this::slug),
        maybe(this::slug),
        lines,
        method,
        bake,
        anyYield(),
        text(),
        extras());
  }

  private Yield anyYield() {
    boolean counted = random.nextBoolean();
    return new Yield(
        counted ? maybe(() -> 1 + random.nextInt(100_000)) : Optional.empty(),
        counted ? OptionalDouble.empty() : number(0.01, 1_000_000),
        number(0, 99.9));
  }

  /** Unknown fields, often none. */
  public Extras extras() {
    Map<String, JsonValue> members = new LinkedHashMap<>();
    for (int i = random.nextInt(4) - 1; i > 0; i--) {
      JsonValue leaf =
          random.nextBoolean()
              ? new JsonValue.JsonString(one(TEXTS))
              : new JsonValue.JsonNumber(BigDecimal.valueOf(random.nextInt(), random.nextInt(9)));
      members.put(
          "own " + one(TEXTS) + i,
          random.nextBoolean() ? leaf : new JsonValue.JsonArray(List.of(leaf, leaf)));
    }
    return Extras.of(members);
  }

  /** A short name. */
  public String slug() {
    return random.nextInt(9) == 0
        ? "x".repeat(64)
        : "food-" + Integer.toString(random.nextInt(1_000_000), 36);
  }

  /** A text or none. */
  public Optional<String> text() {
    return maybe(() -> one(TEXTS));
  }

  /** A number between limits, or none; the limits themselves come up often. */
  public OptionalDouble number(double least, double most) {
    return switch (random.nextInt(6)) {
      case 0 -> OptionalDouble.of(least);
      case 1 -> OptionalDouble.of(most);
      case 2 -> OptionalDouble.of(Math.rint(least + 1));
      case 3 -> OptionalDouble.of(Math.min(most, least + (most - least) * random.nextDouble()));
      default -> OptionalDouble.empty();
    };
  }

  /** Something or nothing. */
  public <T> Optional<T> maybe(Supplier<T> supplier) {
    return random.nextBoolean() ? Optional.of(supplier.get()) : Optional.empty();
  }

  /** One of several. */
  public String one(String... choices) {
    return choices[random.nextInt(choices.length)];
  }

  /** A number below a bound. */
  public int below(int bound) {
    return random.nextInt(bound);
  }
}
