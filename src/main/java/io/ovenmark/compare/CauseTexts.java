package io.ovenmark.compare;

import io.ovenmark.compare.Contribution.Cause;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.ShownUnits;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Words for what a line did, written once and used by every figure. */
final class CauseTexts {
  private final List<LineComparison> lines;
  private final Map<String, String> names;
  private final ShownUnits units;
  private final String[] amounts;
  private final String[] foods;

  CauseTexts(List<LineComparison> lines, Map<String, String> names, ShownUnits units) {
    this.lines = lines;
    this.names = names;
    this.units = units;
    this.amounts = new String[lines.size()];
    this.foods = new String[lines.size()];
  }

  int lines() {
    return lines.size();
  }

  /** The part that a line's mass did. */
  Contribution amount(int index, double delta) {
    if (amounts[index] == null) {
      amounts[index] = amountText(lines.get(index));
    }
    return part(Cause.AMOUNT, amounts[index], index, delta);
  }

  /** The part that a line's food, or its food's data, did. */
  Contribution food(int index, double delta) {
    boolean replaced = lines.get(index).change() == LineChange.REPLACED;
    if (foods[index] == null) {
      foods[index] = foodText(lines.get(index), replaced);
    }
    return part(replaced ? Cause.FOOD : Cause.FOOD_DATA, foods[index], index, delta);
  }

  private Contribution part(Cause cause, String text, int index, double delta) {
    return new Contribution(cause, text, Optional.of(lines.get(index).id()), delta);
  }

  private String amountText(LineComparison line) {
    if (line.change() == LineChange.REPLACED) {
      return Words.brief(line.otherName().orElse(""))
          + " "
          + units.mass(line.from())
          + FigureText.ARROW
          + name(line)
          + " "
          + units.mass(line.to());
    }
    if (line.delta().isKnown()) {
      return name(line) + " " + units.massDifference(line.delta());
    }
    String from = line.fromEntered().orElse("");
    String to = line.toEntered().orElse("");
    String arrow = from.isEmpty() || to.isEmpty() ? "" : FigureText.ARROW;
    return name(line) + " " + from + arrow + to + ", of unknown weight";
  }

  private String foodText(LineComparison line, boolean replaced) {
    return replaced
        ? name(line) + " instead of " + Words.brief(line.otherName().orElse(""))
        : "new data of " + name(line);
  }

  private String name(LineComparison line) {
    return names.get(Words.key(line));
  }
}
