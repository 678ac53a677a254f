package io.ovenmark.cli;

import io.ovenmark.desk.CauseViews;
import io.ovenmark.measure.FigureText;
import java.util.ArrayList;
import java.util.List;

/** Prints a plan of bakes. */
final class PlanText {
  private final CauseViews.PlanView plan;
  private final Output out;

  PlanText(CauseViews.PlanView plan, Output out) {
    this.plan = plan;
    this.out = out;
  }

  void print() {
    out.heading("  Plan " + plan.number() + ". " + plan.title() + " (" + plan.design() + ")");
    for (CauseViews.FactorView factor : plan.factors()) {
      String bundle =
          factor.changes().size() > 1 ? " [" + String.join(", ", factor.changes()) + "]" : "";
      out.wrapped(
          "    " + factor.name() + bundle + ": ○ " + factor.from() + " | ● " + factor.to(),
          "      ");
    }
    settings();
    doughs();
    loads();
    contrasts();
    plan.pairs().forEach(pair -> out.wrapped("    So far: " + pair, "      "));
    out.wrapped("    All of it: " + cost(plan.all()), "      ");
    if (plan.missing().settings() == 0) {
      out.wrapped("    Every setting was baked already.", "      ");
    } else if (plan.missing().settings() < plan.all().settings()) {
      out.wrapped(
          "    Only what was not baked yet: " + cost(plan.missing())
              + " (other days, other rooms: surer all at once)",
          "      ");
    }
    plan.remarks().forEach(remark -> out.wrapped("    " + remark, "      "));
  }

  private void settings() {
    List<String> heads = new ArrayList<>(List.of(">", "dough"));
    plan.factors().forEach(factor -> heads.add(factor.name()));
    heads.addAll(List.of("oven", "baked so far"));
    Table table = new Table(heads.toArray(String[]::new)).indent(4);
    for (CauseViews.SettingView setting : plan.settings()) {
      List<String> cells = new ArrayList<>();
      cells.add(Integer.toString(setting.number()));
      cells.add(Integer.toString(setting.dough()));
      setting.high().forEach(high -> cells.add(high ? "●" : "○"));
      cells.add(setting.oven());
      cells.add(
          setting.baked() == 0
              ? "not yet"
              : "found on " + setting.with() + " of " + setting.baked());
      table.row(cells.toArray(String[]::new));
    }
    out.table(table);
  }

  private void doughs() {
    for (CauseViews.DoughView dough : plan.doughs()) {
      out.wrapped(
          "    Dough " + dough.number() + ": "
              + (dough.address() == null ? "needs a draft" : dough.address()) + ", "
              + CausesText.number(dough.doughG(), "g") + " for " + dough.pieces() + " pieces; "
              + String.join(", ", dough.lines().stream().map(PlanText::weighed).toList()),
          "      ");
    }
  }

  private static String weighed(CauseViews.WeighedView line) {
    return line.name().split(",")[0] + " " + CausesText.number(line.grams(), "g")
        + (line.differs() ? "*" : "");
  }

  private void loads() {
    for (CauseViews.LoadView load : plan.loads()) {
      out.wrapped(
          "    Oven " + (load.oven().isEmpty() ? "as usual" : load.oven())
              + (load.rack() == null ? "" : ", rack " + load.rack()) + ", " + load.trays()
              + (load.trays() == 1 ? " tray, " : " trays, ")
              + CausesText.number(load.minutes(), "min") + "; places in this order: "
              + String.join(", ", load.places().stream().map(PlanText::place).toList()),
          "      ");
    }
  }

  private static String place(CauseViews.PlaceView place) {
    return place.place() + " setting " + place.setting()
        + (place.minutes() == null
            ? ""
            : " (out at " + FigureText.number(place.minutes()) + " min)");
  }

  private void contrasts() {
    for (CauseViews.ContrastView contrast : plan.contrasts()) {
      out.wrapped(
          "    " + contrast.question() + " Settings " + list(contrast.plus()) + " against "
              + list(contrast.minus()) + "."
              + (contrast.alias() == null
                  ? ""
                  : " Cannot be told from " + contrast.alias() + ".")
              + (contrast.effectPoints() == null
                  ? ""
                  : " So far " + FigureText.signed(contrast.effectPoints())
                      + " points of the pieces."),
          "      ");
    }
  }

  private static String list(List<Integer> numbers) {
    return String.join(", ", numbers.stream().map(String::valueOf).toList());
  }

  private static String cost(CauseViews.PlanCost cost) {
    return cost.settings() + (cost.settings() == 1 ? " setting, " : " settings, ")
        + cost.pieces() + " pieces of " + cost.doughs()
        + (cost.doughs() == 1 ? " dough, " : " doughs, ") + CausesText.number(cost.doughG(), "g")
        + ", " + cost.trays() + (cost.trays() == 1 ? " tray, " : " trays, ")
        + CausesText.number(cost.ovenMinutes(), "min") + " in the oven.";
  }
}
