package io.ovenmark.desk;

import io.ovenmark.goal.Goal;
import io.ovenmark.goal.Limit;
import io.ovenmark.measure.ShownUnits;
import java.util.ArrayList;
import java.util.List;

/** What the verbs about goals have in common. */
final class GoalParts {
  private GoalParts() {}

  /** The rules in words, in the order in which they are checked. */
  static List<String> rules(Goal goal, ShownUnits units) {
    List<String> rules = new ArrayList<>();
    goal.limits().stream().map(limit -> limit.inWords(units)).forEach(rules::add);
    goal.withoutAllergens().forEach(word -> rules.add("no " + word));
    goal.withoutFoods().forEach(food -> rules.add("no " + food));
    return rules;
  }

  static KitchenViews.GoalLimit limit(Limit limit) {
    return new KitchenViews.GoalLimit(
        limit.figure().key(),
        limit.figure().isMacro() ? limit.basis().key() : null,
        new Views.LimitView(BakeViews.number(limit.atLeast()), BakeViews.number(limit.atMost())));
  }
}
