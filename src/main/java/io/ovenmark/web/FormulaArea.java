package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.CompareRevisions;
import io.ovenmark.desk.DescribeNotebook;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ListFormulas;
import io.ovenmark.desk.ShowFormula;
import io.ovenmark.desk.ShowTimeline;
import io.ovenmark.desk.ShowTrends;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.util.List;

/** Formulas as they are: the list, a sheet, a timeline, a comparison. */
final class FormulaArea implements Area {
  private static final int MOST_ROWS = 100;
  private static final int MOST_FIGURES = 12;

  private final Desk desk;

  FormulaArea(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("notebook/line", context -> new DescribeNotebook(desk).call())
        .question("formulas", context -> new ListFormulas(Asked.desk(desk, context)).call())
        .question(
            "timeline",
            context ->
                new ShowTimeline(Asked.desk(desk, context))
                    .call(Asked.address(desk, context, "line")))
        .question(
            "timeline/spine",
            context ->
                new ShowTimeline(Asked.desk(desk, context))
                    .spine(Asked.address(desk, context, "line")))
        .question(
            "timeline/rows",
            context -> new ShowTimeline(Asked.desk(desk, context)).rows(rows(context)))
        .question("trends", this::trends)
        .question(
            "sheet",
            context ->
                new ShowFormula(Asked.desk(desk, context))
                    .call(Asked.address(desk, context, "address")))
        .question(
            "compare",
            context ->
                new CompareRevisions(Asked.desk(desk, context))
                    .call(
                        Asked.address(desk, context, "from"), Asked.address(desk, context, "to")));
  }

  private Object trends(Context context) {
    Address line = Asked.address(desk, context, "line");
    List<String> keys = List.of(Asked.text(context, "figures").split(","));
    return new ShowTrends(Asked.desk(desk, context))
        .call(
            line,
            keys.subList(0, Math.min(MOST_FIGURES, keys.size())),
            Asked.optional(context, "from").map(desk::address),
            Asked.optional(context, "to").map(desk::address));
  }

  private List<Address> rows(Context context) {
    List<String> words = List.of(Asked.text(context, "of").split(","));
    if (words.size() > MOST_ROWS) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "of",
          "More than " + MOST_ROWS + " rows were asked for.",
          "Ask for fewer at once.");
    }
    return words.stream().map(desk::address).toList();
  }
}
