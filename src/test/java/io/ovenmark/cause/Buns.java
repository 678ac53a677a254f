package io.ovenmark.cause;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.compare.Side;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Temperature;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Buns of the invented Saltmarsh bench in small, with foods of the built-in pantry. */
final class Buns {
  private Buns() {}

  /** A formula of lines such as {@code water 180 g}, six pieces. */
  static Formula formula(String temperature, double minutes, String... lines) {
    List<Line> all = new ArrayList<>();
    for (String line : lines) {
      String[] words = line.split(" ", 2);
      all.add(
          Line.of(words[0], words[0], Amount.parse(words[1]))
              .withFlour(words[0].contains("flour")));
    }
    BakeSetting stage =
        BakeSetting.named("bake")
            .withTemperature(Optional.of(Temperature.parse(temperature)))
            .withMinutes(OptionalDouble.of(minutes))
            .withRack(Optional.of("middle"))
            .withVessel(Optional.of("black tray"));
    Formula named = Formula.named("Bun");
    return new Formula(
        named.name(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        all,
        List.of("Mix.", "Bake."),
        List.of(stage),
        Yield.ofPieces(6),
        Optional.empty(),
        Extras.NONE);
  }

  static Formula bun(int water, String temperature, double minutes) {
    return formula(
        temperature,
        minutes,
        "lupin-flour 150 g",
        "psyllium-husk 30 g",
        "egg-whole 50 g",
        "butter-unsalted 20 g",
        "baking-powder 9 g",
        "water " + water + " g");
  }

  static Worksheet sheet(Formula formula) {
    return Worksheet.of(
        formula, BuiltInPantry::find, Policy.USUAL, BakedYield.measured(List.of()));
  }

  static Baked baked(int number, Formula formula, Piece... pieces) {
    return baked(number, formula, List.of(), pieces);
  }

  static Baked baked(int number, Formula formula, List<String> tray, Piece... pieces) {
    String day = String.format(Locale.ROOT, "2026-08-%02d", number);
    Bake bake =
        new Bake(
            "bun",
            day + "-1",
            "bun@" + number,
            "a".repeat(40),
            OffsetDateTime.parse(day + "T10:00:00+02:00"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(pieces),
            tray,
            List.of(),
            Extras.NONE);
    return new Baked(
        Side.of("bun@" + number, sheet(formula)).withBakes(List.of(bake)));
  }

  static Piece piece(
      String id, String temperature, double minutes, double core, String... findings) {
    return new Piece(
        id,
        temperature.isEmpty() ? Optional.empty() : Optional.of(Temperature.parse(temperature)),
        minutes == 0 ? OptionalDouble.empty() : OptionalDouble.of(minutes),
        Optional.of("middle"),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        core == 0 ? Optional.empty() : Optional.of(Temperature.celsius(core)),
        OptionalDouble.empty(),
        List.of(findings),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }
}
