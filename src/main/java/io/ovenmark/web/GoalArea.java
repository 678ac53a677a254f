package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.GoalForm;
import io.ovenmark.desk.KeepGoal;
import io.ovenmark.desk.ListGoals;
import io.ovenmark.desk.ShowGoal;

/** Goals: what a formula is to reach. */
final class GoalArea implements Area {
  private final Desk desk;
  private final Opening opening;

  GoalArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.opening = opening;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("goals", context -> new ListGoals(Asked.desk(desk, context)).call())
        .question("goals/standing", context -> new ListGoals(Asked.desk(desk, context)).standing())
        .question("goal", context -> show(context).call(Asked.text(context, "goal")))
        .question("goal/page", context -> show(context).page(Asked.text(context, "goal")))
        .question("goal/others", context -> show(context).others(Asked.text(context, "goal")))
        .order(
            "goal/try",
            context ->
                new KeepGoal(Asked.desk(desk, context))
                    .look(Asked.order(context, GoalForm.class)))
        .order(
            "goal/save",
            context ->
                new KeepGoal(desk)
                    .call(Asked.order(context, GoalForm.class), opening.by().get()));
  }

  private ShowGoal show(Context context) {
    return new ShowGoal(Asked.desk(desk, context));
  }
}
