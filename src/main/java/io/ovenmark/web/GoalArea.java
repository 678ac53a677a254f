package io.ovenmark.web;

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
        .question("goals", context -> new ListGoals(desk).call())
        .question("goals/standing", context -> new ListGoals(desk).standing())
        .question("goal", context -> new ShowGoal(desk).call(Asked.text(context, "goal")))
        .question("goal/page", context -> new ShowGoal(desk).page(Asked.text(context, "goal")))
        .question("goal/others", context -> new ShowGoal(desk).others(Asked.text(context, "goal")))
        .order(
            "goal/try", context -> new KeepGoal(desk).look(Asked.order(context, GoalForm.class)))
        .order(
            "goal/save",
            context ->
                new KeepGoal(desk)
                    .call(Asked.order(context, GoalForm.class), opening.by().get()));
  }
}
