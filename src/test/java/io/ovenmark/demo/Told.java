package io.ovenmark.demo;

import io.ovenmark.formula.Formula;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The demo's events told again without a notebook: what each line of history holds and which
 * foods it sees before and after each event. A food is the built-in one until an event of the
 * same branch, or of the main line before the fork or the carry, replaces it.
 */
final class Told {
  private static final String MAIN = "";

  /** An event with the worksheets of the latest revisions just before it and just after it. */
  record Step(DemoEvent event, Map<String, Worksheet> before, Map<String, Worksheet> after) {}

  private final Map<DemoAddress, Formula> formulas = new LinkedHashMap<>();
  private final Map<DemoAddress, Worksheet> sheets = new LinkedHashMap<>();
  private final Map<String, DemoAddress> latest = new LinkedHashMap<>();
  private final Map<String, Map<String, Food>> labels = new HashMap<>();
  private final Map<String, Goal> goals = new HashMap<>();
  private final List<Step> steps = new ArrayList<>();

  Told(DemoScript script) {
    labels.put(MAIN, new HashMap<>());
    for (DemoEvent event : script.events()) {
      Map<String, Worksheet> before = latestSheets();
      tell(event);
      steps.add(new Step(event, before, latestSheets()));
    }
  }

  private void tell(DemoEvent event) {
    if (event instanceof DemoEvent.GoalSet e) {
      goals.put(e.goal().slug(), e.goal());
    } else if (event instanceof DemoEvent.FoodEntered e) {
      labels.get(MAIN).put(e.food().slug(), e.food());
    } else if (event instanceof DemoEvent.FormulaBegun e) {
      made(e.address(), e.formula());
    } else if (event instanceof DemoEvent.FormulaRevised e) {
      made(e.address(), e.formula());
    } else if (event instanceof DemoEvent.VariantOpened e) {
      String line = e.from().formula() + "/" + e.name();
      labels.put(line, new HashMap<>(labels.get(MAIN)));
      latest.put(line, e.from());
    } else if (event instanceof DemoEvent.ImprovementsCarried e) {
      labels.get(e.address().line()).putAll(labels.get(MAIN));
      made(e.address(), e.formula());
    } else if (event instanceof DemoEvent.RevisionRestored e) {
      made(e.address(), e.formula());
    }
  }

  private void made(DemoAddress address, Formula formula) {
    formulas.put(address, formula);
    sheets.put(address, work(address.line(), formula));
    latest.put(address.line(), address);
  }

  private Worksheet work(String line, Formula formula) {
    Map<String, Food> known = labels.getOrDefault(line, labels.get(MAIN));
    return Worksheet.of(
        formula,
        slug -> Optional.ofNullable(known.get(slug)).or(() -> BuiltInPantry.find(slug)),
        Policy.USUAL,
        BakedYield.UNMEASURED);
  }

  private Map<String, Worksheet> latestSheets() {
    Map<String, Worksheet> all = new HashMap<>();
    latest.forEach((line, address) -> all.put(line, work(line, formulas.get(address))));
    return all;
  }

  List<Step> steps() {
    return steps;
  }

  Map<DemoAddress, Formula> formulas() {
    return formulas;
  }

  Formula formula(String address) {
    return formulas.get(DemoAddress.parse(address));
  }

  /** As worked out when the revision was made. */
  Worksheet sheet(String address) {
    return sheets.get(DemoAddress.parse(address));
  }

  /** How the formula's own goal stands, worked out when the revision was made. */
  GoalCheck.Outcome outcome(String address) {
    return outcome(sheet(address));
  }

  GoalCheck.Outcome outcome(Worksheet sheet) {
    return GoalCheck.of(goals.get(sheet.formula().goal().orElseThrow()), sheet).outcome();
  }
}
