package io.ovenmark.cause;

import io.ovenmark.measure.ShownUnits;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The plans for a turn. When more than two things changed in dough and oven, the short one tells
 * dough from oven; then there is the one for each thing by itself, up to {@link
 * Factorial#MOST_FACTORS}, and beyond that for bundles of them.
 *
 * @param plans the plans, the shortest first; none when nothing that can be set was changed
 * @param remarks what changed and cannot be set, and what is left out
 */
public record Plans(List<Plan> plans, List<String> remarks) {
  /** Copies the lists. */
  public Plans {
    plans = List.copyOf(plans);
    remarks = List.copyOf(remarks);
  }

  /**
   * Plans for a turn.
   *
   * @param turn where the finding came or went
   * @param bakes all bakes of the line of history, for what was baked already
   * @param size how much is baked
   * @param units how sentences state masses and temperatures
   * @return the plans
   */
  public static Plans of(Turn turn, List<Baked> bakes, PlanSize size, ShownUnits units) {
    Parts parts = new Parts(turn, units);
    List<Part> all = parts.all();
    List<String> remarks = new ArrayList<>(parts.fixed());
    if (all.isEmpty()) {
      return new Plans(List.of(), remarks);
    }
    PlanMaker maker = new PlanMaker(turn, parts, bakes, size, units);
    List<Plan> plans = new ArrayList<>();
    List<List<Part>> halves = doughAndOven(all);
    if (halves.size() == 2 && all.size() > 2) {
      plans.add(maker.plan("Dough or oven", halves, List.of("dough", "oven")));
    }
    if (all.size() <= Factorial.MOST_FACTORS) {
      String title =
          all.size() == 1 ? "Is it the " + all.get(0).name() + "?" : "Each change by itself";
      plans.add(maker.plan(title, all.stream().map(List::of).toList(), List.of()));
    } else {
      Map<Part.Sort, List<Part>> bundles = bySort(all);
      if (bundles.size() > halves.size() && bundles.size() <= Factorial.MOST_FACTORS) {
        plans.add(
            maker.plan(
                "Changes in bundles",
                List.copyOf(bundles.values()),
                bundles.keySet().stream().map(Part.Sort::label).toList()));
      }
      remarks.add(
          all.size()
              + " things changed that can be set: each by itself would take too many settings. Find"
              + " the bundle first, then part it.");
    }
    if (plans.isEmpty()) {
      remarks.add(
          "All changes are of one sort; go half the way back first, with the largest change.");
    }
    if (plans.stream().flatMap(plan -> plan.settings().stream()).anyMatch(Plans::isBaked)) {
      remarks.add(
          "A piece counts as baked of a setting when it is of that dough and its oven was within"
              + " 5 °C and 12 % of the time, and nearer to it than to the other level (common"
              + " practice, no source).");
    }
    return new Plans(plans, remarks);
  }

  private static boolean isBaked(Plan.Setting setting) {
    return setting.soFar().pieces() > 0;
  }

  private static List<List<Part>> doughAndOven(List<Part> all) {
    List<List<Part>> halves = new ArrayList<>();
    halves.add(all.stream().filter(part -> part.sort().isDough()).toList());
    halves.add(all.stream().filter(part -> !part.sort().isDough()).toList());
    halves.removeIf(List::isEmpty);
    return halves;
  }

  private static Map<Part.Sort, List<Part>> bySort(List<Part> all) {
    Map<Part.Sort, List<Part>> bundles = new EnumMap<>(Part.Sort.class);
    all.forEach(part -> bundles.computeIfAbsent(part.sort(), each -> new ArrayList<>()).add(part));
    return bundles;
  }

  /**
   * One of the plans.
   *
   * @param number from 1
   * @return the plan, empty when there is none of that number
   */
  public Optional<Plan> plan(int number) {
    return number >= 1 && number <= plans.size()
        ? Optional.of(plans.get(number - 1))
        : Optional.empty();
  }
}
