package io.ovenmark.web;

import io.ovenmark.desk.CompareRevisions;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ListFormulas;
import io.ovenmark.desk.ShowFormula;
import io.ovenmark.desk.ShowTimeline;

/** Formulas as they are: the list, a sheet, a timeline, a comparison. */
final class FormulaArea implements Area {
  private final Desk desk;

  FormulaArea(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("formulas", context -> new ListFormulas(Asked.desk(desk, context)).call())
        .question(
            "timeline",
            context ->
                new ShowTimeline(Asked.desk(desk, context))
                    .call(Asked.address(desk, context, "line")))
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
}
