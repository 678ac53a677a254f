package io.ovenmark.desk;

import io.ovenmark.cause.Factorial;
import io.ovenmark.cause.Plan;
import io.ovenmark.cause.Recipe;
import io.ovenmark.formula.Formula;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Makes the views of plans. */
final class PlanViewMaker {
  private final ShownUnits units;

  PlanViewMaker(ShownUnits units) {
    this.units = units;
  }

  List<CauseViews.PlanView> views(List<Plan> plans) {
    List<CauseViews.PlanView> views = new ArrayList<>();
    for (Plan plan : plans) {
      views.add(view(views.size() + 1, plan));
    }
    return views;
  }

  private CauseViews.PlanView view(int number, Plan plan) {
    return new CauseViews.PlanView(
        number,
        plan.title(),
        design(plan.design()),
        plan.design().resolution().orElse(null),
        plan.factors().stream()
            .map(
                each ->
                    new CauseViews.FactorView(each.name(), each.from(), each.to(), each.changes()))
            .toList(),
        plan.settings().stream().map(each -> setting(plan, each)).toList(),
        plan.doughs().stream().map(this::dough).toList(),
        plan.loads().stream().map(this::load).toList(),
        plan.contrasts().stream()
            .map(
                each ->
                    new CauseViews.ContrastView(
                        each.name(),
                        each.question(),
                        each.plus(),
                        each.minus(),
                        each.alias().orElse(null),
                        BakeViews.number(each.effect())))
            .toList(),
        cost(plan.all()),
        cost(plan.missing()),
        plan.pairs(),
        plan.remarks());
  }

  private static String design(Factorial design) {
    if (design.isHalf()) {
      return "half of 2^" + design.factors();
    }
    return design.factors() == 1
        ? "one against the other"
        : String.join("×", Collections.nCopies(design.factors(), "2"));
  }

  /** The level of each factor in words. */
  static List<String> levels(Plan plan, Plan.Setting setting) {
    List<String> levels = new ArrayList<>();
    for (int i = 0; i < plan.factors().size(); i++) {
      Plan.Factor factor = plan.factors().get(i);
      levels.add(setting.levels().get(i) ? factor.to() : factor.from());
    }
    return levels;
  }

  private CauseViews.SettingView setting(Plan plan, Plan.Setting setting) {
    Recipe recipe = setting.recipe();
    return new CauseViews.SettingView(
        setting.number(),
        levels(plan, setting),
        setting.levels(),
        setting.dough(),
        celsius(recipe),
        BakeViews.number(recipe.minutes()),
        recipe.oven(units),
        recipe.rack().orElse(null),
        FigureSet.number(recipe.pieceGrams()),
        setting.address().orElse(null),
        setting.soFar().pieces(),
        setting.soFar().with(),
        setting.soFar().bakes());
  }

  private static Double celsius(Recipe recipe) {
    return recipe.temperature().map(Temperature::celsius).orElse(null);
  }

  private CauseViews.DoughView dough(Plan.Dough dough) {
    return new CauseViews.DoughView(
        dough.number(),
        dough.address().orElse(null),
        dough.pieces(),
        FigureSet.number(dough.grams()),
        dough.lines().stream()
            .map(
                line ->
                    new CauseViews.WeighedView(
                        line.line().id(),
                        line.name(),
                        units.amount(line.line().amount()),
                        line.differs(),
                        FigureSet.number(line.grams())))
            .toList());
  }

  private CauseViews.LoadView load(Plan.Load load) {
    return new CauseViews.LoadView(
        load.recipe().temperature().map(units::heat).orElse(""),
        celsius(load.recipe()),
        load.recipe().rack().orElse(null),
        load.trays(),
        FigureSet.number(load.minutes()),
        load.places().stream()
            .map(
                place ->
                    new CauseViews.PlaceView(
                        place.place(),
                        place.setting(),
                        place.dough(),
                        BakeViews.number(place.minutes())))
            .toList());
  }

  private static CauseViews.PlanCost cost(Plan.Cost cost) {
    return new CauseViews.PlanCost(
        cost.settings(),
        cost.pieces(),
        cost.doughs(),
        FigureSet.number(cost.doughGrams()),
        cost.trays(),
        FigureSet.number(cost.ovenMinutes()));
  }

  /** The formula of a setting with its oven in the first stage. */
  static Formula kept(Plan.Setting setting) {
    return setting.recipe().kept();
  }
}
