package io.ovenmark.desk;

import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.NetCarbohydrate;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shows a goal and how the formulas that state it stand to it now: the goal as the main line has it,
 * the newest revision of each line of history, the foods that line has.
 *
 * <pre>{@code
 * KitchenViews.GoalSheet sheet = new ShowGoal(desk).call("low-carb");
 * }</pre>
 */
public final class ShowGoal {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShowGoal(Desk desk) {
    this.desk = desk;
  }

  /**
   * Shows it.
   *
   * @param slug the goal's short name
   * @return the goal and the formulas
   * @throws Refusal when there is no such goal
   * @throws UnreadableException when its file is damaged
   */
  public KitchenViews.GoalSheet call(String slug) {
    Asked.slug("goal", slug);
    Contents contents = desk.notebook().latest();
    Goal goal = contents.goal(slug).orElseThrow(() -> noGoal(slug, contents));
    List<KitchenViews.GoalStanding> standings = new ArrayList<>();
    new LinesInUse(desk.notebook())
        .where(formula -> formula.goal().equals(Optional.of(slug)))
        .forEach(use -> standings.add(standing(goal, use)));
    return new KitchenViews.GoalSheet(
        slug,
        goal.name(),
        goal.note().orElse(null),
        GoalParts.rules(goal, desk.units()),
        goal.limits().stream().map(GoalParts::limit).toList(),
        goal.withoutAllergens(),
        goal.withoutFoods(),
        goal.netCarbohydrate().map(NetCarbohydrate::inWords).orElse(null),
        standings);
  }

  /**
   * Shows it for its page: in the words of a form, with cautions.
   *
   * @param slug the goal's short name
   * @return the goal
   * @throws Refusal when there is no such goal
   * @throws UnreadableException when its file is damaged
   */
  public KitchenWork.GoalPage page(String slug) {
    Contents contents = desk.notebook().latest();
    KitchenViews.GoalSheet sheet = call(slug);
    Goal goal = contents.goal(slug).orElseThrow(() -> noGoal(slug, contents));
    return new KitchenWork.GoalPage(
        sheet,
        contents.commit().hex(),
        goal.netCarbohydrate().map(ShowGoal::shares).orElse(null),
        GoalReading.facts(goal),
        Cautions.of(goal));
  }

  /**
   * How the lines of history that do not state a goal would stand to it.
   *
   * @param slug the goal's short name
   * @return their newest revisions
   * @throws Refusal when there is no such goal
   */
  public KitchenWork.Standings others(String slug) {
    Asked.slug("goal", slug);
    Contents contents = desk.notebook().latest();
    Goal goal = contents.goal(slug).orElseThrow(() -> noGoal(slug, contents));
    return new KitchenWork.Standings(
        new LinesInUse(desk.notebook())
            .where(formula -> !formula.goal().equals(Optional.of(slug))).stream()
                .map(use -> standing(goal, use))
                .toList());
  }

  /** What a rule takes from carbohydrate, by name. */
  static Map<String, Double> shares(NetCarbohydrate net) {
    Map<String, Double> shares = new LinkedHashMap<>();
    shares.put("fibre", net.fibre());
    shares.put("polyols", net.polyols());
    shares.put("allulose", net.allulose());
    return shares;
  }

  private KitchenViews.GoalStanding standing(Goal goal, LinesInUse.Use use) {
    Address line = use.line();
    Revision newest = desk.notebook().newest(line);
    Views.GoalView standing = null;
    List<Views.ProblemView> problems = List.of();
    try {
      standing = GoalViews.view(GoalCheck.of(goal, worksheet(goal, use, newest)), desk.units());
    } catch (UnreadableException | StoreException e) {
      problems = Refusals.problemsOf(e);
    }
    return new KitchenViews.GoalStanding(
        newest.address().toString(),
        line.formula(),
        line.variant().orElse(null),
        use.formula().name(),
        standing,
        problems);
  }

  private Worksheet worksheet(Goal goal, LinesInUse.Use use, Revision newest) {
    Notebook notebook = desk.notebook();
    Contents contents = notebook.latest(use.line());
    Policy policy = contents.settings().policy();
    NetCarbohydrate net = goal.netCarbohydrate().orElse(policy.netCarbohydrate());
    BakedYield baked =
        BakedYield.measured(
            Desk.bakesOf(newest.blob().hex(), notebook.bakes(use.line().formula())));
    return Worksheet.of(
        use.formula(), contents::food, new Policy(policy.energy(), net), baked);
  }

  private static Refusal noGoal(String slug, Contents contents) {
    List<String> goals = contents.goals();
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        "goal " + slug,
        "There is no goal \"" + slug + "\" in this notebook.",
        (goals.isEmpty() ? "" : "Its goals are " + String.join(", ", goals) + ". ")
            + "Add one with: ovenmark goal add " + slug);
  }
}
