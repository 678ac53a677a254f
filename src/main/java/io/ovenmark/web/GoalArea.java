package io.ovenmark.web;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ListGoals;
import io.ovenmark.desk.ShowGoal;

/** Goals: what a formula is to reach. */
final class GoalArea implements Area {
  private final Desk desk;

  GoalArea(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("goals", context -> new ListGoals(Asked.desk(desk, context)).call())
        .question(
            "goal",
            context ->
                new ShowGoal(Asked.desk(desk, context)).call(Asked.text(context, "goal")));
  }
}
