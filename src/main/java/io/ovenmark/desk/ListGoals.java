package io.ovenmark.desk;

import io.ovenmark.goal.Goal;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.store.StoreException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lists the goals of a notebook with the formulas that state them. A goal whose file is damaged is
 * listed with what is wrong.
 *
 * <pre>{@code
 * KitchenViews.GoalList goals = new ListGoals(desk).call();
 * }</pre>
 */
public final class ListGoals {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ListGoals(Desk desk) {
    this.desk = desk;
  }

  /**
   * Lists them.
   *
   * @return the goals by short name
   */
  public KitchenViews.GoalList call() {
    Contents contents = desk.notebook().latest();
    LinesInUse lines = new LinesInUse(desk.notebook());
    List<KitchenViews.GoalEntry> entries = new ArrayList<>();
    for (String slug : contents.goals()) {
      List<String> usedBy = lines.withGoal(slug);
      try {
        contents.goal(slug).map(goal -> entry(goal, usedBy)).ifPresent(entries::add);
      } catch (UnreadableException | StoreException e) {
        entries.add(
            new KitchenViews.GoalEntry(
                slug, slug, null, List.of(), usedBy, Refusals.problemsOf(e)));
      }
    }
    return new KitchenViews.GoalList(entries);
  }

  /**
   * How every goal stands in the lines of history that state it.
   *
   * @return by short name of the goal; a goal that cannot be read is left out, {@link #call} tells
   *     what is wrong with it
   */
  public Map<String, KitchenWork.Standings> standing() {
    Map<String, KitchenWork.Standings> standings = new LinkedHashMap<>();
    for (String slug : desk.notebook().latest().goals()) {
      try {
        standings.put(slug, new KitchenWork.Standings(new ShowGoal(desk).call(slug).formulas()));
      } catch (UnreadableException | StoreException e) {
        Refusals.problemsOf(e);
      }
    }
    return standings;
  }

  private KitchenViews.GoalEntry entry(Goal goal, List<String> usedBy) {
    return new KitchenViews.GoalEntry(
        goal.slug(),
        goal.name(),
        goal.note().orElse(null),
        GoalParts.rules(goal, desk.units()),
        usedBy,
        List.of());
  }
}
