package io.ovenmark.desk;

import io.ovenmark.goal.GoalCheck;
import io.ovenmark.goal.Limit;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Figure;
import java.util.Optional;

/** Turns goals held against worksheets into the records of answers. */
final class GoalViews {
  private GoalViews() {}

  static Views.GoalView view(GoalCheck check, ShownUnits units) {
    return new Views.GoalView(
        check.goal().slug(),
        check.goal().name(),
        check.goal().note().orElse(null),
        met(check.outcome()),
        check.results().stream().map(result -> rule(result, units)).toList());
  }

  private static Views.GoalRule rule(GoalCheck.Result result, ShownUnits units) {
    Optional<Limit> limit = result.limit();
    return new Views.GoalRule(
        limit.map(each -> each.inWords(units)).orElse(result.rule()),
        limit.map(l -> l.figure().key()).orElse(null),
        limit.filter(l -> l.figure().isMacro()).map(l -> l.basis().key()).orElse(null),
        limit
            .map(
                l ->
                    new Views.LimitView(
                        BakeViews.number(l.atLeast()), BakeViews.number(l.atMost())))
            .orElse(null),
        FigureSet.number(result.value()),
        limit.map(l -> text(result.value(), l.figure(), units)).orElse(null),
        met(result.outcome()),
        result.because());
  }

  private static String text(Quantity value, Figure figure, ShownUnits units) {
    return figure.isWeighed() ? units.mass(value) : FigureText.of(value, figure.unit());
  }

  static Boolean met(GoalCheck.Outcome outcome) {
    return switch (outcome) {
      case MET -> Boolean.TRUE;
      case BROKEN -> Boolean.FALSE;
      case UNKNOWN -> null;
    };
  }
}
