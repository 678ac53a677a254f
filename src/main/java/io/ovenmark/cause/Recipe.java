package io.ovenmark.cause;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A dough and its oven, as a planned piece has them.
 *
 * @param formula lines, method, what is prescribed besides, and the oven below in its first stage
 * @param temperature oven temperature; empty when it is not known
 * @param minutes time in the oven; empty when it is not known
 * @param rack place in the oven; empty when it is not noted
 * @param pieceGrams dough of a piece
 */
public record Recipe(
    Formula formula,
    Optional<Temperature> temperature,
    OptionalDouble minutes,
    Optional<String> rack,
    Quantity pieceGrams) {
  /** Checks that nothing is null. */
  public Recipe {
    requireNonNull(formula, "formula");
    requireNonNull(temperature, "temperature");
    requireNonNull(minutes, "minutes");
    requireNonNull(rack, "rack");
    requireNonNull(pieceGrams, "pieceGrams");
  }

  Recipe withFormula(Formula next) {
    return new Recipe(next, temperature, minutes, rack, pieceGrams);
  }

  Recipe withTemperature(Optional<Temperature> next) {
    return new Recipe(formula, next, minutes, rack, pieceGrams);
  }

  Recipe withMinutes(OptionalDouble next) {
    return new Recipe(formula, temperature, next, rack, pieceGrams);
  }

  Recipe withRack(Optional<String> next) {
    return new Recipe(formula, temperature, minutes, next, pieceGrams);
  }

  Recipe withPieceGrams(Quantity next) {
    return new Recipe(formula, temperature, minutes, rack, next);
  }

  /** The formula with one of its lines as it is given, put in its place, added or taken away. */
  static Formula withLine(Formula formula, String id, Optional<Line> line, int place) {
    List<Line> lines = new ArrayList<>(formula.lines());
    int at = -1;
    for (int i = 0; i < lines.size(); i++) {
      at = lines.get(i).id().equals(id) ? i : at;
    }
    if (at >= 0) {
      lines.remove(at);
    }
    if (line.isPresent()) {
      lines.removeIf(each -> each.id().equals(line.get().id()));
      lines.add(Math.min(at >= 0 ? at : place, lines.size()), line.get());
    }
    return Recipes.withLines(formula, lines);
  }

  /**
   * The formula as it would be kept: with this oven in its first stage.
   *
   * @return the formula
   */
  public Formula kept() {
    BakeSetting stage =
        formula.bake().isEmpty() ? BakeSetting.named("bake") : formula.bake().get(0);
    return Recipes.withFirstStage(
        formula,
        stage
            .withTemperature(temperature.or(stage::temperature))
            .withMinutes(minutes.isPresent() ? minutes : stage.minutes())
            .withRack(rack.or(stage::rack)));
  }

  /** Whether it is of the same dough. */
  boolean sameDough(Formula other) {
    return formula.lines().equals(other.lines()) && formula.method().equals(other.method());
  }

  /** Whether tray, steam and later stages are the same. */
  boolean sameStages(Formula other) {
    return stages(formula).equals(stages(other));
  }

  /** What of the oven takes a load of its own, besides temperature and rack. */
  static List<BakeSetting> stages(Formula formula) {
    List<BakeSetting> stages = new ArrayList<>(formula.bake());
    if (!stages.isEmpty()) {
      stages.set(
          0,
          stages
              .get(0)
              .withTemperature(Optional.empty())
              .withMinutes(OptionalDouble.empty())
              .withRack(Optional.empty())
              .withNote(Optional.empty()));
    }
    return stages;
  }

  /**
   * The oven in words.
   *
   * @param units how temperatures are shown
   * @return such as {@code 205 °C for 21 min}; empty when neither is known
   */
  public String oven(ShownUnits units) {
    List<String> words = new ArrayList<>();
    temperature.ifPresent(heat -> words.add(units.heat(heat)));
    minutes.ifPresent(
        time -> words.add((words.isEmpty() ? "" : "for ") + FigureText.number(time) + " min"));
    return String.join(" ", words);
  }
}
