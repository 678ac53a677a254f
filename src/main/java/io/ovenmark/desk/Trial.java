package io.ovenmark.desk;

import io.ovenmark.goal.Goal;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.Policy;
import java.util.Optional;

/**
 * A food, a goal or settings as they would be if something were saved; empty for what stays.
 *
 * @param food the food in the place of the one of its short name
 * @param goal the goal in the place of the one of its short name
 * @param policy the notebook's policy
 */
record Trial(Optional<Food> food, Optional<Goal> goal, Optional<Policy> policy) {
  /** As everything is. */
  static final Trial NOTHING = new Trial(Optional.empty(), Optional.empty(), Optional.empty());

  static Trial with(Food food) {
    return new Trial(Optional.of(food), Optional.empty(), Optional.empty());
  }

  static Trial with(Goal goal) {
    return new Trial(Optional.empty(), Optional.of(goal), Optional.empty());
  }

  static Trial with(Policy policy) {
    return new Trial(Optional.empty(), Optional.empty(), Optional.of(policy));
  }

  Optional<Food> food(String slug) {
    return food.filter(each -> each.slug().equals(slug));
  }

  Optional<Goal> goal(String slug) {
    return goal.filter(each -> each.slug().equals(slug));
  }
}
