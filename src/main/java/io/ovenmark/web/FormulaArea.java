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
        .question("formulas", context -> new ListFormulas(desk).call())
        .question(
            "timeline",
            context -> new ShowTimeline(desk).call(Asked.address(desk, context, "line")))
        .question(
            "sheet", context -> new ShowFormula(desk).call(Asked.address(desk, context, "address")))
        .question(
            "compare",
            context ->
                new CompareRevisions(desk)
                    .call(
                        Asked.address(desk, context, "from"), Asked.address(desk, context, "to")));
  }
}
