package io.ovenmark.cause;

import io.ovenmark.cause.Plan.Weighed;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What to weigh for a dough whose lines are those of one side or the other. */
final class Weighing {
  private Weighing() {}

  static List<Weighed> lines(
      Formula formula, Worksheet later, Worksheet earlier, Quantity wanted) {
    List<Optional<WorksheetLine>> found = new ArrayList<>();
    Quantity batch = Quantity.ZERO;
    for (Line line : formula.lines()) {
      Optional<WorksheetLine> side = find(line, later).or(() -> find(line, earlier));
      found.add(side);
      batch = batch.plus(side.map(WorksheetLine::grams).orElse(Quantity.UNKNOWN));
    }
    List<Weighed> lines = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      Line line = formula.lines().get(i);
      Optional<WorksheetLine> side = found.get(i);
      boolean differs =
          Stream.of(later, earlier).anyMatch(sheet -> amountIn(sheet, line).isEmpty());
      Quantity grams = side.map(WorksheetLine::grams).orElse(Quantity.UNKNOWN);
      lines.add(
          new Weighed(
              line,
              side.map(WorksheetLine::name).orElse(line.food()),
              differs,
              batch.isKnown() && wanted.isKnown() && batch.low() > 0
                  ? grams.times(wanted.low() / batch.low())
                  : Quantity.UNKNOWN));
    }
    return lines;
  }

  private static Optional<WorksheetLine> find(Line line, Worksheet sheet) {
    return sheet.lines().stream().filter(each -> each.line().equals(line)).findFirst();
  }

  private static Optional<Line> amountIn(Worksheet sheet, Line line) {
    return sheet.formula().lines().stream()
        .filter(
            each -> each.food().equals(line.food()) && each.amount().equals(line.amount()))
        .findFirst();
  }
}
