package io.ovenmark.speed;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.lever.Answer;
import io.ovenmark.lever.Levers;
import io.ovenmark.lever.LineLimit;
import io.ovenmark.lever.Question;
import io.ovenmark.lever.Readings;
import io.ovenmark.lever.Wish;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Questions about levers on a formula of 25 lines, beside the search for the same single changes by
 * trying every gram of every line from nothing to twice what it is.
 */
final class LeversRun {
  private static final int WARM = 150;
  private static final int MEASURED = 60;

  private LeversRun() {}

  static long measure(SpeedTable table) throws Exception {
    Formula formula = new GeneratedFormulas(new Random(11)).begin("Levers");
    Worksheet sheet = workOut(formula);
    double ratio = sheet.liquidRatio().low() * 0.9;
    Wish drier = Wish.read("liquid ratio at most " + text(ratio));
    Question open = Question.of(drier);
    long sink = 0;
    for (int i = 0; i < WARM; i++) {
      sink += ask(sheet, open).answers().size();
    }
    Sample ours = new Sample();
    Sample grid = new Sample();
    List<Levers> last = new ArrayList<>();
    int[] found = new int[1];
    for (int i = 0; i < MEASURED; i++) {
      ours.time(() -> last.add(ask(sheet, open)));
      if (i % 12 == 0) {
        grid.time(() -> found[0] += searched(formula, drier));
      }
    }
    long singles =
        last.get(0).answers().stream()
            .filter(answer -> answer.kind() == Answer.Kind.SINGLE)
            .count();
    table.compared(
        "levers: a wish on 25 lines, " + singles + " single changes and the combined one, warm",
        ours,
        "the single changes by trying every gram",
        grid,
        0.5);
    table.alone("the same, at most 50 ms", ours, "under 50 ms");

    double protein = sheet.figure(Figure.PROTEIN, Basis.PIECE).low();
    Question several =
        Question.of(
                drier,
                Wish.read("protein a piece at least " + text(protein * 1.05)),
                Wish.read(
                    "dough a piece at most "
                        + text(sheet.doughPerPieceGrams().low() * 1.02)
                        + " g"))
            .within(limits(sheet, 30));
    sink += alone(table, "levers: three wishes, a limit on each line, warm", sheet, several);
    Question impossible =
        Question.of(Wish.read("liquid ratio at most " + text(ratio / 3)))
            .within(limits(sheet, 10));
    sink += alone(table, "levers: why a wish is impossible, warm", sheet, impossible);
    return sink + found[0];
  }

  private static long alone(SpeedTable table, String what, Worksheet sheet, Question question)
      throws Exception {
    long[] sink = new long[1];
    for (int i = 0; i < WARM; i++) {
      sink[0] += ask(sheet, question).answers().size();
    }
    Sample sample = new Sample();
    for (int i = 0; i < MEASURED; i++) {
      sample.time(() -> sink[0] += ask(sheet, question).remarks().size());
    }
    table.alone(what, sample, "under 50 ms");
    return sink[0];
  }

  private static LineLimit[] limits(Worksheet sheet, double percent) {
    return sheet.lines().stream()
        .map(line -> LineLimit.within(line.line().id(), line.grams().low(), percent))
        .toArray(LineLimit[]::new);
  }

  private static Levers ask(Worksheet sheet, Question question) {
    return Levers.of(sheet, question, Readings.FINE, ShownUnits.AS_WRITTEN);
  }

  /** How many lines can grant the wish, by working out the formula with every whole gram. */
  private static int searched(Formula formula, Wish wish) {
    int found = 0;
    for (int i = 0; i < formula.lines().size(); i++) {
      Line line = formula.lines().get(i);
      int now = line.amount().grams().orElseThrow().intValue();
      boolean granted = false;
      for (int grams = 0; grams <= 2 * now; grams++) {
        List<Line> lines = new ArrayList<>(formula.lines());
        lines.set(i, line.withAmount(Amount.grams(BigDecimal.valueOf(grams))));
        granted |= wish.isMet(workOut(formula.withLines(lines)));
      }
      found += granted ? 1 : 0;
    }
    return found;
  }

  private static Worksheet workOut(Formula formula) {
    return Worksheet.of(formula, BuiltInPantry::find, Policy.USUAL, BakedYield.UNMEASURED);
  }

  private static String text(double value) {
    return BigDecimal.valueOf(Math.round(value * 1000), 3).toPlainString();
  }
}
